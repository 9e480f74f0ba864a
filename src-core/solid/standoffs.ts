/** Chairs under the steel, on a staggered grid that leaves no part of the slab without one near. */
import type { Direction, Point, Region } from '../outline';
import {
  boundingBox,
  distanceIn,
  leftOf,
  moved,
  nearestOnOutline,
  pieceDirection,
  slabDistanceIn,
} from '../outline';

/** Rows of a staggered grid lie this share of the spacing apart: the height of an equilateral triangle. */
const ROW_RATIO = Math.sqrt(3) / 2;
/** A standoff keeps this clear of edges and openings where there is room, or a quarter of a close spacing. */
const CLEAR_IN = 1;
const CLEAR_RATIO = 1 / 4;
/** The slab is looked over on a grid of this share of the spacing. */
const SAMPLE_RATIO = 1 / 8;
/** Where there is no room to keep clear, a standoff stands at least this far inside the edge if it can, in. */
const INSIDE_IN = 1 / 16;

/**
 * Places of standoffs in plan, in: none in an opening, and no point of the slab farther than `spacingIn` from one. They
 * stand on a staggered grid along the piece's longest edge; where that leaves a point of the slab too far off, along an
 * edge or in a corner, one more is set.
 */
export function standoffPlaces(region: Region, spacingIn: number): readonly Point[] {
  if (!(spacingIn > 0)) throw new Error(`Spacing ${spacingIn} in is not positive`);
  const clearIn = Math.min(CLEAR_IN, CLEAR_RATIO * spacingIn);
  const along = pieceDirection(region.outer);
  const grid = latticeOver(region, along, spacingIn, ROW_RATIO * spacingIn, spacingIn / 2);
  const places = grid.filter((point) => slabDistanceIn(point, region) >= clearIn);
  return [...places, ...morePlaces(region, places, spacingIn, clearIn)];
}

/** A lattice centred over the region: rows along a direction, every second one shifted. */
function latticeOver(
  region: Region,
  along: Direction,
  pitchIn: number,
  rowIn: number,
  shiftIn: number,
): Point[] {
  const across = leftOf(along);
  const turned = region.outer.map(({ xIn, yIn }) => ({
    xIn: xIn * along.x + yIn * along.y,
    yIn: xIn * across.x + yIn * across.y,
  }));
  const { minXIn, maxXIn, minYIn, maxYIn } = boundingBox(turned);
  const rows = Math.max(1, Math.ceil((maxYIn - minYIn) / rowIn - 1e-9));
  const columns = Math.max(1, Math.ceil((maxXIn - minXIn) / pitchIn - 1e-9));
  const lowIn = (minYIn + maxYIn - (rows - 1) * rowIn) / 2;
  const leftIn = (minXIn + maxXIn - (columns - 1) * pitchIn - shiftIn) / 2;
  const origin = { xIn: 0, yIn: 0 };
  return Array.from({ length: rows }, (_, row) => {
    const on = moved(origin, across, lowIn + row * rowIn);
    const fromIn = leftIn + (row % 2) * shiftIn;
    return Array.from({ length: columns }, (_, k) => moved(on, along, fromIn + k * pitchIn));
  }).flat();
}

/**
 * Further places, so that every point of the slab has one within the spacing. The slab is covered by squares; a square
 * that touches it is safe where its middle lies nearer to a place than the spacing less half its diagonal, whether the
 * middle itself is on the slab or not. While one is not, the spot near it that makes most squares safe is taken.
 */
function morePlaces(
  region: Region,
  places: readonly Point[],
  spacingIn: number,
  clearIn: number,
): readonly Point[] {
  const stepIn = SAMPLE_RATIO * spacingIn;
  const halfIn = stepIn * Math.SQRT1_2;
  const reachIn = spacingIn - halfIn;
  const squares = latticeOver(region, { x: 1, y: 0 }, stepIn, stepIn, 0).map((at) => ({
    at,
    insideIn: slabDistanceIn(at, region),
  }));
  const spots = squares.filter(({ insideIn }) => insideIn >= clearIn).map(({ at }) => at);
  let bare = squares
    .filter(({ insideIn }) => insideIn >= -halfIn)
    .map(({ at }) => at)
    .filter((at) => places.every((place) => distanceIn(at, place) > reachIn));
  const more: Point[] = [];
  while (bare.length > 0) {
    const target = bare[0]!;
    let best = standingNear(target, region);
    let most = 0;
    for (const spot of spots) {
      if (distanceIn(spot, target) > reachIn) continue;
      const safe = bare.filter((at) => distanceIn(at, spot) <= reachIn).length;
      if (safe <= most) continue;
      best = spot;
      most = safe;
    }
    more.push(best);
    bare = bare.filter((at) => at !== target && distanceIn(at, best) > reachIn);
  }
  return more;
}

/** The point itself where it is well on the slab, else the nearest point of the slab, a little inside where it can be. */
function standingNear(at: Point, region: Region): Point {
  if (slabDistanceIn(at, region) >= INSIDE_IN) return at;
  const loops = [region.outer, ...region.holes];
  const nearest = loops
    .map((loop) => nearestOnOutline(at, loop))
    .reduce((best, next) => (next.distanceIn < best.distanceIn ? next : best)).at;
  const nudges = Array.from({ length: 8 }, (_, k) =>
    moved(nearest, { x: Math.cos((k * Math.PI) / 4), y: Math.sin((k * Math.PI) / 4) }, 2 * INSIDE_IN),
  );
  return nudges.find((point) => slabDistanceIn(point, region) >= INSIDE_IN) ?? nearest;
}
