export type { AnalyseResult, CaseField } from './analyse-piece';
export { analysePiece, caseField } from './analyse-piece';
export { stands } from './bearings';
export { airOnDayC, concreteState, FINISHED_AGE_DAYS, strengthOf } from './concrete-state';
export { meshSizeFor } from './meshed-piece';
export type { AnalyseOptions, PreparedPiece, PrepareResult, QuickLook } from './prepare-piece';
export { preparePiece } from './prepare-piece';
export type { Printers } from './print';
export { printersOf, printPlace } from './print';
export type { Lift, LiftedPart, MomentQuestion, ServiceMoment } from './service-moments';
export { serviceMoments } from './service-moments';
export type { SteelLayer } from './steel';
export { crackedInertiaIn4PerIn, layerAcross, steelLayers, tensionLayers } from './steel';
export type { OpenMoment, SupportMoment, SupportSets, SupportSetsResult } from './support-sets';
export { analyseMoment, layOutSupports, openMoment } from './support-sets';
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
