/** Closed forms for a uniform load on one, two, or three and more equal spans. */
import { formula } from '../workings';
import type { Symbols } from './symbols';

/** One, two, or three and more equal spans. */
export type SpanCount = 1 | 2 | 3;

/** The coefficients of a run of equal spans, each a ratio. */
export interface SpanCoefficients {
  /** M = w L^2 / km, the larger of sagging and hogging. */
  readonly km: number;
  /** V = kv w L, the largest. */
  readonly kv: number;
  /** deflection = w L^4 / (kd E I), the largest. */
  readonly kd: number;
  /** R = kr w L on the most loaded support between the ends; for one span at an end. */
  readonly kr: number;
}

/**
 * Coefficients by the number of spans, as formwork handbooks use them (ACI SP-4; ACI 347R-14 commentary, from memory), rounded.
 * Three and more spans count as three. Four or more hog by up to 7 % more over the second support (w L^2 / 9.33) and load it by
 * 4 % more: solve those with `solveBeam`.
 */
export const UNIFORM_SPANS: { readonly [K in SpanCount]: SpanCoefficients } = {
  1: { km: 8, kv: 0.5, kd: 384 / 5, kr: 0.5 },
  2: { km: 8, kv: 0.625, kd: 185, kr: 1.25 },
  3: { km: 10, kv: 0.6, kd: 145, kr: 1.1 },
};

/** The coefficients that a number of equal spans goes by. */
export function spanCountOf(spans: number): SpanCount {
  if (!(spans >= 1)) throw new Error(`A member needs at least one span, not ${spans}`);
  if (spans < 2) return 1;
  return spans < 3 ? 2 : 3;
}

const BEAM_TABLE = 'uniform load on equal spans, any beam table; rounded as in ACI SP-4';

/** Largest moment, lbf-in. w: lbf/in; L: in; km: 8, 8, 10 on 1, 2, 3 spans. */
export const uniformMoment = formula<Symbols<'w' | 'L' | 'km'>>({
  symbol: 'M',
  label: 'largest moment under the load',
  formula: 'w * L^2 / km',
  units: { w: 'lbf/in', L: 'in', km: '' },
  unit: 'lbf in',
  source: BEAM_TABLE,
  compute: ({ w, L, km }) => (w * L ** 2) / km,
});

/** Largest shear at a support, lbf. w: lbf/in; L: in; kv: 0.5, 0.625, 0.6 on 1, 2, 3 spans. */
export const uniformShear = formula<Symbols<'kv' | 'w' | 'L'>>({
  symbol: 'V',
  label: 'largest shear under the load',
  formula: 'kv * w * L',
  units: { kv: '', w: 'lbf/in', L: 'in' },
  unit: 'lbf',
  source: BEAM_TABLE,
  compute: ({ kv, w, L }) => kv * w * L,
});

/** Largest shear counted at depth d from the support, lbf. w: lbf/in; L, d: in; kv as in `uniformShear`. NDS 2018 3.4.3.1(a). */
export const uniformShearAtDepth = formula<Symbols<'kv' | 'w' | 'L' | 'd'>>({
  symbol: 'V',
  label: 'largest shear, the load within a depth of the support left out',
  formula: 'kv * w * L - w * d',
  units: { kv: '', w: 'lbf/in', L: 'in', d: 'in' },
  unit: 'lbf',
  source: 'NDS 2018 3.4.3.1(a)',
  compute: ({ kv, w, L, d }) => kv * w * L - w * d,
});

/** Largest deflection, in. w: lbf/in; L: in; EI: lbf-in2; kd: 76.8, 185, 145 on 1, 2, 3 spans. */
export const uniformDeflection = formula<Symbols<'w' | 'L' | 'kd' | 'EI'>>({
  symbol: 'delta',
  label: 'largest deflection under the load',
  formula: 'w * L^4 / (kd * EI)',
  units: { w: 'lbf/in', L: 'in', kd: '', EI: 'lbf in2' },
  unit: 'in',
  source: BEAM_TABLE,
  compute: ({ w, L, kd, EI }) => (w * L ** 4) / (kd * EI),
});

/** Reaction of the most loaded support, lbf. w: lbf/in; L: in; kr: 0.5, 1.25, 1.1 on 1, 2, 3 spans. */
export const uniformReaction = formula<Symbols<'kr' | 'w' | 'L'>>({
  symbol: 'R',
  label: 'load on the most loaded support',
  formula: 'kr * w * L',
  units: { kr: '', w: 'lbf/in', L: 'in' },
  unit: 'lbf',
  source: BEAM_TABLE,
  compute: ({ kr, w, L }) => kr * w * L,
});
