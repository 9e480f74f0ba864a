/**
 * A drawing while it is made: its marks, the words on it, and the lines that words keep clear of. Words go where they cover no other
 * words and as few lines as may be; what has no room beside its thing goes farther off, on a leader.
 */
import type { Mark, PaperPoint, Pen } from '../figure';
import { dotMark, lineMark, textMark } from './marks';
import { BETWEEN_WORDS_IN, LEADER_DOT_IN } from './practice';
import type { PaperLine, TurnedBox } from './words-box';
import {
  baselineAt,
  boxesOverlap,
  boxOfText,
  cornersOfBox,
  grownBox,
  isInBox,
  lineInBoxIn,
  wordsHeightIn,
  wordsWidthIn,
} from './words-box';

interface WeightedLine extends PaperLine {
  /** How much words cost that lie on it. */
  readonly weight: number;
}

/** Owned by the function that makes the drawing, which alone adds to it. */
export interface Board {
  readonly marks: Mark[];
  readonly texts: Mark[];
  readonly boxes: TurnedBox[];
  readonly lines: WeightedLine[];
}

/** A place where words may stand, the cheaper the better. */
export interface Spot {
  /** Middle of the words. */
  readonly centre: PaperPoint;
  readonly turnDeg: number;
  /** What a leader points at; null where the words stand by their thing. */
  readonly leaderTo: PaperPoint | null;
  readonly cost: number;
}

/** Words that want a place. */
export interface WordsToPlace {
  readonly words: string;
  readonly sizePt: number;
  readonly isBold?: boolean;
}

const LINE_WEIGHTS: { readonly [P in Pen]: number } = {
  cut: 6,
  visible: 2,
  thin: 0.5,
  hidden: 0.4,
  centre: 0.4,
  dimension: 1.5,
  grid: 0.1,
};
/** Cost of the first touch of a line, and of a leader that runs through words or over a line. */
const TOUCHED_LINE = 0.3;
const LEADER_THROUGH_WORDS = 50;
const LEADER_OVER_LINE = 0.05;
/** Steps of the search round a place: the first ring and the growth of rings, in, and their count of spots. */
const FIRST_RING_IN = 0.12;
const RING_STEP_IN = 0.1;
const RING_GROWTH = 1.12;
const RING_SPOTS = 16;
/** Cost of a leader at all, and of an inch of it. */
const LEADER_COST = 1;
const LEADER_COST_AN_IN = 1.2;

/** A drawing with nothing on it. */
export function newBoard(): Board {
  return { marks: [], texts: [], boxes: [], lines: [] };
}

/** The marks in the order in which they are drawn: words last. */
export function boardMarks({ marks, texts }: Board): Mark[] {
  return [...marks, ...texts];
}

/** Adds marks; words keep clear of their lines, and of words among them. */
export function draw(board: Board, ...marks: readonly Mark[]): void {
  for (const mark of marks) {
    if (mark.kind === 'text') {
      board.texts.push(mark);
      board.boxes.push(boxOfText(mark));
      continue;
    }
    board.marks.push(mark);
    for (const line of linesOf(mark)) board.lines.push(line);
  }
}

/** Keeps a place free of words. */
export function keepFree(board: Board, box: TurnedBox): void {
  board.boxes.push(box);
}

/** Whether a box, with a little white round it, covers no words. */
export function isFree(board: Board, box: TurnedBox): boolean {
  const grown = grownBox(box, BETWEEN_WORDS_IN);
  return board.boxes.every((other) => !boxesOverlap(grown, other));
}

/** Length of lines under a box by their weight. */
export function linesUnder({ lines }: Board, box: TurnedBox): number {
  let sum = 0;
  const around = boundsOf(cornersOfBox(box));
  for (const line of lines) {
    if (isClearOf(line, around)) continue;
    const lengthIn = lineInBoxIn(line, box);
    if (lengthIn > 0) sum += line.weight * (TOUCHED_LINE + lengthIn);
  }
  return sum;
}

/** The room that words take at a spot. */
export function boxAt({ words, sizePt }: WordsToPlace, { centre, turnDeg }: Spot): TurnedBox {
  return {
    centre,
    halfWidth: wordsWidthIn(words, sizePt) / 2,
    halfHeight: wordsHeightIn(sizePt) / 2,
    turnDeg,
  };
}

/**
 * Puts words at the cheapest free spot: one of those named, or, on a leader, one of the rings round `target`, which grow until there
 * is room. Gives the box that they take.
 */
export function placeWords(
  board: Board,
  what: WordsToPlace,
  named: readonly Spot[],
  target: PaperPoint,
): TurnedBox {
  const spot = cheapest(board, what, named, target);
  const box = boxAt(what, spot);
  if (spot.leaderTo !== null) {
    const { from, to } = leaderOf(box, spot.leaderTo);
    draw(board, lineMark(from, to, 'thin'), dotMark(to, LEADER_DOT_IN));
  }
  const { words, sizePt, isBold = false } = what;
  const at = baselineAt(spot.centre, sizePt, spot.turnDeg);
  draw(
    board,
    textMark(words, at, sizePt, { anchor: 'middle', turnDeg: spot.turnDeg, isBold, hasGround: true }),
  );
  return box;
}

function cheapest(board: Board, what: WordsToPlace, named: readonly Spot[], target: PaperPoint): Spot {
  let best: { readonly spot: Spot; readonly cost: number } | null = null;
  const consider = (spot: Spot) => {
    if (best !== null && spot.cost >= best.cost) return;
    const box = boxAt(what, spot);
    if (!isFree(board, box)) return;
    const cost = spot.cost + linesUnder(board, box) + leaderCost(board, box, spot);
    if (best === null || cost < best.cost) best = { spot, cost };
  };
  for (const spot of named) consider(spot);
  let radiusIn = FIRST_RING_IN;
  for (let stepIn = RING_STEP_IN; ; stepIn *= RING_GROWTH) {
    const found = best as { readonly spot: Spot; readonly cost: number } | null;
    if (found !== null && found.cost <= LEADER_COST + LEADER_COST_AN_IN * radiusIn) return found.spot;
    for (const spot of ringSpots(what, target, radiusIn)) consider(spot);
    radiusIn += stepIn;
  }
}

function ringSpots(what: WordsToPlace, target: PaperPoint, radiusIn: number): Spot[] {
  const halfWidth = wordsWidthIn(what.words, what.sizePt) / 2;
  const halfHeight = wordsHeightIn(what.sizePt) / 2;
  return Array.from({ length: RING_SPOTS }, (_, k): Spot => {
    const rad = (2 * Math.PI * (k + 0.5)) / RING_SPOTS;
    const [c, s] = [Math.cos(rad), Math.sin(rad)];
    return {
      centre: {
        x: target.x + c * radiusIn + Math.sign(c) * halfWidth,
        y: target.y + s * (radiusIn + halfHeight),
      },
      turnDeg: 0,
      leaderTo: target,
      cost: LEADER_COST + LEADER_COST_AN_IN * radiusIn,
    };
  });
}

function leaderCost({ boxes, lines }: Board, box: TurnedBox, { leaderTo }: Spot): number {
  if (leaderTo === null) return 0;
  const leader = leaderOf(box, leaderTo);
  // what it points at may keep its own place free
  const through = boxes.filter((other) => lineInBoxIn(leader, other) > 0 && !isInBox(leaderTo, other)).length;
  const around = boundsOf([leader.from, leader.to]);
  const over = lines.filter((line) => !isClearOf(line, around) && crosses(leader, line)).length;
  return through * LEADER_THROUGH_WORDS + over * LEADER_OVER_LINE;
}

interface Bounds {
  readonly minX: number;
  readonly maxX: number;
  readonly minY: number;
  readonly maxY: number;
}

function boundsOf(points: readonly PaperPoint[]): Bounds {
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  return { minX: Math.min(...xs), maxX: Math.max(...xs), minY: Math.min(...ys), maxY: Math.max(...ys) };
}

/** Most lines lie far off; this is seen at once. */
function isClearOf({ from, to }: PaperLine, { minX, maxX, minY, maxY }: Bounds): boolean {
  return (
    (from.x < minX && to.x < minX) ||
    (from.x > maxX && to.x > maxX) ||
    (from.y < minY && to.y < minY) ||
    (from.y > maxY && to.y > maxY)
  );
}

/** From the nearest of a box's ends and sides' middles to the target. */
function leaderOf(box: TurnedBox, target: PaperPoint): PaperLine {
  const [a, b, c, d] = cornersOfBox(box) as [PaperPoint, PaperPoint, PaperPoint, PaperPoint];
  const middles = [middle(a, b), middle(b, c), middle(c, d), middle(d, a)];
  const far = (p: PaperPoint) => Math.hypot(p.x - target.x, p.y - target.y);
  return { from: middles.reduce((best, next) => (far(next) < far(best) ? next : best)), to: target };
}

function middle(a: PaperPoint, b: PaperPoint): PaperPoint {
  return { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
}

function crosses(one: PaperLine, other: PaperLine): boolean {
  const side = (line: PaperLine, p: PaperPoint) =>
    (line.to.x - line.from.x) * (p.y - line.from.y) - (line.to.y - line.from.y) * (p.x - line.from.x);
  return side(one, other.from) * side(one, other.to) < 0 && side(other, one.from) * side(other, one.to) < 0;
}

function linesOf(mark: Exclude<Mark, { kind: 'text' }>): WeightedLine[] {
  switch (mark.kind) {
    case 'line':
      return [{ from: mark.from, to: mark.to, weight: LINE_WEIGHTS[mark.pen] }];
    case 'run':
      return alongPoints(mark.points, mark.isClosed, LINE_WEIGHTS[mark.pen]);
    case 'area': {
      const { pen } = mark;
      return pen === null ? [] : mark.loops.flatMap((loop) => alongPoints(loop, true, LINE_WEIGHTS[pen]));
    }
    case 'circle': {
      const { centre, radius, pen } = mark;
      const weight = LINE_WEIGHTS[pen ?? 'thin'];
      // its two diameters stand for it: words on a circle lie on one of them
      return [
        { from: { x: centre.x - radius, y: centre.y }, to: { x: centre.x + radius, y: centre.y }, weight },
        { from: { x: centre.x, y: centre.y - radius }, to: { x: centre.x, y: centre.y + radius }, weight },
      ];
    }
  }
}

function alongPoints(points: readonly PaperPoint[], isClosed: boolean, weight: number): WeightedLine[] {
  const last = isClosed ? points.length : points.length - 1;
  return points.slice(0, last).map((from, i) => ({ from, to: points[(i + 1) % points.length]!, weight }));
}
