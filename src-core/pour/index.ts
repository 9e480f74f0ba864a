export type { BagAmounts, Colour } from './bag-amounts';
export type { BatchTime, CrewSize, Pace } from './batch-clock';
export { batchTimes, paceOf, paceWith } from './batch-clock';
export type { BatchAmounts, BatchTask } from './batches';
export { batchesOf, splitBags } from './batches';
export type { BatchJoint, Casting } from './cold-joints';
export { batchJoints, leastSlackMinutes } from './cold-joints';
export type { DryingBand } from './evaporation';
export {
  dryingBand,
  evaporation,
  evaporationSi,
  fahrenheit,
  KG_PER_M2_PER_LB_FT2,
  KMH_PER_MPH,
} from './evaporation';
export type { FillPath, Turn } from './fill-path';
export { fillPath, fillPlace } from './fill-path';
export type { PourFinding, PourFindingId, PourLevel } from './finding';
export type { FinishKind, FinishStep } from './finish';
export type { LeastCrew } from './least-crew';
export { leastCrew } from './least-crew';
export type { BucketLift } from './lifting';
export {
  bagsFor,
  bucketVolume,
  midwayWater,
  neededVolume,
  pigmentForBag,
  waterCementRatio,
  waterGallons,
} from './mix-formulas';
export type { PieceVolume, VolumePart } from './piece-volume';
export { pieceVolume } from './piece-volume';
export type { PourBags, PouredPiece, PourVolumes } from './pour-amounts';
export type { PourClock } from './pour-clock';
export { pourOrder } from './pour-order';
export type { Batch, MixTotal, Pour, PourPlan } from './pour-plan';
export { POUR_CAUTIONS, pourPlan } from './pour-plan';
export type { PieceScreed, Ride, ScreedPlug, ScreedRail, ScreedRun } from './screed';
export { pieceScreed } from './screed';
export { finishTime, settingRate, workingTime } from './setting-time';
export { tickIdOf } from './tick-id';
export type { Bucket } from './timeline';
export {
  cubicYards,
  plainVolume,
  shapedVolume,
  weightOf,
} from './volume-formulas';
export type { PourWeather } from './weather';
export { pourWeather } from './weather';
