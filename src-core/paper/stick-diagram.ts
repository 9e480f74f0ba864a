/** Cut diagrams of sticks: a bar a stick, its cuts in order, what is left shaded. */
import type { Figure, Mark } from '../figure';
import type { UnitSystem } from '../units';
import type { Board, Spot } from './board';
import { boardMarks, draw, newBoard, placeWords } from './board';
import { marksExtent, movedMark } from './extent';
import { bareLength, dimensionNote } from './figure-words';
import { atLargestScale, finishedFigure } from './finish';
import { drawNotes } from './furniture';
import { areaMark, lineMark, rectanglePoints, textMark } from './marks';
import { NAME_PT, SMALL_PT } from './practice';
import type { PaperScale, PaperSize } from './scale';
import { PLAN_SCALES } from './scale';
import { wordsHeightIn, wordsWidthIn } from './words-box';

/** A piece on its stick. */
export interface DrawnCut {
  readonly label: string;
  /** From the end that is cut first, in. */
  readonly atIn: number;
  readonly lengthIn: number;
}

/** A stick as it is cut. */
export interface DrawnStick {
  readonly lengthIn: number;
  readonly cuts: readonly DrawnCut[];
  readonly offcutIn: number;
  /** How many are cut just so. */
  readonly count: number;
}

/** What a diagram is made of. */
export interface StickDrawing {
  /** Kebab-case. */
  readonly id: string;
  readonly title: string;
  readonly sticks: readonly DrawnStick[];
  readonly system: UnitSystem;
}

/** Height of a bar, white between bars, room for "12 x" and round words in a bar, on paper, in. */
const BAR_IN = 0.2;
const BETWEEN_BARS_IN = 0.1;
const COUNT_IN = 0.36;
const WORDS_ROOM_IN = 0.03;

/** Sticks that are cut alike drawn once, with how many; null where there are none. Bars are to scale along their length. */
export function stickDiagram({ id, title, sticks, system }: StickDrawing, room: PaperSize): Figure | null {
  const merged = mergedSticks(sticks);
  if (merged.length === 0) return null;
  const drawAt = (scale: PaperScale): Figure => {
    let marks: Mark[] = [];
    let y = 0;
    for (const stick of merged) {
      const own = boardMarks(stickBoard(stick, scale.ratio, system));
      const { minY, maxY } = marksExtent(own);
      marks = [...marks, ...own.map((mark) => movedMark(mark, { x: 0, y: y - minY }))];
      y += maxY - minY + BETWEEN_BARS_IN;
    }
    const notes = newBoard();
    const { maxX } = marksExtent(marks);
    drawNotes(
      notes,
      [`${dimensionNote(system)} Cut from the left. Shaded: what is left over.`],
      { x: 0, y },
      Math.max(maxX, 2.5),
    );
    return finishedFigure(
      { id, title, scaleWords: `${scale.words} along the sticks`, words: stickWords(title, merged, system) },
      [...marks, ...boardMarks(notes)],
    );
  };
  return atLargestScale(PLAN_SCALES[system], room, drawAt);
}

/** Sticks with the same cuts counted together, in the order in which they first come. */
function mergedSticks(sticks: readonly DrawnStick[]): DrawnStick[] {
  const merged = new Map<string, DrawnStick>();
  for (const stick of sticks) {
    const key = JSON.stringify([stick.lengthIn, stick.offcutIn, stick.cuts]);
    const before = merged.get(key);
    merged.set(key, { ...stick, count: stick.count + (before?.count ?? 0) });
  }
  return [...merged.values()].filter(({ count }) => count > 0);
}

function stickBoard(stick: DrawnStick, ratio: number, system: UnitSystem): Board {
  const board = newBoard();
  const { lengthIn, cuts, offcutIn, count } = stick;
  if (count > 1) {
    const at = { x: COUNT_IN - 0.08, y: BAR_IN / 2 + wordsHeightIn(NAME_PT) * 0.28 };
    draw(board, textMark(`${count} x`, at, NAME_PT, { anchor: 'end', isBold: true }));
  }
  const bar = (fromIn: number, longIn: number) =>
    rectanglePoints(COUNT_IN + fromIn * ratio, 0, longIn * ratio, BAR_IN);
  draw(board, areaMark([bar(0, lengthIn)], 'none', 'visible'));
  if (offcutIn > 0) draw(board, areaMark([bar(lengthIn - offcutIn, offcutIn)], 'light', 'thin'));
  for (const { atIn, lengthIn: longIn } of cuts) {
    for (const placeIn of [atIn, atIn + longIn]) {
      const x = COUNT_IN + placeIn * ratio;
      draw(board, lineMark({ x, y: 0 }, { x, y: BAR_IN }, 'visible'));
    }
  }
  for (const { label, atIn, lengthIn: longIn } of cuts) {
    wordsInBar(board, `${label}: ${bareLength(longIn, system)}`, bar(atIn, longIn)[0]!.x, longIn * ratio);
  }
  if (offcutIn > 0) {
    wordsInBar(
      board,
      bareLength(offcutIn, system),
      bar(lengthIn - offcutIn, offcutIn)[0]!.x,
      offcutIn * ratio,
    );
  }
  return board;
}

/** Words in their part of a bar, or below it on a leader. */
function wordsInBar(board: Board, words: string, x: number, widthIn: number): void {
  const centre = { x: x + widthIn / 2, y: BAR_IN / 2 };
  const fits = wordsWidthIn(words, SMALL_PT) + 2 * WORDS_ROOM_IN <= widthIn;
  const inside: Spot[] = fits ? [{ centre, turnDeg: 0, leaderTo: null, cost: 0 }] : [];
  const foot = { x: centre.x, y: BAR_IN * 0.8 };
  const below = [0.13, 0.25, 0.37, 0.49].flatMap((downIn) =>
    [0, 0.15, -0.15, 0.3, -0.3, 0.5, -0.5].map((shiftIn): Spot => {
      const at = { x: centre.x + shiftIn, y: BAR_IN + downIn };
      return { centre: at, turnDeg: 0, leaderTo: foot, cost: 0.5 + downIn + Math.abs(shiftIn) * 0.4 };
    }),
  );
  placeWords(board, { words, sizePt: SMALL_PT }, [...inside, ...below], foot);
}

function stickWords(title: string, sticks: readonly DrawnStick[], system: UnitSystem): string {
  const each = sticks.map(({ count, lengthIn, cuts, offcutIn }) => {
    const parts = cuts.map(({ label, lengthIn: longIn }) => `${label} ${bareLength(longIn, system)}`);
    const left = offcutIn > 0 ? `, ${bareLength(offcutIn, system)} left` : '';
    return `${count} of ${bareLength(lengthIn, system)} cut to ${parts.join(', ')}${left}`;
  });
  return `${title}: ${each.join('; ')}. ${dimensionNote(system)}`;
}
