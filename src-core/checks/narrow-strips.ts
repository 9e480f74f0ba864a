/** The narrow strips of concrete beside cutouts, and how the plate bends in them. */
import type { PieceAnalysis } from '../analysis';
import type { Point } from '../outline';
import { turned } from '../outline';
import { slabAheadIn } from './slab-ahead';

export type StripSide = 'front' | 'back' | 'left' | 'right';

export interface NarrowStrip {
  readonly opening: number;
  readonly side: StripSide;
  readonly widthIn: number;
  readonly lengthIn: number;
  /** Greatest mean over the strip's width of the worst moments there, magnitude, and where along it. */
  readonly momentLbfInPerIn: number;
  readonly at: Point;
}

/** Extent in the piece's own directions, in. */
interface Box {
  readonly u0: number;
  readonly u1: number;
  readonly v0: number;
  readonly v1: number;
}

const QUARTER_TURN_RAD = Math.PI / 2;
/** Places along a cutout's side at which the concrete beside it is measured. */
const SAMPLES = 9;
/** A node this near to a strip belongs to it, in. */
const BESIDE_IN = 1e-6;
/** Length of the slices over which the moment is averaged, in mesh sizes. */
const SLICE_SIZES = 1.5;

/** Strips narrower than `narrowIn` and longer than wide, between a cutout and the next edge or cutout. */
export function narrowStrips(analysis: PieceAnalysis, narrowIn: number): NarrowStrip[] {
  return analysis.shape.holes.flatMap((hole, opening) => {
    const box = boxOf(hole, analysis.shape.axisRad);
    return (['front', 'back', 'left', 'right'] as const).flatMap((side) => {
      const lengthIn = side === 'front' || side === 'back' ? box.u1 - box.u0 : box.v1 - box.v0;
      const widthIn = leastWidthIn(analysis, box, side);
      if (widthIn <= 0 || widthIn >= narrowIn || lengthIn <= widthIn) return [];
      const bending = bendingIn(analysis, stripBox(box, side, widthIn), side);
      return [{ opening, side, widthIn, lengthIn, ...bending }];
    });
  });
}

function boxOf(loop: readonly Point[], axisRad: number): Box {
  const local = loop.map((p) => turned(p, -axisRad));
  const u = local.map(({ xIn }) => xIn);
  const v = local.map(({ yIn }) => yIn);
  return { u0: Math.min(...u), u1: Math.max(...u), v0: Math.min(...v), v1: Math.max(...v) };
}

function leastWidthIn(analysis: PieceAnalysis, box: Box, side: StripSide): number {
  const { axisRad } = analysis.shape;
  const turns = { right: 0, back: 1, left: 2, front: 3 }[side];
  const wayRad = axisRad + turns * QUARTER_TURN_RAD;
  const places = Array.from({ length: SAMPLES }, (_, i) => sidePlace(box, side, i / (SAMPLES - 1)));
  return Math.min(...places.map((place) => slabAheadIn(analysis, turned(place, axisRad), wayRad)));
}

/** A share of the way along one side of the cutout's box. */
function sidePlace(box: Box, side: StripSide, share: number): Point {
  const u = box.u0 + share * (box.u1 - box.u0);
  const v = box.v0 + share * (box.v1 - box.v0);
  switch (side) {
    case 'front':
      return { xIn: u, yIn: box.v0 };
    case 'back':
      return { xIn: u, yIn: box.v1 };
    case 'left':
      return { xIn: box.u0, yIn: v };
    case 'right':
      return { xIn: box.u1, yIn: v };
  }
}

function stripBox(box: Box, side: StripSide, widthIn: number): Box {
  switch (side) {
    case 'front':
      return { ...box, v0: box.v0 - widthIn, v1: box.v0 };
    case 'back':
      return { ...box, v0: box.v1, v1: box.v1 + widthIn };
    case 'left':
      return { ...box, u0: box.u0 - widthIn, u1: box.u0 };
    case 'right':
      return { ...box, u0: box.u1, u1: box.u1 + widthIn };
  }
}

/**
 * Greatest mean over slices of the strip, of the worst moment at each node over all cases and both stiffness bounds; no more
 * than the moment that governs the piece, which is averaged over a lesser width case by case.
 */
function bendingIn(
  analysis: PieceAnalysis,
  box: Box,
  side: StripSide,
): { readonly momentLbfInPerIn: number; readonly at: Point } {
  const { mesh, elastic, shape } = analysis;
  const runsAlongU = side === 'front' || side === 'back';
  const slices = new Map<number, { sum: number; count: number }>();
  const sliceIn = SLICE_SIZES * mesh.sizeIn;
  const envelopes = [elastic.low, elastic.high].flatMap((s) => [s.saggingEnvelope, s.hoggingEnvelope]);
  for (let node = 0; node < mesh.xIn.length; node++) {
    const p = turned({ xIn: mesh.xIn[node]!, yIn: mesh.yIn[node]! }, -shape.axisRad);
    if (p.xIn < box.u0 - BESIDE_IN || p.xIn > box.u1 + BESIDE_IN) continue;
    if (p.yIn < box.v0 - BESIDE_IN || p.yIn > box.v1 + BESIDE_IN) continue;
    const along = Math.floor((runsAlongU ? p.xIn - box.u0 : p.yIn - box.v0) / sliceIn);
    const slice = slices.get(along) ?? { sum: 0, count: 0 };
    slice.sum += Math.max(...envelopes.map((envelope) => envelope[node]!));
    slice.count++;
    slices.set(along, slice);
  }
  let worst = { moment: 0, along: 0 };
  for (const [along, { sum, count }] of slices) {
    if (sum / count > worst.moment) worst = { moment: sum / count, along };
  }
  const alongIn = (worst.along + 0.5) * sliceIn;
  const middle = runsAlongU
    ? { xIn: Math.min(box.u1, box.u0 + alongIn), yIn: (box.v0 + box.v1) / 2 }
    : { xIn: (box.u0 + box.u1) / 2, yIn: Math.min(box.v1, box.v0 + alongIn) };
  return {
    momentLbfInPerIn: Math.min(worst.moment, governingMoment(analysis)),
    at: turned(middle, shape.axisRad),
  };
}

function governingMoment({ elastic }: PieceAnalysis): number {
  return Math.max(
    ...[elastic.low, elastic.high].flatMap(({ sagging, hogging }) => [
      sagging.momentLbfInPerIn,
      hogging.momentLbfInPerIn,
    ]),
  );
}
