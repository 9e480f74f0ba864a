/** Prints a document to a PDF in a window that nobody sees: it runs no script, has no preload, and its session reaches nothing. */
import type { Session } from 'electron';
import { BrowserWindow, session } from 'electron';
import type { Printed } from '../print/printed';
import { SEALED_HEADERS } from '../print/sealed-headers';
import { denyPermissions } from './guards';
import { SCHEME } from './scheme';

/** Kept in memory alone, since its name does not begin with "persist:". */
const PARTITION = 'print';
/** Another host than the window's, so that the shell answers nothing to it. */
const ADDRESS = `${SCHEME}://print/`;

/** Prints one document; its sheet is the one that its style names. */
export async function printHidden(html: string): Promise<Printed> {
  const sealed = sealedSession(html);
  const window = new BrowserWindow({
    show: false,
    webPreferences: {
      session: sealed,
      javascript: false,
      contextIsolation: true,
      sandbox: true,
      nodeIntegration: false,
      webSecurity: true,
      webviewTag: false,
    },
  });
  try {
    await window.loadURL(ADDRESS);
    const pdf = await window.webContents.printToPDF({
      preferCSSPageSize: true,
      printBackground: true,
      displayHeaderFooter: false,
      margins: { top: 0, bottom: 0, left: 0, right: 0 },
      generateTaggedPDF: true,
      generateDocumentOutline: true,
    });
    return { ok: true, pdf };
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    return { ok: false, why: 'failed', sentence: `This could not be printed: ${reason}.` };
  } finally {
    window.destroy();
    sealed.protocol.unhandle(SCHEME);
  }
}

/** A session that holds this document and lets nothing else be fetched. */
function sealedSession(html: string): Session {
  const sealed = session.fromPartition(PARTITION, { cache: false });
  denyPermissions(sealed);
  sealed.webRequest.onBeforeRequest(({ url }, decide) =>
    decide({ cancel: url !== ADDRESS && !url.startsWith('data:') }),
  );
  sealed.protocol.handle(SCHEME, () => new Response(html, { headers: SEALED_HEADERS }));
  return sealed;
}
