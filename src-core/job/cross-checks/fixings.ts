/** A bracket's fixing and arm can be made: the counts agree, and no wall is thicker than half its section. */
import { printExactLength } from '../figures';
import type { JobInPlan, PieceInPlan } from '../in-plan';
import type { JobProblem } from '../problem';
import type { ArmSection, BracketSupport } from '../support';
import { pieceProblem, supportWords } from './problem-at';

/** Names fixings with more fasteners in a row than in all, rows above the heel, and sections without a hollow. */
export function fixings({ pieces }: JobInPlan): JobProblem[] {
  return pieces.flatMap((at) =>
    at.piece.supports.flatMap((support, i) =>
      support.kind === 'bracket' ? [...counts(at, support, i), ...walls(at, support, i)] : [],
    ),
  );
}

function counts(at: PieceInPlan, bracket: BracketSupport, index: number): JobProblem[] {
  const { fixing } = bracket;
  if (fixing.kind === 'rated') return [];
  const called = `The ${supportWords(bracket)}`;
  const path = ['supports', index, 'fixing'];
  const problems: JobProblem[] = [];
  if (fixing.topCount > fixing.totalCount) {
    const sentence = `${called} has ${fixing.topCount} fasteners in its top row but only ${fixing.totalCount} in all.`;
    problems.push(pieceProblem(at, 'fixing-count', [...path, 'topCount'], sentence));
  }
  if (fixing.leverIn > bracket.heelIn) {
    const sentence = `${called} has its top row ${printExactLength(fixing.leverIn, at)} above the toe of a heel only ${printExactLength(bracket.heelIn, at)} high.`;
    problems.push(pieceProblem(at, 'fixing-count', [...path, 'leverIn'], sentence));
  }
  return problems;
}

function walls(at: PieceInPlan, bracket: BracketSupport, index: number): JobProblem[] {
  const limit = wallLimit(bracket.arm);
  if (limit === null || limit.wallIn <= limit.mostIn) return [];
  const sentence = `The ${supportWords(bracket)} has an arm with a wall of ${printExactLength(limit.wallIn, at)}; its section allows at most ${printExactLength(limit.mostIn, at)}.`;
  return [pieceProblem(at, 'wall-too-thick', ['supports', index, 'arm', 'wallIn'], sentence)];
}

function wallLimit(arm: ArmSection): { wallIn: number; mostIn: number } | null {
  switch (arm.kind) {
    case 'tube':
      return { wallIn: arm.wallIn, mostIn: Math.min(arm.widthIn, arm.depthIn) / 2 };
    case 'angle':
      return { wallIn: arm.wallIn, mostIn: Math.min(arm.legWidthIn, arm.legDepthIn) / 2 };
    case 'tee':
      return { wallIn: arm.wallIn, mostIn: Math.min(arm.flangeWidthIn, arm.depthIn) / 2 };
    case 'flat-bar':
    case 'knee-brace':
      return null;
  }
}
