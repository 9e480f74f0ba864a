/** What each support carries, against the rating of cabinet feet where one is stated. */
import type { BearingReaction, LoadCase } from '../analysis';
import { printersOf } from '../analysis';
import type { CabinetSupport } from '../job';
import { sentenceCase } from '../units';
import type { Line } from '../workings';
import { formula, readingLine } from '../workings';
import type { Check, CheckContext, CheckRule } from './check';
import type { NamedState, SupportParts } from './states';
import { statesOf, supportParts } from './states';

/** Below this a support does not carry, lbf: the engine's rounding lies far under it. */
const NOTHING_LBF = 0.5;

const FEET_CAUTION =
  'Feet share their side alike only when each is wound up until it touches: check them again after a week.';

/** Load of one foot, lbf. S: load on one side of the cabinet, lbf; Wc: weight of the cabinet, lb; n: feet in all. Statics. */
export const footLoad = formula<{ S: number; Wc: number; n: number }>({
  symbol: 'F',
  label: 'Load of one foot: the heavier side and half the cabinet, shared by half the feet',
  formula: '(S + Wc / 2) / (n / 2)',
  units: { S: 'lbf', Wc: 'lb', n: '' },
  unit: 'lbf',
  source: 'statics; feet of a side share alike: common practice, no source',
  compute: ({ S, Wc, n }) => (S + Wc / 2) / (n / 2),
});

/** Load of a foot over its rating (a ratio). F, rating: lbf. */
export const footRatio = formula<{ F: number; rating: number }>({
  symbol: 'ratio',
  label: 'Load of a foot over its rating',
  formula: 'F / rating',
  units: { F: 'lbf', rating: 'lbf' },
  unit: '',
  source: "rating as the feet's maker states it in the job",
  compute: ({ F, rating }) => F / rating,
});

interface Found {
  readonly named: NamedState;
  readonly loadCase: LoadCase;
  readonly pushLbf: number;
}

export const supportLoad: CheckRule = {
  id: 'support-load',
  title: 'Load on each support',
  run: (context) => supportParts(context.analysis).map((parts) => judge(context, parts)),
};

function judge({ job, analysis, limits }: CheckContext, parts: SupportParts): Check {
  const print = printersOf(job);
  const { support } = parts;
  const states = statesOf(analysis);
  const pushOf = (loadCase: LoadCase) => sumOver(loadCase, parts.parts, ({ pushLbf }) => pushLbf);
  const heaviest = states.map((named) => heaviestCase(named, pushOf));
  const worst = heaviest.reduce((a, b) => (b.pushLbf > a.pushLbf ? b : a));
  const alone = states.map(({ state }) => pushOf(state.cases[0]!));
  const deadLbf = Math.max(...alone);
  const lines: Line[] = heaviest.map(({ named, pushLbf, loadCase }) =>
    readingLine({
      symbol: 'R',
      label: `Most load, ${named.words}, under ${loadCase.words}`,
      value: pushLbf,
      unit: 'lbf',
      from: 'plate engine, one-sided supports',
    }),
  );
  lines.push(
    readingLine({
      symbol: 'RD',
      label: 'Of this self weight, the larger of both bounds',
      value: deadLbf,
      unit: 'lbf',
      from: 'plate engine, one-sided supports',
    }),
  );
  const feet = support.kind === 'cabinet' ? feetOf(support, analysis.bearings, parts, states) : null;
  const overloaded = feet !== null && feet.ratio > 1;
  const name = sentenceCase(parts.words);
  const most = print.force(worst.pushLbf);
  const words =
    worst.pushLbf < NOTHING_LBF
      ? `${name} never touches the slab${gapWords(support.gapIn, print.length)}: the slab stands without it.`
      : overloaded
        ? `A foot of ${parts.words} would carry ${print.force(feet.footLbf)} under ${feet.caseWords}, more than the ${print.force(feet.ratingLbf)} it is rated for.`
        : `${name} carries ${most} at the most, under ${worst.loadCase.words}${worst.named.isCracked ? ', once the slab has cracked' : ''}.`;
  return {
    id: supportLoad.id,
    title: supportLoad.title,
    pieceId: analysis.piece.id,
    where: { kind: 'support', supportId: support.id, at: parts.at },
    demand: { value: feet?.footLbf ?? worst.pushLbf, unit: 'lbf' },
    capacity: { value: feet?.ratingLbf ?? 0, unit: 'lbf' },
    ratio: feet?.ratio ?? 0,
    level: overloaded ? 'change' : 'holds',
    words,
    needs: overloaded ? ['support'] : [],
    workings: [...lines, ...(feet?.lines ?? [])],
    cautions: [
      ...cautionsOf(parts, worst, alone, print.length),
      ...(feet !== null && feet.ratio >= limits.amberFrom ? [FEET_CAUTION] : []),
    ],
  };
}

function sumOver(
  { reactions }: LoadCase,
  parts: readonly number[],
  pick: (reaction: BearingReaction) => number,
): number {
  return parts.reduce((sum, part) => sum + pick(reactions[part]!), 0);
}

function heaviestCase(named: NamedState, pushOf: (loadCase: LoadCase) => number): Found {
  return named.state.cases.reduce<Found>(
    (most, loadCase) => {
      const pushLbf = pushOf(loadCase);
      return pushLbf > most.pushLbf ? { named, loadCase, pushLbf } : most;
    },
    { named, loadCase: named.state.cases[0]!, pushLbf: pushOf(named.state.cases[0]!) },
  );
}

interface Feet {
  readonly footLbf: number;
  readonly ratingLbf: number;
  readonly ratio: number;
  readonly caseWords: string;
  readonly lines: readonly Line[];
}

/** The most loaded foot: a side takes its own panel and half of rails and sub-top. */
function feetOf(
  cabinet: CabinetSupport,
  bearings: readonly { readonly part: string | null }[],
  { parts }: SupportParts,
  states: readonly NamedState[],
): Feet | null {
  const { feet } = cabinet;
  if (feet === null || feet.ratingLb <= 0) return null;
  let most = { sideLbf: 0, words: states[0]!.state.cases[0]!.words };
  for (const { state } of states) {
    for (const loadCase of state.cases) {
      for (const side of ['left-side', 'right-side']) {
        const sideLbf = parts.reduce((sum, index) => {
          const { part } = bearings[index]!;
          const share = part === side ? 1 : part === 'left-side' || part === 'right-side' ? 0 : 0.5;
          return sum + share * loadCase.reactions[index]!.pushLbf;
        }, 0);
        if (sideLbf > most.sideLbf) most = { sideLbf, words: loadCase.words };
      }
    }
  }
  const F = footLoad({ S: most.sideLbf, Wc: cabinet.weightLb, n: feet.count });
  const ratio = footRatio({ F: F.value, rating: feet.ratingLb });
  return {
    footLbf: F.value,
    ratingLbf: feet.ratingLb,
    ratio: ratio.value,
    caseWords: most.words,
    lines: [F.line, ratio.line],
  };
}

function gapWords(gapIn: number, length: (valueIn: number) => string): string {
  return gapIn > 0 ? `, the gap of ${length(gapIn)} never closes` : '';
}

function cautionsOf(
  { support, words }: SupportParts,
  worst: Found,
  alone: readonly number[],
  length: (valueIn: number) => string,
): string[] {
  const cautions: string[] = [];
  if (worst.pushLbf < NOTHING_LBF) {
    cautions.push(
      `Shim ${words} tight or leave it out of the count: a support that does not touch carries nothing.`,
    );
  } else if (alone.every((lbf) => lbf < NOTHING_LBF)) {
    cautions.push(
      support.gapIn > 0
        ? `Under its own weight the slab does not reach ${words}: it must come down ${length(support.gapIn)} first. Close the gap with a shim or mortar.`
        : `Under its own weight the slab comes off ${words}; only a load brings it down again.`,
    );
  } else if (alone.some((lbf) => lbf < NOTHING_LBF)) {
    cautions.push(
      `Whether the slab rests on ${words} under its own weight depends on how stiff the supports are: it does with one bound and not with the other.`,
    );
  }
  return cautions;
}
