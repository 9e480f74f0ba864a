/** What a PDF holds, read by a library apart from the browser that wrote it. */
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';

export interface ReadPdf {
  readonly sizesPt: readonly (readonly number[])[];
  readonly text: string;
  readonly outline: readonly string[];
}

export async function readPdf(bytes: Uint8Array): Promise<ReadPdf> {
  const document = await getDocument({ data: Uint8Array.from(bytes), verbosity: 0 }).promise;
  const pages = await Promise.all(
    Array.from({ length: document.numPages }, (_, k) => document.getPage(k + 1)),
  );
  const texts = await Promise.all(pages.map((page) => page.getTextContent()));
  const outline = ((await document.getOutline()) ?? []) as { title: string }[];
  return {
    sizesPt: pages.map(({ view }) => view.slice(2)),
    text: texts.flatMap(({ items }) => items.map((item) => ('str' in item ? item.str : ''))).join(' '),
    outline: outline.map(({ title }) => title),
  };
}
