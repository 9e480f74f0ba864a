export type { Bearing } from './bearings';
export {
  clipPatchToRegion,
  clipSegmentToRegion,
  clipStripToRegion,
  differenceAreaIn2,
  intersectionAreaIn2,
  intersectRegions,
  loopsAreaIn2,
  offsetPolygon,
  subtractRegion,
} from './clipping';
export type { EdgePoint } from './containment';
export {
  edgesOf,
  isPointInPolygon,
  isPointOnSlab,
  nearestOnOutline,
  nearestOutlines,
  signedDistanceIn,
  slabDistanceIn,
  whereInPolygon,
} from './containment';
export type { CutoutClearance, CutoutGap, CutoutOutline, CutoutShape } from './cutouts';
export { circlePoints, cutoutClearance, cutoutGaps, cutoutOutline } from './cutouts';
export type { InsideCorner, OutlineEdge } from './edges';
export { cornerAnglesRad, insideCorners, outlineEdges, pieceDirection } from './edges';
export { convexHull, signedDistanceToHullIn } from './hull';
export type { CornerPair, EdgePair, OutlineProblem } from './outline-problems';
export {
  coincidingCorners,
  crossingEdges,
  isSimplePolygon,
  outlineProblems,
  SAME_CORNER_IN,
} from './outline-problems';
export type { EdgeOverhang, OverhangInput } from './overhangs';
export { measureOverhangs } from './overhangs';
export { patchFits, patchOutline } from './patch';
export type { PatchPlace } from './patch-places';
export type { Direction, Point, Region, Segment } from './point';
export { between, directionAt, directionBetween, distanceIn, leftOf, moved, TOUCH_IN, turned } from './point';
export type { AreaMoments, BoundingBox } from './polygon-measure';
export {
  areaMoments,
  boundingBox,
  counterClockwise,
  polygonAreaIn2,
  polygonPerimeterIn,
  regionAreaIn2,
  signedAreaIn2,
} from './polygon-measure';
export type { Corner, RoundedOutline, Rounding } from './rounded-corners';
export { cornerArea, roundCorners, roundedAreaIn2, roundedPerimeterIn } from './rounded-corners';
export type { RovingInput, RovingPositions } from './roving-positions';
export { rovingPositions, SAME_POSITION_IN } from './roving-positions';
export { firstHitIn, nearestBetween, nearestOnSegment, segmentDistanceIn, segmentMeeting } from './segments';
export { regionsOf } from './sorted-loops';
export type { MeasuredSpan, SpanInput } from './spans';
export { measureSpans } from './spans';
