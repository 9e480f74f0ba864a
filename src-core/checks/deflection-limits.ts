/** How far a span may sag and a tip may drop. */
import type { Worked } from '../workings';
import { formula } from '../workings';
import type { CheckContext } from './check';
import type { DeflectionPlace } from './deflection-place';

type Symbols<Name extends string> = Readonly<Record<Name, number>>;

const SHARE_SOURCE = 'ACI 318-19 Table 24.2.2 (1/360); least: common practice, no source';
const STEP_SOURCE = 'ACI 318-19 Table 24.2.2 (1/360); step and least: common practice, no source';

/**
 * Most that a span may sag, in. share: 1/360 unless set (a ratio); L: free span, in; least: finest limit set, in.
 * ACI 318-19 Table 24.2.2.
 */
export const spanDeflectionLimit = formula<Symbols<'share' | 'L' | 'least'>>({
  symbol: 'dlim',
  label: 'Most that the span may sag: 1/360 of it',
  formula: 'max(least, share * L)',
  units: { share: '', L: 'in', least: 'in' },
  unit: 'in',
  source: SHARE_SOURCE,
  compute: ({ share, L, least }) => Math.max(least, share * L),
});

/** The same beside a cabinet, where no step beyond what an eye sees is let pass, in. step: in. */
export const spanLimitByCabinet = formula<Symbols<'share' | 'L' | 'step' | 'least'>>({
  symbol: 'dlim',
  label: 'Most that the span may sag: 1/360 of it, and no step that an eye sees against the cabinet',
  formula: 'min(step, max(least, share * L))',
  units: { share: '', L: 'in', step: 'in', least: 'in' },
  unit: 'in',
  source: STEP_SOURCE,
  compute: ({ share, L, step, least }) => Math.min(step, Math.max(least, share * L)),
});

/** Most that a tip may drop, in. a: overhang from what holds it, arms left out, in; the rest as for a span. */
export const tipDeflectionLimit = formula<Symbols<'share' | 'a' | 'least'>>({
  symbol: 'dlim',
  label: 'Most that the edge may drop: 1/360 of twice the overhang',
  formula: 'max(least, share * 2 * a)',
  units: { share: '', a: 'in', least: 'in' },
  unit: 'in',
  source: SHARE_SOURCE,
  compute: ({ share, a, least }) => Math.max(least, share * 2 * a),
});

/** The same beside a cabinet, in. step: in. */
export const tipLimitByCabinet = formula<Symbols<'share' | 'a' | 'step' | 'least'>>({
  symbol: 'dlim',
  label:
    'Most that the edge may drop: 1/360 of twice the overhang, and no step that an eye sees against the cabinet',
  formula: 'min(step, max(least, share * 2 * a))',
  units: { share: '', a: 'in', step: 'in', least: 'in' },
  unit: 'in',
  source: STEP_SOURCE,
  compute: ({ share, a, step, least }) => Math.min(step, Math.max(least, share * 2 * a)),
});

/** The step that an eye sees counts only beside a cabinet; elsewhere the share of the span alone does. */
export function deflectionLimit(place: DeflectionPlace, { analysis, limits }: CheckContext): Worked {
  const isOnCabinet = analysis.bearings.some(({ support }) => support.kind === 'cabinet');
  const common = {
    share: limits.deflectionSpanShare,
    least: limits.deflectionLeastIn,
  };
  const step = limits.deflectionStepIn;
  if (place.kind !== 'tip') {
    const L = place.lengthIn;
    return isOnCabinet ? spanLimitByCabinet({ L, step, ...common }) : spanDeflectionLimit({ L, ...common });
  }
  const a = place.lengthIn;
  return isOnCabinet ? tipLimitByCabinet({ a, step, ...common }) : tipDeflectionLimit({ a, ...common });
}
