export type { Change, ChangeCost, ChangeKind, ChangeSearch, PatchOperation } from './change';
export type { PatchedJob, PatchProblem } from './patch';
export { applyChange, applyPatch, undoPatch } from './patch';
export type { SearchOptions } from './search';
export { searchChanges } from './search';
export { thicker } from './thickness-ladder';
