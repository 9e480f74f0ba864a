/** Edge profiles that can be formed: an own profile has its points, and nothing is taller than the slab. */
import { printExactLength } from '../figures';
import type { JobInPlan, PieceInPlan } from '../in-plan';
import type { PieceEdge } from '../piece';
import type { JobProblem } from '../problem';
import { pieceProblem } from './problem-at';

type FreeEdge = Extract<PieceEdge, { kind: 'free' }>;

/** Names profiles without points, points without an own profile, and profiles taller than the slab. */
export function edgeProfiles({ pieces }: JobInPlan): JobProblem[] {
  return pieces.flatMap((at) =>
    (at.piece.edges ?? []).flatMap((edge, i) =>
      edge.kind === 'free' ? [...profilePoints(at, edge, i), ...heights(at, edge, i)] : [],
    ),
  );
}

function profilePoints(at: PieceInPlan, { profile }: FreeEdge, edge: number): JobProblem[] {
  const path = ['edges', edge, 'profile', 'points'];
  const place = `Edge ${edge + 1} of "${at.piece.name}"`;
  const count = profile.points?.length ?? 0;
  if (profile.kind === 'own' && count < 2) {
    const sentence = `${place} has a profile of its own, which needs at least two points; it has ${count}.`;
    return [pieceProblem(at, 'profile-points', path, sentence)];
  }
  if (profile.kind !== 'own' && profile.points !== null) {
    const sentence = `${place} lists profile points, but its profile is ${profile.kind}; only an own profile has points.`;
    return [pieceProblem(at, 'profile-points', path, sentence)];
  }
  return [];
}

function heights(at: PieceInPlan, { profile, dripGroove }: FreeEdge, edge: number): JobProblem[] {
  const { thicknessIn, name } = at.piece;
  const parts: [number, (string | number)[], string][] = [
    [profile.sizeIn ?? 0, ['profile', 'sizeIn'], 'the profile'],
    [dripGroove?.depthIn ?? 0, ['dripGroove', 'depthIn'], 'the drip groove'],
    ...(profile.points ?? []).map(({ upIn }, k): [number, (string | number)[], string] => [
      upIn,
      ['profile', 'points', k, 'upIn'],
      `profile point ${k + 1}`,
    ]),
  ];
  return parts
    .filter(([heightIn]) => heightIn > thicknessIn)
    .map(([heightIn, path, what]) => {
      const sentence = `On edge ${edge + 1} of "${name}" ${what} is ${printExactLength(heightIn, at)} high, more than the slab's ${printExactLength(thicknessIn, at)}.`;
      return pieceProblem(at, 'profile-too-tall', ['edges', edge, ...path], sentence);
    });
}
