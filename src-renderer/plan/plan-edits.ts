/** What a hand in the plan asks of the job, as commands of the core with their arguments. */
import type { Dimension } from '../../src-core/drawing';
import type { PartRef } from '../../src-core/edit';
import {
  moveCorner,
  moveCutout,
  moveEdge,
  moveLoad,
  movePiece,
  moveSupport,
  moveSupportEnd,
  removeCorner,
  removePart,
  removePiece,
  resizeCutout,
  resizeSupport,
  setEdgeLength,
} from '../../src-core/edit';
import type { JobProblem, Piece } from '../../src-core/job';
import type { Direction, Point } from '../../src-core/outline';
import { leftOf, moved } from '../../src-core/outline';
import type { WindowState } from '../state/window-store';
import type { Handle } from './handles';

/** A command ready to run; what it refuses comes back. */
export type PlanEdit = (run: WindowState['run']) => readonly JobProblem[];

/** Moves under this are none, in. */
const STILL_IN = 1e-9;
/** Smallest opening that a drag makes, in. */
const LEAST_SIZE_IN = 0.25;

/** Takes a handle of a piece to a point; null where that moves nothing. */
export function moveHandleTo(piece: Piece, handle: Handle, to: Point): PlanEdit | null {
  const dxIn = to.xIn - handle.at.xIn;
  const dyIn = to.yIn - handle.at.yIn;
  if (Math.hypot(dxIn, dyIn) < STILL_IN) return null;
  const pieceId = piece.id;
  const id = 'id' in handle.part ? handle.part.id : '';
  switch (handle.role) {
    case 'piece':
      return (run) => run(movePiece, { pieceId, dxIn, dyIn });
    case 'corner':
      return (run) => run(moveCorner, { pieceId, index: handle.index, to });
    case 'edge': {
      const toIn = dxIn * handle.outward.x + dyIn * handle.outward.y;
      if (Math.abs(toIn) < STILL_IN) return null;
      return (run) => run(moveEdge, { pieceId, index: handle.index, toIn });
    }
    case 'cutout':
      return (run) => run(moveCutout, { pieceId, id, to });
    case 'cutout-size': {
      const size = sizeAt(handle, to);
      return (run) => run(resizeCutout, { pieceId, id, ...size });
    }
    case 'support':
      return (run) => run(moveSupport, { pieceId, id, dxIn, dyIn });
    case 'support-end':
      return (run) => run(moveSupportEnd, { pieceId, id, end: handle.end, to });
    case 'load':
      return (run) => run(moveLoad, { pieceId, id, to });
  }
}

/** Takes out what a handle stands for; null for an edge, which goes only with a corner. */
export function removeHandle(piece: Piece, handle: Handle): PlanEdit | null {
  const pieceId = piece.id;
  const { part } = handle;
  switch (part.kind) {
    case 'piece':
      return (run) => run(removePiece, { pieceId });
    case 'corner':
      return (run) => run(removeCorner, { pieceId, index: part.index });
    case 'edge':
      return null;
    case 'cutout':
    case 'support':
    case 'load':
    case 'steel':
    case 'joint': {
      const named: PartRef = { kind: part.kind, id: part.id };
      return (run) => run(removePart, { pieceId, part: named });
    }
  }
}

/** Gives a dimension another length; null where it only informs or nothing changes. */
export function setDimension(pieceId: string, dimension: Dimension, lengthIn: number): PlanEdit | null {
  const { sets } = dimension;
  const byIn = lengthIn - dimension.lengthIn;
  if (sets === null || Math.abs(byIn) < STILL_IN) return null;
  switch (sets.kind) {
    case 'edge-length':
      return (run) => run(setEdgeLength, { pieceId, index: sets.index, lengthIn });
    case 'edge-place':
      return (run) => run(moveEdge, { pieceId, index: sets.index, toIn: byIn });
    case 'cutout-place':
      return (run) => run(moveCutout, { pieceId, id: sets.id, to: moved(sets.centre, sets.along, byIn) });
    case 'cutout-size': {
      const widthIn = sets.side === 'depth' ? sets.widthIn : lengthIn;
      const depthIn = sets.side === 'width' ? sets.depthIn : lengthIn;
      return (run) => run(resizeCutout, { pieceId, id: sets.id, widthIn, depthIn });
    }
    case 'support-place':
      return (run) =>
        run(moveSupport, { pieceId, id: sets.id, dxIn: sets.along.x * byIn, dyIn: sets.along.y * byIn });
    case 'support-width':
      return (run) => run(resizeSupport, { pieceId, id: sets.id, widthIn: lengthIn, depthIn: sets.depthIn });
  }
}

/** Size of a cutout about its middle when its sizing handle stands at a point, in. */
export function sizeAt(
  handle: { readonly centre: Point; readonly along: Direction; readonly isRound: boolean },
  to: Point,
): { readonly widthIn: number; readonly depthIn: number } {
  const x = to.xIn - handle.centre.xIn;
  const y = to.yIn - handle.centre.yIn;
  const back = leftOf(handle.along);
  const widthIn = Math.max(LEAST_SIZE_IN, 2 * (x * handle.along.x + y * handle.along.y));
  const depthIn = Math.max(LEAST_SIZE_IN, -2 * (x * back.x + y * back.y));
  return { widthIn, depthIn: handle.isRound ? widthIn : depthIn };
}
