/** How a file leaves the window: saved by the host where it has dialogs, else by the browser that shows the window. */
import type { HostApi } from '../../src-core/host-contract';

export interface LeavingFile {
  readonly name: string;
  readonly content: string | Uint8Array<ArrayBuffer>;
  /** Media type, for the browser. */
  readonly type: string;
}

export type Left =
  | { readonly outcome: 'left' | 'printing'; readonly words: string }
  | { readonly outcome: 'cancelled' }
  | { readonly outcome: 'trouble'; readonly sentence: string };

/** What only a page in a browser can do. */
export interface PageDoors {
  readonly download: (file: LeavingFile) => void;
  /** Brings up the browser's own print dialog for the document. */
  readonly print: (html: string) => void;
}

export const PDF_TYPE = 'application/pdf';
export const HTML_TYPE = 'text/html';

/** Saves a file. */
export async function saveFile(host: HostApi, file: LeavingFile, { download }: PageDoors): Promise<Left> {
  const { name, content } = file;
  const reply = await host.ask(
    'saveExport',
    typeof content === 'string'
      ? { kind: 'text', suggestedName: name, data: content }
      : { kind: 'base64', suggestedName: name, data: base64Of(content) },
  );
  if (reply.outcome === 'saved') return { outcome: 'left', words: `Saved as ${reply.path}.` };
  if (reply.outcome !== 'use-browser') return reply;
  download(file);
  return { outcome: 'left', words: downloadedWords(name) };
}

/** A document in both the forms that a print may need. */
export interface PrintDocument {
  /** Ends in .pdf. */
  readonly name: string;
  /** With its fonts within. */
  readonly whole: () => Promise<string>;
  /** With its fonts at the address of this window's host, whose content policy lets no others through. */
  readonly linked: () => Promise<string>;
}

/** Makes a PDF of a document, with whatever the host has; where that is nothing, by the browser's own print dialog. */
export async function savePdf(host: HostApi, document: PrintDocument, doors: PageDoors): Promise<Left> {
  const { name, whole, linked } = document;
  const reply = await host.ask('printBook', { suggestedName: name, html: await whole() });
  switch (reply.outcome) {
    case 'saved':
      return { outcome: 'left', words: `Saved as ${reply.path}.` };
    case 'printed':
      doors.download({ name, content: bytesOf(reply.pdf), type: PDF_TYPE });
      return { outcome: 'left', words: downloadedWords(name) };
    case 'use-browser-print':
      doors.print(await linked());
      return {
        outcome: 'printing',
        words:
          'Nothing else on this machine makes a PDF. Choose to save as PDF in the print dialog, at 100 %, without headers and footers.',
      };
    default:
      return reply;
  }
}

function downloadedWords(name: string): string {
  return `${name} is with the downloads of this browser.`;
}

/** Bytes a call may have as arguments. */
const CHUNK = 0x8000;

export function base64Of(bytes: Uint8Array): string {
  let letters = '';
  for (let at = 0; at < bytes.length; at += CHUNK) {
    letters += String.fromCharCode(...bytes.subarray(at, at + CHUNK));
  }
  return btoa(letters);
}

export function bytesOf(base64: string): Uint8Array<ArrayBuffer> {
  return Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
}
