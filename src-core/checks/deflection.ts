/** How far the slab sags or its edge drops, at once and over the years. */
import type { BoundState, LoadCase } from '../analysis';
import { printersOf, steelLayers } from '../analysis';
import { longTermFactor, timeFactorRatio } from '../concrete';
import { printDeflection } from '../units';
import type { Worked } from '../workings';
import { formula, readingLine } from '../workings';
import type { Check, CheckContext, CheckRule } from './check';
import { deflectionLimit } from './deflection-limits';
import type { DeflectionPlace } from './deflection-place';
import { placeOfDeflection } from './deflection-place';
import { placeWords } from './place-words';
import { standingState } from './steel-demands';

type Symbols<Name extends string> = Readonly<Record<Name, number>>;

/**
 * Sag once the lasting load has stood for years, in. S: sag under lasting and live load at once; D: its lasting part;
 * lambdaDelta: added sag over the first (a ratio). ACI 318-19 24.2.4.1.1.
 */
export const longTermDeflection = formula<Symbols<'S' | 'D' | 'lambdaDelta'>>({
  symbol: 'dlong',
  label: 'Deflection after five years',
  formula: 'S + lambdaDelta * D',
  units: { S: 'in', D: 'in', lambdaDelta: '' },
  unit: 'in',
  source: 'ACI 318-19 24.2.4.1.1',
  compute: ({ S, D, lambdaDelta }) => S + lambdaDelta * D,
});

/** Deflection over its limit (a ratio). d, dlim: in. ACI 318-19 24.2.2. */
export const deflectionRatio = formula<Symbols<'d' | 'dlim'>>({
  symbol: 'ratio',
  label: 'Deflection over the most that it may be',
  formula: 'd / dlim',
  units: { d: 'in', dlim: 'in' },
  unit: '',
  source: 'ACI 318-19 24.2.2',
  compute: ({ d, dlim }) => d / dlim,
});

/** Days that the lasting load stands: five years. ACI 318-19 Table 24.2.4.1.3. */
const LASTING_DAYS = 5 * 365;

/** One check a piece: the worst of all cases against the limit of its place, the worse of both stiffness bounds. */
export const deflection: CheckRule = {
  id: 'deflection',
  title: 'Sag and drop of the edge',
  run: (context) => [judge(context)],
};

interface Found {
  readonly state: BoundState;
  readonly loadCase: LoadCase;
  readonly place: DeflectionPlace;
  readonly limit: Worked;
  readonly long: Worked;
  readonly ratio: Worked;
}

function judge(context: CheckContext): Check {
  const { job, analysis } = context;
  const { piece, cracked } = analysis;
  const { low, high } = standingState(analysis);
  const lambda = longTermFactor({ xi: timeFactorRatio(LASTING_DAYS), rhoc: 0 });
  const worstLow = worstOf(context, low, lambda.value);
  const worstHigh = worstOf(context, high, lambda.value);
  const worst = worstHigh.ratio.value > worstLow.ratio.value ? worstHigh : worstLow;
  const { loadCase, limit, long, ratio } = worst;
  const holds = ratio.value <= 1;
  const standsOnSteel = cracked !== null && steelLayers(piece).length > 0;
  const at = loadCase.deflection.downAt;
  return {
    id: deflection.id,
    title: deflection.title,
    pieceId: piece.id,
    where: { kind: 'point', at },
    demand: { value: long.value, unit: 'in' },
    capacity: { value: limit.value, unit: 'in' },
    ratio: ratio.value,
    level: holds ? (standsOnSteel ? 'steel' : 'holds') : 'change',
    words: wordsOf(context, worst),
    needs: holds ? [] : ['support', 'corbel', 'thickness', 'tie'],
    workings: [...[worstLow, worstHigh].flatMap(readingsOf), lambda.line, long.line, limit.line, ratio.line],
    cautions: cautionsOf(context, [low, high], (valueIn) =>
      printDeflection(valueIn, { system: job.shownIn, digits: 2 }),
    ),
  };
}

/** The worst case against the limit of its place. The largest deflections come first, so that most cases need no limit of their own. */
function worstOf(context: CheckContext, state: BoundState, lambdaDelta: number): Found {
  const sized = state.cases.map((loadCase) => {
    const S = Math.max(0, loadCase.deflection.downIn);
    const D = lastingIn(state, loadCase);
    return { loadCase, S, D, longIn: longTermDeflection.compute({ S, D, lambdaDelta }) };
  });
  sized.sort((a, b) => b.longIn - a.longIn);
  let worst: Found | null = null;
  for (const { loadCase, S, D, longIn } of sized) {
    if (worst !== null && longIn / context.limits.deflectionLeastIn <= worst.ratio.value) break;
    const place = placeOfDeflection(context.analysis, loadCase.deflection.downAt);
    const limit = deflectionLimit(place, context);
    if (worst !== null && longIn / limit.value <= worst.ratio.value) continue;
    const long = longTermDeflection({ S, D, lambdaDelta });
    const ratio = deflectionRatio({ d: long.value, dlim: limit.value });
    worst = { state, loadCase, place, limit, long, ratio };
  }
  if (worst === null) throw new Error(`piece ${context.analysis.piece.id} has no load case`);
  return worst;
}

/** Lasting part of a case's deflection; at another point than the governing one, no more than the greatest lasting sag. */
function lastingIn(state: BoundState, loadCase: LoadCase): number {
  if (loadCase.id === state.worstDown.caseId) return Math.max(0, state.worstDown.deadIn);
  const most = state.cases[0]?.deflection.downIn ?? 0;
  return Math.max(0, Math.min(most, loadCase.deflection.downIn));
}

function wordsOf(context: CheckContext, { loadCase, place, limit, long, ratio }: Found): string {
  const { job } = context;
  const print = (valueIn: number) => printDeflection(valueIn, { system: job.shownIn, digits: 2 });
  const what = whatMoves(place, printersOf(job).length(place.lengthIn));
  const at = placeWords(context, loadCase.deflection.downAt);
  return `Under ${loadCase.words}, ${what} ${print(loadCase.deflection.downIn)}, in time ${print(long.value)}, at ${at}; ${ratio.value <= 1 ? 'within' : 'more than'} the ${print(limit.value)} that is let pass.`;
}

function whatMoves({ kind }: DeflectionPlace, size: string): string {
  switch (kind) {
    case 'span':
      return `a span of ${size} sags`;
    case 'bearing':
      return 'the slab sinks where it bears by';
    case 'tip':
      return `an edge that reaches ${size} beyond what holds it drops`;
  }
}

function readingsOf({ state, loadCase }: Found) {
  const from = 'plate engine, measured from the plane in which the slab lies over its supports';
  return [
    readingLine({
      symbol: 'S',
      label: `Deflection at once, supports at their ${state.bound} stiffness, ${loadCase.words}`,
      value: loadCase.deflection.downIn,
      unit: 'in',
      from,
    }),
    readingLine({
      symbol: 'D',
      label: `Of it lasting, supports at their ${state.bound} stiffness`,
      value: lastingIn(state, loadCase),
      unit: 'in',
      from,
    }),
  ];
}

function cautionsOf(
  { limits, analysis }: CheckContext,
  states: readonly BoundState[],
  print: (valueIn: number) => string,
): string[] {
  const cautions: string[] = [];
  const give = Math.max(...states.flatMap(({ cases }) => cases.map(({ deflection: { giveIn } }) => giveIn)));
  if (give > limits.deflectionStepIn) {
    cautions.push(
      `The supports themselves may give up to ${print(give)} at their low stiffness; that comes on top, as a tilt or a step.`,
    );
  }
  const up = Math.max(...states.map(({ worstUp }) => worstUp.upIn));
  if (up > limits.deflectionStepIn) {
    cautions.push(
      `Another part of it rises up to ${print(up)}: look for a gap that opens and shuts under load.`,
    );
  }
  if (states.some(({ cases }) => cases.some(({ asIfHeld }) => asIfHeld))) {
    cautions.push(
      'The slab would turn over under some loads; its deflection is worked as if it were held down.',
    );
  }
  if (analysis.cracked !== null && steelLayers(analysis.piece).length === 0) {
    cautions.push('These are figures of the whole slab: once it cracks without steel nothing holds it up.');
  }
  if (analysis.bearings.some(({ part }) => part === 'arm')) {
    cautions.push('Slab and arm are judged together, each arm with its share of the load.');
  }
  return cautions;
}
