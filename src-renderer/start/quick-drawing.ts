/** A piece as two small drawings, a cut across its depth and its plan: the front at the left of the cut, at the foot of the plan. */
import { overhangDimensions } from '../../src-core/drawing';
import type { Piece } from '../../src-core/job';
import { bearingPatches } from '../../src-core/job';
import type { BoundingBox, Point } from '../../src-core/outline';
import { boundingBox } from '../../src-core/outline';

/** All in px, y down. */
export interface DrawnPoint {
  readonly x: number;
  readonly y: number;
}

/** A line with a mark at each end, and the length that it stands for. */
export interface DrawnLength {
  readonly key: string;
  readonly of: 'overhang' | 'depth' | 'length' | 'thickness';
  readonly from: DrawnPoint;
  readonly to: DrawnPoint;
  readonly lengthIn: number;
}

export interface DrawnView {
  readonly heightPx: number;
  readonly slab: readonly DrawnPoint[];
  /** What the slab lies on; in the cut it goes on down out of the drawing. */
  readonly supports: readonly { readonly key: string; readonly corners: readonly DrawnPoint[] }[];
  readonly lengths: readonly DrawnLength[];
}

export interface QuickDrawing {
  readonly section: DrawnView;
  readonly plan: DrawnView;
}

/** Width of both views, px. */
export const DRAWN_WIDTH_PX = 480;
const SECTION_HEIGHT_PX = 152;
const PLAN_MOST_HEIGHT_PX = 176;
/** Room at the sides of a view for lengths as long as 25-11/16 in, px. */
const SIDE_PX = 88;
/** Room above the cut and below the plan for a line of lengths, px. */
const ROW_PX = 44;
/** Room at the side of a view where nothing is written, px. */
const EDGE_PX = 4;
/** Gap from the slab to a line of lengths, px. */
const BESIDE_PX = 18;
/** A slab is never drawn thinner than this, or a long thin one would be a line, px. */
const THINNEST_PX = 8;
/** A thick, narrow slab leaves the rest of the cut's height to what it stands on. */
const THICKEST_SHARE = 0.4;
/** An overhang that is drawn shorter in plan has no room for its words, px. The cut has every one. */
const LEAST_WRITTEN_PX = 20;

/** Both drawings of a piece; each view is true to scale but for a slab that would be too thin to see. */
export function quickDrawing(piece: Piece): QuickDrawing {
  const box = boundingBox(piece.corners);
  const overhangs = acrossDepth(piece);
  return { section: drawSection(piece, box, overhangs), plan: drawPlan(piece, box, overhangs) };
}

interface AcrossDepth {
  readonly key: string;
  readonly fromYIn: number;
  readonly toYIn: number;
  readonly atXIn: number;
}

/** Overhangs of the front and the back. */
function acrossDepth(piece: Piece): AcrossDepth[] {
  return overhangDimensions(piece)
    .filter(({ from, to }) => Math.abs(to.yIn - from.yIn) > Math.abs(to.xIn - from.xIn))
    .map(({ key, from, to }) => ({ key, fromYIn: from.yIn, toYIn: to.yIn, atXIn: from.xIn }));
}

function drawSection(piece: Piece, box: BoundingBox, overhangs: readonly AcrossDepth[]): DrawnView {
  const depthIn = box.maxYIn - box.minYIn;
  const scale = Math.min(
    (DRAWN_WIDTH_PX - 2 * SIDE_PX) / depthIn,
    (SECTION_HEIGHT_PX * THICKEST_SHARE) / piece.thicknessIn,
  );
  const left = (DRAWN_WIDTH_PX - depthIn * scale) / 2;
  const top = ROW_PX;
  const soffit = top + Math.max(THINNEST_PX, piece.thicknessIn * scale);
  const across = (yIn: number) => left + (yIn - box.minYIn) * scale;
  const right = across(box.maxYIn);
  return {
    heightPx: SECTION_HEIGHT_PX,
    slab: rectangle(left, top, right, soffit),
    supports: piece.supports.flatMap((support) => {
      const touching = bearingPatches(support, piece.corners).flatMap(({ corners }) => corners);
      if (touching.length === 0) return [];
      const { minYIn, maxYIn } = boundingBox(touching);
      const below = SECTION_HEIGHT_PX + EDGE_PX;
      return [{ key: support.id, corners: rectangle(across(minYIn), soffit, across(maxYIn), below) }];
    }),
    lengths: [
      ...overhangs.map(({ key, fromYIn, toYIn }): DrawnLength => {
        const y = top - BESIDE_PX;
        return {
          key,
          of: 'overhang',
          from: { x: across(Math.min(fromYIn, toYIn)), y },
          to: { x: across(Math.max(fromYIn, toYIn)), y },
          lengthIn: Math.abs(toYIn - fromYIn),
        };
      }),
      {
        key: 'thickness',
        of: 'thickness',
        from: { x: right + BESIDE_PX, y: top },
        to: { x: right + BESIDE_PX, y: soffit },
        lengthIn: piece.thicknessIn,
      },
    ],
  };
}

function drawPlan(piece: Piece, box: BoundingBox, overhangs: readonly AcrossDepth[]): DrawnView {
  const lengthIn = box.maxXIn - box.minXIn;
  const depthIn = box.maxYIn - box.minYIn;
  const scale = Math.min(
    (DRAWN_WIDTH_PX - 2 * SIDE_PX) / lengthIn,
    (PLAN_MOST_HEIGHT_PX - ROW_PX - EDGE_PX) / depthIn,
  );
  const left = (DRAWN_WIDTH_PX - lengthIn * scale) / 2;
  const front = EDGE_PX + depthIn * scale;
  const at = ({ xIn, yIn }: Point): DrawnPoint => ({
    x: left + (xIn - box.minXIn) * scale,
    y: front - (yIn - box.minYIn) * scale,
  });
  const written = overhangs.filter(
    ({ fromYIn, toYIn }) => Math.abs(toYIn - fromYIn) * scale >= LEAST_WRITTEN_PX,
  );
  return {
    heightPx: front + ROW_PX,
    slab: piece.corners.map(at),
    supports: piece.supports.flatMap((support) =>
      bearingPatches(support, piece.corners).map(({ part, index, corners }) => ({
        key: `${support.id}-${part}-${index}`,
        corners: corners.map(at),
      })),
    ),
    lengths: [
      ...written.map(
        ({ key, fromYIn, toYIn, atXIn }): DrawnLength => ({
          key,
          of: 'overhang',
          from: at({ xIn: atXIn, yIn: fromYIn }),
          to: at({ xIn: atXIn, yIn: toYIn }),
          lengthIn: Math.abs(toYIn - fromYIn),
        }),
      ),
      {
        key: 'length',
        of: 'length',
        from: { x: left, y: front + BESIDE_PX },
        to: { x: left + lengthIn * scale, y: front + BESIDE_PX },
        lengthIn,
      },
      {
        key: 'depth',
        of: 'depth',
        from: { x: left - BESIDE_PX, y: front },
        to: { x: left - BESIDE_PX, y: EDGE_PX },
        lengthIn: depthIn,
      },
    ],
  };
}

function rectangle(left: number, top: number, right: number, bottom: number): DrawnPoint[] {
  return [
    { x: left, y: top },
    { x: right, y: top },
    { x: right, y: bottom },
    { x: left, y: bottom },
  ];
}

/** Corners as the points of an SVG polygon. */
export function svgPoints(corners: readonly DrawnPoint[]): string {
  return corners.map(({ x, y }) => `${round(x)},${round(y)}`).join(' ');
}

function round(px: number): number {
  return Math.round(px * 100) / 100;
}
