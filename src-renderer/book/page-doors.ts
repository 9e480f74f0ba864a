/** Downloads and prints of the page itself. */
import type { LeavingFile, PageDoors } from './leave';

/** A browser takes the file up at once; after this long its copy here is let go, ms. */
const TAKEN_MS = 60_000;

export const pageDoors: PageDoors = { download, print };

function download({ name, content, type }: LeavingFile): void {
  const address = URL.createObjectURL(new Blob([content], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), TAKEN_MS);
}

/** Prints from a frame that nobody sees and that runs no script; it goes with the next print, since its dialog may stay open long. */
function print(html: string): void {
  document.getElementById(FRAME_ID)?.remove();
  const frame = document.createElement('iframe');
  frame.id = FRAME_ID;
  frame.title = 'What is printed';
  frame.setAttribute('sandbox', 'allow-same-origin allow-modals');
  frame.setAttribute('aria-hidden', 'true');
  frame.tabIndex = -1;
  Object.assign(frame.style, {
    position: 'fixed',
    width: '0',
    height: '0',
    border: '0',
    visibility: 'hidden',
  });
  frame.srcdoc = html;
  frame.addEventListener('load', () => void printWhenSet(frame), { once: true });
  document.body.append(frame);
}

const FRAME_ID = 'printed-document';

async function printWhenSet({ contentDocument, contentWindow }: HTMLIFrameElement): Promise<void> {
  await contentDocument?.fonts.ready;
  contentWindow?.print();
}
