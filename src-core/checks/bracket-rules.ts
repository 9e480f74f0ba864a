/** The trade's rules for brackets beside what the engine finds: hints, never checks. */
import { printersOf } from '../analysis';
import type { BracketSupport } from '../job';
import { distanceIn } from '../outline';
import type { Line } from '../workings';
import { formula, readingLine } from '../workings';
import type { CheckContext } from './check';

/** Reach that the trade asks of a bracket, in. share: two thirds; a: overhang from the wall, in. A hint, never a check. */
export const ruleOfThumbReach = formula<{ share: number; a: number }>({
  symbol: 'rt',
  label: "The trade's rule: a bracket reaches out to two thirds of the overhang; a hint, not a check",
  formula: 'share * a',
  units: { share: '', a: 'in' },
  unit: 'in',
  source: 'common practice, no source',
  compute: ({ share, a }) => share * a,
});

/** Lengths are drawn to a sixteenth; less than this is no breach of a rule of thumb, in. */
const SLACK_IN = 1 / 16;

export interface BracketRules {
  readonly lines: readonly Line[];
  /** One sentence where rule and engine disagree; null where they agree. */
  readonly sentence: string | null;
}

/** What the trade would say of a row that the tool has judged. `passes`: whether the row holds; `sharePercent`: load that it takes. */
export function bracketRules(
  context: CheckContext,
  bracket: BracketSupport,
  passes: boolean,
  sharePercent: number,
): BracketRules {
  const { analysis, job, limits } = context;
  const { length } = printersOf(job);
  const a = analysis.shape.longestOverhangWithoutBrackets?.overhangIn ?? null;
  const reach = a === null ? null : ruleOfThumbReach({ share: limits.ruleBracketReachShare, a });
  const gapIn = widestGapIn(bracket);
  const breaches = [
    ...(gapIn > limits.ruleBracketSpacingIn + SLACK_IN
      ? [`${length(gapIn)} apart instead of ${length(limits.ruleBracketSpacingIn)} at the most`]
      : []),
    ...(reach !== null && bracket.reachIn < reach.value - SLACK_IN
      ? [`${length(bracket.reachIn)} long instead of ${length(reach.value)}, two thirds of the overhang`]
      : []),
  ];
  return {
    lines: [...spacingLines(gapIn, limits.ruleBracketSpacingIn), ...(reach === null ? [] : [reach.line])],
    sentence: sentenceOf(breaches, passes, sharePercent),
  };
}

function spacingLines(gapIn: number, ruleIn: number): Line[] {
  if (gapIn === 0) return [];
  return [
    readingLine({ symbol: 's', label: 'Widest spacing of the row', value: gapIn, unit: 'in', from: 'drawn' }),
    readingLine({
      symbol: 'st',
      label: "The trade's rule: brackets every 18 to 24 in; a hint, not a check",
      value: ruleIn,
      unit: 'in',
      from: 'common practice, no source',
    }),
  ];
}

function sentenceOf(breaches: readonly string[], passes: boolean, sharePercent: number): string | null {
  if (breaches.length > 0 && passes) {
    return `The trade's rule would have other brackets: these are ${breaches.join(' and ')} (common practice, no source). They pass all the same: slab and arms were worked together, and the row takes ${sharePercent} % of the load.`;
  }
  if (breaches.length === 0 && !passes) {
    return "The trade's rule for spacing and reach is kept (common practice, no source), and the row fails all the same: the rule knows neither the arm's section nor what it is fixed with.";
  }
  return null;
}

/** Widest gap between neighbouring roots, in the order along the row; 0 for a single bracket. */
export function widestGapIn({ roots }: BracketSupport): number {
  return roots.reduce((widest, root) => {
    const others = roots.filter((other) => other !== root);
    if (others.length === 0) return widest;
    return Math.max(widest, Math.min(...others.map((other) => distanceIn(root, other))));
  }, 0);
}
