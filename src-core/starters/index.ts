export type { PieceDraft } from './drafts';
export type { IdMaker } from './fresh-ids';
export { idMaker, newId } from './fresh-ids';
export type { QuickJob } from './quick-check';
export { quickCheckJob } from './quick-check';
export type { QuickBearing, QuickFields, QuickHeld, QuickKind, QuickSteel } from './quick-fields';
export {
  DEFAULT_QUICK_FIELDS,
  QUICK_BEARINGS,
  QUICK_DEFAULTS,
  QUICK_HELD,
  QUICK_OVERHANG,
} from './quick-fields';
export type { QuickProblem } from './quick-problems';
export type { Starter, StarterId } from './starter-list';
export { STARTERS, starterJob, starterPiece } from './starter-list';
