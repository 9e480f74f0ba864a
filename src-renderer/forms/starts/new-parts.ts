/** Joints, equipment, edges and corners that a person adds or changes. */
import type { Job, Piece, PieceEdge } from '../../../src-core/job';
import type { Point } from '../../../src-core/outline';
import { between, boundingBox, clipSegmentToRegion, distanceIn, patchFits } from '../../../src-core/outline';
import { roomiest, slabOf } from './room-on-slab';

type Joint = Piece['joints'][number];
type FixedLoad = Piece['loads']['fixed'][number];

const JOINT_WIDTH_IN = 0.125;
const LOAD_IN = 12;
const LOAD_LB = 60;

/** A control joint across the piece at its middle, from edge to edge the short way. */
export function newJoint(piece: Piece, id: string): Joint {
  const slab = slabOf(piece);
  const box = boundingBox(slab.outer);
  const { at } = roomiest(slab);
  const isWide = box.maxXIn - box.minXIn >= box.maxYIn - box.minYIn;
  const line = isWide
    ? { a: { xIn: at.xIn, yIn: box.minYIn }, b: { xIn: at.xIn, yIn: box.maxYIn } }
    : { a: { xIn: box.minXIn, yIn: at.yIn }, b: { xIn: box.maxXIn, yIn: at.yIn } };
  const pieces = clipSegmentToRegion(line, { outer: slab.outer, holes: [] });
  const through = pieces.find(({ a, b }) => isBetween(at, a, b)) ?? line;
  return { id, kind: 'control', from: through.a, to: through.b, widthIn: JOINT_WIDTH_IN };
}

function isBetween(at: Point, a: Point, b: Point): boolean {
  return distanceIn(a, at) + distanceIn(at, b) <= distanceIn(a, b) + 1e-6;
}

/** Equipment that stands on the slab, made smaller until it stands wholly on it. */
export function newFixedLoad(piece: Piece, id: string): FixedLoad {
  const slab = slabOf(piece);
  const { at } = roomiest(slab);
  let sideIn = LOAD_IN;
  while (sideIn > 0.5 && !patchFits(slab, at, sideIn, sideIn, 0)) sideIn /= 2;
  return {
    id,
    name: 'Equipment',
    centre: at,
    widthIn: sideIn,
    depthIn: sideIn,
    angleDeg: 0,
    weightLb: LOAD_LB,
  };
}

/** An edge as it is where nothing is said of it. */
export const FREE_EDGE: PieceEdge = {
  kind: 'free',
  profile: { kind: 'eased', sizeIn: null, points: null },
  dripGroove: null,
};

/** The edges of a piece, one a corner, also where the job leaves them all free. */
export function edgesOf(piece: Piece): readonly PieceEdge[] {
  return piece.edges ?? piece.corners.map(() => FREE_EDGE);
}

const EDGE_GAP_IN = 0.125;

/** An edge of another kind; wall and butted edges keep their gap. Butts against the nearest other piece of the job. */
export function changeEdge(
  old: PieceEdge,
  kind: PieceEdge['kind'],
  around: { readonly job: Job; readonly piece: Piece },
): PieceEdge {
  if (old.kind === kind) return old;
  const gapIn = old.kind === 'free' ? EDGE_GAP_IN : old.gapIn;
  switch (kind) {
    case 'free':
      return FREE_EDGE;
    case 'wall':
      return { kind, gapIn };
    case 'butted':
      return { kind, gapIn, toPieceId: nearestOther(around.job, around.piece) };
  }
}

/** Id of the piece whose corners lie nearest; the piece itself where it is the only one, which the job then refuses. */
function nearestOther(job: Job, piece: Piece): string {
  const apartIn = (other: Piece) =>
    Math.min(...other.corners.flatMap((a) => piece.corners.map((b) => distanceIn(a, b))));
  const others = job.pieces.filter(({ id }) => id !== piece.id);
  return others.sort((a, b) => apartIn(a) - apartIn(b))[0]?.id ?? piece.id;
}

/** Where a new corner goes: halfway along the longest edge. */
export function newCornerPlace(piece: Piece): { readonly index: number; readonly at: Point } {
  const { corners } = piece;
  const next = (i: number) => corners[(i + 1) % corners.length]!;
  const lengths = corners.map((corner, i) => distanceIn(corner, next(i)));
  const index = lengths.indexOf(Math.max(...lengths));
  return { index, at: between(corners[index]!, next(index), 0.5) };
}
