/** Dimension lines with witness lines, oblique strokes and figures, in lanes outside what they measure. */
import type { PaperPoint } from '../figure';
import type { Board, Spot, WordsToPlace } from './board';
import { boxAt, draw, isFree, linesUnder, placeWords } from './board';
import { lineMark, textMark } from './marks';
import { aboveWords, apartIn, movedOn, onWay, readableTurnDeg } from './plan-view';
import {
  DIMENSION_PT,
  FIGURE_OFF_IN,
  FIGURE_ROOM_IN,
  FIRST_LANE_IN,
  LANE_IN,
  STROKE_HALF_IN,
  WITNESS_GAP_IN,
  WITNESS_PAST_IN,
} from './practice';
import type { TurnedBox } from './words-box';
import { baselineAt, grownBox, lineInBoxIn, wordsHeightIn, wordsWidthIn } from './words-box';

/** What is measured, from corner to corner on paper, and its figure. */
export interface PaperDimension {
  readonly from: PaperPoint;
  readonly to: PaperPoint;
  readonly words: string;
}

/** Lanes that are looked at beyond the first, and what a lane farther out costs beside lines under the words. */
const MOST_LANES = 10;
const LANE_COST = 0.4;
/** Half the height of the strip that a dimension line keeps to itself, in. */
const LINE_HALF_IN = 0.05;
/** A dimension line passes words by at least this much, in. */
const LINE_CLEAR_IN = 0.03;
/** Off a dimension line, where a figure goes that has no room in it: rows outward, and shifts along, in. */
const RAISES_IN = [0.19, 0.32, 0.45] as const;
const SHIFTS_IN = [0, 0.1, -0.1, 0.2, -0.2, 0.32, -0.32, 0.45, -0.45] as const;

/**
 * Draws dimensions of one line in the nearest lane where nothing is in their way. Gives the lane and the figures that had no room
 * between their witness lines; `placeLoose` puts them when all lanes are drawn.
 */
export function drawLane(
  board: Board,
  dimensions: readonly PaperDimension[],
  outward: PaperPoint,
  firstLane: number,
): { readonly lane: number; readonly loose: readonly LooseFigure[] } {
  let best: { readonly lane: number; readonly cost: number } | null = null;
  for (let lane = firstLane; lane <= firstLane + MOST_LANES; lane++) {
    const own = (lane - firstLane) * LANE_COST;
    if (best !== null && own >= best.cost) break;
    const cost = laneCost(board, dimensions, outward, lane);
    if (cost !== null && (best === null || own + cost < best.cost)) best = { lane, cost: own + cost };
  }
  const lane = best?.lane ?? firstLane + MOST_LANES + 1;
  const loose = dimensions.flatMap((dimension) => drawInLane(board, dimension, outward, lane));
  return { lane, loose };
}

/** A figure without room between its witness lines. */
export interface LooseFigure {
  readonly words: string;
  /** The dimension line. */
  readonly from: PaperPoint;
  readonly to: PaperPoint;
  /** The side to which it is moved first. */
  readonly outward: PaperPoint;
}

/** Puts figures beside their dimension lines: past an end, or off the line on a leader. */
export function placeLoose(board: Board, loose: readonly LooseFigure[]): void {
  for (const { words, from, to, outward } of loose) {
    const what: WordsToPlace = { words, sizePt: DIMENSION_PT };
    const turnDeg = readableTurnDeg(from, to);
    const middle = onWay(from, to, 0.5);
    const along = wayFrom(from, to);
    const halfWidth = wordsWidthIn(words, DIMENSION_PT) / 2;
    const beyond = apartIn(from, to) / 2 + STROKE_HALF_IN + FIGURE_ROOM_IN + halfWidth;
    const ends = [beyond, -beyond].map((byIn): Spot => {
      return { centre: movedOn(aboveLine(middle, turnDeg), along, byIn), turnDeg, leaderTo: null, cost: 0.2 };
    });
    const raised = RAISES_IN.flatMap((raiseIn) =>
      SHIFTS_IN.map((shiftIn): Spot => {
        const centre = movedOn(movedOn(middle, outward, raiseIn), along, shiftIn);
        return { centre, turnDeg, leaderTo: middle, cost: 0.4 + raiseIn + Math.abs(shiftIn) };
      }),
    );
    placeWords(board, what, [...ends, ...raised], middle);
  }
}

/** Dimensions on the spot, their lines where the things are: strokes at the ends, figures along them where they fit. */
export function drawOnSpot(board: Board, dimensions: readonly PaperDimension[]): void {
  for (const { from, to } of dimensions) draw(board, ...lineAndStrokes(from, to));
  for (const dimension of dimensions) placeOnSpot(board, dimension);
}

function placeOnSpot(board: Board, { from, to, words }: PaperDimension): void {
  const lengthIn = apartIn(from, to);
  const what = { words, sizePt: DIMENSION_PT };
  const turnDeg = readableTurnDeg(from, to);
  const along = wayFrom(from, to);
  const roomIn = lengthIn - wordsWidthIn(words, DIMENSION_PT) - 2 * FIGURE_ROOM_IN;
  const middle = onWay(from, to, 0.5);
  const up = aboveWords(turnDeg);
  const offIn = FIGURE_OFF_IN + wordsHeightIn(DIMENSION_PT) / 2;
  const spots =
    roomIn < 0
      ? []
      : [0, 0.25, -0.25, 0.5, -0.5].flatMap((share) =>
          [1, -1].map((side): Spot => {
            const on = movedOn(middle, along, share * roomIn);
            const cost = Math.abs(share) * 0.2 + (side < 0 ? 0.1 : 0);
            return { centre: movedOn(on, up, side * offIn), turnDeg, leaderTo: null, cost };
          }),
        );
  const beside = lengthIn / 2 + STROKE_HALF_IN + FIGURE_ROOM_IN + wordsWidthIn(words, DIMENSION_PT) / 2;
  const ends = [beside, -beside].map((byIn): Spot => {
    return { centre: movedOn(middle, along, byIn), turnDeg, leaderTo: null, cost: 0.5 };
  });
  const across = [1, -1].map((side): Spot => {
    const byIn = 0.04 + wordsWidthIn(words, DIMENSION_PT) / 2;
    const isSteep = Math.abs(along.y) > Math.abs(along.x);
    const way = isSteep ? { x: side, y: 0 } : { x: 0, y: side };
    const centre = movedOn(middle, way, isSteep ? byIn : offIn);
    return { centre, turnDeg: 0, leaderTo: null, cost: 0.3 };
  });
  placeWords(board, what, [...spots, ...across, ...ends], middle);
}

function laneCost(
  board: Board,
  dimensions: readonly PaperDimension[],
  outward: PaperPoint,
  lane: number,
): number | null {
  let cost = 0;
  for (const dimension of dimensions) {
    const { from, to } = inLane(dimension, outward, lane);
    const strip: TurnedBox = {
      centre: onWay(from, to, 0.5),
      halfWidth: apartIn(from, to) / 2,
      halfHeight: LINE_HALF_IN,
      turnDeg: readableTurnDeg(from, to),
    };
    if (board.boxes.some((box) => lineInBoxIn({ from, to }, grownBox(box, LINE_CLEAR_IN)) > 0)) return null;
    cost += linesUnder(board, strip);
    const figure = figureBox(dimension, outward, lane);
    if (figure === null) continue;
    if (!isFree(board, figure)) return null;
    cost += linesUnder(board, figure);
  }
  return cost;
}

function drawInLane(
  board: Board,
  dimension: PaperDimension,
  outward: PaperPoint,
  lane: number,
): LooseFigure[] {
  const { from, to } = inLane(dimension, outward, lane);
  const pastIn = laneOffIn(lane) + WITNESS_PAST_IN;
  for (const end of [dimension.from, dimension.to]) {
    draw(board, lineMark(movedOn(end, outward, WITNESS_GAP_IN), movedOn(end, outward, pastIn), 'dimension'));
  }
  draw(board, ...lineAndStrokes(from, to));
  const figure = figureBox(dimension, outward, lane);
  if (figure === null) return [{ words: dimension.words, from, to, outward }];
  const at = baselineAt(figure.centre, DIMENSION_PT, figure.turnDeg);
  const look = { anchor: 'middle', turnDeg: figure.turnDeg, hasGround: true } as const;
  draw(board, textMark(dimension.words, at, DIMENSION_PT, look));
  return [];
}

/** The room of a figure above its line; null where it does not fit between the witness lines. */
function figureBox(dimension: PaperDimension, outward: PaperPoint, lane: number): TurnedBox | null {
  const { from, to } = inLane(dimension, outward, lane);
  const widthIn = wordsWidthIn(dimension.words, DIMENSION_PT);
  if (widthIn + 2 * FIGURE_ROOM_IN > apartIn(from, to)) return null;
  const turnDeg = readableTurnDeg(from, to);
  const centre = aboveLine(onWay(from, to, 0.5), turnDeg);
  return boxAt(
    { words: dimension.words, sizePt: DIMENSION_PT },
    { centre, turnDeg, leaderTo: null, cost: 0 },
  );
}

function aboveLine(middle: PaperPoint, turnDeg: number): PaperPoint {
  return movedOn(middle, aboveWords(turnDeg), FIGURE_OFF_IN + wordsHeightIn(DIMENSION_PT) / 2);
}

function inLane({ from, to }: PaperDimension, outward: PaperPoint, lane: number) {
  const offIn = laneOffIn(lane);
  return { from: movedOn(from, outward, offIn), to: movedOn(to, outward, offIn) };
}

function laneOffIn(lane: number): number {
  return FIRST_LANE_IN + lane * LANE_IN;
}

/** A dimension line and the oblique strokes at its ends, which rise to the right of the words on it. */
export function lineAndStrokes(from: PaperPoint, to: PaperPoint) {
  const turnDeg = readableTurnDeg(from, to);
  const up = aboveWords(turnDeg);
  const along = { x: -up.y, y: up.x };
  const slant = { x: (along.x + up.x) * Math.SQRT1_2, y: (along.y + up.y) * Math.SQRT1_2 };
  return [
    lineMark(from, to, 'dimension'),
    ...[from, to].map((end) =>
      lineMark(movedOn(end, slant, -STROKE_HALF_IN), movedOn(end, slant, STROKE_HALF_IN), 'visible'),
    ),
  ];
}

function wayFrom(from: PaperPoint, to: PaperPoint): PaperPoint {
  const lengthIn = apartIn(from, to);
  return { x: (to.x - from.x) / lengthIn, y: (to.y - from.y) / lengthIn };
}
