export {
  adjustedBearing,
  adjustedBending,
  adjustedModulus,
  adjustedModulusMin,
  adjustedShear,
  crushingStress,
} from './adjusted-strength';
export type { Repetition } from './adjustment-factors';
export {
  bendingSizeFactor,
  compressionSizeFactor,
  durationFactor,
  flatUseFactor,
  repetitiveFactor,
  wetBearingFactor,
  wetBendingFactor,
  wetCompressionFactor,
  wetModulusFactor,
  wetShearFactor,
} from './adjustment-factors';
export type { AllowableSpan, AllowableSpanInput, SpanLimit, SpanLimitId } from './allowable-span';
export { allowableSpan, bendingSpan, ratioSpan, sagSpan, shearSpan } from './allowable-span';
export type {
  BeamInput,
  BeamPart,
  BeamPartKind,
  BeamSpan,
  BeamSupport,
  PartLoads,
  PointLoad,
  SolvedBeam,
  UniformLoad,
} from './beam';
export type { PartState } from './beam-part';
export type { BeamExtremes, BeamState, MomentExtreme, PartDeflection } from './beam-state';
export { beamAt, beamExtremes, beamStations } from './beam-state';
export type { BearingCapacity, BearingInput } from './bearing';
export { bearingAreaFactor, bearingCapacity, bearingLoad } from './bearing';
export type { BeamCheck, BeamCheckId, BeamVerdict } from './check-beam';
export { bendingShare, checkBeam, sagShare, shearShare } from './check-beam';
export type { ColumnCapacity, ColumnInput } from './column';
export {
  bucklingStress,
  CONSTRUCTION_SLENDERNESS_LIMIT,
  columnCapacity,
  columnLoad,
  columnStability,
  SLENDERNESS_LIMIT,
  slenderness,
} from './column';
export { designShearLbf } from './design-shear';
export {
  floorAreaNeeded,
  formDesignLoad,
  formWeight,
  lateralLoad,
  stripLoad,
  wetSlabLoad,
} from './form-load';
export type { LateralSupport, LumberSize, LumberStock, LumberUse, TimberSection } from './lumber';
export {
  BOARDS,
  LUMBER,
  lateralSupport,
  lumberSection,
  sectionArea,
  sectionInertia,
  sectionModulus,
} from './lumber';
export {
  bothEndsMidDeflection,
  bothEndsSpanMoment,
  bothEndsTipDeflection,
  endMoment,
  oneEndFarReaction,
  oneEndNearReaction,
  oneEndSpanMoment,
  oneEndTipDeflection,
} from './overhanging-ends';
export type { PanelId, PanelInput, PanelStock, PanelValues } from './panel';
export {
  adjustedPanelBending,
  adjustedPanelShear,
  adjustedPanelStiffness,
  PANELS,
  panelValues,
  panelWidthFactor,
  wetPanelStiffnessFactor,
  wetPanelStrengthFactor,
} from './panel';
export type {
  PanelCapacity,
  PanelCapacityInput,
  PanelCoefficients,
  PanelLoadLimit,
  PanelSpanInput,
} from './panel-span';
export {
  allowablePanelSpan,
  PANEL_SPANS,
  panelBendingLoad,
  panelBendingSpan,
  panelCapacity,
  panelDeflection,
  panelRatioLoad,
  panelRatioSpan,
  panelSagLoad,
  panelSagSpan,
  panelShearLoad,
  panelShearSpan,
} from './panel-span';
export type { SagLimits } from './sag-limit';
export { spanSagLimit, tipSagLimit } from './sag-limit';
export { solveBeam } from './solve-beam';
export type { ReferenceValues, Species } from './species';
export { SPECIES } from './species';
export type { MemberInput, Service, TimberMember } from './timber-member';
export { bendingStiffness, momentCapacity, shearCapacity, timberMember } from './timber-member';
export type { SpanCoefficients, SpanCount } from './uniform-spans';
export {
  spanCountOf,
  UNIFORM_SPANS,
  uniformDeflection,
  uniformMoment,
  uniformReaction,
  uniformShear,
  uniformShearAtDepth,
} from './uniform-spans';
