/** Where a document or a drawing goes, and how it gets there: whole or not at all. */
import { extname, resolve } from 'node:path';
import writeFileAtomic from 'write-file-atomic';
import type { Paper } from '../../../src-core/figure';
import type { Job } from '../../../src-core/job';
import type { CliIo } from '../io';

/** Letter for a job in inches, A4 for one in millimetres, unless another is named; null where no such paper is known. */
export function paperFor({ shownIn }: Pick<Job, 'shownIn'>, named: string | undefined): Paper | null {
  if (named === undefined) return shownIn === 'imperial' ? 'letter' : 'a4';
  return named === 'letter' || named === 'a4' ? named : null;
}

/** Ending of a file's name without its point, in small letters. */
export function endingOf(path: string): string {
  return extname(path).slice(1).toLowerCase();
}

/** Why no document can be written as this kind of file; null where it can. A PDF needs a browser that prints. */
export async function documentTrouble(io: CliIo, out: string): Promise<string | null> {
  const ending = endingOf(out);
  if (ending === 'html') return null;
  if (ending !== 'pdf') return `--out ${out}: the name must end in .pdf or .html.`;
  const trouble = io.printer === undefined ? 'Nothing here can print.' : await io.printer.trouble();
  if (trouble === null) return null;
  return `${trouble} A PDF cannot be made without; give --out a name that ends in .html instead, open that file in any browser and print it from there.`;
}

/** Writes a document as HTML, or printed as PDF; null where it was written, else why not. */
export async function writeDocument(io: CliIo, out: string, html: string): Promise<string | null> {
  if (endingOf(out) === 'html') return writeOut(io, out, html);
  if (io.printer === undefined) throw new Error('a PDF was begun without a printer');
  const printed = await io.printer.print(html);
  return printed.ok ? writeOut(io, out, printed.pdf) : `${out}: ${printed.sentence}`;
}

/** Writes a file; null where it was written, else why not. */
export async function writeOut(io: CliIo, out: string, content: string | Uint8Array): Promise<string | null> {
  try {
    const data = typeof content === 'string' ? content : Buffer.from(content);
    await writeFileAtomic(resolve(io.currentFolder, out), data);
    return null;
  } catch (cause) {
    return `${out}: The file cannot be written: ${cause instanceof Error ? cause.message : String(cause)}`;
  }
}

/** Whether two names, read from the same folder, are one file. */
export function isSameFile({ currentFolder }: CliIo, one: string, other: string): boolean {
  return resolve(currentFolder, one) === resolve(currentFolder, other);
}
