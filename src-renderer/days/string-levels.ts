/** Heights within the strip, px from its top. Rows lie where their names at the left do. */
export const STRIP_HEIGHT_PX = 140;
export const FOLDED_HEIGHT_PX = 32;

/** The string itself. */
export const STRING_Y_PX = 57;
export const LABEL_LEVELS = 2;
export const ROW_PITCH_PX = 14;
export const BAR_PX = 8;
const FIRST_ROW_Y_PX = 66;
const LABEL_BASE_Y_PX = 47;
const LABEL_PITCH_PX = 14;

/** Foot of the words of a level. */
export function labelY(level: number): number {
  return LABEL_BASE_Y_PX - level * LABEL_PITCH_PX;
}

/** Middle of a row of bars. */
export function rowY(row: number): number {
  return FIRST_ROW_Y_PX + (row + 0.5) * ROW_PITCH_PX;
}

/** Foot of the words of the scale. */
export const AXIS_Y_PX = 136;

/** Width of small words at most, px: an average character of the text face at its smallest size, with a little to spare. */
export function wordsWidthPx(text: string): number {
  return text.length * CHARACTER_PX;
}
const CHARACTER_PX = 6;
