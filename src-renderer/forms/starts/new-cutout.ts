/** Openings that a worktop usually has, in the place with most room, no larger than the slab bears. */
import type { Cutout, CutoutShape, Piece } from '../../../src-core/job';
import type { Point, Region } from '../../../src-core/outline';
import { patchFits } from '../../../src-core/outline';
import { roomiest, slabOf } from './room-on-slab';

export type CutoutStart = 'dropped-in' | 'under-rim' | 'cast-over' | 'hob' | 'tap' | 'drain' | 'other';

/** Usual sizes; common practice, no source. A person sets the maker's own. */
const SINK_IN = { widthIn: 26, depthIn: 14, radiusIn: 2 };
const HOB_IN = { widthIn: 22, depthIn: 19, radiusIn: 0.5 };
const TAP_IN = 1.375;
const DRAIN_IN = 3.5;
const OTHER_IN = { widthIn: 6, depthIn: 6, radiusIn: 0.5 };
/** Concrete left beside a new opening, where the slab has it. */
const RIB_IN = 2;
/** Share of its usual size by which an opening that does not fit is made smaller, again and again, and the smallest tried. */
const SHARE_STEP = 0.05;
const LEAST_SHARE = 0.1;
const EMPTY_SINK_LB = 20;
const HOB_LB = 30;

/** What a sink of each mounting begins with. An under-rim sink may hang from its cabinet; the others load the slab. */
export function newSink(mounting: 'dropped-in' | 'under-rim' | 'cast-over'): NonNullable<Cutout['sink']> {
  return {
    mounting,
    rimIn: 0.75,
    bowlDepthIn: 8,
    emptyWeightLb: EMPTY_SINK_LB,
    contentsLb: null,
    carriedBySlab: mounting !== 'under-rim',
  };
}

/** A new opening. */
export function newCutout(start: CutoutStart, piece: Piece, id: string): Cutout {
  const slab = slabOf(piece);
  const { at } = roomiest(slab);
  const plain = { id, sink: null, applianceLb: 0 };
  switch (start) {
    case 'dropped-in':
    case 'under-rim':
    case 'cast-over':
      return { ...plain, purpose: 'sink', shape: rectangle(at, SINK_IN, slab), sink: newSink(start) };
    case 'hob':
      return { ...plain, purpose: 'hob', shape: rectangle(at, HOB_IN, slab), applianceLb: HOB_LB };
    case 'tap':
      return { ...plain, purpose: 'tap', shape: circle(at, TAP_IN, slab) };
    case 'drain':
      return { ...plain, purpose: 'drain', shape: circle(at, DRAIN_IN, slab) };
    case 'other':
      return { ...plain, purpose: 'other', shape: rectangle(at, OTHER_IN, slab) };
  }
}

/** The same opening in another shape: about the same middle and as wide and as deep. */
export function changeShape(old: CutoutShape, kind: CutoutShape['kind']): CutoutShape {
  if (old.kind === kind) return old;
  const { centre, widthIn, depthIn } = extent(old);
  switch (kind) {
    case 'rectangle':
      return { kind, centre, widthIn, depthIn, radiusIn: 0, angleDeg: 0 };
    case 'circle':
      return { kind, centre, diameterIn: Math.min(widthIn, depthIn) };
    case 'polygon': {
      const [w, d] = [widthIn / 2, depthIn / 2];
      const corner = (x: number, y: number) => ({ xIn: centre.xIn + x, yIn: centre.yIn + y, radiusIn: 0 });
      return { kind, corners: [corner(-w, -d), corner(w, -d), corner(w, d), corner(-w, d)] };
    }
  }
}

function extent(shape: CutoutShape): { centre: Point; widthIn: number; depthIn: number } {
  switch (shape.kind) {
    case 'rectangle':
      return shape;
    case 'circle':
      return { centre: shape.centre, widthIn: shape.diameterIn, depthIn: shape.diameterIn };
    case 'polygon': {
      const xs = shape.corners.map(({ xIn }) => xIn);
      const ys = shape.corners.map(({ yIn }) => yIn);
      const [left, right, front, back] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
      const centre = { xIn: (left + right) / 2, yIn: (front + back) / 2 };
      return { centre, widthIn: right - left, depthIn: back - front };
    }
  }
}

/** As large as usual where it fits with its rib; else smaller by steps. The smallest is offered even where it does not fit. */
function rectangle(
  centre: Point,
  usual: { readonly widthIn: number; readonly depthIn: number; readonly radiusIn: number },
  slab: Region,
): CutoutShape {
  const share = fittingShare(centre, usual.widthIn, usual.depthIn, slab);
  return {
    kind: 'rectangle',
    centre,
    widthIn: eighths(usual.widthIn * share),
    depthIn: eighths(usual.depthIn * share),
    radiusIn: Math.floor(usual.radiusIn * share * 8) / 8,
    angleDeg: 0,
  };
}

function circle(centre: Point, usualIn: number, slab: Region): CutoutShape {
  const share = fittingShare(centre, usualIn, usualIn, slab);
  return { kind: 'circle', centre, diameterIn: eighths(usualIn * share) };
}

function fittingShare(centre: Point, widthIn: number, depthIn: number, slab: Region): number {
  for (let share = 1; share > LEAST_SHARE; share -= SHARE_STEP) {
    if (patchFits(slab, centre, widthIn * share + 2 * RIB_IN, depthIn * share + 2 * RIB_IN, 0)) return share;
  }
  return LEAST_SHARE;
}

/** Down to the eighth, as it would be marked, and never less than a quarter. */
function eighths(lengthIn: number): number {
  return Math.max(0.25, Math.floor(lengthIn * 8) / 8);
}
