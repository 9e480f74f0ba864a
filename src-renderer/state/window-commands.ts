/** What the menu, the keys and the system's own menu can do, by the ids of the menu table. */

import {
  duplicatePart,
  duplicatePiece,
  removeCorner,
  removePart,
  removePiece,
  setUnits,
} from '../../src-core/edit';
import type { MenuItem } from '../../src-core/host-contract';
import { MENUS } from '../../src-core/host-contract';
import type { JobProblem } from '../../src-core/job';
import type { FileActions } from './file-actions';
import type { WindowStore } from './window-store';

export type WindowCommands = Readonly<Record<string, () => void>>;

/** The commands of one window. */
export function windowCommands(store: WindowStore, files: FileActions): WindowCommands {
  const state = () => store.getState();
  const orSay = (problems: readonly JobProblem[]) => {
    const [first] = problems;
    if (first !== undefined) state().say({ tone: 'trouble', sentence: first.sentence });
  };
  return {
    'new-job': files.newJob,
    'open-job': () => void files.openPath(null),
    'open-example': () => state().openSheet({ kind: 'open-example' }),
    'save-job': () => void files.save(),
    'save-job-as': () => void files.saveAs(),
    'build-book': () => state().openSheet({ kind: 'build-book' }),
    export: () => state().openSheet({ kind: 'export' }),
    undo: () => state().undo(),
    redo: () => state().redo(),
    'add-piece': () => state().openSheet({ kind: 'add-piece' }),
    'duplicate-selection': () => {
      const { selection, run } = state();
      if (selection === null) return;
      const { pieceId, part } = selection;
      if ('id' in part) orSay(run(duplicatePart, { pieceId, part }));
      else orSay(run(duplicatePiece, { pieceId }));
    },
    'remove-selection': () => {
      const { selection, run } = state();
      if (selection === null) return;
      const { pieceId, part } = selection;
      if ('id' in part) orSay(run(removePart, { pieceId, part }));
      else if (part.kind === 'corner') orSay(run(removeCorner, { pieceId, index: part.index }));
      else if (part.kind === 'piece') orSay(run(removePiece, { pieceId }));
    },
    'view-model': () => state().show('model'),
    'view-plan': () => state().show('plan'),
    'view-both': () => state().show('both'),
    'switch-units': () =>
      orSay(
        state().run(setUnits, { system: state().history.job.shownIn === 'imperial' ? 'metric' : 'imperial' }),
      ),
    'switch-theme': () => state().setTheme(state().theme === 'light' ? 'dark' : 'light'),
    'quick-check': () => state().openSheet({ kind: 'quick-check' }),
    'show-keys': () => state().openSheet({ kind: 'keys' }),
    about: () => state().openSheet({ kind: 'about' }),
  };
}

const ITEMS: readonly MenuItem[] = MENUS.flatMap(({ items }) => items);
/** Keys that write or move in a field belong to the field. */
const FIELD = 'input, textarea, select, [contenteditable], [role="slider"], [role="spinbutton"]';

/** The command whose keys were pressed, or null. Mod is Command on a Mac and Control elsewhere. */
export function commandOfKeys(
  event: Pick<KeyboardEvent, 'key' | 'code' | 'ctrlKey' | 'metaKey' | 'altKey' | 'shiftKey'>,
  isMac: boolean,
): string | null {
  const mod = isMac ? event.metaKey : event.ctrlKey;
  const other = isMac ? event.ctrlKey : event.metaKey;
  if (other) return null;
  const isRedo = mod && !event.altKey && !event.shiftKey && event.key.toLowerCase() === 'y' && !isMac;
  if (isRedo) return 'redo';
  const found = ITEMS.find(({ keys }) => {
    if (keys === undefined) return false;
    const parts = keys.split('+');
    const wanted = parts.at(-1)!.toLowerCase();
    // with Alt a keyboard may print another letter, so the place of the key counts
    const pressed = event.altKey
      ? event.code.replace(/^(Key|Digit)/, '').toLowerCase()
      : event.key.toLowerCase();
    return (
      pressed === wanted &&
      parts.includes('Mod') === mod &&
      parts.includes('Alt') === event.altKey &&
      parts.includes('Shift') === event.shiftKey
    );
  });
  return found?.command ?? null;
}

/** Listens for the keys of the menu; gives the way to stop. The desktop's own menu has the same keys and takes them first. */
export function listenForKeys(
  commands: WindowCommands,
  isMac: boolean,
  isSheetOpen: () => boolean,
): () => void {
  const onKey = (event: KeyboardEvent) => {
    const command = commandOfKeys(event, isMac);
    if (command === null || event.defaultPrevented) return;
    const isInField = event.target instanceof Element && event.target.closest(FIELD) !== null;
    const belongsToField = isInField && ['undo', 'redo', 'remove-selection'].includes(command);
    if (belongsToField || (isSheetOpen() && command !== 'save-job')) return;
    event.preventDefault();
    commands[command]?.();
  };
  window.addEventListener('keydown', onKey);
  return () => window.removeEventListener('keydown', onKey);
}
