/** The pour against the clock: a line a batch or task, bars for what goes on, minutes from the first water along the foot. */
import type { Figure, Fill } from '../figure';
import type { Board } from './board';
import { boardMarks, draw, newBoard } from './board';
import { finishedFigure } from './finish';
import { areaMark, lineMark, rectanglePoints, textMark } from './marks';
import { LETTER_EM, PT_PER_IN, SMALL_PT } from './practice';
import type { PaperSize } from './scale';
import { wordsWidthIn } from './words-box';

/** What goes on in a stretch of time. */
export type ClockKind = 'mix' | 'place' | 'work' | 'wait';

/** One bar. */
export interface ClockRow {
  /** Rows of one label stand on one line. */
  readonly label: string;
  /** From the first water. */
  readonly fromMin: number;
  readonly toMin: number;
  readonly kind: ClockKind;
}

/** What a chart is made of. */
export interface ClockDrawing {
  /** Kebab-case. */
  readonly id: string;
  readonly title: string;
  readonly rows: readonly ClockRow[];
}

const LOOKS: { readonly [K in ClockKind]: { readonly fill: Fill; readonly words: string } } = {
  mix: { fill: 'light', words: 'mixing' },
  place: { fill: 'dark', words: 'placing' },
  work: { fill: 'ink', words: 'at the slab' },
  wait: { fill: 'paper', words: 'waiting' },
};

/** Height of a line and of its bar, white beside the labels, on paper, in. */
const LINE_IN = 0.2;
const BAR_IN = 0.13;
const LABEL_GAP_IN = 0.1;
/** Steps of the foot, and the least paper between two of its figures. */
const STEPS_MIN = [1, 2, 5, 10, 15, 30, 60, 120, 240, 480, 1440] as const;
const LEAST_STEP_IN = 0.4;
/** Labels take at most this share of the width. */
const LABEL_SHARE = 0.4;

/** The chart as wide as its room; null where nothing goes on. Lines are set closer where the room is low. */
export function pourClock({ id, title, rows }: ClockDrawing, room: PaperSize): Figure | null {
  const lastMin = Math.max(0, ...rows.map(({ toMin }) => toMin));
  if (lastMin <= 0) return null;
  const labels = [...new Set(rows.map(({ label }) => label))];
  const labelIn = Math.min(
    LABEL_SHARE * room.widthIn,
    Math.max(...labels.map((label) => wordsWidthIn(label, SMALL_PT))),
  );
  const left = labelIn + LABEL_GAP_IN;
  const widthIn = room.widthIn - left - 0.4;
  const stepMin = STEPS_MIN.find((step) => (step / lastMin) * widthIn >= LEAST_STEP_IN) ?? STEPS_MIN.at(-1)!;
  const endMin = Math.ceil(lastMin / stepMin - 1e-9) * stepMin;
  const at = (min: number) => left + (min / endMin) * widthIn;
  const board = newBoard();
  const footY = labels.length * LINE_IN + 0.04;
  for (let k = 0; k * stepMin <= endMin; k++) {
    const x = at(k * stepMin);
    draw(board, lineMark({ x, y: 0 }, { x, y: footY + 0.05 }, 'grid'));
    const words = String(k * stepMin);
    draw(board, textMark(words, { x, y: footY + 0.16 }, SMALL_PT, { anchor: 'middle' }));
  }
  labels.forEach((label, i) => {
    const middleY = (i + 0.5) * LINE_IN;
    drawLabel(board, label, labelIn, middleY);
    for (const row of rows.filter((each) => each.label === label)) {
      const box = rectanglePoints(
        at(row.fromMin),
        middleY - BAR_IN / 2,
        at(row.toMin) - at(row.fromMin),
        BAR_IN,
      );
      draw(board, areaMark([box], 'paper'), areaMark([box], LOOKS[row.kind].fill, 'thin'));
    }
  });
  draw(board, lineMark({ x: left, y: footY }, { x: at(endMin), y: footY }, 'visible'));
  const keyY = footY + 0.38;
  draw(board, textMark('minutes from the first water', { x: left, y: keyY - 0.07 }, SMALL_PT));
  drawKey(board, rows, { x: left, y: keyY + 0.12 });
  return finishedFigure(
    { id, title, scaleWords: null, words: clockWords(title, labels, rows) },
    boardMarks(board),
  );
}

/** A label to the left of its line, shortened where it is too long. */
function drawLabel(board: Board, label: string, widthIn: number, middleY: number): void {
  const most = Math.floor((widthIn * PT_PER_IN) / (LETTER_EM * SMALL_PT) + 1e-6);
  const words = label.length <= most ? label : `${label.slice(0, most - 1).trimEnd()}…`;
  draw(
    board,
    textMark(words, { x: widthIn, y: middleY + SMALL_PT / PT_PER_IN / 3 }, SMALL_PT, { anchor: 'end' }),
  );
}

function drawKey(
  board: Board,
  rows: readonly ClockRow[],
  from: { readonly x: number; readonly y: number },
): void {
  let { x } = from;
  for (const kind of ['mix', 'place', 'work', 'wait'] as const) {
    if (!rows.some((row) => row.kind === kind)) continue;
    const { fill, words } = LOOKS[kind];
    draw(board, areaMark([rectanglePoints(x, from.y - 0.09, 0.22, 0.1)], fill, 'thin'));
    draw(board, textMark(words, { x: x + 0.28, y: from.y }, SMALL_PT));
    x += 0.28 + wordsWidthIn(words, SMALL_PT) + 0.2;
  }
}

function clockWords(title: string, labels: readonly string[], rows: readonly ClockRow[]): string {
  const each = labels.map((label) => {
    const own = rows.filter((row) => row.label === label);
    const parts = own.map(
      ({ kind, fromMin, toMin }) => `${LOOKS[kind].words} ${Math.round(fromMin)} to ${Math.round(toMin)}`,
    );
    return `${label}: ${parts.join(', ')}`;
  });
  return `${title}, in minutes from the first water. ${each.join('. ')}.`;
}
