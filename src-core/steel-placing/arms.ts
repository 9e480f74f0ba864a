/** A slab with inside corners cut into arms that mesh can be laid in, each reaching over the cut into the next. */
import type { Piece } from '../job';
import type { Point, Region } from '../outline';
import { insideCorners, offsetPolygon } from '../outline';
import type { Axis, Box, Frame, Stretch } from './frame';
import { boxOf, sharedIn, sizeIn, withinBox } from './frame';
import { INSIDE_TURN_RAD, THROUGH_MOST_IN } from './practice';

/** A part of the slab that is covered by one field of strips, in the layer's frame. */
export interface Arm {
  readonly shape: Region;
  readonly box: Box;
  /** Axis along which it was cut off, and along which it overlaps its neighbours; null for the whole. */
  readonly cutAlong: Axis | null;
}

/** How far an arm may run on past the cut: the lap at least, and right through where one sheet reaches. */
interface Reach {
  readonly lapIn: Readonly<Record<Axis, number>>;
  readonly mostIn: number;
}

/** Cuts nearer to each other than this are one, in. */
const SAME_CUT_IN = 0.5;

/** Inside corners of a piece as drawn, moved in by the cover, in a layer's frame. */
export function cornersInside(piece: Piece, coverIn: number, frame: Frame): Point[] {
  return offsetPolygon(piece.corners, -coverIn, 'mitre').flatMap((loop) =>
    insideCorners(loop, INSIDE_TURN_RAD).map(({ at }) => frame.into(at)),
  );
}

/**
 * Ways to divide a part of the slab: whole, or cut square to either axis at its inside corners. Of two arms at a cut
 * the narrower runs on into the other, through it to its far edge where one sheet reaches, else by the lap: so mesh
 * passes every inside corner in one length.
 */
export function divisions(
  region: Region,
  corners: readonly Point[],
  reach: Reach,
): readonly (readonly Arm[])[] {
  const box = boxOf(region.outer);
  const whole: Arm[] = [{ shape: region, box, cutAlong: null }];
  const cut = (axis: Axis): Arm[] => armsCutAcross(region, axis, cutsAlong(axis, box, corners), reach);
  return corners.length === 0 ? [whole] : [whole, cut('v'), cut('u')];
}

function cutsAlong(axis: Axis, box: Box, corners: readonly Point[]): number[] {
  const cuts: number[] = [];
  const all = corners.map(({ xIn, yIn }) => (axis === 'u' ? xIn : yIn)).sort((a, b) => a - b);
  for (const atIn of all) {
    const isApart = cuts.length === 0 || atIn - cuts.at(-1)! > SAME_CUT_IN;
    const isInside = atIn > box[axis].fromIn + SAME_CUT_IN && atIn < box[axis].toIn - SAME_CUT_IN;
    if (isApart && isInside) cuts.push(atIn);
  }
  return cuts;
}

function armsCutAcross(region: Region, axis: Axis, cuts: readonly number[], reach: Reach): Arm[] {
  const other: Axis = axis === 'u' ? 'v' : 'u';
  const box = boxOf(region.outer);
  const limits = [box[axis].fromIn, ...cuts, box[axis].toIn];
  const bands = limits.slice(1).map((toIn, k) => {
    const between = { fromIn: limits[k]!, toIn };
    // Openings do not divide: a sink may part a band, but the mesh round it is still cut from one strip.
    return withinBox({ outer: region.outer, holes: [] }, withAxis(box, axis, between)).map((part) =>
      boxOf(part.outer),
    );
  });
  return bands.flatMap((band, k) =>
    band.flatMap((own) => {
      const isBelow = (next: Box) => joins(own, next, other) && sizeIn(own[other]) <= sizeIn(next[other]);
      const isBeside = (next: Box) => joins(own, next, other) && sizeIn(own[other]) < sizeIn(next[other]);
      // Of two arms alike the first runs on, so that just one does.
      const ahead = (bands[k + 1] ?? []).find(isBelow);
      const behind = (bands[k - 1] ?? []).find(isBeside);
      const stretch = runOn(own[axis], { ahead: ahead?.[axis], behind: behind?.[axis] }, reach, axis);
      const reached = withAxis(own, axis, stretch);
      return withinBox(region, reached).map((shape) => ({ shape, box: boxOf(shape.outer), cutAlong: axis }));
    }),
  );
}

function joins(own: Box, next: Box, other: Axis): boolean {
  return sharedIn(own[other], next[other]) > SAME_CUT_IN;
}

/** A band's stretch with what it takes of its neighbours. */
function runOn(
  own: Stretch,
  { ahead, behind }: { readonly ahead: Stretch | undefined; readonly behind: Stretch | undefined },
  { lapIn, mostIn }: Reach,
  axis: Axis,
): Stretch {
  const through = [ahead, behind].reduce(
    (sum, next) => sum + (next === undefined ? 0 : sizeIn(next)),
    sizeIn(own),
  );
  const into = (next: Stretch | undefined): number => {
    if (next === undefined) return 0;
    const goesThrough = through <= mostIn && sizeIn(next) <= THROUGH_MOST_IN;
    return goesThrough ? sizeIn(next) : Math.min(sizeIn(next), lapIn[axis]);
  };
  return { fromIn: own.fromIn - into(behind), toIn: own.toIn + into(ahead) };
}

function withAxis(box: Box, axis: Axis, stretch: Stretch): Box {
  return axis === 'u' ? { u: stretch, v: box.v } : { u: box.u, v: stretch };
}
