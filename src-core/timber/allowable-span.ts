/** How far apart the supports of a member may stand, by each limit, and which limit governs. */
import { formula, type Line } from '../workings';
import type { SagLimits } from './sag-limit';
import type { Symbols } from './symbols';
import type { TimberMember } from './timber-member';
import { type SpanCount, UNIFORM_SPANS } from './uniform-spans';

/** What sets a span: strength in bending, in shear, sag as a share of the span, or sag as a plain distance. */
export type SpanLimitId = 'bending' | 'shear' | 'span-ratio' | 'sag';

export interface SpanLimit {
  readonly id: SpanLimitId;
  readonly spanIn: number;
  readonly lines: readonly Line[];
}

export interface AllowableSpan {
  /** The shortest of the limits. */
  readonly spanIn: number;
  readonly governs: SpanLimitId;
  /** Bending, shear, share of the span, plain distance. */
  readonly limits: readonly SpanLimit[];
}

const FORMWORK = 'uniform load on equal spans, solved for the span; ACI SP-4 form';

/** Span at which the moment is used up, in. km: ratio; Ma: lbf-in; w: lbf/in. */
export const bendingSpan = formula<Symbols<'km' | 'Ma' | 'w'>>({
  symbol: 'Lb',
  label: 'span that bending allows',
  formula: 'sqrt(km * Ma / w)',
  units: { km: '', Ma: 'lbf in', w: 'lbf/in' },
  unit: 'in',
  source: FORMWORK,
  compute: ({ km, Ma, w }) => Math.sqrt((km * Ma) / w),
});

/** Span at which the shear a depth from the support is used up, in. Va: lbf; w: lbf/in; d: depth, in; kv: ratio. NDS 2018 3.4.3.1(a). */
export const shearSpan = formula<Symbols<'Va' | 'w' | 'd' | 'kv'>>({
  symbol: 'Lv',
  label: 'span that shear allows, the load within a depth of the support left out',
  formula: '(Va + w * d) / (kv * w)',
  units: { Va: 'lbf', w: 'lbf/in', d: 'in', kv: '' },
  unit: 'in',
  source: 'NDS 2018 3.4.3.1(a)',
  compute: ({ Va, w, d, kv }) => (Va + w * d) / (kv * w),
});

/** Span at which the sag is L / n, in. kd, n: ratios; EI: lbf-in2; w: lbf/in. */
export const ratioSpan = formula<Symbols<'kd' | 'EI' | 'n' | 'w'>>({
  symbol: 'Ln',
  label: 'span that a sag of its nth part allows',
  formula: 'cbrt(kd * EI / (n * w))',
  units: { kd: '', EI: 'lbf in2', n: '', w: 'lbf/in' },
  unit: 'in',
  source: FORMWORK,
  compute: ({ kd, EI, n, w }) => Math.cbrt((kd * EI) / (n * w)),
});

/** Span at which the sag is dmax, in. kd: ratio; EI: lbf-in2; dmax: in; w: lbf/in. */
export const sagSpan = formula<Symbols<'kd' | 'EI' | 'dmax' | 'w'>>({
  symbol: 'Ld',
  label: 'span that the plain limit on sag allows',
  formula: '(kd * EI * dmax / w)^0.25',
  units: { kd: '', EI: 'lbf in2', dmax: 'in', w: 'lbf/in' },
  unit: 'in',
  source: FORMWORK,
  compute: ({ kd, EI, dmax, w }) => ((kd * EI * dmax) / w) ** 0.25,
});

/** Picks the shortest of several limits; the first of equals. */
export function shortestSpan(limits: readonly SpanLimit[]): AllowableSpan {
  const least = limits.reduce((best, limit) => (limit.spanIn < best.spanIn ? limit : best));
  return { spanIn: least.spanIn, governs: least.id, limits };
}

export interface AllowableSpanInput {
  readonly member: TimberMember;
  readonly loadLbfPerIn: number;
  readonly spanCount: SpanCount;
  readonly limits: SagLimits;
}

/** Longest span of a member under a uniform load, in, with each limit and the one that governs. ACI SP-4 forms, NDS 2018 chapter 3. */
export function allowableSpan({
  member,
  loadLbfPerIn,
  spanCount,
  limits,
}: AllowableSpanInput): AllowableSpan {
  const { km, kv, kd } = UNIFORM_SPANS[spanCount];
  const { momentLbfIn: Ma, shearLbf: Va, stiffnessLbfIn2: EI, section, lines } = member;
  const w = loadLbfPerIn;
  const bending = bendingSpan({ km, Ma, w });
  const shear = shearSpan({ Va, w, d: section.depthIn, kv });
  const ratio = ratioSpan({ kd, EI, n: limits.spanLimit, w });
  const sag = sagSpan({ kd, EI, dmax: limits.deflectionLimitIn, w });
  return shortestSpan([
    { id: 'bending', spanIn: bending.value, lines: [...lines.bending, bending.line] },
    { id: 'shear', spanIn: shear.value, lines: [...lines.shear, shear.line] },
    { id: 'span-ratio', spanIn: ratio.value, lines: [...lines.stiffness, ratio.line] },
    { id: 'sag', spanIn: sag.value, lines: [...lines.stiffness, sag.line] },
  ]);
}
