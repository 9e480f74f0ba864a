/** The job file that the app was started with, by a double click on it or from a command line. */
import { statSync } from 'node:fs';
import { resolve } from 'node:path';

/** The last word that names a job file which is there, as a whole path; null where none does. */
export function jobPathIn(words: readonly string[], folder: string): string | null {
  const named = words
    .slice(1)
    .filter((word) => !word.startsWith('-') && word.toLowerCase().endsWith('.json'))
    .map((word) => resolve(folder, word))
    .filter((path) => statSync(path, { throwIfNoEntry: false })?.isFile() === true);
  return named.at(-1) ?? null;
}
