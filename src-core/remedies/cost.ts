/** What a change costs: weight and concrete of the slab, and the parts to buy or make. */
import type { Job, Piece, Reinforcement } from '../job';
import { pieceRegion } from '../job';
import { polygonAreaIn2, regionAreaIn2 } from '../outline';
import type { ChangeCost } from './change';
import type { StepWords } from './step';

/** Weight of steel, lb/in3: 490 lb/ft3 (AISC Manual Table 17-12, from memory). */
const STEEL_LB_PER_IN3 = 490 / 1728;
const IN3_PER_FT3 = 1728;

/** Difference of two states of one piece, weights of one copy of it: slab and steel, without what the supports weigh. */
export function costOf(job: Job, before: Piece, after: Piece, words: readonly StepWords[]): ChangeCost {
  const was = sizeOf(before);
  const is = sizeOf(after);
  const densityPcf = job.mixes.find(({ id }) => id === after.mixId)?.densityPcf ?? 0;
  const concreteIn3 = is.concreteIn3 - was.concreteIn3;
  return {
    weightLb: (concreteIn3 / IN3_PER_FT3) * densityPcf + is.steelLb - was.steelLb,
    concreteIn3,
    parts: words.reduce((sum, { parts }) => sum + parts, 0),
    partsWords: words.flatMap(({ partsWords }) => partsWords),
  };
}

function sizeOf(piece: Piece): { concreteIn3: number; steelLb: number } {
  const plan = pieceRegion(piece);
  if (!plan.ok) throw new Error(`piece ${piece.id} has an outline that cannot be used`);
  const areaIn2 = regionAreaIn2(plan);
  const steelLb = piece.reinforcement.reduce((sum, steel) => sum + steelWeightLb(steel, areaIn2), 0);
  return { concreteIn3: areaIn2 * piece.thicknessIn, steelLb };
}

function steelWeightLb(steel: Reinforcement, slabAreaIn2: number): number {
  switch (steel.kind) {
    case 'bars': {
      const areaIn2 = steel.corners === null ? slabAreaIn2 : polygonAreaIn2(steel.corners);
      return (steel.areaIn2 / steel.spacingIn) * areaIn2 * STEEL_LB_PER_IN3;
    }
    case 'mesh': {
      const wire = (diameterIn: number, spacingIn: number) => (Math.PI * diameterIn ** 2) / 4 / spacingIn;
      const perIn = wire(steel.wireIn, steel.spacingIn) + wire(steel.crossWireIn, steel.crossSpacingIn);
      return perIn * slabAreaIn2 * STEEL_LB_PER_IN3;
    }
    case 'fabric':
    case 'fibre':
      return 0;
  }
}
