/** Strips ripped side by side from a board or sheet. */
import { pieceTicks, stockTicks } from './ticks';

/** Most strips of one width from a width of stock, a kerf between each and the next. Widths and kerf in; a count. */
export function stripCount(stockWidthIn: number, stripWidthIn: number, kerfIn: number): number {
  return Math.floor(stockTicks(stockWidthIn, kerfIn) / pieceTicks(stripWidthIn, kerfIn));
}
