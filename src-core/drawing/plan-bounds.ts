import type { Job, Piece } from '../job';
import { bearingPatches } from '../job';
import type { BoundingBox } from '../outline';
import { boundingBox } from '../outline';

/** Smallest upright rectangle in plan round a piece and all that it stands on. */
export function piecePlanBounds(piece: Piece): BoundingBox {
  const supports = piece.supports.flatMap((support) => bearingPatches(support, piece.corners));
  return boundingBox([...piece.corners, ...supports.flatMap(({ corners }) => corners)]);
}

/** Smallest upright rectangle in plan round every piece of a job and all that they stand on. */
export function planBounds(job: Job): BoundingBox {
  return job.pieces.map(piecePlanBounds).reduce((all, box) => ({
    minXIn: Math.min(all.minXIn, box.minXIn),
    minYIn: Math.min(all.minYIn, box.minYIn),
    maxXIn: Math.max(all.maxXIn, box.maxXIn),
    maxYIn: Math.max(all.maxYIn, box.maxYIn),
  }));
}
