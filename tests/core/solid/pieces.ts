/** Pieces for tests of solids. */
import type { JobDraft, Piece, PieceEdge } from '../../../src-core/job';
import { jobOf } from '../../support/pieces';
import type { Dice } from '../../support/seeded-random';

type PieceDraft = JobDraft['pieces'][number];
type EdgeDraft = NonNullable<PieceDraft['edges']>[number];

export const corners = (...pairs: readonly (readonly [number, number, number?])[]) =>
  pairs.map(([xIn, yIn, radiusIn = 0]) => ({ xIn, yIn, radiusIn }));

export const SQUARE: EdgeDraft = { kind: 'free', profile: { kind: 'square' } };
export const WALL: EdgeDraft = { kind: 'wall' };

export const shaped = (kind: string, sizeIn: number | null = null): EdgeDraft =>
  ({ kind: 'free', profile: { kind, sizeIn } }) as EdgeDraft;

/** A piece with the same edge all round where one is given, or an edge each. */
export function pieceWith(
  shape: ReturnType<typeof corners>,
  thicknessIn: number,
  edges: EdgeDraft | readonly EdgeDraft[] = SQUARE,
  more: Partial<PieceDraft> = {},
): Piece {
  const each = Array.isArray(edges) ? [...edges] : shape.map(() => edges as EdgeDraft);
  return jobOf({ corners: shape, thicknessIn, edges: each, ...more }).pieces[0]!;
}

/** Any edge: of every profile, of sizes too small and too large, with and without a groove. */
export function anyEdge(dice: Dice): PieceEdge {
  if (dice.chance(0.2)) return { kind: 'wall', gapIn: 0.125 };
  const kind = dice.pick([
    'square',
    'eased',
    'chamfer',
    'round-over',
    'bullnose',
    'half-bullnose',
    'cove',
    'ogee',
    'stepped',
  ] as const);
  const groove = {
    widthIn: dice.pick([0.25, 0.5]),
    depthIn: dice.pick([0.25, 0.375]),
    setbackIn: dice.pick([0.5, 1]),
  };
  return {
    kind: 'free',
    profile: { kind, sizeIn: dice.pick([null, null, 0.25, 1, 3]), points: null },
    dripGroove: dice.chance(0.4) ? groove : null,
  };
}
