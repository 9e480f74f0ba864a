/** Cutouts: their outlines, whether they lie wholly inside the piece, and the concrete left between them. */
import { intersectionAreaIn2 } from './clipping';
import { isPointInPolygon, nearestOutlines } from './containment';
import type { OutlineProblem } from './outline-problems';
import type { Point } from './point';
import { directionAt, leftOf, moved, TOUCH_IN } from './point';
import { counterClockwise } from './polygon-measure';
import type { Corner } from './rounded-corners';
import { arcChords, roundCorners } from './rounded-corners';

export type CutoutShape =
  | {
      readonly kind: 'rectangle';
      readonly centre: Point;
      readonly widthIn: number;
      readonly depthIn: number;
      readonly radiusIn: number;
      /** Turn of the width from the x axis, counter-clockwise. */
      readonly angleDeg: number;
    }
  | { readonly kind: 'circle'; readonly centre: Point; readonly diameterIn: number }
  | { readonly kind: 'polygon'; readonly corners: readonly Corner[] };

export type CutoutOutline =
  | { readonly ok: true; readonly points: readonly Point[] }
  | { readonly ok: false; readonly problems: readonly OutlineProblem[] };

/**
 * Outline of a cutout as counter-clockwise chords within `chordToleranceIn` of its arcs; a radius that does not fit
 * or a polygon that crosses itself comes back as problems.
 */
export function cutoutOutline(shape: CutoutShape, chordToleranceIn: number): CutoutOutline {
  switch (shape.kind) {
    case 'circle':
      return { ok: true, points: circlePoints(shape.centre, shape.diameterIn / 2, chordToleranceIn) };
    case 'polygon':
      return outlineOf(shape.corners, chordToleranceIn);
    case 'rectangle': {
      const rounded = outlineOf(rectangleCorners(shape), chordToleranceIn);
      if (rounded.ok) return rounded;
      const largestIn = Math.min(shape.widthIn, shape.depthIn) / 2;
      if (rounded.problems.some(({ code }) => code !== 'radius-does-not-fit')) return rounded;
      const sentence = 'The corner radius does not fit the cutout.';
      const radius = { askedIn: shape.radiusIn, largestIn };
      return { ok: false, problems: [{ code: 'radius-does-not-fit', path: ['radiusIn'], sentence, radius }] };
    }
  }
}

/** A circle as chords within `chordToleranceIn`, a multiple of four of them, counter-clockwise from its right. */
export function circlePoints(centre: Point, radiusIn: number, chordToleranceIn: number): Point[] {
  const chords = 2 * arcChords(radiusIn, Math.PI, chordToleranceIn);
  return Array.from({ length: chords }, (_, k) =>
    moved(centre, directionAt((2 * Math.PI * k) / chords), radiusIn),
  );
}

export interface CutoutClearance {
  /** Wholly inside: concrete is left all round. */
  readonly isInside: boolean;
  /** Least distance from the cutout to the outline, in; 0 where they meet. */
  readonly clearanceIn: number;
  /** Where the least distance is: on the cutout, and the outline's edge. */
  readonly at: Point;
  readonly edge: number;
}

/** Whether a cutout lies wholly inside the outline, and the least concrete left beside it, in. */
export function cutoutClearance(outline: readonly Point[], cutout: readonly Point[]): CutoutClearance {
  const link = nearestOutlines(outline, cutout);
  const isApart = link.distanceIn > TOUCH_IN;
  const isInside = isApart && isPointInPolygon(cutout[0]!, outline);
  return { isInside, clearanceIn: link.distanceIn, at: link.onSecond.at, edge: link.onFirst.edge };
}

export interface CutoutGap {
  readonly first: number;
  readonly second: number;
  /** Concrete left between the two, in; 0 where they overlap or touch. */
  readonly gapIn: number;
  readonly overlapIn2: number;
}

/** For every pair of cutouts the least concrete between them, in, and the area by which they overlap, in2. */
export function cutoutGaps(cutouts: readonly (readonly Point[])[]): CutoutGap[] {
  const gaps: CutoutGap[] = [];
  for (let first = 0; first < cutouts.length; first++) {
    for (let second = first + 1; second < cutouts.length; second++) {
      const one = { outer: cutouts[first]!, holes: [] };
      const other = { outer: cutouts[second]!, holes: [] };
      const isWithin =
        isPointInPolygon(other.outer[0]!, one.outer) || isPointInPolygon(one.outer[0]!, other.outer);
      const gapIn = isWithin ? 0 : nearestOutlines(one.outer, other.outer).distanceIn;
      const overlapIn2 = gapIn > TOUCH_IN ? 0 : intersectionAreaIn2(one, other);
      gaps.push({ first, second, gapIn, overlapIn2 });
    }
  }
  return gaps;
}

function outlineOf(corners: readonly Corner[], chordToleranceIn: number): CutoutOutline {
  const rounded = roundCorners(corners, chordToleranceIn);
  return rounded.ok ? { ok: true, points: counterClockwise(rounded.outline.points) } : rounded;
}

function rectangleCorners(shape: Extract<CutoutShape, { kind: 'rectangle' }>): Corner[] {
  const along = directionAt((shape.angleDeg * Math.PI) / 180);
  const across = leftOf(along);
  const signs = [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1],
  ] as const;
  return signs.map(([w, d]) => ({
    ...moved(moved(shape.centre, along, (w * shape.widthIn) / 2), across, (d * shape.depthIn) / 2),
    radiusIn: shape.radiusIn,
  }));
}
