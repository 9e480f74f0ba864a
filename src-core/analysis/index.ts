export type { AnalyseResult, CaseField } from './analyse-piece';
export { analysePiece, caseField } from './analyse-piece';
export { stands } from './bearings';
export { FINISHED_AGE_DAYS } from './concrete-state';
export type { AnalyseOptions, PreparedPiece, PrepareResult } from './prepare-piece';
export { meshSizeFor, preparePiece } from './prepare-piece';
export type { Printers } from './print';
export { printersOf, printPlace } from './print';
export type { SteelLayer } from './steel';
export { crackedInertiaIn4PerIn, layerAcross, steelLayers, tensionLayers } from './steel';
export type {
  Bearing,
  BearingReaction,
  Bound,
  BoundState,
  CannotAnalyse,
  ConcreteState,
  Contact,
  CrackedState,
  Deflection,
  EdgeOverhang,
  Face,
  FreeSpan,
  GoverningMoment,
  GoverningShear,
  LiveLoad,
  LoadCase,
  PieceAnalysis,
  PieceShape,
  PieceWeight,
  Stability,
  SteelDemand,
} from './types';
export { carriedWeights, sinkWeightLb } from './weight';
