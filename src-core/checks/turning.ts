/** The ways in which a loose slab can turn over: about each side of what carries it, under one person or a crowd. */
import type { PieceAnalysis, Stability } from '../analysis';
import { printersOf } from '../analysis';
import type { Point } from '../outline';
import { printSpreadLoad } from '../units';
import type { Line } from '../workings';
import { formula } from '../workings';
import type { CheckContext } from './check';
import type { TipSide } from './tip-side';
import { tipSides } from './tip-side';

/** Ratio that stands for a slab which tips under its own weight; it has no safety factor. */
export const TIPS_ALONE_RATIO = 9.99;

/** Righting moment about the pivot, lbf-in. W: weight, lb; x: how far the centre of gravity lies inside the pivot, in. Statics. */
export const rightingMoment = formula<{ W: number; x: number }>({
  symbol: 'Mr',
  label: 'Righting moment of the weight about the outer face of the supports',
  formula: 'W * x',
  units: { W: 'lb', x: 'in' },
  unit: 'lbf-in',
  source: 'statics; weight past the pivot counts against',
  compute: ({ W, x }) => W * x,
});

/** Overturning moment of the roving load, lbf-in. P: lbf; y: how far it lies past the pivot, in. Statics. */
export const overturningMoment = formula<{ P: number; y: number }>({
  symbol: 'Mo',
  label: 'Overturning moment of one person at the worst place',
  formula: 'P * y',
  units: { P: 'lbf', y: 'in' },
  unit: 'lbf-in',
  source: 'statics',
  compute: ({ P, y }) => P * y,
});

/** Overturning moment of a load spread past the pivot alone, lbf-in. p: psf; A: area past the pivot, in2; y: its arm, in. Statics. */
export const spreadOverturning = formula<{ p: number; A: number; y: number }>({
  symbol: 'Mo',
  label: 'Overturning moment of the spread load, lying only past the pivot',
  formula: 'p / 144 * A * y',
  units: { p: 'psf', A: 'in2', y: 'in' },
  unit: 'lbf-in',
  source: 'statics; live load on the tip side only',
  compute: ({ p, A, y }) => (p / 144) * A * y,
});

/** Safety factor against turning over (a ratio). Mr, Mo: lbf-in. Statics. */
export const tippingFactor = formula<{ Mr: number; Mo: number }>({
  symbol: 'FS',
  label: 'Safety factor against turning over',
  formula: 'Mr / Mo',
  units: { Mr: 'lbf-in', Mo: 'lbf-in' },
  unit: '',
  source: 'statics; 1.5 wanted of a loose slab: common practice, no source',
  compute: ({ Mr, Mo }) => Mr / Mo,
});

/** Righting over overturning in strength form (a ratio). Mr, Mo: lbf-in. By analogy with the 0.9D combinations of ASCE 7-22 2.3.1. */
export const tippingStrength = formula<{ Mr: number; Mo: number }>({
  symbol: 'FSu',
  label: 'The same in strength form, 1 or more wanted',
  formula: '0.9 * Mr / (1.6 * Mo)',
  units: { Mr: 'lbf-in', Mo: 'lbf-in' },
  unit: '',
  source: 'by analogy with the 0.9D combinations of ASCE 7-22 2.3.1',
  compute: ({ Mr, Mo }) => (0.9 * Mr) / (1.6 * Mo),
});

/** Wanted over present safety factor (a ratio), at most `TIPS_ALONE_RATIO`. FSmin: a ratio; Mr, Mo: lbf-in, Mr > 0. */
export const tippingRatio = formula<{ FSmin: number; Mr: number; Mo: number }>({
  symbol: 'ratio',
  label: 'Wanted over present safety factor',
  formula: `min(${TIPS_ALONE_RATIO}, FSmin * Mo / Mr)`,
  units: { FSmin: '', Mr: 'lbf-in', Mo: 'lbf-in' },
  unit: '',
  source: 'common practice, no source',
  compute: ({ FSmin, Mr, Mo }) => Math.min(TIPS_ALONE_RATIO, (FSmin * Mo) / Mr),
});

/** One way to turn over: about a line, under a load. */
export interface Turn {
  readonly pivot: { readonly from: Point; readonly to: Point };
  readonly weightArmIn: number;
  readonly rightingLbfIn: number;
  readonly overturningLbfIn: number;
  readonly loadWords: string;
  readonly ratio: number;
  readonly lines: readonly Line[];
}

/** One person about the side that governs, and the spread load past every side; none where nothing carries the piece. */
export function waysToTurn(context: CheckContext): Turn[] {
  const { stability } = context.analysis;
  if (stability.pivot === null) return [];
  return [personTurn(context, stability, stability.pivot), ...crowdTurns(context)];
}

/** The roving load about the side that the statics found worst. */
function personTurn(
  { job, analysis, limits }: CheckContext,
  stability: Stability,
  pivot: NonNullable<Stability['pivot']>,
): Turn {
  const Mr = rightingMoment({ W: analysis.weight.totalLb, x: stability.weightArmIn });
  const Mo = overturningMoment({ P: stability.loadLbf, y: stability.loadArmIn });
  const print = printersOf(job);
  const loadWords = `${print.force(stability.loadLbf)} ${print.length(stability.loadArmIn)} past the face of the support`;
  return turnOf(pivot, stability.weightArmIn, { Mr, Mo, loadWords }, limits.tippingFactor);
}

/** The spread load past each side of what the slab rests on. */
function crowdTurns({ job, analysis, limits }: CheckContext): Turn[] {
  const psf = spreadPsf(analysis);
  if (psf === 0) return [];
  return tipSides(analysis)
    .filter(({ areaIn2, areaArmIn }) => areaIn2 > 0 && areaArmIn > 0)
    .map((side: TipSide) => {
      const Mr = rightingMoment({ W: analysis.weight.totalLb, x: side.weightArmIn });
      const Mo = spreadOverturning({ p: psf, A: side.areaIn2, y: side.areaArmIn });
      const loadWords = `${printSpreadLoad(psf, { system: job.shownIn })} along the overhang`;
      return turnOf(side, side.weightArmIn, { Mr, Mo, loadWords }, limits.tippingFactor);
    });
}

interface Moments {
  readonly Mr: { readonly value: number; readonly line: Line };
  readonly Mo: { readonly value: number; readonly line: Line };
  readonly loadWords: string;
}

function turnOf(pivot: Turn['pivot'], weightArmIn: number, moments: Moments, FSmin: number): Turn {
  const { Mr, Mo, loadWords } = moments;
  const both = { Mr: Mr.value, Mo: Mo.value };
  const common = {
    pivot,
    weightArmIn,
    rightingLbfIn: Mr.value,
    overturningLbfIn: Mo.value,
    loadWords,
  };
  if (Mr.value <= 0) return { ...common, ratio: TIPS_ALONE_RATIO, lines: [Mr.line, Mo.line] };
  const ratio = tippingRatio({ FSmin, ...both });
  const factors = Mo.value > 0 ? [tippingFactor(both).line, tippingStrength(both).line] : [];
  return { ...common, ratio: ratio.value, lines: [Mr.line, Mo.line, ...factors, ratio.line] };
}

function spreadPsf({ elastic }: PieceAnalysis): number {
  return elastic.low.cases.reduce(
    (most, { live }) => (live.kind === 'spread' ? Math.max(most, live.psf) : most),
    0,
  );
}
