/** Reads a file that a person chose as text. What is wrong comes back as a sentence. */
import { constants } from 'node:fs';
import { open } from 'node:fs/promises';

export type TextReading =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly sentence: string };

/** No job comes near this; a file of this size is something else. The contract's longest text is as long. */
export const LARGEST_BYTES = 8_000_000;

/** The text of a regular file of UTF-8 up to the largest size. */
export async function readText(path: string): Promise<TextReading> {
  try {
    // Without waiting: opening a pipe that nobody writes to would otherwise hang.
    const handle = await open(path, constants.O_RDONLY | (constants.O_NONBLOCK ?? 0));
    try {
      const found = await handle.stat();
      if (found.isDirectory()) return no('This is a folder, not a job file.');
      if (!found.isFile()) return no('This is not a file that can be read.');
      if (found.size > LARGEST_BYTES) return no('This file is far too large for a job.');
      return { ok: true, text: new TextDecoder('utf-8', { fatal: true }).decode(await handle.readFile()) };
    } finally {
      await handle.close();
    }
  } catch (error) {
    return no(readingTrouble(error));
  }
}

function no(sentence: string): TextReading {
  return { ok: false, sentence };
}

/** The system's code of a fault with a file, such as ENOENT; empty where it has none. */
export function codeOf(error: unknown): string {
  return error instanceof Error && 'code' in error ? String(error.code) : '';
}

function readingTrouble(error: unknown): string {
  switch (codeOf(error)) {
    case 'ENOENT':
    case 'ENOTDIR':
      return 'There is no such file.';
    case 'EACCES':
    case 'EPERM':
      return 'This file may not be read: permission is denied.';
    case 'ERR_ENCODING_INVALID_ENCODED_DATA':
      return 'This is not UTF-8 text, so it is no job file.';
    default:
      return `The file cannot be read: ${error instanceof Error ? error.message : String(error)}.`;
  }
}
