/** What leaves the tool as a file that is no job, and what is printed. */
import { z } from 'zod';

/** Endings that a file may leave with; what they promise is in it is the window's to keep. */
export const EXPORT_ENDINGS = ['csv', 'dxf', 'glb', 'html', 'json', 'pdf', 'png', 'stl', 'svg'] as const;

/** Longest text in characters that leaves or is printed; the book of the largest example stays far below. */
const LONGEST_TEXT = 8_000_000;
/** Longest base64 in characters: files of 30 MB. */
const LONGEST_BASE64 = 40_000_000;

/** No folder, no wildcard, no letter that a file system refuses, no hidden file. */
const NAME = new RegExp(`^(?!\\.)[^\\\\/:*?"<>|\\p{Cc}]+\\.(${EXPORT_ENDINGS.join('|')})$`, 'u');
const exportName = z
  .string()
  .max(200)
  .regex(NAME, `a file name without a folder that ends in .${EXPORT_ENDINGS.join(', .')}`);

const text = z.string().max(LONGEST_TEXT);
const base64 = z
  .string()
  .max(LONGEST_BASE64)
  .refine((data) => data.length % 4 === 0 && /^[A-Za-z0-9+/]*={0,2}$/.test(data), 'not base64');

const saved = z.strictObject({ outcome: z.literal('saved'), path: z.string(), name: z.string() });
const cancelled = z.strictObject({ outcome: z.literal('cancelled') });
const trouble = z.strictObject({ outcome: z.literal('trouble'), sentence: z.string() });

/**
 * Writes a file whole or not at all, where the person says by a dialog of the system. A host without dialogs answers
 * `use-browser`: the window then lets the browser save it.
 */
export const saveExport = {
  request: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('text'), suggestedName: exportName, data: text }),
    z.strictObject({ kind: z.literal('base64'), suggestedName: exportName, data: base64 }),
  ]),
  reply: z.discriminatedUnion('outcome', [
    saved,
    cancelled,
    trouble,
    z.strictObject({ outcome: z.literal('use-browser') }),
  ]),
};

/**
 * Prints a document of its own, such as the build book, to a PDF on the sheet that its style names. It is shown to nobody, runs no
 * script and fetches nothing. A host with dialogs saves the PDF; one without gives it back, or answers `use-browser-print` where
 * it has nothing to print with.
 */
export const printBook = {
  request: z.strictObject({ suggestedName: exportName.endsWith('.pdf'), html: text }),
  reply: z.discriminatedUnion('outcome', [
    saved,
    z.strictObject({ outcome: z.literal('printed'), pdf: base64 }),
    cancelled,
    trouble,
    z.strictObject({ outcome: z.literal('use-browser-print') }),
  ]),
};
