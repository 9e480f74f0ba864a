/** Reads a job file from disk. What is wrong comes back as lines that start with the file's path. */
import { readFile, stat } from 'node:fs/promises';
import { resolve } from 'node:path';
import type { Job } from '../../src-core/job';
import { readJobText } from '../../src-core/job';

export type JobFile =
  | { readonly ok: true; readonly job: Job; readonly migratedFrom: number | null }
  | { readonly ok: false; readonly faults: readonly string[] };

/** No job comes near this; a file of this size is something else. */
const LARGEST_BYTES = 64_000_000;

/** Reads and checks the job at `path`, which may be relative to `folder`. */
export async function readJobFile(path: string, folder: string): Promise<JobFile> {
  const text = await readText(resolve(folder, path));
  if (!text.ok) return { ok: false, faults: [`${path}: ${text.sentence}`] };
  const reading = readJobText(text.text);
  if (reading.ok) return reading;
  return {
    ok: false,
    faults: reading.problems.map(({ path: place, sentence }) =>
      place === '' ? `${path}: ${sentence}` : `${path}: ${place}: ${sentence}`,
    ),
  };
}

type FileText =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly sentence: string };

async function readText(path: string): Promise<FileText> {
  try {
    const found = await stat(path);
    if (found.isDirectory()) return no('This is a folder, not a job file.');
    if (!found.isFile() && !found.isFIFO()) return no('This is not a file that can be read.');
    if (found.size > LARGEST_BYTES) return no('This file is far too large for a job.');
    const bytes = await readFile(path);
    if (bytes.every(isBlank)) return no('The file is empty.');
    return { ok: true, text: new TextDecoder('utf-8', { fatal: true }).decode(bytes) };
  } catch (error) {
    return no(troubleWords(error));
  }
}

function no(sentence: string): FileText {
  return { ok: false, sentence };
}

/** Space, tab, line feed or carriage return. */
function isBlank(byte: number): boolean {
  return byte === 0x20 || byte === 0x09 || byte === 0x0a || byte === 0x0d;
}

function troubleWords(error: unknown): string {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  switch (code) {
    case 'ENOENT':
    case 'ENOTDIR':
      return 'There is no such file.';
    case 'EACCES':
    case 'EPERM':
      return 'This file may not be read: permission is denied.';
    case 'ERR_ENCODING_INVALID_ENCODED_DATA':
      return 'This is not UTF-8 text. Save the job as UTF-8.';
    default:
      return `The file cannot be read: ${error instanceof Error ? error.message : String(error)}.`;
  }
}
