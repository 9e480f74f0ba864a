/** Whether bars that are drawn already do a trimmer's work at a corner from which cracks start. */
import { barDevelopment } from '../concrete';
import type { Piece } from '../job';
import type { Direction, Point } from '../outline';
import type { BarLayer, Hold } from './lap-lengths';
import { holdOfHooks, straightLength } from './lap-lengths';
import { SAME_BAR_IN, SAME_WAY_DEG, TRIMMER_NEAR_IN, TRIMMER_TURN_DEG } from './practice';
import type { PlacedBar } from './types';

/** A drawn bar, with the lengths in which its two ends take hold, in. */
export interface HeldBar {
  readonly words: string;
  readonly barIn: number;
  readonly from: Point;
  readonly to: Point;
  readonly holdAtFromIn: number;
  readonly holdAtToIn: number;
}

/** A corner of a void: its two sides lead away from it, and `inward` points into the concrete, midway between them. */
export interface VoidCorner {
  readonly at: Point;
  readonly inward: Direction;
  readonly sides: readonly [Direction, Direction];
}

/**
 * Bars of a layer that was drawn in a field of its own. Bars over the whole slab are its steel, not what is added at a
 * corner, and are none of them.
 */
export function heldBars(
  piece: Piece,
  layer: BarLayer,
  bars: readonly PlacedBar[],
  hold: Hold,
): readonly HeldBar[] {
  if (layer.corners === null) return [];
  const straightIn = barDevelopment.compute({ ld0: straightLength(layer, piece.thicknessIn, hold).value });
  const hookedIn = layer.hooked ? holdOfHooks(layer, hold).lapIn : straightIn;
  return bars.map(({ from, to, isHookedAtFrom, isHookedAtTo }) => ({
    words: layer.label ?? layer.id,
    barIn: layer.barIn,
    from,
    to,
    holdAtFromIn: isHookedAtFrom ? hookedIn : straightIn,
    holdAtToIn: isHookedAtTo ? hookedIn : straightIn,
  }));
}

/**
 * The bars that cross the crack which would start at a corner, in words; null where they do not. Either one across it,
 * within 30 degrees of square to the line that halves the corner; or one beside each side of the void, along it and past
 * the corner. Each at least as thick as a trimmer, within 3 in of the corner, and held to either side of it. Bars beside
 * an opening, developed past its corners, are what ACI 318-19 8.5.4.2 and 11.7.5.1 ask of slabs and walls (from memory);
 * the distance and the turn are common practice, no source.
 */
export function drawnAcross(
  { at, inward, sides }: VoidCorner,
  bars: readonly HeldBar[],
  trimmerIn: number,
): string | null {
  const strong = bars.filter(({ barIn }) => barIn >= trimmerIn - SAME_BAR_IN);
  const crossing = strong.find((bar) => crosses(bar, at, inward));
  if (crossing !== undefined) return `"${crossing.words}"`;
  const [one, other] = sides.map((side, k) => strong.find((bar) => runsBeside(bar, at, side, sides[1 - k]!)));
  if (one === undefined || other === undefined) return null;
  return one.words === other.words ? `"${one.words}"` : `"${one.words}" and "${other.words}"`;
}

function crosses(bar: HeldBar, at: Point, inward: Direction): boolean {
  const along = wayOf(bar);
  const leanRatio = Math.abs(along.x * inward.x + along.y * inward.y);
  if (leanRatio > Math.sin((TRIMMER_TURN_DEG * Math.PI) / 180)) return false;
  // where the line that halves the corner meets the bar
  const square = { x: -along.y, y: along.x };
  const offIn = (bar.from.xIn - at.xIn) * square.x + (bar.from.yIn - at.yIn) * square.y;
  const inIn = offIn / (inward.x * square.x + inward.y * square.y);
  const met = { xIn: at.xIn + inIn * inward.x, yIn: at.yIn + inIn * inward.y };
  return inIn >= 0 && inIn <= TRIMMER_NEAR_IN && isHeldAt(bar, met);
}

/** Beside a side of the void: parallel to it, in the concrete beyond it, and held to either side of the corner. */
function runsBeside(bar: HeldBar, at: Point, side: Direction, other: Direction): boolean {
  const along = wayOf(bar);
  if (Math.abs(along.x * side.y - along.y * side.x) > Math.sin((SAME_WAY_DEG * Math.PI) / 180)) return false;
  const left = { x: -side.y, y: side.x };
  const isVoidLeft = left.x * other.x + left.y * other.y > 0;
  const out = isVoidLeft ? { x: -left.x, y: -left.y } : left;
  const backIn = (at.xIn - bar.from.xIn) * along.x + (at.yIn - bar.from.yIn) * along.y;
  const beside = { xIn: bar.from.xIn + backIn * along.x, yIn: bar.from.yIn + backIn * along.y };
  const offIn = (beside.xIn - at.xIn) * out.x + (beside.yIn - at.yIn) * out.y;
  return offIn >= 0 && offIn <= TRIMMER_NEAR_IN && isHeldAt(bar, beside);
}

function isHeldAt({ from, to, holdAtFromIn, holdAtToIn }: HeldBar, at: Point): boolean {
  const along = wayOf({ from, to });
  const toEndIn = (end: Point) => (end.xIn - at.xIn) * along.x + (end.yIn - at.yIn) * along.y;
  return -toEndIn(from) >= holdAtFromIn && toEndIn(to) >= holdAtToIn;
}

function wayOf({ from, to }: { readonly from: Point; readonly to: Point }): Direction {
  const lengthIn = Math.hypot(to.xIn - from.xIn, to.yIn - from.yIn);
  return { x: (to.xIn - from.xIn) / lengthIn, y: (to.yIn - from.yIn) / lengthIn };
}
