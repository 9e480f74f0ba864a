/** The parts of a bracket that may fail, each under the load that is worst for it. */
import type { BracketCheck, BracketCheckId } from '../bracket';
import { armCreepFactor, checkBracketCouple } from '../bracket';
import type { BracketSupport } from '../job';
import type { Formula, Line } from '../workings';
import { formula, readingLine } from '../workings';
import type { ArmLoad } from './arm-loads';
import type { CheckContext } from './check';
import { deflectionRatio } from './deflection';
import { tipDeflectionLimit } from './deflection-limits';

/**
 * Sinking of an arm's tip, in. S: under the engine's reactions at once; D: of it under the lasting ones, in; Kcr: how much further a
 * timber arm sinks under these (a ratio; steel 1). NDS 2018 3.5.2.
 */
export const armTipSinking = formula<{ S: number; D: number; Kcr: number }>({
  symbol: 'dtip',
  label: "Sinking of the arm's tip under its own share of the load, with the creep of timber",
  formula: 'S + (Kcr - 1) * D',
  units: { S: 'in', D: 'in', Kcr: '' },
  unit: 'in',
  source: 'NDS 2018 3.5.2 for timber creep (1.5 dry, 2.0 wet); steel 1',
  fromMemory: true,
  compute: ({ S, D, Kcr }) => S + (Kcr - 1) * D,
});

/** One way in which a bracket may fail, under the load that is worst for it. */
export interface Part {
  readonly label: string;
  readonly demand: number;
  readonly capacity: number;
  readonly unit: string;
  readonly ratio: number;
  readonly lines: readonly Line[];
  readonly load: ArmLoad;
}

/** Worst of every part over the loads that can govern. */
export function worstParts(context: CheckContext, row: BracketSupport, loads: readonly ArmLoad[]): Part[] {
  const worst = new Map<string, Part>();
  for (const load of loads) {
    for (const part of partsUnder(context, row, load)) {
      const before = worst.get(part.label);
      if (before === undefined || part.ratio > before.ratio) worst.set(part.label, part);
    }
  }
  return [...worst.values()];
}

/** Sizes that are kept or not, and are no measure of how hard a bracket works: they count where they are not kept. */
const SIZES: readonly BracketCheckId[] = ['fastener-penetration', 'fastener-edge', 'brace-strut-slenderness'];

function partsUnder(context: CheckContext, row: BracketSupport, load: ArmLoad): Part[] {
  const { piece, concrete } = context.analysis;
  const isWet = piece.exposure === 'outdoors';
  const checks = checkBracketCouple({
    bracket: row,
    deadLbf: load.deadLbf,
    liveLbf: load.totalLbf - load.deadLbf,
    atIn: load.atIn,
    strengthPsi: concrete.strengthPsi,
    isWet,
    reachLimitIn: context.limits.bracketReachEngineerIn,
  });
  const byFormula = checks.filter(({ id }) => id === 'arm-deflection');
  return [
    ...checks
      // the reach is judged by whether the row is decided here, and the sinking by the engine
      .filter(
        ({ id, ratio }) => id !== 'reach' && id !== 'arm-deflection' && (ratio > 1 || !SIZES.includes(id)),
      )
      .map((check) => partOf(check, load)),
    tipPart(
      context,
      row,
      load,
      byFormula.flatMap(({ lines }) => lines),
    ),
  ];
}

function partOf({ label, demand, capacity, unit, ratio, lines }: BracketCheck, load: ArmLoad): Part {
  return { label, demand, capacity, unit: unit === 'lbf in' ? 'lbf-in' : unit, ratio, lines, load };
}

/** Sinking of the arm's tip, as the engine found it, against its limit; the figure of the formula stands beside it. */
function tipPart(
  { analysis, limits }: CheckContext,
  { arm, reachIn }: BracketSupport,
  load: ArmLoad,
  byFormula: readonly Line[],
): Part {
  const reading = (symbol: string, label: string, value: number) =>
    readingLine({
      symbol,
      label,
      value,
      unit: 'in',
      from: "plate engine: the arm's reactions on its own give",
    });
  const sinking = armTipSinking({
    S: load.sinkingIn,
    D: load.deadSinkingIn,
    Kcr: armCreepFactor(arm, analysis.piece.exposure === 'outdoors'),
  });
  const limit = tipDeflectionLimit({
    share: limits.deflectionSpanShare,
    a: reachIn,
    least: limits.deflectionLeastIn,
  });
  const ratio = deflectionRatio({ d: sinking.value, dlim: limit.value });
  const limitLabel = "Most that the arm's tip may sink: 1/360 of twice its reach";
  return {
    label: 'Sinking of the tip of the arm',
    demand: sinking.value,
    capacity: limit.value,
    unit: 'in',
    ratio: ratio.value,
    lines: [
      reading('S', `Sinking of the tip at once, ${load.named.words}`, load.sinkingIn),
      reading('D', 'Of it under self weight', load.deadSinkingIn),
      sinking.line,
      { ...limit.line, label: limitLabel },
      ...byFormula
        .filter(({ symbol }) => symbol === 'delta')
        .map((line, i) => ({
          ...line,
          label: `For information: the whole load at its centroid, fixing ${i === 0 ? 'that gives' : 'rigid'}`,
        })),
    ],
    load,
  };
}

/** Demand over capacity of one part (a ratio). R, Ra: in the part's own unit. */
export function partRatio(label: string, unit: string): Formula<{ R: number; Ra: number }> {
  return formula<{ R: number; Ra: number }>({
    symbol: 'ratio',
    label: `${label}: demand over what it may take`,
    formula: 'R / Ra',
    units: { R: unit, Ra: unit },
    unit: '',
    source: 'demand over capacity, the clauses stand with the capacity',
    compute: ({ R, Ra }) => R / Ra,
  });
}
