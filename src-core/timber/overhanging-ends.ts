/** Closed forms for one span with an end, or both ends, running past the support, under a uniform load on the whole length. */
import { formula } from '../workings';
import type { Symbols } from './symbols';

const BEAM_TABLE = 'beam with overhanging ends, any beam table';

/** Hogging moment over the support of an overhanging end, lbf-in, as a positive number. w: lbf/in; a: overhang, in. */
export const endMoment = formula<Symbols<'w' | 'a'>>({
  symbol: 'Me',
  label: 'moment over the support of the overhanging end',
  formula: 'w * a^2 / 2',
  units: { w: 'lbf/in', a: 'in' },
  unit: 'lbf in',
  source: BEAM_TABLE,
  compute: ({ w, a }) => (w * a ** 2) / 2,
});

/** Largest sagging moment of a span with one overhanging end, lbf-in. w: lbf/in; L: span, a: overhang, in, a below L. */
export const oneEndSpanMoment = formula<Symbols<'w' | 'L' | 'a'>>({
  symbol: 'M',
  label: 'largest moment between the supports, one end overhanging',
  formula: 'w * (L + a)^2 * (L - a)^2 / (8 * L^2)',
  units: { w: 'lbf/in', L: 'in', a: 'in' },
  unit: 'lbf in',
  source: BEAM_TABLE,
  compute: ({ w, L, a }) => (w * (L + a) ** 2 * (L - a) ** 2) / (8 * L ** 2),
});

/** Reaction at the support away from a single overhanging end, lbf; negative where it lifts. w: lbf/in; L, a: in. */
export const oneEndFarReaction = formula<Symbols<'w' | 'L' | 'a'>>({
  symbol: 'Rf',
  label: 'load on the support away from the overhanging end',
  formula: 'w * (L^2 - a^2) / (2 * L)',
  units: { w: 'lbf/in', L: 'in', a: 'in' },
  unit: 'lbf',
  source: BEAM_TABLE,
  compute: ({ w, L, a }) => (w * (L ** 2 - a ** 2)) / (2 * L),
});

/** Reaction at the support of a single overhanging end, lbf. w: lbf/in; L, a: in. */
export const oneEndNearReaction = formula<Symbols<'w' | 'L' | 'a'>>({
  symbol: 'Rn',
  label: 'load on the support of the overhanging end',
  formula: 'w * (L + a)^2 / (2 * L)',
  units: { w: 'lbf/in', L: 'in', a: 'in' },
  unit: 'lbf',
  source: BEAM_TABLE,
  compute: ({ w, L, a }) => (w * (L + a) ** 2) / (2 * L),
});

/** Deflection of the tip of a single overhanging end, in, down positive. w: lbf/in; L, a: in; EI: lbf-in2. */
export const oneEndTipDeflection = formula<Symbols<'w' | 'L' | 'a' | 'EI'>>({
  symbol: 'delta',
  label: 'deflection of the overhanging tip',
  formula: 'w * a * (3 * a^3 + 4 * a^2 * L - L^3) / (24 * EI)',
  units: { w: 'lbf/in', L: 'in', a: 'in', EI: 'lbf in2' },
  unit: 'in',
  source: BEAM_TABLE,
  compute: ({ w, L, a, EI }) => (w * a * (3 * a ** 3 + 4 * a ** 2 * L - L ** 3)) / (24 * EI),
});

/** Moment midway between the supports, both ends overhanging alike, lbf-in, sagging positive. w: lbf/in; L, a: in. */
export const bothEndsSpanMoment = formula<Symbols<'w' | 'L' | 'a'>>({
  symbol: 'M',
  label: 'moment midway between the supports, both ends overhanging',
  formula: 'w * (L^2 - 4 * a^2) / 8',
  units: { w: 'lbf/in', L: 'in', a: 'in' },
  unit: 'lbf in',
  source: BEAM_TABLE,
  compute: ({ w, L, a }) => (w * (L ** 2 - 4 * a ** 2)) / 8,
});

/** Deflection midway between the supports, both ends overhanging alike, in. w: lbf/in; L, a: in; EI: lbf-in2. */
export const bothEndsMidDeflection = formula<Symbols<'w' | 'L' | 'a' | 'EI'>>({
  symbol: 'delta',
  label: 'deflection midway between the supports, both ends overhanging',
  formula: 'w * L^2 * (5 * L^2 - 24 * a^2) / (384 * EI)',
  units: { w: 'lbf/in', L: 'in', a: 'in', EI: 'lbf in2' },
  unit: 'in',
  source: BEAM_TABLE,
  compute: ({ w, L, a, EI }) => (w * L ** 2 * (5 * L ** 2 - 24 * a ** 2)) / (384 * EI),
});

/** Deflection of the tips, both ends overhanging alike, in, down positive. w: lbf/in; L, a: in; EI: lbf-in2. */
export const bothEndsTipDeflection = formula<Symbols<'w' | 'L' | 'a' | 'EI'>>({
  symbol: 'delta',
  label: 'deflection of the tips, both ends overhanging',
  formula: 'w * a * (3 * a^3 + 6 * a^2 * L - L^3) / (24 * EI)',
  units: { w: 'lbf/in', L: 'in', a: 'in', EI: 'lbf in2' },
  unit: 'in',
  source: BEAM_TABLE,
  compute: ({ w, L, a, EI }) => (w * a * (3 * a ** 3 + 6 * a ** 2 * L - L ** 3)) / (24 * EI),
});
