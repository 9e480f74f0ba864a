/** Pressure under a wall strip that is loaded off its middle: the middle third. */
import type { PieceAnalysis } from '../analysis';
import type { Line } from '../workings';
import { formula } from '../workings';

/** Weight on an inch of wall, lbf/in. W: lb; L: length of bearing, in. Statics. */
export const lineLoad = formula<{ W: number; L: number }>({
  symbol: 'R',
  label: 'Weight on an inch of the wall',
  formula: 'W / L',
  units: { W: 'lb', L: 'in' },
  unit: 'lbf/in',
  source: 'statics',
  compute: ({ W, L }) => W / L,
});

/** Pressure at the fuller face, psi. R: lbf/in; B: width, in; e: distance off the middle, in. Valid for e <= B/6. Middle-third rule, any mechanics text. */
export const pressureWithinThird = formula<{ R: number; B: number; e: number }>({
  symbol: 'qmax',
  label: 'Pressure at the fuller face, weight within the middle third',
  formula: 'R / B * (1 + 6 * e / B)',
  units: { R: 'lbf/in', B: 'in', e: 'in' },
  unit: 'psi',
  source: 'middle-third rule, mechanics of materials',
  compute: ({ R, B, e }) => (R / B) * (1 + (6 * e) / B),
});

/** Pressure at the emptier face, psi; as `pressureWithinThird`. */
export const leastPressureWithinThird = formula<{ R: number; B: number; e: number }>({
  symbol: 'qmin',
  label: 'Pressure at the emptier face',
  formula: 'R / B * (1 - 6 * e / B)',
  units: { R: 'lbf/in', B: 'in', e: 'in' },
  unit: 'psi',
  source: 'middle-third rule, mechanics of materials',
  compute: ({ R, B, e }) => (R / B) * (1 - (6 * e) / B),
});

/** Pressure at the loaded face where part of the wall lifts free, psi. Valid for B/6 < e < B/2; nothing pulls. Middle-third rule. */
export const pressureBeyondThird = formula<{ R: number; B: number; e: number }>({
  symbol: 'qmax',
  label: 'Pressure at the loaded face, weight outside the middle third, the other face lifting',
  formula: '2 * R / (3 * (B / 2 - e))',
  units: { R: 'lbf/in', B: 'in', e: 'in' },
  unit: 'psi',
  source: 'middle-third rule, mechanics of materials',
  compute: ({ R, B, e }) => (2 * R) / (3 * (B / 2 - e)),
});

export interface WallStrip {
  /** Distance of the centre of gravity from the middle of the wall. */
  readonly eccentricityIn: number;
  readonly isWithinThird: boolean;
  readonly peakPsi: number;
  readonly lines: readonly Line[];
}

/** A piece that lies on one wall or ledger alone, under its own weight; null elsewhere and where the weight lies beyond the wall. */
export function wallStrip({ bearings, weight }: PieceAnalysis): WallStrip | null {
  const [bearing] = bearings;
  if (bearing === undefined || bearings.length !== 1) return null;
  const { support } = bearing;
  if (support.kind !== 'wall' && support.kind !== 'ledger') return null;
  const B = bearing.widthIn;
  const dx = support.to.xIn - support.from.xIn;
  const dy = support.to.yIn - support.from.yIn;
  const off = dx * (weight.centre.yIn - support.from.yIn) - dy * (weight.centre.xIn - support.from.xIn);
  const e = Math.abs(off) / Math.hypot(dx, dy);
  if (e >= B / 2) return null;
  const R = lineLoad({ W: weight.totalLb, L: bearing.areaIn2 / B });
  const isWithinThird = e <= B / 6;
  const at = { R: R.value, B, e };
  const peak = isWithinThird ? pressureWithinThird(at) : pressureBeyondThird(at);
  return {
    eccentricityIn: e,
    isWithinThird,
    peakPsi: peak.value,
    lines: [R.line, peak.line, ...(isWithinThird ? [leastPressureWithinThird(at).line] : [])],
  };
}
