/** Where a dragged handle comes to rest. */
import type { SnapOptions, SnappedTo } from '../../src-core/drawing';
import { snapDistance, snapPoint } from '../../src-core/drawing';
import type { Point } from '../../src-core/outline';
import { moved } from '../../src-core/outline';
import type { Handle } from './handles';

export interface Grip {
  /** The handle as it was when the drag began. */
  readonly handle: Handle;
  /** Point of the thing that is brought to rest on targets. */
  readonly anchor: Point;
}

export interface SnappedMove {
  /** Where the handle itself goes. */
  readonly to: Point;
  /** "on corner of Bar ledge"; null where the grid alone took it. */
  readonly words: string | null;
}

/** The handle moved by (dxIn, dyIn) since the drag began, snapped. An edge goes only square to itself. */
export function snapMove(
  { handle, anchor }: Grip,
  by: { readonly dxIn: number; readonly dyIn: number },
  options: SnapOptions,
): SnappedMove {
  if (handle.role === 'edge') {
    const outIn = by.dxIn * handle.outward.x + by.dyIn * handle.outward.y;
    const { distanceIn, to } = snapDistance(handle.at, handle.outward, outIn, options);
    const words = to === null ? null : `level with ${to.words}`;
    return { to: moved(handle.at, handle.outward, distanceIn), words };
  }
  const wanted = { xIn: anchor.xIn + by.dxIn, yIn: anchor.yIn + by.dyIn };
  const { at, to } = snapPoint(wanted, options);
  return {
    to: {
      xIn: handle.at.xIn + (at.xIn - anchor.xIn),
      yIn: handle.at.yIn + (at.yIn - anchor.yIn),
    },
    words: snapWords(to),
  };
}

/** What a point was drawn to, in words; null for the grid. */
export function snapWords(to: readonly SnappedTo[]): string | null {
  if (to.length === 0) return null;
  const words = to.map(({ kind, target }) => `${kind === 'on' ? 'on' : 'level with'} ${target.words}`);
  return [...new Set(words)].join(', ');
}

/** The anchor nearest to where the hand took hold. */
export function nearestAnchor(anchors: readonly Point[], hand: Point): Point {
  const away = (p: Point) => Math.hypot(p.xIn - hand.xIn, p.yIn - hand.yIn);
  return anchors.reduce((best, next) => (away(next) < away(best) ? next : best));
}
