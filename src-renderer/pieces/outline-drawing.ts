/** A piece as a small drawing of its own outline, the front at the bottom. */
import type { Piece } from '../../src-core/job';
import { pieceRegion } from '../../src-core/job';
import type { Point } from '../../src-core/outline';
import { boundingBox } from '../../src-core/outline';

export interface OutlineDrawing {
  /** Outline and openings as one path in px, y down. */
  readonly path: string;
}

/** A slab that is long and thin keeps at least this much of the box, so that it can be seen, px. */
const LEAST_PX = 3;
/** Corners that all lie in a line make no box to fit; this keeps the scale finite, in. */
const LEAST_IN = 0.01;

/**
 * The piece fitted into a box of `widthPx` by `heightPx`, true to its shape and centred. Where the outline cannot be built its
 * corners are joined as they are. Only a sliver is drawn thicker than it is.
 */
export function outlineDrawing(piece: Piece, widthPx: number, heightPx: number): OutlineDrawing {
  const plan = pieceRegion(piece);
  const outer: readonly Point[] = plan.ok ? plan.outer : piece.corners;
  const holes = plan.ok ? plan.holes : [];
  const box = boundingBox(outer);
  const acrossIn = Math.max(LEAST_IN, box.maxXIn - box.minXIn);
  const upIn = Math.max(LEAST_IN, box.maxYIn - box.minYIn);
  const scale = Math.min(widthPx / acrossIn, heightPx / upIn);
  const scaleX = Math.max(scale, Math.min(LEAST_PX, widthPx) / acrossIn);
  const scaleY = Math.max(scale, Math.min(LEAST_PX, heightPx) / upIn);
  const place = ({ xIn, yIn }: Point) => {
    const x = (widthPx - acrossIn * scaleX) / 2 + (xIn - box.minXIn) * scaleX;
    const y = (heightPx + upIn * scaleY) / 2 - (yIn - box.minYIn) * scaleY;
    return `${Math.round(x * 100) / 100} ${Math.round(y * 100) / 100}`;
  };
  const loop = (points: readonly Point[]) => `M${points.map(place).join('L')}Z`;
  return { path: [outer, ...holes].map(loop).join('') };
}
