/** Tells job files from others by a cheap look at how they begin. */
import { constants } from 'node:fs';
import { open } from 'node:fs/promises';
import { JOB_FORMAT } from '../../src-core/job';

/** A job file as Ledgewright writes it names its format in the first line or two. */
const HEAD_BYTES = 4096;
const FORMAT = new RegExp(`"format"\\s*:\\s*"${JOB_FORMAT}"`);

/** Whether a regular file begins like a job. False for what cannot be read. */
export async function looksLikeJob(path: string): Promise<boolean> {
  try {
    const handle = await open(path, constants.O_RDONLY | (constants.O_NONBLOCK ?? 0));
    try {
      if (!(await handle.stat()).isFile()) return false;
      const { buffer, bytesRead } = await handle.read(Buffer.alloc(HEAD_BYTES), 0, HEAD_BYTES, 0);
      return FORMAT.test(buffer.toString('utf8', 0, bytesRead));
    } finally {
      await handle.close();
    }
  } catch {
    return false;
  }
}
