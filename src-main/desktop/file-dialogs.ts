/** The system's dialogs for opening and saving a job. */
import type { BrowserWindow } from 'electron';
import { dialog } from 'electron';
import type { Dialogs } from '../host/place';

const FILTERS = [{ name: 'Job', extensions: ['json'] }];

/** Dialogs over the window, where there is one. */
export function fileDialogs(windowNow: () => BrowserWindow | null): Dialogs {
  return {
    askOpen: async (folder) => {
      const options = { defaultPath: folder, filters: FILTERS, properties: ['openFile' as const] };
      const over = windowNow();
      const { canceled, filePaths } = await (over === null
        ? dialog.showOpenDialog(options)
        : dialog.showOpenDialog(over, options));
      return canceled ? null : (filePaths[0] ?? null);
    },
    askSave: async (suggestedPath) => {
      const options = {
        defaultPath: suggestedPath,
        filters: FILTERS,
        properties: ['createDirectory' as const, 'showOverwriteConfirmation' as const],
      };
      const over = windowNow();
      const { canceled, filePath } = await (over === null
        ? dialog.showSaveDialog(options)
        : dialog.showSaveDialog(over, options));
      return canceled || filePath === '' ? null : filePath;
    },
  };
}
