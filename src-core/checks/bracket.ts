/** Whether a row of brackets carries what the slab leaves to it: arm, fixing, heel, and the concrete on the arm. */
import type { PieceAnalysis } from '../analysis';
import { printersOf } from '../analysis';
import { bracketIsDecidable } from '../bracket';
import type { BracketSupport } from '../job';
import { sentenceCase } from '../units';
import type { Line } from '../workings';
import { readingLine } from '../workings';
import type { Arm, ArmLoad } from './arm-loads';
import { armLoads, armsOf, governingLoads, isLifted, resultantOn } from './arm-loads';
import type { Part } from './bracket-parts';
import { partRatio, worstParts } from './bracket-parts';
import { bracketRules } from './bracket-rules';
import { round2 } from './case-words';
import type { Check, CheckContext, CheckRule } from './check';
import type { NamedState, SupportParts } from './states';
import { statesOf, supportParts } from './states';

/** Below this the slab does not lean on an arm, lbf. */
const NOTHING_LBF = 0.5;

/** One check a row of brackets: the worst part of the worst arm, in the worse of both stiffness bounds, whole and cracked. */
export const bracket: CheckRule = {
  id: 'bracket',
  title: 'Brackets',
  run: (context) =>
    supportParts(context.analysis).flatMap((parts) =>
      parts.support.kind === 'bracket' ? judgeRow(context, parts, parts.support) : [],
    ),
};

function judgeRow(context: CheckContext, parts: SupportParts, row: BracketSupport): Check[] {
  const { analysis, limits } = context;
  const arms = armsOf(analysis, row, parts.parts);
  if (arms.length === 0) return [];
  const loads = armLoads(analysis, row, arms);
  const trouble = bracketIsDecidable(row, limits.bracketReachEngineerIn);
  if (trouble !== null) return [forEngineer(context, parts, { row, arms, loads, trouble })];

  const worst = worstParts(context, row, governingLoads(loads, row.reachIn));
  const governing = worst.reduce((a, b) => (b.ratio > a.ratio ? b : a));
  const { load, ratio } = governing;
  const holds = ratio <= 1;
  const share = sharePercent(row, arms, load);
  const rules = bracketRules(context, row, holds, share);
  const isIdle = loads.every(({ totalLbf }) => totalLbf < NOTHING_LBF);
  const name = sentenceCase(parts.words);
  const label = governing.label.charAt(0).toLowerCase() + governing.label.slice(1);
  const words = !holds
    ? `${name} does not hold: ${label} is ${round2(ratio)} times what is let pass, ${loadWords(load)}; ${stateWords(analysis, load, share)}.`
    : isIdle
      ? `${name} carries nothing: the slab never leans on it.`
      : `${name} holds: ${label} uses ${round2(ratio)} of what is let pass, ${loadWords(load)}; ${stateWords(analysis, load, share)}.`;
  return [
    {
      ...common(context, parts, load),
      demand: { value: governing.demand, unit: governing.unit },
      capacity: { value: governing.capacity, unit: governing.unit },
      ratio,
      level: holds ? 'holds' : 'change',
      words,
      needs: holds ? [] : ['corbel', 'support'],
      workings: [...readings(analysis, row, arms, loads), ...partLines(worst), ...rules.lines],
      cautions: [
        ...(rules.sentence === null ? [] : [rules.sentence]),
        ...cautionsOf(context, row, arms, load),
      ],
    },
  ];
}

function common({ analysis }: CheckContext, { support }: SupportParts, load: ArmLoad) {
  return {
    id: bracket.id,
    title: bracket.title,
    pieceId: analysis.piece.id,
    where: { kind: 'support', supportId: support.id, at: load.arm.at },
  } as const;
}

interface Undecided {
  readonly row: BracketSupport;
  readonly arms: readonly Arm[];
  readonly loads: readonly ArmLoad[];
  readonly trouble: string;
}

/** What an engineer must know of a row that is not decided here: the worst load of one bracket and where it acts. */
function forEngineer(
  context: CheckContext,
  parts: SupportParts,
  { row, arms, loads, trouble }: Undecided,
): Check {
  const { length, force } = printersOf(context.job);
  const load = loads.reduce((a, b) => (b.momentLbfIn > a.momentLbfIn ? b : a));
  return {
    ...common(context, parts, load),
    demand: { value: load.totalLbf, unit: 'lbf' },
    capacity: { value: 0, unit: 'lbf' },
    ratio: 0,
    level: 'engineer',
    words: `${trouble} One bracket of ${parts.words} must carry ${force(load.totalLbf)} at ${length(load.atIn)} from the wall.`,
    needs: [],
    workings: readings(context.analysis, row, arms, loads),
    cautions: [],
  };
}

/** Every part with what leads to it, worst first; a line that two parts share stands once. */
function partLines(parts: readonly Part[]): Line[] {
  const lines = [...parts]
    .sort((a, b) => b.ratio - a.ratio)
    .flatMap((part) => [
      ...part.lines,
      ...(part.capacity > 0
        ? [partRatio(part.label, part.unit)({ R: part.demand, Ra: part.capacity }).line]
        : []),
    ]);
  const seen = new Map(lines.map((line) => [`${line.label} ${line.substituted} ${line.result}`, line]));
  return [...seen.values()];
}

function loadWords({ arm, loadCase }: ArmLoad): string {
  return `at ${arm.words} under ${loadCase.words}`;
}

/** Which state the piece lives in, and what the brackets take of the load. */
function stateWords({ cracked }: PieceAnalysis, { named }: ArmLoad, share: number): string {
  const state =
    cracked === null
      ? 'the slab stays uncracked'
      : named.isCracked
        ? 'the slab has cracked by then'
        : 'that is while the slab is still whole, for it cracks';
  const pulled = share > 100 ? ', for what holds the slab down behind pulls it onto the arms' : '';
  return `${state}, and the row takes ${share} % of the whole load${pulled}`;
}

/** Load on all arms of the row over all that the slab and its load weigh, in whole per cent. */
function sharePercent({ reachIn }: BracketSupport, arms: readonly Arm[], { loadCase }: ArmLoad): number {
  const row = arms.reduce((sum, arm) => sum + resultantOn(arm, loadCase, reachIn).P, 0);
  return loadCase.totalLbf > 0 ? Math.round((100 * row) / loadCase.totalLbf) : 0;
}

/** Worst arm of each state: its load, where that acts, and the share of the row. */
function readings(
  analysis: PieceAnalysis,
  row: BracketSupport,
  arms: readonly Arm[],
  loads: readonly ArmLoad[],
): Line[] {
  const from = 'plate engine, one-sided contact on the arms';
  return statesOf(analysis).flatMap(({ state, words }: NamedState) => {
    const own = loads.filter(({ named }) => named.state === state);
    const load = own.reduce((a, b) => (b.momentLbfIn > a.momentLbfIn ? b : a));
    return [
      readingLine({
        symbol: 'P',
        label: `Load ${loadWords(load)}, ${words}`,
        value: load.totalLbf,
        unit: 'lbf',
        from,
      }),
      readingLine({
        symbol: 'e',
        label: 'Its distance from the wall face',
        value: load.atIn,
        unit: 'in',
        from,
      }),
      readingLine({
        symbol: 'share',
        label: 'Share of the whole load that the row takes then, in per cent',
        value: sharePercent(row, arms, load),
        unit: '%',
        from,
      }),
    ];
  });
}

function cautionsOf(
  { analysis }: CheckContext,
  row: BracketSupport,
  arms: readonly Arm[],
  { loadCase }: ArmLoad,
): string[] {
  const cautions: string[] = [];
  if (row.fixing.kind !== 'rated') {
    cautions.push(
      `Fasteners count only with their full thread in a stud or in blocking, not in board or siding.${analysis.piece.exposure === 'outdoors' ? ' Outdoors that timber is taken as wet.' : ''}`,
    );
  }
  if (loadCase.asIfHeld) {
    cautions.push('The slab would turn over under that load; the bracket is worked as if it were held down.');
  }
  if (statesOf(analysis).some(({ state }) => state.cases.some((one) => isLifted(arms, one)))) {
    cautions.push('Under some loads its ties lift an arm: what holds it then is not worked here.');
  }
  return cautions;
}
