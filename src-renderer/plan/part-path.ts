import { supportCentre } from '../../src-core/drawing';
import type { Piece } from '../../src-core/job';
import { bearingPatches, cutoutInPlan, pieceOutline } from '../../src-core/job';
import { patchOutline } from '../../src-core/outline';
import type { Part } from '../state/selection';
import { dotPath, linePath, loopsPath } from './paths';

/** SVG path, in inches, of a part of a piece; empty where the piece has no such part, or where it fills the piece. */
export function partPath(piece: Piece, part: Part): string {
  switch (part.kind) {
    case 'piece': {
      const outline = pieceOutline(piece);
      return loopsPath([outline.ok ? outline.outer : piece.corners]);
    }
    case 'corner': {
      const corner = piece.corners[part.index];
      return corner === undefined ? '' : dotPath(corner);
    }
    case 'edge': {
      const a = piece.corners[part.index];
      const b = piece.corners[(part.index + 1) % piece.corners.length];
      return a === undefined || b === undefined ? '' : linePath([a, b]);
    }
    case 'cutout': {
      const index = piece.cutouts.findIndex(({ id }) => id === part.id);
      const outline = index < 0 ? null : cutoutInPlan(piece, index);
      return outline?.ok === true ? loopsPath([outline.points]) : '';
    }
    case 'support': {
      const support = piece.supports.find(({ id }) => id === part.id);
      if (support === undefined || supportCentre(support) === null) return '';
      return loopsPath(bearingPatches(support, piece.corners).map(({ corners }) => corners));
    }
    case 'load': {
      const load = piece.loads.fixed.find(({ id }) => id === part.id);
      if (load === undefined) return '';
      const angleRad = (load.angleDeg * Math.PI) / 180;
      return loopsPath([patchOutline(load.centre, load.widthIn, load.depthIn, angleRad)]);
    }
    case 'joint': {
      const joint = piece.joints.find(({ id }) => id === part.id);
      return joint === undefined ? '' : linePath([joint.from, joint.to]);
    }
    case 'steel': {
      const steel = piece.reinforcement.find(({ id }) => id === part.id);
      return steel?.kind === 'bars' && steel.corners !== null ? loopsPath([steel.corners]) : '';
    }
  }
}
