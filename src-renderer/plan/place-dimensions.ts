/** Dimensions on the screen: where their lines go, and where their figures may stand. */
import type { Dimension } from '../../src-core/drawing';
import type { Part } from '../state/selection';
import type { Label } from './declutter';
import { boxAbout } from './declutter';
import type { Frame, Pixel } from './frame';
import { toPixel } from './frame';

/** Middle of a figure, and its turn on the screen, clockwise, so that it reads from below or from the right. */
export interface FigurePlace {
  readonly at: Pixel;
  readonly turnDeg: number;
}

/** A dimension before its figure has a place. */
export interface DimensionDraft {
  readonly dimension: Dimension;
  readonly text: string;
  /** Ends of the dimension line. */
  readonly from: Pixel;
  readonly to: Pixel;
  /** Lines from what is measured out to the dimension line; none where it is measured on the spot. */
  readonly witness: readonly (readonly [Pixel, Pixel])[];
  /** Places for the figure, the best first. */
  readonly places: readonly FigurePlace[];
  /** Whether it measures the part that is selected. */
  readonly isOwn: boolean;
}

export interface PlacedDimension extends Omit<DimensionDraft, 'places'>, FigurePlace {
  /** False where the figure would cover another; its line stays. */
  readonly hasRoom: boolean;
}

const FIRST_ROW_PX = 26;
const ROW_PX = 26;
const WITNESS_GAP_PX = 5;
const WITNESS_PAST_PX = 5;
const CHARACTER_PX = 7;
const FIGURE_HEIGHT_PX = 18;
const FIGURE_SIDE_PX = 6;
/** Shorter than this on the screen a dimension is not drawn at all. */
const LEAST_LINE_PX = 4;

/**
 * Lines of the dimensions, and the places of their figures. A figure breaks its line where it fits there; else that of an edge, an
 * overhang or the selected part may stand beside it, and any other is left to a larger view.
 */
export function draftDimensions(
  frame: Frame,
  dimensions: readonly Dimension[],
  print: (dimension: Dimension) => string,
  part: Part,
): DimensionDraft[] {
  return dimensions.flatMap((dimension): DimensionDraft[] => {
    const draft = draftOne(frame, dimension, print(dimension), isOwn(dimension, part));
    return lengthPx(draft.from, draft.to) < LEAST_LINE_PX ? [] : [draft];
  });
}

/** Figures of dimensions as labels that want room. */
export function figureLabels(drafts: readonly DimensionDraft[]): Label[] {
  return drafts.map(({ dimension, text, places, isOwn: isKept }) => ({
    key: dimension.key,
    places: places.map(({ at, turnDeg }) => boxAbout(at, widthOf(text), FIGURE_HEIGHT_PX, turnDeg)),
    isKept,
  }));
}

/**
 * Dimensions with the figures that found room. Where none of a chain did, or the one of a cutout did not, its line says nothing and
 * is left out.
 */
export function settleDimensions(
  drafts: readonly DimensionDraft[],
  rooms: ReadonlyMap<string, number>,
): PlacedDimension[] {
  const told = new Set(
    drafts.filter(({ dimension }) => rooms.has(dimension.key)).map(({ dimension }) => groupOf(dimension)),
  );
  return drafts
    .filter(({ dimension }) => isOutline(dimension) || told.has(groupOf(dimension)))
    .map(({ places, ...draft }) => {
      const room = rooms.get(draft.dimension.key);
      const place = places[room ?? 0] ?? { at: midway(draft.from, draft.to), turnDeg: 0 };
      return { ...draft, ...place, hasRoom: room !== undefined };
    });
}

function isOutline({ of }: Dimension): boolean {
  return of === 'edge' || of === 'overhang';
}

/** Links of a chain stand in one row outside one edge; anything else is alone. */
function groupOf({ key, of, place }: Dimension): string {
  return of === 'support' && place.kind === 'beside'
    ? `${place.outward.x} ${place.outward.y} ${place.row}`
    : key;
}

function isOwn({ key, sets }: Dimension, part: Part): boolean {
  switch (part.kind) {
    case 'edge':
      return key === `edge-${part.index}` || key === `overhang-${part.index}`;
    case 'cutout':
    case 'support':
      return sets !== null && 'id' in sets && sets.id === part.id;
    default:
      return false;
  }
}

function draftOne(frame: Frame, dimension: Dimension, text: string, own: boolean): DimensionDraft {
  const a = toPixel(frame, dimension.from);
  const b = toPixel(frame, dimension.to);
  const lines = linesOf(dimension, a, b);
  return { dimension, text, isOwn: own, ...lines, places: placesOf(dimension, text, lines, own) };
}

interface Lines {
  readonly from: Pixel;
  readonly to: Pixel;
  readonly witness: readonly (readonly [Pixel, Pixel])[];
}

function linesOf({ place }: Dimension, a: Pixel, b: Pixel): Lines {
  if (place.kind === 'on') return { from: a, to: b, witness: [] };
  const offPx = FIRST_ROW_PX + place.row * ROW_PX;
  return {
    from: out(a, place.outward, offPx),
    to: out(b, place.outward, offPx),
    witness: [a, b].map((p) => [
      out(p, place.outward, WITNESS_GAP_PX),
      out(p, place.outward, offPx + WITNESS_PAST_PX),
    ]),
  };
}

function placesOf(dimension: Dimension, text: string, { from, to }: Lines, own: boolean): FigurePlace[] {
  const { place } = dimension;
  const middle = midway(from, to);
  const along = { at: middle, turnDeg: readable(from, to) };
  if (lengthPx(from, to) >= widthOf(text) + 2 * FIGURE_SIDE_PX) return [along];
  if (!own && !isOutline(dimension)) return [];
  if (place.kind === 'beside') return [{ ...along, at: out(middle, place.outward, FIGURE_HEIGHT_PX) }];
  const asidePx = widthOf(text) / 2 + FIGURE_SIDE_PX;
  const upPx = Math.abs(to.yPx - from.yPx) / 2 + FIGURE_HEIGHT_PX;
  const moved = (dxPx: number, dyPx: number): FigurePlace => ({
    at: { xPx: middle.xPx + dxPx, yPx: middle.yPx + dyPx },
    turnDeg: 0,
  });
  const isUpright = Math.abs(to.yPx - from.yPx) > Math.abs(to.xPx - from.xPx);
  const sides = [moved(asidePx, 0), moved(-asidePx, 0)];
  const ends = [moved(0, -upPx), moved(0, upPx)];
  return isUpright ? [...sides, ...ends] : [...ends, ...sides];
}

function out(p: Pixel, outward: { readonly x: number; readonly y: number }, byPx: number): Pixel {
  return { xPx: p.xPx + outward.x * byPx, yPx: p.yPx - outward.y * byPx };
}

function midway(a: Pixel, b: Pixel): Pixel {
  return { xPx: (a.xPx + b.xPx) / 2, yPx: (a.yPx + b.yPx) / 2 };
}

function lengthPx(from: Pixel, to: Pixel): number {
  return Math.hypot(to.xPx - from.xPx, to.yPx - from.yPx);
}

function widthOf(text: string): number {
  return text.length * CHARACTER_PX + 2 * FIGURE_SIDE_PX;
}

/** Direction of a line on the screen as an angle above -90 and up to 90: upright lines read from the right. */
function readable(from: Pixel, to: Pixel): number {
  const deg = (Math.atan2(to.yPx - from.yPx, to.xPx - from.xPx) * 180) / Math.PI;
  if (deg >= 90 - 1e-6) return deg - 180;
  return deg < -90 - 1e-6 ? deg + 180 : deg;
}
