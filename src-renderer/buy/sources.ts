/** From a number of the take-off to the part of the drawing that it comes from. */
import { supportCentre } from '../../src-core/drawing';
import type { Job, Piece } from '../../src-core/job';
import { cutoutInPlan } from '../../src-core/job';
import type { Point } from '../../src-core/outline';
import { between, boundingBox } from '../../src-core/outline';
import type { Trace } from '../../src-core/trace';
import type { Selection } from '../state/selection';

/**
 * What plan and model pick out for a trace: the part, its piece where the part is gone since, null where the piece is. A section of the
 * falsework has no shape of its own in either view, so its piece is picked out.
 */
export function selectionOf({ pieces }: Job, { pieceId, part }: Trace): Selection | null {
  const piece = pieces.find(({ id }) => id === pieceId);
  if (piece === undefined) return null;
  return { pieceId, part: part.kind !== 'section' && hasPart(piece, part) ? part : { kind: 'piece' } };
}

function hasPart(piece: Piece, part: Trace['part']): boolean {
  const has = (things: readonly { readonly id: string }[], id: string) =>
    things.some((thing) => thing.id === id);
  switch (part.kind) {
    case 'piece':
      return true;
    case 'corner':
    case 'edge':
      return part.index < piece.corners.length;
    case 'cutout':
      return has(piece.cutouts, part.id);
    case 'support':
      return has(piece.supports, part.id);
    case 'steel':
      return has(piece.reinforcement, part.id);
    case 'joint':
      return has(piece.joints, part.id);
    case 'section':
      return false;
  }
}

/** Where both views are sent for a trace; null for the whole piece, or a part that the drawing does not have any more. */
export function placeOf({ pieces }: Job, { pieceId, part }: Trace): Point | null {
  const piece = pieces.find(({ id }) => id === pieceId);
  return piece === undefined ? null : placeIn(piece, part);
}

function placeIn(piece: Piece, part: Trace['part']): Point | null {
  switch (part.kind) {
    case 'piece':
    case 'section':
    case 'steel':
      return null;
    case 'corner':
      return pointOf(piece.corners[part.index]);
    case 'edge': {
      const a = piece.corners[part.index];
      const b = piece.corners[(part.index + 1) % piece.corners.length];
      return a === undefined || b === undefined ? null : between(a, b, 0.5);
    }
    case 'cutout': {
      const index = piece.cutouts.findIndex(({ id }) => id === part.id);
      const outline = index < 0 ? null : cutoutInPlan(piece, index);
      if (outline?.ok !== true) return null;
      const { minXIn, maxXIn, minYIn, maxYIn } = boundingBox(outline.points);
      return { xIn: (minXIn + maxXIn) / 2, yIn: (minYIn + maxYIn) / 2 };
    }
    case 'support': {
      const support = piece.supports.find(({ id }) => id === part.id);
      return support === undefined ? null : supportCentre(support);
    }
    case 'joint': {
      const joint = piece.joints.find(({ id }) => id === part.id);
      return joint === undefined ? null : between(joint.from, joint.to, 0.5);
    }
  }
}

function pointOf(corner: Point | undefined): Point | null {
  return corner === undefined ? null : { xIn: corner.xIn, yIn: corner.yIn };
}
