/** Asks before a window with unsaved changes goes. */
import type { BrowserWindow } from 'electron';
import { dialog } from 'electron';
import type { Host } from '../host/host';

const BUTTONS = ['Save', "Don't save", 'Cancel'] as const;
const SAVE = 0;
const DISCARD = 1;
const CANCEL = 2;

export interface Closing {
  /** Follows what the page asked of the host: a save may be what a closing window waits for. */
  readonly onAnswered: (name: string, reply: unknown) => void;
}

export interface ClosingParts {
  readonly window: BrowserWindow;
  readonly host: Host;
  /** Tells the page to save. */
  readonly askPageToSave: () => void;
  /** Runs once, when the window goes for good. */
  readonly beforeGone: () => void;
}

/** Holds the window's closing until its unsaved changes are saved or given up. */
export function askBeforeClosing({ window, host, askPageToSave, beforeGone }: ClosingParts): Closing {
  let isAsking = false;
  let isWaitingForSave = false;

  async function letGo(act: () => Promise<void>): Promise<void> {
    isWaitingForSave = false;
    beforeGone();
    // The window goes even where the draft cannot be removed: what the next run then offers was unsaved work.
    await act().catch(() => undefined);
    window.destroy();
  }

  async function ask(): Promise<void> {
    if (isAsking) return;
    isAsking = true;
    isWaitingForSave = false;
    try {
      const { response } = await dialog.showMessageBox(window, {
        type: 'question',
        buttons: [...BUTTONS],
        defaultId: SAVE,
        cancelId: CANCEL,
        noLink: true,
        message: `Save the changes to ${host.unsaved().name || 'this job'}?`,
        detail: 'What is not saved is lost.',
      });
      if (response === DISCARD) await letGo(() => host.discard());
      if (response === SAVE) {
        isWaitingForSave = true;
        askPageToSave();
      }
    } finally {
      isAsking = false;
    }
  }

  window.on('close', (event) => {
    event.preventDefault();
    // A page that crashed can neither save nor be asked; its draft stays for the next run.
    if (host.unsaved().isUnsaved && !window.webContents.isCrashed()) void ask();
    else void letGo(() => host.endRun());
  });

  return {
    onAnswered: (name, reply) => {
      if (name === 'saveJob' && outcomeOf(reply) !== 'saved') isWaitingForSave = false;
      if (name !== 'setUnsaved') return;
      const { isUnsaved } = host.unsaved();
      window.setDocumentEdited(isUnsaved);
      if (isWaitingForSave && !isUnsaved) void letGo(() => host.endRun());
      else isWaitingForSave = false;
    },
  };
}

function outcomeOf(reply: unknown): unknown {
  return typeof reply === 'object' && reply !== null && 'outcome' in reply ? reply.outcome : null;
}
