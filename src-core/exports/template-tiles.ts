/** How a full-size drawing is shared out over sheets that overlap. */

import type { PaperSize } from '../figure';
import type { BoundingBox, Point, Segment } from '../outline';
import { clipSegmentToRegion } from '../outline';
import { CROSS_HALF_IN, OVERLAP_IN, PAPER_MARGIN_IN, TEMPLATE_BAND_IN } from './practice';

/** What one page shows, in the coordinates of the drawing. */
export interface Tile {
  /** From the left, and from the front; both from 0. */
  readonly column: number;
  readonly row: number;
  readonly box: BoundingBox;
}

export interface PageCounts {
  readonly columns: number;
  readonly rows: number;
}

export interface Tiling {
  /** Pages that part of the outline lies on, front row first. */
  readonly tiles: readonly Tile[];
  /** Where crosses are printed, on every page that holds them whole; each is on two pages at least. */
  readonly crosses: readonly Point[];
}

/** Width and depth of the drawing that a page holds, in. */
function tileSizeIn({ widthIn, heightIn }: PaperSize): {
  readonly widthIn: number;
  readonly depthIn: number;
} {
  return {
    widthIn: widthIn - 2 * PAPER_MARGIN_IN,
    depthIn: heightIn - 2 * PAPER_MARGIN_IN - TEMPLATE_BAND_IN,
  };
}

/** Pages across and deep that a drawing takes. */
export function pageCounts(bounds: BoundingBox, paper: PaperSize): PageCounts {
  const { widthIn, depthIn } = tileSizeIn(paper);
  return {
    columns: countOf(bounds.maxXIn - bounds.minXIn, widthIn),
    rows: countOf(bounds.maxYIn - bounds.minYIn, depthIn),
  };
}

/**
 * Pages over `bounds`, beginning at its left and front, so that what room is left lies to the right and the back. Pages that no part of
 * `outline` lies on are left out.
 */
export function tilesOver(bounds: BoundingBox, outline: readonly Segment[], paper: PaperSize): Tiling {
  const { widthIn, depthIn } = tileSizeIn(paper);
  const { columns, rows } = pageCounts(bounds, paper);
  const boxAt = (column: number, row: number): BoundingBox => {
    const minXIn = bounds.minXIn + column * (widthIn - OVERLAP_IN);
    const minYIn = bounds.minYIn + row * (depthIn - OVERLAP_IN);
    return { minXIn, minYIn, maxXIn: minXIn + widthIn, maxYIn: minYIn + depthIn };
  };
  const tiles = Array.from({ length: columns * rows }, (_, i): Tile => {
    const [column, row] = [i % columns, Math.floor(i / columns)];
    return { column, row, box: boxAt(column, row) };
  }).filter(({ box }) => outline.some((side) => clipped(side, box) !== null));
  const crosses = tiles.flatMap(({ column, row, box }) => [
    ...(column > 0 ? crossesBetween(box, 'left') : []),
    ...(row > 0 ? crossesBetween(box, 'front') : []),
  ]);
  return { tiles, crosses: crosses.filter((at) => pagesWith(at, tiles) > 1) };
}

/** Whether a cross lies whole on a page. */
export function holdsCross({ minXIn, minYIn, maxXIn, maxYIn }: BoundingBox, { xIn, yIn }: Point): boolean {
  return (
    xIn - CROSS_HALF_IN > minXIn &&
    xIn + CROSS_HALF_IN < maxXIn &&
    yIn - CROSS_HALF_IN > minYIn &&
    yIn + CROSS_HALF_IN < maxYIn
  );
}

/** The part of a segment within a box, or null. */
export function clipped(segment: Segment, box: BoundingBox): Segment | null {
  const { minXIn, minYIn, maxXIn, maxYIn } = box;
  const { a, b } = segment;
  const isBeside =
    Math.max(a.xIn, b.xIn) < minXIn ||
    Math.min(a.xIn, b.xIn) > maxXIn ||
    Math.max(a.yIn, b.yIn) < minYIn ||
    Math.min(a.yIn, b.yIn) > maxYIn;
  if (isBeside) return null;
  const outer = [
    { xIn: minXIn, yIn: minYIn },
    { xIn: maxXIn, yIn: minYIn },
    { xIn: maxXIn, yIn: maxYIn },
    { xIn: minXIn, yIn: maxYIn },
  ];
  return clipSegmentToRegion(segment, { outer, holes: [] })[0] ?? null;
}

function countOf(wantedIn: number, tileIn: number): number {
  return Math.max(1, Math.ceil((wantedIn - OVERLAP_IN) / (tileIn - OVERLAP_IN) - 1e-9));
}

/** Two crosses, in the middle of the strip that a page shares with the one to its left or in front of it. */
function crossesBetween({ minXIn, minYIn, maxXIn, maxYIn }: BoundingBox, side: 'left' | 'front'): Point[] {
  const half = OVERLAP_IN / 2;
  return [1 / 4, 3 / 4].map((share) =>
    side === 'left'
      ? { xIn: minXIn + half, yIn: minYIn + share * (maxYIn - minYIn) }
      : { xIn: minXIn + share * (maxXIn - minXIn), yIn: minYIn + half },
  );
}

function pagesWith(cross: Point, tiles: readonly Tile[]): number {
  return tiles.filter(({ box }) => holdsCross(box, cross)).length;
}
