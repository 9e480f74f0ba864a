/** How far a form may sag before the soffit shows it. */
import { formula } from '../workings';
import type { Symbols } from './symbols';

/** Limits on the sag of a visible soffit: a share of the span, and a plain distance, whichever is less. */
export interface SagLimits {
  /** n in L / n, a ratio: 360. */
  readonly spanLimit: number;
  /** 1/16 in. */
  readonly deflectionLimitIn: number;
}

const SOFFIT = 'L/360 and 1/16 in for visible soffits: ACI 347R-14 and common practice';

/** Sag allowed between two supports, in. L: span, in; n: ratio; dmax: in. */
export const spanSagLimit = formula<Symbols<'L' | 'n' | 'dmax'>>({
  symbol: 'dlim',
  label: 'sag that the soffit may show',
  formula: 'min(L / n, dmax)',
  units: { L: 'in', n: '', dmax: 'in' },
  unit: 'in',
  source: SOFFIT,
  compute: ({ L, n, dmax }) => Math.min(L / n, dmax),
});

/** Sag allowed at the tip of an overhanging end, in: as a span twice as long. a: overhang, in; n: ratio; dmax: in. */
export const tipSagLimit = formula<Symbols<'a' | 'n' | 'dmax'>>({
  symbol: 'dlim',
  label: 'sag that the overhanging tip may show',
  formula: 'min(2 * a / n, dmax)',
  units: { a: 'in', n: '', dmax: 'in' },
  unit: 'in',
  source: SOFFIT,
  compute: ({ a, n, dmax }) => Math.min((2 * a) / n, dmax),
});
