/** Writes a file whole or not at all: beside it, flushed, renamed over it, and the rename flushed too. */
import { mkdir, open } from 'node:fs/promises';
import { dirname } from 'node:path';
import writeFileAtomic from 'write-file-atomic';

/**
 * Writes bytes, or text as UTF-8. After it resolves, the new content outlives a power cut; killed before, the old content stays
 * whole.
 */
export async function keepFile(path: string, content: string | Uint8Array): Promise<void> {
  const data = typeof content === 'string' ? content : Buffer.from(content);
  await writeFileAtomic(path, data, { encoding: 'utf8', fsync: true });
  await flushFolder(dirname(path));
}

/** The same for one of Ledgewright's own files, whose folder may be missing. */
export async function keepOwnFile(path: string, text: string): Promise<void> {
  await mkdir(dirname(path), { recursive: true, mode: 0o700 });
  await keepFile(path, text);
}

/** A rename is only as lasting as its folder. Windows cannot open a folder, and some shared folders refuse the flush. */
async function flushFolder(folder: string): Promise<void> {
  if (process.platform === 'win32') return;
  const handle = await open(folder, 'r');
  try {
    await handle.sync();
  } catch (error) {
    if (!isRefusedFlush(error)) throw error;
  } finally {
    await handle.close();
  }
}

function isRefusedFlush(error: unknown): boolean {
  return (
    error instanceof Error && 'code' in error && ['EINVAL', 'ENOTSUP', 'EPERM'].includes(`${error.code}`)
  );
}
