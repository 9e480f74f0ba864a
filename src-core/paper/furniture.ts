/** What stands below a plan: the scale bar, the arrow to the front, and notes. */
import type { PaperPoint } from '../figure';
import type { UnitSystem } from '../units';
import { MM_PER_IN } from '../units';
import type { Board } from './board';
import { boardMarks, draw } from './board';
import { marksExtent } from './extent';
import { areaMark, lineMark, rectanglePoints, textMark } from './marks';
import { BAR_HEIGHT_IN, BAR_MOST_IN, FURNITURE_GAP_IN, NAME_PT, PT_PER_IN, SMALL_PT } from './practice';
import { wordsHeightIn, wordsWidthIn } from './words-box';

interface BarStep {
  /** Length of one field of the bar. */
  readonly stepIn: number;
  /** What is printed at a number of fields from its beginning. */
  readonly words: (fields: number) => string;
}

const FIELDS = 4;

const inches = (each: number): BarStep => ({ stepIn: each, words: (n) => `${n * each} in` });
const feet = (each: number): BarStep => ({ stepIn: 12 * each, words: (n) => `${n * each} ft` });
const millimetres = (each: number): BarStep => ({
  stepIn: each / MM_PER_IN,
  words: (n) => `${n * each} mm`,
});
const metres = (each: number): BarStep => ({
  stepIn: (1000 * each) / MM_PER_IN,
  words: (n) => `${n * each} m`,
});

/** Fields of scale bars, largest first. */
const BAR_STEPS: { readonly [S in UnitSystem]: readonly BarStep[] } = {
  imperial: [feet(20), feet(10), feet(5), feet(2), feet(1), inches(6), inches(3), inches(1)],
  metric: [metres(5), metres(2), metres(1), ...[500, 250, 100, 50, 25, 10].map(millimetres)],
};

/**
 * Below all that is drawn: the scale bar with the arrow to the front beside it, then the notes, a line each. Broken to the width of
 * the drawing, or to `leastWidthIn` where that is wider.
 */
export function drawFurniture(
  board: Board,
  {
    ratio,
    system,
    notes,
    leastWidthIn,
    hasFront,
  }: {
    readonly ratio: number;
    readonly system: UnitSystem;
    readonly notes: readonly string[];
    readonly leastWidthIn: number;
    readonly hasFront: boolean;
  },
): void {
  const { minX, maxX, maxY } = marksExtent(boardMarks(board));
  const topIn = maxY + FURNITURE_GAP_IN;
  const barEnd = drawScaleBar(board, { x: minX, y: topIn }, ratio, system);
  if (hasFront) drawFrontArrow(board, { x: barEnd + 3 * FURNITURE_GAP_IN, y: topIn });
  drawNotes(board, notes, { x: minX, y: topIn + 0.34 }, Math.max(maxX - minX, leastWidthIn));
}

/** Lines of small words from a top left corner; gives the height below the last. */
export function drawNotes(board: Board, notes: readonly string[], at: PaperPoint, widthIn: number): number {
  const lineIn = (SMALL_PT * 1.25) / PT_PER_IN;
  const lines = notes.flatMap((note) => brokenWords(note, SMALL_PT, widthIn));
  lines.forEach((words, i) => {
    draw(board, textMark(words, { x: at.x, y: at.y + (i + 0.8) * lineIn }, SMALL_PT));
  });
  return at.y + lines.length * lineIn;
}

/** Words broken into lines no wider than a width; a longer word stands alone. */
export function brokenWords(words: string, sizePt: number, widthIn: number): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of words.split(' ')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line !== '' && wordsWidthIn(longer, sizePt) > widthIn) {
      lines.push(line);
      line = word;
    } else line = longer;
  }
  return line === '' ? lines : [...lines, line];
}

/** Gives where the bar's words end. */
function drawScaleBar(board: Board, at: PaperPoint, ratio: number, system: UnitSystem): number {
  const steps = BAR_STEPS[system];
  const step = steps.find(({ stepIn }) => FIELDS * stepIn * ratio <= BAR_MOST_IN) ?? steps.at(-1)!;
  const fieldIn = step.stepIn * ratio;
  const barY = at.y + wordsHeightIn(SMALL_PT) + 0.03;
  for (let k = 0; k < FIELDS; k++) {
    const field = rectanglePoints(at.x + k * fieldIn, barY, fieldIn, BAR_HEIGHT_IN);
    draw(board, areaMark([field], k % 2 === 0 ? 'ink' : 'paper', 'thin'));
  }
  const baseline = barY - 0.045;
  draw(board, textMark('0', { x: at.x, y: baseline }, SMALL_PT));
  const half = step.words(FIELDS / 2).replace(/ .*/, '');
  const words = step.words(FIELDS);
  const middle = at.x + (FIELDS / 2) * fieldIn;
  const end = at.x + FIELDS * fieldIn;
  const isRoomForHalf = wordsWidthIn(half, SMALL_PT) < fieldIn * 1.4;
  if (isRoomForHalf) draw(board, textMark(half, { x: middle, y: baseline }, SMALL_PT, { anchor: 'middle' }));
  const endLook = { anchor: 'start' } as const;
  const endX = end - wordsWidthIn(words.replace(/ .*/, ''), SMALL_PT) / 2;
  draw(board, textMark(words, { x: endX, y: baseline }, SMALL_PT, endLook));
  return Math.max(end, endX + wordsWidthIn(words, SMALL_PT));
}

function drawFrontArrow(board: Board, at: PaperPoint): void {
  const x = at.x + 0.06;
  const tip = { x, y: at.y + 0.27 };
  draw(
    board,
    lineMark({ x, y: at.y }, tip, 'visible'),
    areaMark([[tip, { x: x - 0.05, y: tip.y - 0.13 }, { x: x + 0.05, y: tip.y - 0.13 }]], 'ink'),
    textMark('Front', { x: x + 0.12, y: at.y + 0.2 }, NAME_PT, { isBold: true }),
  );
}
