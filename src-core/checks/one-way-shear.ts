/** Shear across the width of the slab, as beside a support. */
import type { BoundState, GoverningShear, PieceAnalysis } from '../analysis';
import {
  designOneWayShear,
  oneWayShear,
  PHI_PLAIN_RATIO,
  PHI_SHEAR_RATIO,
  plainOneWayShear,
  sizeEffect,
  steelRatio,
} from '../concrete';
import type { Worked } from '../workings';
import { formula, readingLine } from '../workings';
import { caseWords, round2 } from './case-words';
import type { Check, CheckContext, CheckRule } from './check';
import { factoredEffect } from './factored';
import { placeWords } from './place-words';
import type { ShearSteel } from './shear-section';
import { shearSection } from './shear-section';
import { standingState } from './steel-demands';

/** Factored shear over strength (a ratio). Vu, phiVn: lbf an inch of width. ACI 318-19 7.5.1.1. */
export const oneWayShearRatio = formula<{ Vu: number; phiVn: number }>({
  symbol: 'ratio',
  label: 'Factored shear over strength',
  formula: 'Vu / phiVn',
  units: { Vu: 'lbf/in', phiVn: 'lbf/in' },
  unit: '',
  source: 'ACI 318-19 7.5.1.1',
  compute: ({ Vu, phiVn }) => Vu / phiVn,
});

/** Factored shear, lbf an inch of width; see `factoredEffect`. */
export const factoredShear = factoredEffect('Vu', 'Factored shear, an inch of width', 'lbf/in');

/** One check a piece: the worse of both stiffness bounds. */
export const oneWayShearRule: CheckRule = {
  id: 'one-way-shear',
  title: 'Shear across the slab',
  run: (context) => {
    const state = standingState(context.analysis);
    const found = [state.low, state.high].flatMap((bound) =>
      bound.shear === null ? [] : [judge(context, bound, bound.shear)],
    );
    const worst = found.reduce<Found | null>(
      (a, b) => (a === null || b.ratio.value > a.ratio.value ? b : a),
      null,
    );
    return worst === null ? [] : [checkOf(context, worst, found)];
  },
};

interface Capacity {
  readonly strength: Worked;
  readonly steps: readonly Worked[];
  readonly bySteel: boolean;
}

interface Found {
  readonly state: BoundState;
  readonly shear: GoverningShear;
  readonly factored: Worked;
  readonly capacity: Capacity;
  readonly ratio: Worked;
}

function judge({ analysis }: CheckContext, state: BoundState, shear: GoverningShear): Found {
  const factored = factoredShear({ D: shear.deadLbfPerIn, S: shear.shearLbfPerIn });
  const capacity = capacityAt(analysis, shear, factored.value);
  const ratio = oneWayShearRatio({ Vu: factored.value, phiVn: capacity.strength.value });
  return { state, shear, factored, capacity, ratio };
}

function checkOf(context: CheckContext, worst: Found, found: readonly Found[]): Check {
  const { state, shear, factored, capacity, ratio } = worst;
  const holds = ratio.value <= 1;
  const place = `${placeWords(context, shear.at)}, under ${caseWords(state, shear.caseId)}`;
  return {
    id: oneWayShearRule.id,
    title: oneWayShearRule.title,
    pieceId: context.analysis.piece.id,
    where: { kind: 'point', at: shear.at },
    demand: { value: factored.value, unit: 'lbf/in' },
    capacity: { value: capacity.strength.value, unit: 'lbf/in' },
    ratio: ratio.value,
    level: holds ? (capacity.bySteel ? 'steel' : 'holds') : 'change',
    words: holds
      ? `It does not shear through: the most is ${place}, and uses ${round2(ratio.value)} of what it can carry.`
      : `It may shear through ${place}: ${round2(ratio.value)} times what it can carry.`,
    needs: holds ? [] : ['thickness', 'support', 'corbel'],
    workings: [
      ...found.map((one) =>
        readingLine({
          symbol: 'V',
          label: `Service shear, supports at their ${one.state.bound} stiffness, away from the edge of the load (of it ${round2(one.shear.deadLbfPerIn)} lasting)`,
          value: one.shear.shearLbfPerIn,
          unit: 'lbf/in',
          from: 'plate engine, slope of the moments (equilibrium of a plate element, Timoshenko & Woinowsky-Krieger)',
        }),
      ),
      factored.line,
      ...capacity.steps.map(({ line }) => line),
      ratio.line,
    ],
    cautions: [],
  };
}

/**
 * Whole concrete counts as plain, with or without steel in it, and by its steel if that is more (it stands because of its steel only
 * where plain would not do); once cracked it counts by its
 * steel, in the weaker direction that has any. Cracked without steel there it can only count as plain: bending says so.
 */
function capacityAt(
  { concrete, piece, ...rest }: PieceAnalysis,
  { at }: GoverningShear,
  factoredLbfPerIn: number,
): Capacity {
  const section = shearSection({ concrete, piece, ...rest }, at);
  const plain = plainOneWayShear({
    phi: PHI_PLAIN_RATIO,
    lambda: concrete.lambda,
    fc: concrete.strengthPsi,
    h: piece.thicknessIn,
  });
  const asPlain: Capacity = { strength: plain, steps: [plain], bySteel: false };
  const ways = section.steel.map((steel) => capacityOf(steel, concrete.lambda, concrete.strengthPsi));
  const [first] = ways;
  const standsPlain = !section.isCracked && plain.value >= factoredLbfPerIn;
  if (first === undefined) return asPlain;
  const weaker = ways.reduce((a, b) => (b.strength.value < a.strength.value ? b : a), first);
  if (section.isCracked) return weaker;
  return weaker.strength.value > plain.value ? { ...weaker, bySteel: !standsPlain } : asPlain;
}

function capacityOf(steel: ShearSteel, lambda: number, fc: number): Capacity {
  const d = steel.depthIn;
  const lambdas = sizeEffect({ d });
  const rhow = steelRatio({ As: steel.areaIn2PerIn, d });
  const Vc = oneWayShear({ lambdas: lambdas.value, lambda, rhow: rhow.value, fc, d });
  const strength = designOneWayShear({ phi: PHI_SHEAR_RATIO, Vc: Vc.value });
  return { strength, steps: [lambdas, rhow, Vc, strength], bySteel: true };
}
