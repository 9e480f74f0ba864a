/** How far a free edge reaches past what carries it: limits of what is decided here, and the trade's rules as hints. */
import { printersOf } from '../analysis';
import { formula } from '../workings';
import type { Check, CheckContext, CheckRule, Location } from './check';

/** Overhang over its limit (a ratio). a, amax: in. */
export const overhangRatio = formula<{ a: number; amax: number }>({
  symbol: 'ratio',
  label: 'Overhang over the limit of what is decided here',
  formula: 'a / amax',
  units: { a: 'in', amax: 'in' },
  unit: '',
  source: 'common practice, no source',
  compute: ({ a, amax }) => a / amax,
});

/** Overhang in thicknesses (a ratio). a, h: in. */
export const overhangSlenderness = formula<{ a: number; h: number }>({
  symbol: 'a/h',
  label: 'Overhang in thicknesses',
  formula: 'a / h',
  units: { a: 'in', h: 'in' },
  unit: '',
  source: 'arithmetic',
  compute: ({ a, h }) => a / h,
});

/** Longest unsupported overhang of the trade, in. depth: depth of the piece across its run, in; share: a third; most: in. A hint, never a check. */
export const ruleOfThumbOverhang = formula<{ depth: number; share: number; most: number }>({
  symbol: 'at',
  label: "The trade's rule: a third of the depth, 10 in at the most; a hint, not a check",
  formula: 'min(share * depth, most)',
  units: { depth: 'in', share: '', most: 'in' },
  unit: 'in',
  source: 'common practice, no source',
  compute: ({ depth, share, most }) => Math.min(share * depth, most),
});

interface Reach {
  readonly words: string;
  readonly demandIn: number;
  readonly limitIn: number;
  readonly where: Location;
}

export const overhang: CheckRule = {
  id: 'overhang',
  title: 'Overhang',
  run: (context) => {
    const reaches = reachesOf(context);
    return reaches.length === 0 ? [] : [judge(context, reaches)];
  },
};

function judge(context: CheckContext, reaches: readonly Reach[]): Check {
  const { job, analysis, limits } = context;
  const { piece, shape } = analysis;
  const print = printersOf(job);
  const worst = reaches.reduce((a, b) => (b.demandIn / b.limitIn > a.demandIn / a.limitIn ? b : a));
  const ratio = overhangRatio({ a: worst.demandIn, amax: worst.limitIn });
  const isFar = ratio.value > 1;
  const a = shape.longestOverhang?.overhangIn ?? 0;
  const rule = ruleOfThumbOverhang({
    depth: shape.depthIn,
    share: limits.ruleOverhangShare,
    most: limits.ruleOverhangIn,
  });
  const words = isFar
    ? `${worst.words} ${print.length(worst.demandIn)}, more than the ${print.length(worst.limitIn)} that is decided here.`
    : `${worst.words} ${print.length(worst.demandIn)}, within the ${print.length(worst.limitIn)} that is decided here; the other checks say whether it stands.`;
  return {
    id: overhang.id,
    title: overhang.title,
    pieceId: piece.id,
    where: worst.where,
    demand: { value: worst.demandIn, unit: 'in' },
    capacity: { value: worst.limitIn, unit: 'in' },
    ratio: ratio.value,
    level: isFar ? 'engineer' : 'holds',
    words,
    needs: [],
    workings: [ratio.line, overhangSlenderness({ a: worst.demandIn, h: piece.thicknessIn }).line, rule.line],
    cautions: ruleSentences(a, rule.value, context),
  };
}

/** One sentence where the trade's rule and the engine disagree, and why; or that both find the overhang long. */
function ruleSentences(
  overhangIn: number,
  ruleIn: number,
  { job, analysis, limits }: CheckContext,
): string[] {
  const { length } = printersOf(job);
  const turnsOver = analysis.stability.kind !== 'stands';
  const { low, high } = analysis.elastic;
  const hogging = Math.max(low.hogging.momentLbfInPerIn, high.hogging.momentLbfInPerIn);
  const cracks = hogging > analysis.concrete.crackingLimitLbfInPerIn;
  const found = turnsOver ? 'turns over' : 'cracks at the top';
  const rule = `the trade's rule of ${length(ruleIn)} (a third of the depth, ${length(limits.ruleOverhangIn)} at the most; common practice, no source)`;
  if (overhangIn > ruleIn) {
    return turnsOver || cracks
      ? [`${length(overhangIn)} is past ${rule}, and the slab ${found}: here rule and engine agree.`]
      : [
          `${length(overhangIn)} is past ${rule}, yet no load turns the slab over or cracks it at the top: the rule knows neither what holds the slab down nor how thick it is.`,
        ];
  }
  if (overhangIn > 0 && turnsOver) {
    return [
      `${length(overhangIn)} is within ${rule}, yet the slab turns over: the rule takes for granted that it is held down behind.`,
    ];
  }
  return [];
}

/** What the limits speak of: past all supports, past the last support or bracket, and the brackets' own reach. */
function reachesOf({ analysis, limits }: CheckContext): Reach[] {
  const { shape, bearings } = analysis;
  const reaches: Reach[] = [];
  const { longestOverhang: bare, longestOverhangWithoutBrackets: past } = shape;
  if (bare !== null && bare.overhangIn > 0) {
    reaches.push({
      words: 'The longest overhang with nothing under it is',
      demandIn: bare.overhangIn,
      limitIn: limits.overhangUnbracketedEngineerIn,
      where: { kind: 'point', at: bare.at },
    });
  }
  if (past !== null && past.overhangIn > 0) {
    reaches.push({
      words: 'Measured past its brackets the longest overhang is',
      demandIn: past.overhangIn,
      limitIn: limits.overhangEngineerIn,
      where: { kind: 'point', at: past.at },
    });
  }
  const seen = new Set<string>();
  for (const { support, centre } of bearings) {
    if (support.kind !== 'bracket' || seen.has(support.id)) continue;
    seen.add(support.id);
    reaches.push({
      words: `The arms of the brackets "${support.name ?? support.id}" reach`,
      demandIn: support.reachIn,
      limitIn: limits.bracketReachEngineerIn,
      where: { kind: 'support', supportId: support.id, at: centre },
    });
  }
  return reaches;
}
