/** The plan of the steel of a piece as it is laid. */
import type { Figure, PaperPoint } from '../figure';
import type { Job, Piece } from '../job';
import { boundingBox, clipSegmentToRegion } from '../outline';
import type { BarMark, DrawnBar, DrawnShape, SteelPlacing } from '../steel-placing';
import { printLength } from '../units';
import type { Board, Spot } from './board';
import { boardMarks, draw, newBoard, placeWords } from './board';
import { atLargestScale, finishedFigure } from './finish';
import { drawFurniture } from './furniture';
import { areaMark, dotMark, lineMark, loopMark } from './marks';
import { drawEdgeNumbers } from './plan-parts';
import type { PlanView } from './plan-view';
import { movedOn, onWay, planView, readableTurnDeg } from './plan-view';
import { NAME_PT, SMALL_PT } from './practice';
import type { PaperScale, PaperSize } from './scale';
import { PLAN_SCALES } from './scale';

/** Dot of a standoff and hook of a bar, on paper, in. */
const STANDOFF_IN = 0.022;
const HOOK_IN = 0.06;

/**
 * Mesh strips with their laps shaded, bars by their marks, trimmers, standoffs as dots and joints, with counts and spacings below.
 * null where no steel is drawn or recommended.
 */
export function steelPlan(job: Job, piece: Piece, placing: SteelPlacing, room: PaperSize): Figure | null {
  const { strips, bars, trimmers, outline } = placing.drawing;
  if (strips.length + bars.length + trimmers.length + placing.others.length === 0) return null;
  const box = boundingBox(outline.outer);
  const notes = steelNotes(job, placing);
  const drawAt = (scale: PaperScale): Figure => {
    const board = newBoard();
    const view = planView(box, scale.ratio);
    drawSteelLines(board, view, placing);
    drawEdgeNumbers(board, view, piece);
    nameSteel(board, view, job, placing);
    drawFurniture(board, {
      ratio: scale.ratio,
      system: job.shownIn,
      notes,
      leastWidthIn: Math.min(room.widthIn, LEAST_NOTE_IN),
      hasFront: true,
    });
    return finishedFigure(
      {
        id: `steel-${piece.id}`,
        title: `Steel of ${piece.name}`,
        scaleWords: scale.words,
        words: `Plan of the steel of ${piece.name}. ${notes.join(' ')}`,
      },
      boardMarks(board),
    );
  };
  return atLargestScale(PLAN_SCALES[job.shownIn], room, drawAt);
}

const LEAST_NOTE_IN = 4;

function drawSteelLines(board: Board, { at, loop }: PlanView, { drawing }: SteelPlacing): void {
  const loops = ({ shape }: DrawnShape) => [shape.outer, ...shape.holes].map(loop);
  for (const strip of drawing.strips) {
    draw(board, areaMark(loops(strip), 'none', 'thin'));
    const { minXIn, minYIn, maxXIn, maxYIn } = boundingBox(strip.shape.outer);
    const diagonal = { a: { xIn: minXIn, yIn: minYIn }, b: { xIn: maxXIn, yIn: maxYIn } };
    // a strip is marked by its diagonal, as a sheet of mesh is on drawings; common practice, no source
    for (const { a, b } of clipSegmentToRegion(diagonal, strip.shape))
      draw(board, lineMark(at(a), at(b), 'grid'));
  }
  for (const lap of drawing.laps) draw(board, areaMark(loops(lap), 'light', 'thin'));
  for (const { at: place } of drawing.standoffs) draw(board, dotMark(at(place), STANDOFF_IN));
  for (const { from, to } of drawing.joints) draw(board, lineMark(at(from), at(to), 'centre'));
  for (const bar of drawing.bars) drawBar(board, at(bar.from), at(bar.to), bar);
  for (const { from, to } of drawing.trimmers) draw(board, lineMark(at(from), at(to), 'visible'));
  for (const hole of drawing.outline.holes) draw(board, loopMark(loop(hole), 'visible'));
  draw(board, loopMark(loop(drawing.outline.outer), 'cut'));
}

function drawBar(board: Board, from: PaperPoint, to: PaperPoint, bar: DrawnBar): void {
  draw(board, lineMark(from, to, 'visible'));
  const lengthIn = Math.hypot(to.x - from.x, to.y - from.y);
  const side = { x: -(to.y - from.y) / lengthIn, y: (to.x - from.x) / lengthIn };
  for (const [end, isHooked] of [
    [from, bar.isHookedAtFrom],
    [to, bar.isHookedAtTo],
  ] as const) {
    if (isHooked) draw(board, lineMark(end, movedOn(end, side, HOOK_IN), 'visible'));
  }
}

function nameSteel(board: Board, view: PlanView, job: Job, placing: SteelPlacing): void {
  const { at } = view;
  for (const { label, labelAt } of placing.drawing.strips) overThing(board, label, at(labelAt), NAME_PT);
  for (const { label, labelAt } of placing.drawing.laps) overThing(board, label, at(labelAt), SMALL_PT);
  for (const { bars, marks, pitchIn } of placing.bars) {
    for (const mark of marks) {
      const own = bars.filter(({ mark: each }) => each === mark.mark);
      const middle = own[Math.floor(own.length / 2)];
      if (middle === undefined) continue;
      const [from, to] = [at(middle.from), at(middle.to)];
      onLine(board, barWords(job, pitchIn, mark), from, to);
    }
  }
  for (const { from, to, label } of [...placing.drawing.trimmers, ...placing.drawing.joints]) {
    placeWords(
      board,
      { words: label, sizePt: SMALL_PT },
      [],
      at({ xIn: (from.xIn + to.xIn) / 2, yIn: (from.yIn + to.yIn) / 2 }),
    );
  }
}

function overThing(board: Board, words: string, at: PaperPoint, sizePt: number): void {
  const level = SPREAD.map(([x, y], i): Spot => {
    return { centre: { x: at.x + x, y: at.y + y }, turnDeg: 0, leaderTo: null, cost: i * 0.04 };
  });
  const upright = SPREAD.map(([x, y], i): Spot => {
    return { centre: { x: at.x + y, y: at.y + x }, turnDeg: -90, leaderTo: null, cost: 0.1 + i * 0.04 };
  });
  const spots = [...level, ...upright];
  placeWords(board, { words, sizePt }, spots, at);
}

/** Places round the middle of a strip that still lie well in it, on paper, in. */
const SPREAD: readonly (readonly [number, number])[] = [
  [0, 0],
  [0, 0.12],
  [0, -0.12],
  [0.4, 0],
  [-0.4, 0],
  [0.4, 0.2],
  [-0.4, 0.2],
  [0.4, -0.2],
  [-0.4, -0.2],
  [0.8, 0],
  [-0.8, 0],
];

/** Words on one bar, in line with it. */
function onLine(board: Board, words: string, from: PaperPoint, to: PaperPoint): void {
  const turnDeg = readableTurnDeg(from, to);
  const spots = [0.5, 0.35, 0.65, 0.25, 0.75].map((share): Spot => {
    return { centre: onWay(from, to, share), turnDeg, leaderTo: null, cost: Math.abs(share - 0.5) * 0.3 };
  });
  placeWords(board, { words, sizePt: NAME_PT, isBold: true }, spots, onWay(from, to, 0.5));
}

/** "A1: 19 at 5 in". */
function barWords(job: Job, pitchIn: number, { mark, count }: BarMark): string {
  const spacing = count > 1 ? ` at ${printLength(pitchIn, { system: job.shownIn })}` : '';
  return `${mark}: ${count}${spacing}`;
}

/** Counts, lengths and spacings in sentences. */
function steelNotes(job: Job, placing: SteelPlacing): string[] {
  const length = (valueIn: number) => printLength(valueIn, { system: job.shownIn });
  const fine = (valueIn: number) =>
    printLength(valueIn, { system: job.shownIn, roundToIn: 1 / 32, roundToMm: 0.5 });
  const meshes = placing.meshes.map(
    ({ words, strips, laps, lapAlongIn, lapAcrossIn }) =>
      `${words}: ${counted(strips.length, 'strip')}${
        laps.length === 0
          ? ''
          : `, lapped ${length(lapAlongIn)} along and ${length(lapAcrossIn)} across the sheet (shaded)`
      }.`,
  );
  const bars = placing.bars.flatMap(({ words, marks, pitchIn }) => {
    const each = marks.map((mark) => `${barWords(job, pitchIn, mark)}, cut ${length(mark.cutLengthIn)}`);
    return [`${words}: ${each.join('; ')}.`];
  });
  const trimmers = placing.drawing.trimmers.length;
  const standoffs = placing.standoffSets.map(
    ({ count, heightIn, spacingIn }) =>
      `Dots: ${counted(count, 'standoff')} ${fine(heightIn)} high, ${length(spacingIn)} apart.`,
  );
  const others = placing.others.map(({ words }) => (words.endsWith('.') ? words : `${words}.`));
  return [
    ...meshes,
    ...bars,
    ...(trimmers === 0 ? [] : [`${counted(trimmers, 'trimmer')} across corners, recommended.`]),
    ...standoffs,
    ...others,
  ];
}

function counted(count: number, word: string): string {
  return `${count} ${word}${count === 1 ? '' : 's'}`;
}
