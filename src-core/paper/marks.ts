/** Marks of a drawing in short. */
import type { Fill, Mark, PaperPoint, Pen } from '../figure';
import type { TextMark } from './words-box';

/** A straight line. */
export function lineMark(from: PaperPoint, to: PaperPoint, pen: Pen): Mark {
  return { kind: 'line', from, to, pen };
}

/** A closed line. */
export function loopMark(points: readonly PaperPoint[], pen: Pen): Mark {
  return { kind: 'run', points, isClosed: true, pen };
}

/** An open line. */
export function runMark(points: readonly PaperPoint[], pen: Pen): Mark {
  return { kind: 'run', points, isClosed: false, pen };
}

/** Loops filled by the even-odd rule; without a pen the fill alone. */
export function areaMark(
  loops: readonly (readonly PaperPoint[])[],
  fill: Fill,
  pen: Pen | null = null,
): Mark {
  return { kind: 'area', loops, fill, pen };
}

/** A circle, black and without a line unless told. */
export function dotMark(
  centre: PaperPoint,
  radius: number,
  fill: Fill = 'ink',
  pen: Pen | null = null,
): Mark {
  return { kind: 'circle', centre, radius, fill, pen };
}

/** How words differ from plain ones. */
export interface TextLook {
  readonly anchor?: 'start' | 'middle' | 'end';
  readonly turnDeg?: number;
  readonly isBold?: boolean;
  readonly hasGround?: boolean;
}

/** Words on a baseline: from their start, upright, plain, on bare paper unless told. */
export function textMark(words: string, at: PaperPoint, sizePt: number, look: TextLook = {}): TextMark {
  const { anchor = 'start', turnDeg = 0, isBold = false, hasGround = false } = look;
  return { kind: 'text', words, at, sizePt, anchor, turnDeg, isBold, hasGround };
}

/** Corners of an upright rectangle. */
export function rectanglePoints(x: number, y: number, width: number, height: number): PaperPoint[] {
  return [
    { x, y },
    { x: x + width, y },
    { x: x + width, y: y + height },
    { x, y: y + height },
  ];
}
