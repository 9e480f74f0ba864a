/** How far the slab sags or its edge drops, at once and over the years. */
import type { BoundState, LoadCase, PieceAnalysis } from '../analysis';
import { printersOf, steelLayers } from '../analysis';
import { longTermFactor, timeFactorRatio } from '../concrete';
import type { Point } from '../outline';
import { convexHull, directionAt, distanceIn, nearestOnOutline } from '../outline';
import { printDeflection } from '../units';
import type { Worked } from '../workings';
import { formula, readingLine } from '../workings';
import type { Check, CheckContext, CheckRule } from './check';
import { placeWords } from './place-words';
import { bearingAheadIn } from './slab-ahead';
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

const SHARE_SOURCE = 'ACI 318-19 Table 24.2.2 (1/360); least: common practice, no source';
const STEP_SOURCE = 'ACI 318-19 Table 24.2.2 (1/360); step and least: common practice, no source';

/**
 * Most that a span may sag, in. share: 1/360 unless set (a ratio); L: free span, in; least: finest limit set, in.
 * ACI 318-19 Table 24.2.2.
 */
export const spanDeflectionLimit = formula<Symbols<'share' | 'L' | 'least'>>({
  symbol: 'dlim',
  label: 'Most that the span may sag: 1/360 of it',
  formula: 'max(least, share * L)',
  units: { share: '', L: 'in', least: 'in' },
  unit: 'in',
  source: SHARE_SOURCE,
  compute: ({ share, L, least }) => Math.max(least, share * L),
});

/** The same beside a cabinet, where no step beyond what an eye sees is let pass, in. step: in. */
export const spanLimitByCabinet = formula<Symbols<'share' | 'L' | 'step' | 'least'>>({
  symbol: 'dlim',
  label: 'Most that the span may sag: 1/360 of it, and no step that an eye sees against the cabinet',
  formula: 'min(step, max(least, share * L))',
  units: { share: '', L: 'in', step: 'in', least: 'in' },
  unit: 'in',
  source: STEP_SOURCE,
  compute: ({ share, L, step, least }) => Math.min(step, Math.max(least, share * L)),
});

/** Most that a tip may drop, in. a: overhang from what holds it, arms left out, in; the rest as for a span. */
export const tipDeflectionLimit = formula<Symbols<'share' | 'a' | 'least'>>({
  symbol: 'dlim',
  label: 'Most that the edge may drop: 1/360 of twice the overhang',
  formula: 'max(least, share * 2 * a)',
  units: { share: '', a: 'in', least: 'in' },
  unit: 'in',
  source: SHARE_SOURCE,
  compute: ({ share, a, least }) => Math.max(least, share * 2 * a),
});

/** The same beside a cabinet, in. step: in. */
export const tipLimitByCabinet = formula<Symbols<'share' | 'a' | 'step' | 'least'>>({
  symbol: 'dlim',
  label:
    'Most that the edge may drop: 1/360 of twice the overhang, and no step that an eye sees against the cabinet',
  formula: 'min(step, max(least, share * 2 * a))',
  units: { share: '', a: 'in', step: 'in', least: 'in' },
  unit: 'in',
  source: STEP_SOURCE,
  compute: ({ share, a, step, least }) => Math.min(step, Math.max(least, share * 2 * a)),
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
  readonly place: Place;
  readonly limit: Worked;
  readonly long: Worked;
  readonly ratio: Worked;
}

type Place = { readonly kind: 'span' | 'bearing' | 'tip'; readonly lengthIn: number };

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
    const place = placeOf(context.analysis, loadCase.deflection.downAt);
    const limit = limitOf(place, context);
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

/** The step that an eye sees counts only beside a cabinet; elsewhere the share of the span alone does. */
function limitOf(place: Place, { analysis, limits }: CheckContext): Worked {
  const isOnCabinet = analysis.bearings.some(({ support }) => support.kind === 'cabinet');
  const common = {
    share: limits.deflectionSpanShare,
    least: limits.deflectionLeastIn,
  };
  const step = limits.deflectionStepIn;
  if (place.kind !== 'tip') {
    const L = place.lengthIn;
    return isOnCabinet ? spanLimitByCabinet({ L, step, ...common }) : spanDeflectionLimit({ L, ...common });
  }
  const a = place.lengthIn;
  return isOnCabinet ? tipLimitByCabinet({ a, step, ...common }) : tipDeflectionLimit({ a, ...common });
}

/**
 * Whether a point lies between bearings, on one, or out over one, along the piece or across it, and how far they are. Arms do
 * not count as bearings: slab and arm are judged together, from the wall. A point that sees no bearing either way is
 * measured from the nearest point of the line round all bearings, and takes the span there if that bridges one.
 */
function placeOf(analysis: PieceAnalysis, at: Point): Place {
  const areas = analysis.bearings.filter(({ part }) => part !== 'arm').map(({ corners }) => corners);
  if (areas.length === 0) return { kind: 'tip', lengthIn: reachFromWallIn(analysis, at) };
  const seen = reachesOf(analysis, areas, at);
  if (seen.spanIn !== null) return { kind: seen.spanIn > 0 ? 'span' : 'bearing', lengthIn: seen.spanIn };
  if (seen.tipIn !== null) return { kind: 'tip', lengthIn: seen.tipIn };
  const nearest = nearestOnOutline(at, convexHull(areas.flat()));
  const spanIn = reachesOf(analysis, areas, nearest.at).spanIn ?? 0;
  return spanIn > 0 ? { kind: 'span', lengthIn: spanIn } : { kind: 'tip', lengthIn: nearest.distanceIn };
}

/** Shorter of the spans that bridge the point, and the nearest bearing seen at all, along the piece and across it, in. */
function reachesOf(
  analysis: PieceAnalysis,
  areas: readonly (readonly Point[])[],
  at: Point,
): { readonly spanIn: number | null; readonly tipIn: number | null } {
  const reach = (turn: number) =>
    bearingAheadIn(analysis, areas, at, analysis.shape.axisRad + (turn * Math.PI) / 2);
  const [ahead, left, behind, right] = [reach(0), reach(1), reach(2), reach(3)];
  const spans = [
    [ahead, behind],
    [left, right],
  ].flatMap(([one, other]) => (one == null || other == null ? [] : [one + other]));
  const tips = [ahead, left, behind, right].filter((reachIn) => reachIn !== null);
  return {
    spanIn: spans.length > 0 ? Math.min(...spans) : null,
    tipIn: tips.length > 0 ? Math.min(...tips) : null,
  };
}

/** Distance of a point from the wall face of the nearest arm, along that arm; for a slab that lies on arms alone. */
function reachFromWallIn({ bearings, piece }: PieceAnalysis, at: Point): number {
  let nearestIn = Infinity;
  let reachIn = 0;
  for (const { support } of bearings) {
    if (support.kind !== 'bracket') continue;
    const u = directionAt((support.directionDeg * Math.PI) / 180);
    for (const root of support.roots) {
      const awayIn = distanceIn(root, at);
      if (awayIn >= nearestIn) continue;
      nearestIn = awayIn;
      reachIn = Math.max(piece.thicknessIn, (at.xIn - root.xIn) * u.x + (at.yIn - root.yIn) * u.y);
    }
  }
  return reachIn;
}

function wordsOf(context: CheckContext, { loadCase, place, limit, long, ratio }: Found): string {
  const { job } = context;
  const print = (valueIn: number) => printDeflection(valueIn, { system: job.shownIn, digits: 2 });
  const what = whatMoves(place, printersOf(job).length(place.lengthIn));
  const at = placeWords(context, loadCase.deflection.downAt);
  return `Under ${loadCase.words}, ${what} ${print(loadCase.deflection.downIn)}, in time ${print(long.value)}, at ${at}; ${ratio.value <= 1 ? 'within' : 'more than'} the ${print(limit.value)} that is let pass.`;
}

function whatMoves({ kind }: Place, size: string): string {
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
  const from = 'plate engine, beside the mean settlement of the supports';
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
  const up = Math.max(...states.map(({ worstUp }) => worstUp.upIn));
  if (up > limits.deflectionStepIn) {
    cautions.push(`The far side lifts up to ${print(up)}: a gap that opens and shuts under load.`);
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
