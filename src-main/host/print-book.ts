/** Prints the build book to a PDF, with whatever the host has to print with. */
import type { ReplyOf, RequestOf } from '../../src-core/host-contract';
import { askTarget, keepAt } from './export-files';
import type { Place } from './place';

type Reply = ReplyOf<'printBook'>;
type Where = Pick<Place, 'dialogs' | 'jobFolder' | 'printPdf'>;

/** Answers one print after another: a second one while the first goes on is refused, so that no crowd of printers is started. */
export function bookPrinter(where: Where): (asked: RequestOf<'printBook'>) => Promise<Reply> {
  let isPrinting = false;
  return async (asked) => {
    if (isPrinting) return { outcome: 'trouble', sentence: 'The last print is not done yet.' };
    isPrinting = true;
    try {
      return await print(where, asked);
    } finally {
      isPrinting = false;
    }
  };
}

/** Where there are dialogs the person says first where the PDF goes: a print that is not wanted costs no wait. */
async function print(
  { dialogs, jobFolder, printPdf }: Where,
  { suggestedName, html }: RequestOf<'printBook'>,
): Promise<Reply> {
  const target = dialogs === null ? null : await askTarget(dialogs, jobFolder, suggestedName);
  if (target !== null && target.outcome !== 'chosen') return target;
  const printed = await printPdf(html);
  if (!printed.ok) {
    if (printed.why === 'no-printer' && target === null) return { outcome: 'use-browser-print' };
    return { outcome: 'trouble', sentence: printed.sentence };
  }
  if (target !== null) return keepAt(target.path, printed.pdf);
  return { outcome: 'printed', pdf: Buffer.from(printed.pdf).toString('base64') };
}
