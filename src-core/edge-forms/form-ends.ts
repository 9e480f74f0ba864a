/** How the end of a strip is cut at a sharp corner, from the lines that its faces run into. */
import { formula } from '../workings';
import type { Side } from './sides';
import type { FormEnd } from './types';
import { isStraight } from './walk';

/**
 * How far a strip's outer face runs past the slab's corner, in. w: thickness of the strip; v: distance from the slab's next
 * edge out to the line that the strip runs into (the next strip's outer face, a wall, or 0 for the next strip's slab
 * face), in; t: turn of the slab's edge, rad, negative at an inside corner, not 0. With v = w it is w tan(t / 2), the mitre
 * at half the turn. Plane geometry.
 */
export const outerReach = formula<{ w: number; v: number; t: number }>({
  symbol: 'eo',
  label: "outer face past the slab's corner",
  formula: '(v - w * cos(t)) / sin(t)',
  units: { w: 'in', v: 'in', t: 'rad' },
  unit: 'in',
  source: 'plane geometry: meeting of two lines set off from the edges',
  compute: ({ w, v, t }) => (v - w * Math.cos(t)) / Math.sin(t),
});

/** How far a strip's slab face runs past the slab's corner to a wall, in. g: gap to the wall, in; t: turn, rad, not 0. Plane geometry. */
export const slabFaceReach = formula<{ g: number; t: number }>({
  symbol: 'es',
  label: "slab face past the slab's corner to the wall",
  formula: 'g / sin(t)',
  units: { g: 'in', t: 'rad' },
  unit: 'in',
  source: 'plane geometry: meeting of an edge with a line set off from the next edge',
  compute: ({ g, t }) => g / Math.sin(t),
});

/** Length of a straight strip from long point to long point, in. L: slab's edge; a, b: how far the longer face runs past it at each end, in. */
export const longLength = formula<{ L: number; a: number; b: number }>({
  symbol: 'Ll',
  label: 'strip from long point to long point',
  formula: 'L + a + b',
  units: { L: 'in', a: 'in', b: 'in' },
  unit: 'in',
  source: 'plane geometry',
  compute: ({ L, a, b }) => L + a + b,
});

/** A square end. */
export function squareEnd(kind: FormEnd['kind']): FormEnd {
  return { kind, cutRad: 0, slabFacePastIn: 0, outerFacePastIn: 0 };
}

/** The end of `own` at a sharp corner of the slab towards `next`. It is the same seen from either end of a strip. */
export function endAtCorner(own: Side, next: Side, turnRad: number): FormEnd {
  if (isStraight(turnRad)) return squareEnd('in-line');
  const w = own.faceIn;
  if (own.gapIn !== null) {
    const v = next.gapIn ?? 0;
    return endOf(v > 0 ? 'mitre' : 'to-form', own, 0, outerReach.compute({ w, v, t: turnRad }));
  }
  if (next.gapIn !== null) {
    const past = slabFaceReach.compute({ g: next.gapIn, t: turnRad });
    return endOf('to-wall', own, past, outerReach.compute({ w, v: next.gapIn, t: turnRad }));
  }
  return endOf('mitre', own, 0, outerReach.compute({ w, v: next.faceIn, t: turnRad }));
}

/** A cut that leans less than this over its strip is square: rounding, in. */
const SQUARE_IN = 1e-9;

function endOf(kind: FormEnd['kind'], own: Side, slabFacePastIn: number, outerFacePastIn: number): FormEnd {
  const leanIn = outerFacePastIn - slabFacePastIn;
  const cutRad = Math.abs(leanIn) < SQUARE_IN ? 0 : Math.atan2(leanIn, own.faceIn);
  return { kind, cutRad, slabFacePastIn, outerFacePastIn };
}

/** How far the longer face of an end runs past the slab's corner, in. */
export function longPastIn({ slabFacePastIn, outerFacePastIn }: FormEnd): number {
  return Math.max(slabFacePastIn, outerFacePastIn);
}
