/** Positions of the roving load: everywhere its patch can be set down that may govern. */
import { nearestOnOutline } from './containment';
import { outlineEdges } from './edges';
import { turnedRegion } from './patch';
import type { PatchPlace, PatchSize } from './patch-places';
import { cornerPlaces, edgePlaces, insidePlaces, placed, tapeSizeIn } from './patch-places';
import type { Direction, Point, Region } from './point';
import { distanceIn, TOUCH_IN, turned } from './point';

export interface RovingInput {
  readonly region: Region;
  /** Sides of the patch: the width runs along `angleRad`, the depth across. */
  readonly patchWidthIn: number;
  readonly patchDepthIn: number;
  readonly spacingIn: number;
  readonly angleRad: number;
  /** Places wanted besides, e.g. the middle of a span. */
  readonly extraPoints: readonly Point[];
}

export interface RovingPositions {
  readonly positions: readonly PatchPlace[];
  /** Size of the patch as used; smaller than asked for where that fits nowhere. */
  readonly patchWidthIn: number;
  readonly patchDepthIn: number;
  readonly isShrunk: boolean;
}

/** Positions nearer than this to one already taken are left out, in. Common practice, no source. */
export const SAME_POSITION_IN = 0.5;

const HALVINGS = 24;

/**
 * Centres of a load patch (in) that lies wholly on the slab: tight in every convex corner, at the extra points, tight
 * to every edge and cutout lip at about `spacingIn` and in its middle, and on a grid between; none within half an
 * inch of another. Where an edge runs aslant the patch is moved inward until it fits. In a strip narrower than the
 * patch, and on a slab where it fits nowhere, the patch is shrunk and says so. The order is fixed: corners, extra
 * points, edges, inside.
 */
export function rovingPositions(input: RovingInput): RovingPositions {
  const { patchWidthIn: widthIn, patchDepthIn: depthIn, spacingIn } = input;
  if (!(widthIn > 0 && depthIn > 0 && spacingIn > 0)) {
    throw new Error(`Patch ${widthIn} x ${depthIn} in at ${spacingIn} in is not positive`);
  }
  const region = turnedRegion(input.region, -input.angleRad);
  const extra = input.extraPoints.map((p) => turned(p, -input.angleRad));
  const asked = { widthIn, depthIn };
  const found = placesOf(region, asked, spacingIn, extra);
  const isShrunk = found.every((place) => place.isShrunk);
  const size = isShrunk ? shrunkSize(region, asked, spacingIn) : asked;
  const places = isShrunk ? placesOf(region, size, spacingIn, extra) : found;
  return {
    positions: places.map((place) => ({
      ...place,
      centre: turned(place.centre, input.angleRad),
      isShrunk: place.isShrunk || isShrunk,
    })),
    patchWidthIn: size.widthIn,
    patchDepthIn: size.depthIn,
    isShrunk,
  };
}

function placesOf(region: Region, size: PatchSize, spacingIn: number, extra: readonly Point[]): PatchPlace[] {
  const places = [
    ...cornerPlaces(region, size),
    ...extra.flatMap((point) => placed(region, point, intoSlab(point, region), size, 'given')),
    ...edgePlaces(region, size, spacingIn),
    ...insidePlaces(region, size, spacingIn),
  ];
  const taken: PatchPlace[] = [];
  for (const place of places) {
    const isNew = taken.every(
      (other) => distanceIn(other.centre, place.centre) >= SAME_POSITION_IN - TOUCH_IN,
    );
    if (isNew) taken.push(place);
  }
  return taken;
}

/** Toward the concrete, square to the edge or lip nearest to a point. */
function intoSlab(point: Point, region: Region): Direction {
  const nearest = [region.outer, ...region.holes]
    .map((points, loop) => ({ points, sign: loop === 0 ? 1 : -1, ...nearestOnOutline(point, points) }))
    .reduce((best, next) => (next.distanceIn < best.distanceIn ? next : best));
  const inward = outlineEdges(nearest.points).find(({ edge }) => edge === nearest.edge)?.inward;
  if (inward === undefined) throw new Error(`Edge ${nearest.edge} of the outline has no length`);
  return { x: nearest.sign * inward.x, y: nearest.sign * inward.y };
}

/** The largest patch that fits somewhere: shrunk in both sides alike, then each side grown back as far as it goes. */
function shrunkSize(region: Region, asked: PatchSize, spacingIn: number): PatchSize {
  const grow = (way: (ratio: number) => PatchSize) => largestFitting(region, way, spacingIn);
  const both = grow((ratio) => ({ widthIn: asked.widthIn * ratio, depthIn: asked.depthIn * ratio }));
  const wider = (from: PatchSize) =>
    grow((ratio) => ({ ...from, widthIn: from.widthIn + (asked.widthIn - from.widthIn) * ratio }));
  const deeper = (from: PatchSize) =>
    grow((ratio) => ({ ...from, depthIn: from.depthIn + (asked.depthIn - from.depthIn) * ratio }));
  const first = deeper(wider(both));
  const second = wider(deeper(both));
  const best = areaIn2(second) > areaIn2(first) + TOUCH_IN ? second : first;
  return { widthIn: tapeSizeIn(best.widthIn), depthIn: tapeSizeIn(best.depthIn) };
}

/** The size at the largest share (0 to 1) of the way that fits somewhere. */
function largestFitting(region: Region, way: (ratio: number) => PatchSize, spacingIn: number): PatchSize {
  if (fitsSomewhere(region, way(1), spacingIn)) return way(1);
  let fitting = 0;
  let tooLarge = 1;
  for (let k = 0; k < HALVINGS; k++) {
    const ratio = (fitting + tooLarge) / 2;
    if (fitsSomewhere(region, way(ratio), spacingIn)) fitting = ratio;
    else tooLarge = ratio;
  }
  return way(fitting);
}

function fitsSomewhere(region: Region, size: PatchSize, spacingIn: number): boolean {
  return (
    cornerPlaces(region, size).length > 0 ||
    edgePlaces(region, size, spacingIn).some((place) => !place.isShrunk) ||
    insidePlaces(region, size, spacingIn).length > 0
  );
}

function areaIn2(size: PatchSize): number {
  return size.widthIn * size.depthIn;
}
