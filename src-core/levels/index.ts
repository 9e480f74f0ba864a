export { fallRatio, fallWords } from './fall-words';
export type { FloorPlace } from './floor-at';
export { floorAt, floorRange } from './floor-at';
export type { FloorDatum, FloorPoint, LevelReadings } from './floor-heights';
export { floorHeights } from './floor-heights';
export type {
  FloorRemark,
  FloorRemarkCode,
  FloorSlope,
  FloorSurface,
  LevelFloor,
  LineFloor,
  TriangleFloor,
} from './floor-surface';
export { floorSurface, SAME_PLACE_IN } from './floor-surface';
export type { Leg, LegInput, LegWarning, LegWarningCode, ShimRange } from './leg';
export { legAt, legLength, shimThickness, WEDGE_SHIMS } from './leg';
export type {
  BookedPoint,
  BookingProblem,
  BookingProblems,
  ReducedLevels,
  ReducedPoint,
} from './rise-and-fall';
export { reduceLevels, rise } from './rise-and-fall';
