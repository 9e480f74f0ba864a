/** Where the ticks and the words of a drawn length go. */
import type { DrawnLength, DrawnPoint } from './quick-drawing';

export interface LengthMarkPlace {
  /** A short stroke across each end. */
  readonly ticks: readonly (readonly [DrawnPoint, DrawnPoint])[];
  /** Foot of the words. */
  readonly at: DrawnPoint;
  readonly anchor: 'start' | 'middle' | 'end';
}

const TICK_PX = 5;
/** Clear of the ticks, which stand under the words where the length is shorter than they are. */
const OFF_LINE_PX = 9;
/** From the foot of the words to their middle, px. */
const HALF_LETTER_PX = 5;

/** Words above a level line and to the right of an upright one; to its left where that stands left of the drawing. */
export function lengthMark({ from, to, of }: DrawnLength): LengthMarkPlace {
  const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
  const isLevel = Math.abs(to.x - from.x) >= Math.abs(to.y - from.y);
  const tick = ({ x, y }: DrawnPoint): readonly [DrawnPoint, DrawnPoint] =>
    isLevel
      ? [
          { x, y: y - TICK_PX },
          { x, y: y + TICK_PX },
        ]
      : [
          { x: x - TICK_PX, y },
          { x: x + TICK_PX, y },
        ];
  const ticks = [tick(from), tick(to)];
  if (isLevel) {
    // the length of the whole piece stands below it, where there is room
    const y = of === 'length' ? middle.y + OFF_LINE_PX + 2 * HALF_LETTER_PX : middle.y - OFF_LINE_PX;
    return { ticks, at: { x: middle.x, y }, anchor: 'middle' };
  }
  const isLeft = of === 'depth';
  const x = middle.x + (isLeft ? -OFF_LINE_PX : OFF_LINE_PX);
  return { ticks, at: { x, y: middle.y + HALF_LETTER_PX }, anchor: isLeft ? 'end' : 'start' };
}
