/** The longest free span between supports: whether it may be decided here. */
import { printersOf } from '../analysis';
import { formula } from '../workings';
import type { Check, CheckContext, CheckRule } from './check';
import { placeWords } from './place-words';

/** Free span over its limit (a ratio). L, Lmax: in. */
export const spanRatio = formula<{ L: number; Lmax: number }>({
  symbol: 'ratio',
  label: 'Free span over the limit of what is decided here',
  formula: 'L / Lmax',
  units: { L: 'in', Lmax: 'in' },
  unit: '',
  source: 'common practice, no source',
  compute: ({ L, Lmax }) => L / Lmax,
});

/** Free span in thicknesses (a ratio). L, h: in. */
export const spanSlenderness = formula<{ L: number; h: number }>({
  symbol: 'L/h',
  label: 'Free span in thicknesses',
  formula: 'L / h',
  units: { L: 'in', h: 'in' },
  unit: '',
  source: 'arithmetic',
  compute: ({ L, h }) => L / h,
});

export const span: CheckRule = {
  id: 'span',
  title: 'Span between supports',
  run: (context) => {
    const check = judge(context);
    return check === null ? [] : [check];
  },
};

function judge(context: CheckContext): Check | null {
  const { job, analysis, limits } = context;
  const { piece, shape } = analysis;
  const { freeSpan } = shape;
  if (freeSpan === null || freeSpan.spanIn <= 0) return null;
  const print = printersOf(job);
  const L = freeSpan.spanIn;
  const ratio = spanRatio({ L, Lmax: limits.freeSpanEngineerIn });
  const isLong = ratio.value > 1;
  const place = placeWords(context, freeSpan.at);
  const limit = print.length(limits.freeSpanEngineerIn);
  return {
    id: span.id,
    title: span.title,
    pieceId: piece.id,
    where: { kind: 'point', at: freeSpan.at },
    demand: { value: L, unit: 'in' },
    capacity: { value: limits.freeSpanEngineerIn, unit: 'in' },
    ratio: ratio.value,
    level: isLong ? 'engineer' : 'holds',
    words: isLong
      ? `The slab spans ${print.length(L)} free, ${place}: more than the ${limit} that is decided here.`
      : `The longest free span is ${print.length(L)}, ${place}; the other checks say whether it stands.`,
    needs: [],
    workings: [ratio.line, spanSlenderness({ L, h: piece.thicknessIn }).line],
    cautions: [],
  };
}
