/** Saving on the way to something else, also where the file name has to be asked for first. */
import type { FileActions } from '../state/file-actions';
import type { WindowStore } from '../state/window-store';
import { isUnsaved } from '../state/window-store';

/**
 * Saves the job and goes on to `goOn` once it is in its file. Where the host asks for a name by the window's own sheet, what
 * follows waits for that sheet; a sheet that is left without saving ends it, and so does a save that fails.
 */
export async function saveThen(
  store: WindowStore,
  files: Pick<FileActions, 'save'>,
  goOn: () => void,
): Promise<void> {
  const goAfter = () => {
    store.getState().openSheet(null);
    goOn();
  };
  if (await files.save()) {
    goAfter();
    return;
  }
  if (store.getState().sheet?.kind !== 'save-file') return;
  const stop = store.subscribe((state) => {
    if (state.sheet?.kind === 'save-file') return;
    stop();
    if (state.sheet === null && !isUnsaved(state)) goAfter();
  });
}
