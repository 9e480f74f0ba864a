export type { Check, CheckContext, CheckRule, Level, Location, Need, Quantity } from './check';
export type { CheckedPiece } from './check-piece';
export { cannotCheck, checkAnalysis, checkPiece } from './check-piece';
export { governingCheck, rank, sortChecks, stands, worse, worstLevel } from './level';
export type { Limits } from './limits';
export { DEFAULT_LIMITS } from './limits';
export { RULES } from './list';
