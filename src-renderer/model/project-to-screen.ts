/** From a place in the drawing to a place in its picture. */
import type { Place } from './scene-bounds';

export interface ScreenPoint {
  /** From the left and from the top of the picture, px. */
  readonly xPx: number;
  readonly yPx: number;
  /** False behind the eye, where the other two mean nothing. */
  readonly isInFront: boolean;
}

/**
 * `viewMatrix` is the picture's projection times its view, 16 numbers column by column, as the model's `data-view-matrix` gives
 * them after each drawn frame.
 */
export function projectToScreen(
  viewMatrix: readonly number[],
  [x, y, z]: Place,
  widthPx: number,
  heightPx: number,
): ScreenPoint {
  if (viewMatrix.length !== 16) throw new Error(`a view matrix has 16 numbers, not ${viewMatrix.length}`);
  const row = (i: number) =>
    viewMatrix[i]! * x + viewMatrix[i + 4]! * y + viewMatrix[i + 8]! * z + viewMatrix[i + 12]!;
  const w = row(3);
  return {
    xPx: ((row(0) / w + 1) / 2) * widthPx,
    yPx: ((1 - row(1) / w) / 2) * heightPx,
    isInFront: w > 0,
  };
}
