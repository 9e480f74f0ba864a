/** The one point by which a thing is placed in plan. */
import type { Piece, Support } from '../job';
import { pieceOutline } from '../job';
import type { Point } from '../outline';
import {
  areaMoments,
  between,
  boundingBox,
  directionAt,
  isPointOnSlab,
  leftOf,
  moved,
  slabDistanceIn,
} from '../outline';

/** Middle of a support in plan; null for a bed under the whole piece, which has no place of its own. */
export function supportCentre(support: Support): Point | null {
  switch (support.kind) {
    case 'cabinet': {
      const along = directionAt((support.angleDeg * Math.PI) / 180);
      return moved(moved(support.corner, along, support.widthIn / 2), leftOf(along), support.depthIn / 2);
    }
    case 'wall':
    case 'ledger':
      return between(support.from, support.to, 0.5);
    case 'pier':
      return support.footprint.centre;
    case 'leg':
      return support.centre;
    case 'bracket': {
      const reach = directionAt((support.directionDeg * Math.PI) / 180);
      return moved(middleOf(support.roots), reach, support.reachIn / 2);
    }
    case 'full-bed':
      return support.corners === null ? null : middleOf(support.corners);
  }
}

/** Clear slab that a piece's name wants round it, in. */
const ROOM_IN = 4;
const SEARCH_STEPS = 24;

/** A point well inside a piece for its name: the centroid where that lies on the slab, else the place farthest from any edge. */
export function namePoint(piece: Piece): Point {
  const outline = pieceOutline(piece);
  const outer = outline.ok ? outline.outer : piece.corners;
  const region = { outer, holes: [] };
  const centroid = areaMoments(outer)?.centroid ?? middleOf(outer);
  if (isPointOnSlab(centroid, region) && slabDistanceIn(centroid, region) >= ROOM_IN) return centroid;
  const box = boundingBox(outer);
  let best = centroid;
  for (let i = 1; i < SEARCH_STEPS; i++) {
    for (let k = 1; k < SEARCH_STEPS; k++) {
      const at = {
        xIn: box.minXIn + ((box.maxXIn - box.minXIn) * i) / SEARCH_STEPS,
        yIn: box.minYIn + ((box.maxYIn - box.minYIn) * k) / SEARCH_STEPS,
      };
      if (slabDistanceIn(at, region) > slabDistanceIn(best, region)) best = at;
    }
  }
  return best;
}

function middleOf(points: readonly Point[]): Point {
  const box = boundingBox(points);
  return { xIn: (box.minXIn + box.maxXIn) / 2, yIn: (box.minYIn + box.maxYIn) / 2 };
}
