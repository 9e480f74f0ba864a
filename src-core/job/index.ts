export { crossCheck } from './cross-checks';
export type { RovingPatch } from './defaults';
export { ROVING, rovingOf, STIFFNESS, stiffnessOf, UNTESTED_STRENGTH_PSI } from './defaults';
export type { Job, JobDraft } from './job';
export { JOB_FORMAT, JOB_VERSION, job as jobSchema } from './job';
export type { Migration } from './migrations';
export { MIGRATIONS } from './migrations';
export type { Mix } from './mix';
export type {
  Cutout,
  CutoutShape,
  EdgeProfile,
  Piece,
  PieceEdge,
  PieceUse,
  Reinforcement,
  RovingLoad,
} from './piece';
export type { CutoutInPlan, PieceOutline, PieceRegion } from './piece-region';
export { cutoutInPlan, pieceOutline, pieceRegion } from './piece-region';
export type { CrossCheckCode, JobProblem, ProblemCode, ReadingCode } from './problem';
export { MOST_PROBLEMS } from './problem';
export type { JobReading } from './read';
export { readJob, readJobText } from './read';
export type { Site } from './site';
export type { DepthRange, SteelSet } from './steel-sets';
export { steelRange, steelSets } from './steel-sets';
export type {
  ArmSection,
  BracketFixing,
  BracketSupport,
  CabinetSupport,
  PierSupport,
  StiffnessBounds,
  Support,
  SupportKind,
  WallSupport,
} from './support';
export type { BearingPart, BearingPatch } from './support-plan';
export { bearingPatches } from './support-plan';
export type { FalseworkSection, StockItem, SwapStep } from './work';
