/** The room that words take on paper, by the mean width of a letter. */
import type { Mark, PaperPoint } from '../figure';
import { ASCENT_EM, DESCENT_EM, LETTER_EM, PT_PER_IN } from './practice';

/** Words on paper. */
export type TextMark = Extract<Mark, { kind: 'text' }>;

/** A rectangle on paper, turned clockwise about its middle. */
export interface TurnedBox {
  readonly centre: PaperPoint;
  readonly halfWidth: number;
  readonly halfHeight: number;
  readonly turnDeg: number;
}

/** A straight stretch on paper. */
export interface PaperLine {
  readonly from: PaperPoint;
  readonly to: PaperPoint;
}

/** Width of words, in. */
export function wordsWidthIn(words: string, sizePt: number): number {
  return ([...words].length * LETTER_EM * sizePt) / PT_PER_IN;
}

/** Height of a line of words from the foot of a g to the top of an l, in. */
export function wordsHeightIn(sizePt: number): number {
  return ((ASCENT_EM + DESCENT_EM) * sizePt) / PT_PER_IN;
}

/** From the middle of a line's height down to its baseline, in. */
export function baselineIn(sizePt: number): number {
  return (((ASCENT_EM - DESCENT_EM) / 2) * sizePt) / PT_PER_IN;
}

/** The rectangle that a text mark takes. */
export function boxOfText({ words, at, sizePt, anchor, turnDeg }: TextMark): TurnedBox {
  const halfWidth = wordsWidthIn(words, sizePt) / 2;
  const shift = anchor === 'middle' ? 0 : anchor === 'start' ? halfWidth : -halfWidth;
  const { along, down } = axesOf(turnDeg);
  const up = -baselineIn(sizePt);
  return {
    centre: { x: at.x + along.x * shift + down.x * up, y: at.y + along.y * shift + down.y * up },
    halfWidth,
    halfHeight: wordsHeightIn(sizePt) / 2,
    turnDeg,
  };
}

/** Where the baseline's middle stands for words with their middle at a place. */
export function baselineAt(centre: PaperPoint, sizePt: number, turnDeg: number): PaperPoint {
  const { down } = axesOf(turnDeg);
  const byIn = baselineIn(sizePt);
  return { x: centre.x + down.x * byIn, y: centre.y + down.y * byIn };
}

/** Corners of a box, clockwise on the paper from its top left. */
export function cornersOfBox({ centre, halfWidth, halfHeight, turnDeg }: TurnedBox): PaperPoint[] {
  const { along, down } = axesOf(turnDeg);
  return [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1],
  ].map(([a, d]) => ({
    x: centre.x + along.x * a! * halfWidth + down.x * d! * halfHeight,
    y: centre.y + along.y * a! * halfWidth + down.y * d! * halfHeight,
  }));
}

/** The box with white added on all sides, in. */
export function grownBox(box: TurnedBox, byIn: number): TurnedBox {
  return { ...box, halfWidth: box.halfWidth + byIn, halfHeight: box.halfHeight + byIn };
}

/** Whether two boxes share room; boxes that only touch do not. Separating axes of two rectangles. */
export function boxesOverlap(one: TurnedBox, other: TurnedBox): boolean {
  const reach = Math.hypot(one.halfWidth, one.halfHeight) + Math.hypot(other.halfWidth, other.halfHeight);
  const apart = { x: other.centre.x - one.centre.x, y: other.centre.y - one.centre.y };
  if (Math.hypot(apart.x, apart.y) >= reach) return false;
  const [a, b] = [axesOf(one.turnDeg), axesOf(other.turnDeg)];
  return [a.along, a.down, b.along, b.down].every((axis) => {
    const spread = (box: TurnedBox, { along, down }: ReturnType<typeof axesOf>) =>
      box.halfWidth * Math.abs(dot(along, axis)) + box.halfHeight * Math.abs(dot(down, axis));
    return Math.abs(dot(apart, axis)) < spread(one, a) + spread(other, b) - TOUCH_IN;
  });
}

/** Whether a point lies within a box. */
export function isInBox(point: PaperPoint, { centre, halfWidth, halfHeight, turnDeg }: TurnedBox): boolean {
  const { along, down } = axesOf(turnDeg);
  const off = { x: point.x - centre.x, y: point.y - centre.y };
  return Math.abs(dot(off, along)) < halfWidth && Math.abs(dot(off, down)) < halfHeight;
}

/** Length of a line that lies in a box, in. Clipping in the box's own axes. */
export function lineInBoxIn({ from, to }: PaperLine, box: TurnedBox): number {
  const { along, down } = axesOf(box.turnDeg);
  const local = (p: PaperPoint) => {
    const d = { x: p.x - box.centre.x, y: p.y - box.centre.y };
    return { x: dot(d, along), y: dot(d, down) };
  };
  const [a, b] = [local(from), local(to)];
  let [low, high] = [0, 1];
  for (const [start, end, half] of [
    [a.x, b.x, box.halfWidth],
    [a.y, b.y, box.halfHeight],
  ] as const) {
    const run = end - start;
    if (Math.abs(run) < TOUCH_IN) {
      if (Math.abs(start) >= half) return 0;
      continue;
    }
    const [p, q] = [(-half - start) / run, (half - start) / run];
    low = Math.max(low, Math.min(p, q));
    high = Math.min(high, Math.max(p, q));
  }
  return Math.max(0, high - low) * Math.hypot(b.x - a.x, b.y - a.y);
}

/** Far below any pen. */
const TOUCH_IN = 1e-6;

function axesOf(turnDeg: number): { readonly along: PaperPoint; readonly down: PaperPoint } {
  const rad = (turnDeg * Math.PI) / 180;
  const [c, s] = [Math.cos(rad), Math.sin(rad)];
  return { along: { x: c, y: s }, down: { x: -s, y: c } };
}

function dot(a: PaperPoint, b: PaperPoint): number {
  return a.x * b.x + a.y * b.y;
}
