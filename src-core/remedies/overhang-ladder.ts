/** A shorter overhang: free edges moved in towards what carries them. */
import type { Piece } from '../job';
import type { Point } from '../outline';
import { directionBetween } from '../outline';
import { edgeLine, reachesOf } from './reach';
import type { Ladder, LadderContext, Step } from './step';
import { ladder } from './step';

const SHORTER_IN = [1, 2, 3, 4, 6];
/** Shortest edge that is left of one that a cut shortens, in. */
const LEAST_EDGE_IN = 1;
const SAME_LINE_SINE = 1e-3;

/** No overhang longer than the longest less 1, 2, 3, 4, 6 in. What no longer fits (openings, loads) is refused by the job's own reading. */
export function overhangLadder(context: LadderContext): Ladder {
  const { piece, analysis } = context;
  const reaches = analysis === null ? [] : reachesOf(piece, analysis);
  const excuse = 'No free edge can be moved in.';
  const longestIn = reaches[0]?.overhangIn ?? 0;
  const run = SHORTER_IN.filter((byIn) => byIn < longestIn - 0.5).flatMap((byIn) => {
    const cuts = reaches.flatMap(({ edge, overhangIn }) =>
      overhangIn > longestIn - byIn + 1e-6 ? [{ edge, byIn: overhangIn - longestIn + byIn }] : [],
    );
    const corners = edgesMovedIn(piece, cuts);
    return corners === null ? [] : [overhangStep(context, corners, byIn, longestIn - byIn)];
  });
  return ladder('shorter-overhang', [[run]], 0, excuse);
}

function overhangStep(
  { piece, print }: LadderContext,
  corners: Piece['corners'],
  byIn: number,
  leftIn: number,
): Step {
  const title = `Overhang ${print.length(byIn)} shorter, ${print.length(leftIn)} in place of ${print.length(leftIn + byIn)}`;
  return {
    kind: 'shorter-overhang',
    piece: { ...piece, corners },
    ratedSupportIds: [],
    words: () => ({ title, parts: 0, partsWords: [] }),
    givesLess: true,
    shortTitle: title,
  };
}

/** Corners with each named edge moved in along its neighbours; null where an edge would vanish or turn round. */
export function edgesMovedIn(
  piece: Piece,
  cuts: readonly { readonly edge: number; readonly byIn: number }[],
): Piece['corners'] | null {
  const n = piece.corners.length;
  const lines = piece.corners.map((_, edge) => {
    const { from, to, inward } = edgeLine(piece, edge);
    const byIn = cuts.find((cut) => cut.edge === edge)?.byIn ?? 0;
    const at: Point = { xIn: from.xIn + inward.x * byIn, yIn: from.yIn + inward.y * byIn };
    return { at, u: directionBetween(from, to), isMoved: byIn > 0 };
  });
  const corners = piece.corners.map((corner, i): Piece['corners'][number] | null => {
    const before = lines[(i + n - 1) % n]!;
    const after = lines[i]!;
    if (!before.isMoved && !after.isMoved) return corner;
    const sine = before.u.x * after.u.y - before.u.y * after.u.x;
    if (Math.abs(sine) < SAME_LINE_SINE) return null;
    const dx = after.at.xIn - before.at.xIn;
    const dy = after.at.yIn - before.at.yIn;
    const along = (dx * after.u.y - dy * after.u.x) / sine;
    return {
      ...corner,
      xIn: withoutNoise(before.at.xIn + before.u.x * along),
      yIn: withoutNoise(before.at.yIn + before.u.y * along),
    };
  });
  if (corners.some((corner) => corner === null)) return null;
  const moved = corners.flatMap((corner) => corner ?? []);
  const keepsShape = moved.every((corner, i) => {
    const next = moved[(i + 1) % n]!;
    const { u } = lines[i]!;
    return (next.xIn - corner.xIn) * u.x + (next.yIn - corner.yIn) * u.y > LEAST_EDGE_IN;
  });
  return keepsShape ? moved : null;
}

/** Drops the rounding of a computed meeting point, far below what a tape shows. */
function withoutNoise(valueIn: number): number {
  return Math.round(valueIn * 1e6) / 1e6;
}
