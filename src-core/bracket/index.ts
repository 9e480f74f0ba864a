export { armCreepFactor } from './arm-checks';
export { armFlexibility } from './arm-flexibility';
export type { ArmProperties } from './arm-properties';
export { armProperties, STEEL_MODULUS_PSI } from './arm-properties';
export type { ArmMoment } from './arm-strength';
export { armAllowableMoment, hasThinWall } from './arm-strength';
export type { BracketCheck, BracketCheckId, BracketLoad } from './bracket-check';
export { checkBracketCouple, worstBracketCheck } from './check-bracket';
export type { CorbelInput, CorbelSteel } from './corbel';
export { corbelSteel } from './corbel';
export { BRACKET_REACH_LIMIT_IN, bracketIsDecidable } from './decidable';
export type { FixingMoment } from './fixing-moment';
export { fixingMoment } from './fixing-moment';
export type { KneeBraceForces } from './knee-brace-forces';
export { kneeBraceForces } from './knee-brace-forces';
export type { LateralInput, LateralValue } from './lateral';
export { lateralValue } from './lateral';
export type { StockArm } from './stock-arms';
export { STOCK_ARMS } from './stock-arms';
export type { StudStrength } from './stud-bending';
export { studStrength } from './stud-bending';
export type { WallCouple } from './wall-couple';
export { concreteBearing, factoredLoad, wallCouple, wallOverturning } from './wall-couple';
export {
  adjustedLateral,
  adjustedWithdrawal,
  combinedFastener,
  LAG_END_GRAIN,
  lagWithdrawal,
  nailWithdrawal,
  screwWithdrawal,
} from './withdrawal';
export type { SingleShear, SingleShearInput, YieldMode } from './yield-modes';
export { singleShear } from './yield-modes';
