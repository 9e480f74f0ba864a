/** What happens when the page's process dies. */
import type { BrowserWindow } from 'electron';
import { dialog } from 'electron';

const START_AGAIN = 0;

/** Offers to start the page again, which then offers the draft that was kept, or lets the window go. */
export function offerRestart(window: BrowserWindow): void {
  window.webContents.on('render-process-gone', (_event, { reason }) => {
    if (reason === 'clean-exit') return;
    void ask(window);
  });
}

async function ask(window: BrowserWindow): Promise<void> {
  const { response } = await dialog.showMessageBox(window, {
    type: 'error',
    buttons: ['Start it again', 'Close'],
    defaultId: START_AGAIN,
    cancelId: 1,
    noLink: true,
    message: 'The window stopped working.',
    detail: 'Your unsaved work was kept as it was a moment ago and is offered when the window starts again.',
  });
  if (window.isDestroyed()) return;
  if (response === START_AGAIN) window.reload();
  else window.close();
}
