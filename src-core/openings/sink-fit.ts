/** The bowl and rim that go with the opening drawn, by how the sink is mounted. */
import { isCastIn, shapeSize } from '../edge-forms';
import type { Cutout } from '../job';
import type { Point } from '../outline';
import { offsetPolygon, polygonAreaIn2 } from '../outline';
import type { Line } from '../workings';
import { formula } from '../workings';
import type { OpeningPractice, SinkMounting } from './practice';

/**
 * Clearance between the side of a dropped-in bowl and the concrete, in: what is aimed at, less where a narrow rim needs
 * its bearing, never below the least. c0: aimed at; c1: least; r: rim; b1: least bearing, in. Common practice, no source.
 */
export const bowlClearance = formula<Readonly<Record<'c0' | 'c1' | 'r' | 'b1', number>>>({
  symbol: 's',
  label: 'clearance between bowl and concrete',
  formula: 'max(c1, min(c0, r - b1))',
  units: { c0: 'in', c1: 'in', r: 'in', b1: 'in' },
  unit: 'in',
  source: 'common practice, no source',
  compute: ({ c0, c1, r, b1 }) => Math.max(c1, Math.min(c0, r - b1)),
});

/**
 * Size of the bowl across an opening, in. O: opening in the concrete, in; s: from the bowl's side out to the concrete, in,
 * below 0 where the slab reaches over the bowl. Arithmetic.
 */
export const bowlSize = formula<Readonly<Record<'O' | 's', number>>>({
  symbol: 'B',
  label: 'size of the bowl',
  formula: 'O - 2 * s',
  units: { O: 'in', s: 'in' },
  unit: 'in',
  source: 'arithmetic',
  compute: ({ O, s }) => O - 2 * s,
});

/** Size across the rim, in. B: bowl, in; r: rim on each side of it, in. Arithmetic. */
export const rimSize = formula<Readonly<Record<'B' | 'r', number>>>({
  symbol: 'F',
  label: 'size across the rim',
  formula: 'B + 2 * r',
  units: { B: 'in', r: 'in' },
  unit: 'in',
  source: 'arithmetic',
  compute: ({ B, r }) => B + 2 * r,
});

/**
 * Rim that lies on the slab or under it, in: what lies beyond the clearance. Where the slab reaches over the bowl (s
 * below 0) all of the rim bears, and no more. r: rim, in; s: as in `bowlSize`, in. Arithmetic.
 */
export const rimBearing = formula<Readonly<Record<'r' | 's', number>>>({
  symbol: 'b',
  label: 'bearing of the rim',
  formula: 'r - max(s, 0)',
  units: { r: 'in', s: 'in' },
  unit: 'in',
  source: 'arithmetic',
  compute: ({ r, s }) => r - Math.max(s, 0),
});

/** An outline in plan and its size along the opening's own width and depth, in. */
export interface SizedOutline {
  readonly widthIn: number;
  readonly depthIn: number;
  readonly outline: readonly Point[];
}

export interface SinkFit {
  readonly mounting: SinkMounting;
  /** The face of the slab that the rim lies against. */
  readonly rimLies: 'on the top' | 'under the slab';
  /** From the bowl's side out to the concrete, in; below 0 where the slab reaches over the bowl. */
  readonly setBackIn: number;
  /** The bowl: outside of a dropped-in one, inside of the others. null where the opening is too small for one. */
  readonly bowl: SizedOutline | null;
  readonly rim: SizedOutline | null;
  readonly bearingIn: number;
  readonly leastBearingIn: number;
  /** The narrowest rim that leaves both the least bearing and the least clearance, in. */
  readonly narrowestRimIn: number;
  /** The bowl is in the form when the slab is poured. */
  readonly isCastIn: boolean;
  readonly words: string;
  readonly lines: readonly Line[];
}

const FACE: { readonly [M in SinkMounting]: SinkFit['rimLies'] } = {
  'dropped-in': 'on the top',
  'under-rim': 'under the slab',
  'cast-over': 'under the slab',
};

const WORDS: { readonly [M in SinkMounting]: string } = {
  'dropped-in': 'The bowl goes in from above and its rim lies on the top, bedded in sealant.',
  'under-rim': 'The rim is held under the slab, whose edge reaches over the bowl.',
  'cast-over': 'The bowl stands in the form, and the slab is cast on to its rim, flush with the bowl inside.',
};

/** The sink that fits the opening drawn, which is the hole in the concrete. */
export function sinkFit(
  cutout: Cutout,
  opening: readonly Point[],
  practice: OpeningPractice,
): SinkFit | null {
  const { sink } = cutout;
  if (sink === null) return null;
  const { mounting, rimIn } = sink;
  const leastBearingIn = practice.leastBearingIn[mounting];
  const setBack = setBackOf(mounting, rimIn, practice);
  const s = setBack.valueIn;
  const size = shapeSize(cutout.shape);
  const [bowlWidth, bowlDepth] = [bowlSize({ O: size.widthIn, s }), bowlSize({ O: size.depthIn, s })];
  const rimWidth = rimSize({ B: bowlWidth.value, r: rimIn });
  const rimDepth = rimSize({ B: bowlDepth.value, r: rimIn });
  const bearing = rimBearing({ r: rimIn, s });
  return {
    mounting,
    rimLies: FACE[mounting],
    setBackIn: s,
    bowl: sized(bowlWidth.value, bowlDepth.value, opening, -s),
    rim: sized(rimWidth.value, rimDepth.value, opening, rimIn - s),
    bearingIn: bearing.value,
    leastBearingIn,
    narrowestRimIn: leastBearingIn + (mounting === 'dropped-in' ? practice.leastClearanceIn : 0),
    isCastIn: isCastIn(cutout),
    words: WORDS[mounting],
    lines: [...setBack.lines, bowlWidth.line, bowlDepth.line, rimWidth.line, rimDepth.line, bearing.line],
  };
}

function setBackOf(
  mounting: SinkMounting,
  rimIn: number,
  practice: OpeningPractice,
): { readonly valueIn: number; readonly lines: readonly Line[] } {
  switch (mounting) {
    case 'dropped-in': {
      const { value, line } = bowlClearance({
        c0: practice.bowlClearanceIn,
        c1: practice.leastClearanceIn,
        r: rimIn,
        b1: practice.leastBearingIn[mounting],
      });
      return { valueIn: value, lines: [line] };
    }
    case 'under-rim':
      return { valueIn: -practice.overBowlIn, lines: [] };
    case 'cast-over':
      return { valueIn: 0, lines: [] };
  }
}

function sized(
  widthIn: number,
  depthIn: number,
  opening: readonly Point[],
  byIn: number,
): SizedOutline | null {
  const outline = largestOffset(opening, byIn);
  return widthIn > 0 && depthIn > 0 && outline !== null ? { widthIn, depthIn, outline } : null;
}

/** The outline moved outward by `byIn` (inward where negative); its largest part where it falls apart, null where none is left. */
export function largestOffset(points: readonly Point[], byIn: number): readonly Point[] | null {
  if (byIn === 0) return points;
  const parts = offsetPolygon(points, byIn, 'mitre').sort((p, q) => polygonAreaIn2(q) - polygonAreaIn2(p));
  return parts[0] ?? null;
}
