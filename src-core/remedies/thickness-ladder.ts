/** A thicker slab: half an inch at a time, steel in the lower half keeping its cover below. */
import type { Piece, Reinforcement } from '../job';
import type { Ladder, LadderContext, Step, StepWords } from './step';
import { counted, ladder } from './step';

const STEP_IN = 0.5;
/** Yield of a bag where the mix names none: an 80 lb bag, ft3. Common practice, no source. */
const BAG_FT3 = 0.6;
const IN3_PER_FT3 = 1728;

/** From half an inch more up to the thickest that is decided here. The soffit stays where it is; the top comes up. */
export function thicknessLadder(context: LadderContext): Ladder {
  const { piece, limits } = context;
  const run: Step[] = [];
  for (
    let thicknessIn = nextHalf(piece.thicknessIn);
    thicknessIn <= limits.thickestIn + 1e-9;
    thicknessIn += STEP_IN
  ) {
    run.push(thicknessStep(context, thicknessIn));
  }
  const first = run[0];
  const least = first === undefined ? 0 : bagsMore(context, first.piece.thicknessIn - piece.thicknessIn);
  return ladder('thickness', [[run]], least, 'It is as thick as is decided here.');
}

function nextHalf(thicknessIn: number): number {
  return (Math.floor(thicknessIn / STEP_IN + 1e-9) + 1) * STEP_IN;
}

function thicknessStep(context: LadderContext, thicknessIn: number): Step {
  const { piece, print } = context;
  const addedIn = thicknessIn - piece.thicknessIn;
  const title = `${print.length(thicknessIn)} thick instead of ${print.length(piece.thicknessIn)}`;
  const bags = bagsMore(context, addedIn);
  const words: StepWords = {
    title: `${title}; the top comes up ${print.length(addedIn)}`,
    parts: bags,
    partsWords: [`${counted(bags, 'more bag')} of concrete`],
  };
  return {
    kind: 'thickness',
    piece: thicker(piece, thicknessIn),
    ratedSupportIds: [],
    words: () => words,
    givesLess: false,
    shortTitle: title,
  };
}

/** The piece at another thickness: top up, soffit kept, steel below the middle moved down with the soffit. */
export function thicker(piece: Piece, thicknessIn: number): Piece {
  const addedIn = thicknessIn - piece.thicknessIn;
  return {
    ...piece,
    thicknessIn,
    topElevationIn: piece.topElevationIn + addedIn,
    reinforcement: piece.reinforcement.map((steel) => keepBottomCover(steel, piece.thicknessIn, addedIn)),
  };
}

function keepBottomCover(steel: Reinforcement, thicknessIn: number, addedIn: number): Reinforcement {
  if (steel.kind !== 'bars' && steel.kind !== 'mesh') return steel;
  return steel.depthIn >= thicknessIn / 2 ? { ...steel, depthIn: steel.depthIn + addedIn } : steel;
}

function bagsMore({ job, piece, analysis }: LadderContext, addedIn: number): number {
  const mix = job.mixes.find(({ id }) => id === piece.mixId);
  const bagFt3 = mix?.bag?.yieldFt3 ?? BAG_FT3;
  const addedFt3 = ((analysis?.weight.areaIn2 ?? 0) * addedIn) / IN3_PER_FT3;
  return Math.max(1, Math.ceil(addedFt3 / bagFt3 - 1e-9));
}
