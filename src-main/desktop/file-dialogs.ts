/** The system's dialogs for opening a job and for saving it or what leaves it. */
import { extname } from 'node:path';
import type { BrowserWindow } from 'electron';
import { dialog } from 'electron';
import type { Dialogs } from '../host/place';

const JOB = { name: 'Job', extensions: ['json'] };

/** What a file is called that ends so, in the list of the dialog. */
const KINDS: Readonly<Record<string, string>> = {
  csv: 'List',
  dxf: 'Drawing',
  glb: 'Model',
  html: 'Page',
  pdf: 'Print',
  png: 'Picture',
  stl: 'Model',
  svg: 'Drawing',
};

/** Dialogs over the window, where there is one. */
export function fileDialogs(windowNow: () => BrowserWindow | null): Dialogs {
  return {
    askOpen: async (folder) => {
      const options = { defaultPath: folder, filters: [JOB], properties: ['openFile' as const] };
      const over = windowNow();
      const { canceled, filePaths } = await (over === null
        ? dialog.showOpenDialog(options)
        : dialog.showOpenDialog(over, options));
      return canceled ? null : (filePaths[0] ?? null);
    },
    askSave: async (suggestedPath) => {
      const options = {
        defaultPath: suggestedPath,
        filters: [kindOf(suggestedPath)],
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

/** The kind of file that a suggested name asks for; a name without an ending is a job's. */
function kindOf(path: string): { name: string; extensions: string[] } {
  const ending = extname(path).slice(1).toLowerCase();
  const name = KINDS[ending];
  return name === undefined ? JOB : { name, extensions: [ending] };
}
