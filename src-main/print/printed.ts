/** What came of printing a document. */
export type Printed =
  | { readonly ok: true; readonly pdf: Uint8Array }
  /** Nothing to print with, or a print that failed; either says so in a sentence. */
  | { readonly ok: false; readonly why: 'no-printer' | 'failed'; readonly sentence: string };

/** Prints a whole document to a PDF on the sheet that its style names. */
export type PrintPdf = (html: string) => Promise<Printed>;

export interface Printer {
  /** Why nothing can be printed here, known before there is something to print; null where it can. */
  readonly trouble: () => Promise<string | null>;
  readonly print: PrintPdf;
}
