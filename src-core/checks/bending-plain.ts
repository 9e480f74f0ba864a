/** Bending on concrete alone: does the slab stay uncracked in service? */
import type { BoundState, Face, GoverningMoment, PieceAnalysis } from '../analysis';
import { steelLayers } from '../analysis';
import { PHI_PLAIN_RATIO, plainStrength } from '../concrete';
import { formula, readingLine } from '../workings';
import { caseWords, round2 } from './case-words';
import type { Check, CheckContext, CheckRule, Need } from './check';
import { factoredEffect } from './factored';
import { faceWords, placeWords } from './place-words';
import { stripsByHand } from './strip-by-hand';

/**
 * Service moment over the moment up to which the slab counts as uncracked (a ratio). M, Mlim: lbf-in in an inch of width.
 * ACI 318-19 Table 24.2.3.5.
 */
export const plainBendingRatio = formula<{ M: number; Mlim: number }>({
  symbol: 'ratio',
  label: 'Service moment over the cracking limit',
  formula: 'M / Mlim',
  units: { M: 'lbf-in/in', Mlim: 'lbf-in/in' },
  unit: '',
  source: 'ACI 318-19 Table 24.2.3.5: uncracked while Ma <= (2/3)Mcr',
  compute: ({ M, Mlim }) => M / Mlim,
});

/** Factored moment from the lasting part and the whole, lbf-in in an inch of width; see `factoredEffect`. */
export const factoredMoment = factoredEffect('Mu', 'Factored moment at the same point', 'lbf-in/in');

interface Candidate {
  readonly state: BoundState;
  readonly face: Face;
  readonly moment: GoverningMoment;
}

/** One check a piece: the worse of both stiffness bounds and both faces. */
export const bendingPlain: CheckRule = {
  id: 'bending-plain',
  title: 'Bending, on concrete alone',
  run: (context) => [judge(context)],
};

function judge(context: CheckContext): Check {
  const { concrete, piece, elastic } = context.analysis;
  const candidates = candidatesOf(elastic);
  const worst = candidates.reduce((a, b) => (b.moment.momentLbfInPerIn > a.moment.momentLbfInPerIn ? b : a));
  const { moment } = worst;
  const M = moment.momentLbfInPerIn;
  const ratio = plainBendingRatio({ M, Mlim: concrete.crackingLimitLbfInPerIn });
  const Mu = factoredMoment({ D: moment.deadLbfInPerIn, S: M });
  const phiMn = plainStrength({
    phi: PHI_PLAIN_RATIO,
    lambda: concrete.lambda,
    fc: concrete.strengthPsi,
    h: piece.thicknessIn,
  });
  const cracks = ratio.value > 1;
  const hasSteel = steelLayers(piece).length > 0;
  return {
    id: bendingPlain.id,
    title: bendingPlain.title,
    pieceId: piece.id,
    where: { kind: 'point', at: moment.at },
    demand: { value: M, unit: 'lbf-in/in' },
    capacity: { value: concrete.crackingLimitLbfInPerIn, unit: 'lbf-in/in' },
    ratio: ratio.value,
    level: cracks ? (hasSteel ? 'steel' : 'change') : 'holds',
    words: wordsOf(context, worst, ratio.value, hasSteel),
    needs: cracks && !hasSteel ? needsOf(worst.face) : [],
    workings: [
      ...concrete.workings,
      ...candidates.map(readingOf),
      ratio.line,
      ...stripsByHand(context.analysis),
      Mu.line,
      phiMn.line,
    ],
    cautions: cautionsOf(context.analysis, cracks, hasSteel),
  };
}

function wordsOf(context: CheckContext, worst: Candidate, ratio: number, hasSteel: boolean): string {
  const { moment, face, state } = worst;
  const place = `${faceWords(face)}, ${placeWords(context, moment.at)}, under ${caseWords(state, moment.caseId)}`;
  if (ratio <= 1) {
    return `Uncracked on paper: it bends most ${place}, and uses ${round2(ratio)} of what plain concrete takes uncracked.`;
  }
  const rest = hasSteel
    ? 'so it stands on its steel.'
    : uncountedOnly(context.analysis)
      ? 'and fabric or fibre counts nothing for strength.'
      : 'and no steel is drawn to hold the crack.';
  return `It will want to crack ${place}: ${round2(ratio)} times what plain concrete takes uncracked, ${rest}`;
}

/** Over a support an overhang can be shortened; between supports a prop helps more than an arm. */
function needsOf(face: Face): readonly Need[] {
  return face === 'top'
    ? ['steel', 'corbel', 'thickness', 'support']
    : ['steel', 'support', 'thickness', 'corbel'];
}

function uncountedOnly({ piece }: PieceAnalysis): boolean {
  return piece.reinforcement.length > 0 && steelLayers(piece).length === 0;
}

function cautionsOf(analysis: PieceAnalysis, cracks: boolean, hasSteel: boolean): string[] {
  const cautions = [
    'The factored plain strength is printed as information, outside ACI 318-19 chapter 14: plain spans and overhangs are not within that code.',
  ];
  if (!cracks && !hasSteel) cautions.push('Put steel in all the same: concrete is only as good as the pour.');
  if (uncountedOnly(analysis)) {
    cautions.push(
      'Fabric and fibre are recorded but count nothing for strength; the piece is judged as plain concrete.',
    );
  }
  if (analysis.concrete.strengthAssumed) {
    cautions.push(
      'Strength not stated: 3000 psi is assumed for untested concrete (common practice, no source).',
    );
  }
  return cautions;
}

function candidatesOf(elastic: PieceAnalysis['elastic']): readonly Candidate[] {
  return [elastic.low, elastic.high].flatMap((state) => [
    { state, face: 'bottom' as const, moment: state.sagging },
    { state, face: 'top' as const, moment: state.hogging },
  ]);
}

function readingOf({ face, moment, state }: Candidate) {
  const bends = face === 'top' ? 'hogging' : 'sagging';
  const over = `averaged over ${round2(moment.averagedOverIn)} in (peak ${round2(moment.peakLbfInPerIn)})`;
  return readingLine({
    symbol: 'M',
    label: `Moment ${bends}, supports at their ${state.bound} stiffness, ${over}`,
    value: moment.momentLbfInPerIn,
    unit: 'lbf-in/in',
    from: 'plate engine, Kirchhoff plate on one-sided supports (DKT triangle, Batoz, Bathe & Ho 1980)',
  });
}
