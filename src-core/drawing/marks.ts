/** What a plan marks besides lengths: inside corners, where cracks begin, and seams, where concrete meets concrete. */
import type { Job, Piece } from '../job';
import type { Point, Segment } from '../outline';
import { insideCorners, moved, outlineEdges, TOUCH_IN } from '../outline';

/** A corner counts as an inside corner from this turn beyond straight, as in the load check, rad. */
const INSIDE_TURN_RAD = 0.1;
/** Butted edges farther apart than their gap and this do not meet, in. */
const SEAM_REACH_IN = 1 / 4;

export interface InsideCornerMark {
  readonly corner: number;
  readonly at: Point;
}

export interface SeamMark {
  readonly key: string;
  readonly kind: 'butted' | 'control' | 'isolation' | 'construction';
  readonly from: Point;
  readonly to: Point;
  readonly widthIn: number;
  /** "Butted to Serving counter", "Control joint". */
  readonly words: string;
}

/** Inside corners of the outline as drawn. */
export function insideCornerMarks(piece: Piece): InsideCornerMark[] {
  return insideCorners(piece.corners, INSIDE_TURN_RAD).map(({ corner, at }) => ({
    corner,
    at: { xIn: at.xIn, yIn: at.yIn },
  }));
}

/** Joints of a piece, and of each butted edge the stretch over which the other piece lies along it. */
export function seamMarks(job: Job, piece: Piece): SeamMark[] {
  const joints = piece.joints.map(
    ({ id, kind, from, to, widthIn }): SeamMark => ({
      key: `joint-${id}`,
      kind,
      from,
      to,
      widthIn,
      words: `${kind.charAt(0).toUpperCase()}${kind.slice(1)} joint`,
    }),
  );
  const butted = outlineEdges(piece.corners).flatMap((own): SeamMark[] => {
    const edge = piece.edges?.[own.edge];
    if (edge?.kind !== 'butted') return [];
    const other = job.pieces.find(({ id }) => id === edge.toPieceId);
    const shared = other === undefined ? null : sharedStretch(own, other, edge.gapIn + SEAM_REACH_IN);
    if (other === undefined || shared === null) return [];
    return [
      {
        key: `butted-${own.edge}`,
        kind: 'butted',
        from: shared.a,
        to: shared.b,
        widthIn: edge.gapIn,
        words: `Butted to ${other.name}`,
      },
    ];
  });
  return [...joints, ...butted];
}

/** The longest stretch of an edge along which an edge of another piece faces it within reach. */
function sharedStretch(
  own: ReturnType<typeof outlineEdges>[number],
  other: Piece,
  reachIn: number,
): Segment | null {
  const along = (p: Point) => (p.xIn - own.a.xIn) * own.direction.x + (p.yIn - own.a.yIn) * own.direction.y;
  const off = (p: Point) => Math.abs((p.xIn - own.a.xIn) * own.inward.x + (p.yIn - own.a.yIn) * own.inward.y);
  let best: { readonly fromIn: number; readonly toIn: number } | null = null;
  for (const { a, b } of outlineEdges(other.corners)) {
    if (off(a) > reachIn || off(b) > reachIn) continue;
    const fromIn = Math.max(0, Math.min(along(a), along(b)));
    const toIn = Math.min(own.lengthIn, Math.max(along(a), along(b)));
    if (toIn - fromIn <= TOUCH_IN) continue;
    if (best === null || toIn - fromIn > best.toIn - best.fromIn) best = { fromIn, toIn };
  }
  if (best === null) return null;
  return { a: moved(own.a, own.direction, best.fromIn), b: moved(own.a, own.direction, best.toIn) };
}
