/** Bending on concrete alone: does the slab stay uncracked in service? */
import type { BoundState, Face, GoverningMoment, PieceAnalysis } from '../analysis';
import { steelLayers } from '../analysis';
import { PHI_PLAIN_RATIO, plainStrength } from '../concrete';
import { formula, readingLine } from '../workings';
import { caseWords, round2 } from './case-words';
import type { Check, CheckContext, CheckRule } from './check';

export const plainBendingRatio = formula<{ M: number; Mlim: number }>({
  symbol: 'ratio',
  label: 'Service moment over the cracking limit',
  formula: 'M / Mlim',
  units: { M: 'lbf-in/in', Mlim: 'lbf-in/in' },
  unit: '',
  source: 'ACI 318-19 Table 24.2.3.5: uncracked while Ma <= (2/3)Mcr',
  compute: ({ M, Mlim }) => M / Mlim,
});

export const factoredMoment = formula<{ MD: number; M: number }>({
  symbol: 'Mu',
  label: 'Factored moment at the same point',
  formula: '1.2 * MD + 1.6 * (M - MD)',
  units: { MD: 'lbf-in/in', M: 'lbf-in/in' },
  unit: 'lbf-in/in',
  source: 'ASCE 7-22 2.3.1, combination 2',
  compute: ({ MD, M }) => 1.2 * MD + 1.6 * (M - MD),
});

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

function judge({ analysis }: CheckContext): Check {
  const candidates = candidatesOf(analysis);
  const worst = candidates.reduce((a, b) => (b.moment.momentLbfInPerIn > a.moment.momentLbfInPerIn ? b : a));
  const { moment, face, state } = worst;
  const { concrete, piece } = analysis;
  const M = moment.momentLbfInPerIn;
  const ratio = plainBendingRatio({ M, Mlim: concrete.crackingLimitLbfInPerIn });
  const Mu = factoredMoment({ MD: moment.deadLbfInPerIn, M });
  const phiMn = plainStrength({
    phi: PHI_PLAIN_RATIO,
    lambda: concrete.lambda,
    fc: concrete.strengthPsi,
    h: piece.thicknessIn,
  });
  const cracks = ratio.value > 1;
  const hasSteel = steelLayers(piece).length > 0;
  const where = face === 'top' ? 'at the top' : 'underneath';
  const words = cracks
    ? `It will want to crack ${where} under ${caseWords(state, moment.caseId)}.`
    : `Uncracked on paper; it bends most ${where} under ${caseWords(state, moment.caseId)}.`;
  return {
    id: bendingPlain.id,
    title: bendingPlain.title,
    pieceId: piece.id,
    where: { kind: 'point', at: moment.at },
    demand: { value: M, unit: 'lbf-in/in' },
    capacity: { value: concrete.crackingLimitLbfInPerIn, unit: 'lbf-in/in' },
    ratio: ratio.value,
    level: cracks ? (hasSteel ? 'steel' : 'change') : 'holds',
    words,
    needs: cracks && !hasSteel ? ['steel', 'support', 'thickness', 'corbel'] : [],
    workings: [
      ...concrete.workings,
      ...candidates.map((one) =>
        readingLine({
          symbol: 'M',
          label: `Moment ${one.face === 'top' ? 'hogging' : 'sagging'}, supports at their ${one.state.bound} stiffness, averaged over ${round2(one.moment.averagedOverIn)} in (peak ${round2(one.moment.peakLbfInPerIn)})`,
          value: one.moment.momentLbfInPerIn,
          unit: 'lbf-in/in',
          from: 'plate engine, Kirchhoff plate on one-sided supports (DKT triangle, Batoz, Bathe & Ho 1980)',
        }),
      ),
      ratio.line,
      Mu.line,
      phiMn.line,
    ],
    cautions: [
      'The factored plain strength is printed as information, outside ACI 318-19 chapter 14: plain spans and overhangs are not within that code.',
      ...(cracks ? [] : ['Put steel in all the same: concrete is only as good as the pour.']),
      ...(concrete.strengthAssumed
        ? ['Strength not stated: 3000 psi is assumed for untested concrete (common practice, no source).']
        : []),
    ],
  };
}

function candidatesOf({ elastic }: PieceAnalysis): readonly Candidate[] {
  return [elastic.low, elastic.high].flatMap((state) => [
    { state, face: 'bottom' as const, moment: state.sagging },
    { state, face: 'top' as const, moment: state.hogging },
  ]);
}
