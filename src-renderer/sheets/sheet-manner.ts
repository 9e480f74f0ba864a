/** How each sheet lies over the drawing and how it may be left. */
import type { Sheet } from '../state/window-store';

export interface SheetManner {
  readonly width: 'small' | 'middle' | 'wide' | 'page';
  /** A press beside the sheet closes it: only where nothing that was typed is lost. */
  readonly closesOutside: boolean;
  /** Escape closes it. */
  readonly closesByKey: boolean;
}

const MANNERS: { readonly [K in Sheet['kind']]: SheetManner } = {
  'quick-check': { width: 'page', closesOutside: false, closesByKey: true },
  'add-piece': { width: 'wide', closesOutside: true, closesByKey: true },
  'open-file': { width: 'middle', closesOutside: true, closesByKey: true },
  'save-file': { width: 'middle', closesOutside: false, closesByKey: true },
  'open-example': { width: 'small', closesOutside: true, closesByKey: true },
  // Left open, the draft would be written over by the next one.
  recover: { width: 'small', closesOutside: false, closesByKey: false },
  unsaved: { width: 'small', closesOutside: false, closesByKey: true },
  'build-book': { width: 'page', closesOutside: true, closesByKey: true },
  export: { width: 'middle', closesOutside: true, closesByKey: true },
  keys: { width: 'middle', closesOutside: true, closesByKey: true },
  about: { width: 'middle', closesOutside: true, closesByKey: true },
  manual: { width: 'middle', closesOutside: true, closesByKey: true },
};

/** Width of a sheet and the ways out of it. */
export function sheetManner(kind: Sheet['kind']): SheetManner {
  return MANNERS[kind];
}
