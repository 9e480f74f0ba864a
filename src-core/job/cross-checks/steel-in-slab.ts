/** Mesh and bars lie within the concrete, in depth and in plan, and a bar's area is that of a bar. */
import { printArea, printExactLength } from '../figures';
import type { JobInPlan, PieceInPlan } from '../in-plan';
import { areaBeyondIn2, polygonAreaIn2, polygonFault } from '../in-plan';
import type { Reinforcement } from '../piece';
import type { JobProblem } from '../problem';
import { steelRange } from '../steel-sets';
import { pieceProblem } from './problem-at';

type Layer = Extract<Reinforcement, { kind: 'mesh' | 'bars' }>;
type Bars = Extract<Reinforcement, { kind: 'bars' }>;

/** A ribbed bar's nominal area and its diameter agree within a few per cent; more is a slip. */
const AREA_SHARE = 0.2;
/** Corners of a bar field this far beyond the outline, as an area, are a rounding. */
const SLACK_SHARE = 0.005;
const ROUNDING_IN = 1e-6;

/** Names steel that would stick out of the slab, and bar areas that fit no bar. */
export function steelInSlab({ pieces }: JobInPlan): JobProblem[] {
  return pieces.flatMap((at) => at.piece.reinforcement.flatMap((steel, i) => oneSteel(at, steel, i)));
}

function oneSteel(at: PieceInPlan, steel: Reinforcement, index: number): JobProblem[] {
  switch (steel.kind) {
    case 'mesh':
      return depth(at, index, steel);
    case 'bars':
      return [...depth(at, index, steel), ...barArea(at, index, steel), ...barField(at, index, steel)];
    case 'fabric':
    case 'fibre':
      return [];
  }
}

function depth(at: PieceInPlan, index: number, steel: Layer): JobProblem[] {
  const { thicknessIn, name } = at.piece;
  const range = steelRange(steel);
  if (range === null) return [];
  const [overIn, underIn] = [range.fromIn, thicknessIn - range.toIn];
  if (overIn >= -ROUNDING_IN && underIn >= -ROUNDING_IN) return [];
  const face = overIn < underIn ? 'top' : 'bottom';
  const called = `${steel.kind === 'mesh' ? 'Mesh' : 'Bars'} "${steel.id}"`;
  const sentence = `${called} at ${printExactLength(steel.depthIn, at)} below the top would stick out of the ${face} of "${name}", which is ${printExactLength(thicknessIn, at)} thick.`;
  return [pieceProblem(at, 'steel-outside-depth', ['reinforcement', index, 'depthIn'], sentence)];
}

function barArea(at: PieceInPlan, index: number, { id, barIn, areaIn2 }: Bars): JobProblem[] {
  const roundIn2 = (Math.PI / 4) * barIn ** 2;
  if (Math.abs(areaIn2 / roundIn2 - 1) <= AREA_SHARE) return [];
  const about = printArea(roundIn2, { system: at.system, digits: 3 });
  const given = printArea(areaIn2, at);
  const thick = printExactLength(barIn, at);
  const sentence = `Bars "${id}" of "${at.piece.name}" are ${thick} thick, which is about ${about} each; their area is given as ${given}.`;
  return [pieceProblem(at, 'bar-area-wrong', ['reinforcement', index, 'areaIn2'], sentence)];
}

function barField(at: PieceInPlan, index: number, { id, corners }: Bars): JobProblem[] {
  if (corners === null || at.region === null) return [];
  const path = ['reinforcement', index, 'corners'];
  const called = `The field of bars "${id}" of "${at.piece.name}"`;
  const fault = polygonFault(corners);
  if (fault !== null)
    return [pieceProblem(at, 'bars-outside-slab', path, `${called} cannot be drawn: ${fault}`)];
  if (areaBeyondIn2(corners, at.region) <= SLACK_SHARE * polygonAreaIn2(corners)) return [];
  return [pieceProblem(at, 'bars-outside-slab', path, `${called} reaches beyond the outline.`)];
}
