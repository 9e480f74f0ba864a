/** Weight and centre of gravity; it informs, and sends out-of-range thicknesses to an engineer. */
import { printersOf } from '../analysis';
import { printMass } from '../units';
import { formula, readingLine } from '../workings';
import type { Check, CheckContext, CheckRule } from './check';
import { placeWords } from './place-words';

/** Weight of a slab, lb. A: plan area less openings, in2; h: thickness, in; w: density, lb/ft3. Arithmetic. */
export const slabWeight = formula<{ A: number; h: number; w: number }>({
  symbol: 'Ws',
  label: 'Weight of the slab',
  formula: 'A * h * w / 1728',
  units: { A: 'in2', h: 'in', w: 'lb/ft3' },
  unit: 'lb',
  source: 'arithmetic; density as the job states it',
  compute: ({ A, h, w }) => (A * h * w) / 1728,
});

/** Weight of slab and what it carries, lb. Ws, Wc: lb. Arithmetic. */
export const restingWeight = formula<{ Ws: number; Wc: number }>({
  symbol: 'W',
  label: 'Weight of the slab with sinks, their contents and fixed equipment',
  formula: 'Ws + Wc',
  units: { Ws: 'lb', Wc: 'lb' },
  unit: 'lb',
  source: 'arithmetic; a sink counts full to its brim unless the job states its contents',
  compute: ({ Ws, Wc }) => Ws + Wc,
});

/** Weight of a square foot of slab, psf. h: thickness, in; w: density, lb/ft3. Arithmetic. */
export const spreadWeight = formula<{ h: number; w: number }>({
  symbol: 'g',
  label: 'Weight of a square foot of slab',
  formula: 'w * h / 12',
  units: { h: 'in', w: 'lb/ft3' },
  unit: 'psf',
  source: 'arithmetic',
  compute: ({ h, w }) => (w * h) / 12,
});

/** Thickness against the range in which a piece may be decided here (a ratio). All in inches. */
export const thicknessRatio = formula<{ h: number; thin: number; thick: number }>({
  symbol: 'ratio',
  label: 'Thickness against the range that is decided here',
  formula: 'max(thin / h, h / thick)',
  units: { h: 'in', thin: 'in', thick: 'in' },
  unit: '',
  source: 'common practice, no source',
  compute: ({ h, thin, thick }) => Math.max(thin / h, h / thick),
});

export const weight: CheckRule = {
  id: 'weight',
  title: 'Weight and centre of gravity',
  run: (context) => [judge(context)],
};

function judge(context: CheckContext): Check {
  const { job, analysis, limits } = context;
  const { piece, mix } = analysis;
  const { areaIn2, carriedLb, totalLb, centre } = analysis.weight;
  const print = printersOf(job);
  const mass = (lb: number) => printMass(Math.round(lb), { system: job.shownIn });
  const h = piece.thicknessIn;
  const outOfRange = h < limits.thinnestIn || h > limits.thickestIn;
  const Ws = slabWeight({ A: areaIn2, h, w: mix.densityPcf });
  const range = thicknessRatio({ h, thin: limits.thinnestIn, thick: limits.thickestIn });
  const place = placeWords(context, centre);
  const carried = carriedLb > 0 ? `, ${mass(totalLb)} with what it carries` : '';
  const each = piece.copies > 1 ? 'Each of them weighs' : 'It weighs';
  const words = outOfRange
    ? `${print.length(h)} is outside the thicknesses that are decided here, ${print.length(limits.thinnestIn)} to ${print.length(limits.thickestIn)}.`
    : `${each} ${mass(Ws.value)}${carried}; the centre of gravity is ${place}.`;
  return {
    id: weight.id,
    title: weight.title,
    pieceId: piece.id,
    where: { kind: 'point', at: centre },
    demand: { value: totalLb, unit: 'lb' },
    capacity: { value: limits.heavyPieceLb, unit: 'lb' },
    ratio: outOfRange ? range.value : 0,
    level: outOfRange ? 'engineer' : 'holds',
    words,
    needs: [],
    workings: [
      readingLine({
        symbol: 'A',
        label: 'Plan area less openings',
        value: areaIn2,
        unit: 'in2',
        from: 'plane geometry of the outline; edge profiles are not taken off',
      }),
      Ws.line,
      restingWeight({ Ws: Ws.value, Wc: carriedLb }).line,
      spreadWeight({ h, w: mix.densityPcf }).line,
      ...(outOfRange ? [range.line] : []),
    ],
    cautions:
      totalLb > limits.heavyPieceLb
        ? [
            `Over ${mass(limits.heavyPieceLb)}: never lift or tilt it by hand, keep everyone from under it, and see that floor and supports are meant for it (common practice, no source).`,
          ]
        : [],
  };
}
