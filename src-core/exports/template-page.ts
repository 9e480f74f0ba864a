/** One page of a full-size template. */
import type { Figure, Mark, PaperPoint, PaperSize, Pen } from '../figure';
import type { BoundingBox, Point, Segment } from '../outline';
import { distanceIn, TOUCH_IN } from '../outline';
import { CHECK_SQUARE_IN, checkSquare } from './check-square';
import { CROSS_HALF_IN, OVERLAP_IN, PAPER_MARGIN_IN } from './practice';
import type { Tile } from './template-tiles';
import { clipped, holdsCross } from './template-tiles';

/** What all pages of a template share. */
export interface TemplateSheet {
  /** Of all its figures. */
  readonly id: string;
  /** "Sink of Serving counter". */
  readonly name: string;
  /** "This face up", or what the mirrored template says. */
  readonly faceWords: string;
  readonly paper: PaperSize;
  readonly columns: number;
  readonly rows: number;
  readonly outline: readonly Segment[];
  readonly centreLines: readonly Segment[];
  readonly crosses: readonly Point[];
}

/** Places that the check square is tried at, this far apart, in. */
const TRY_STEP_IN = 0.25;
/** Clear paper wanted round the check square, in. */
const CLEAR_IN = 0.125;
const LINE_IN = 0.2;
const BAND_PT = 9;

/** "A1": the column by its letter from the left, the row by its number from the front. */
export function pageLabel({ column, row }: Pick<Tile, 'column' | 'row'>): string {
  return `${String.fromCharCode('A'.charCodeAt(0) + column)}${row + 1}`;
}

/** The page as a figure in paper inches at 1 : 1. */
export function templatePage(sheet: TemplateSheet, tile: Tile): Figure {
  const { id, name, faceWords, paper, columns, rows } = sheet;
  const { box } = tile;
  const label = pageLabel(tile);
  const pageWords = `${label} of ${columns}x${rows}`;
  const toPaper = ({ xIn, yIn }: Point): PaperPoint => ({
    x: PAPER_MARGIN_IN + xIn - box.minXIn,
    y: PAPER_MARGIN_IN + box.maxYIn - yIn,
  });
  return {
    id: `${id}-${label.toLowerCase()}`,
    title: `${name}, full-size template, page ${pageWords}`,
    scaleWords: '1 : 1',
    widthIn: paper.widthIn,
    heightIn: paper.heightIn,
    words: `Part of the outline of the ${name} at full size, with centre lines, crosses that lie over those of the next page, and a square of 100 mm to be measured. ${faceWords}; the front edge is at the foot of the page.`,
    marks: [
      frame(box, toPaper),
      ...checkSquare(toPaper(squarePlace(sheet, box)), pageWords, faceWords),
      ...sheet.centreLines.flatMap((line) => lineWithin(line, box, 'centre', toPaper)),
      ...sheet.crosses.filter((at) => holdsCross(box, at)).flatMap((at) => cross(toPaper(at))),
      ...runsWithin(sheet.outline, box).map(
        ({ points, isClosed }): Mark => ({ kind: 'run', points: points.map(toPaper), isClosed, pen: 'cut' }),
      ),
      ...bandWords(sheet, pageWords, toPaper({ xIn: box.minXIn, yIn: box.minYIn })),
    ],
  };
}

function frame({ minXIn, minYIn, maxXIn, maxYIn }: BoundingBox, toPaper: (at: Point) => PaperPoint): Mark {
  const corners = [
    { xIn: minXIn, yIn: minYIn },
    { xIn: maxXIn, yIn: minYIn },
    { xIn: maxXIn, yIn: maxYIn },
    { xIn: minXIn, yIn: maxYIn },
  ];
  return { kind: 'run', points: corners.map(toPaper), isClosed: true, pen: 'hidden' };
}

function lineWithin(
  segment: Segment,
  box: BoundingBox,
  pen: Pen,
  toPaper: (at: Point) => PaperPoint,
): Mark[] {
  const part = clipped(segment, box);
  return part === null ? [] : [{ kind: 'line', from: toPaper(part.a), to: toPaper(part.b), pen }];
}

function cross({ x, y }: PaperPoint): Mark[] {
  return [
    {
      kind: 'line',
      from: { x: x - CROSS_HALF_IN, y },
      to: { x: x + CROSS_HALF_IN, y },
      pen: 'thin',
    },
    {
      kind: 'line',
      from: { x, y: y - CROSS_HALF_IN },
      to: { x, y: y + CROSS_HALF_IN },
      pen: 'thin',
    },
  ];
}

interface Run {
  readonly points: readonly Point[];
  readonly isClosed: boolean;
}

/** The parts of a closed outline within a box, joined where they meet. */
function runsWithin(outline: readonly Segment[], box: BoundingBox): Run[] {
  const runs: Point[][] = [];
  for (const segment of outline) {
    const part = clipped(segment, box);
    if (part === null) continue;
    const last = runs.at(-1);
    if (last !== undefined && isSame(last.at(-1)!, part.a)) last.push(part.b);
    else runs.push([part.a, part.b]);
  }
  const [first, last] = [runs[0], runs.at(-1)];
  if (first === undefined || last === undefined || !isSame(last.at(-1)!, first[0]!)) return runs.map(open);
  if (first === last) return [{ points: first.slice(0, -1), isClosed: true }];
  return [[...last, ...first.slice(1)], ...runs.slice(1, -1)].map(open);
}

function open(points: readonly Point[]): Run {
  return { points, isClosed: false };
}

function isSame(p: Point, q: Point): boolean {
  return distanceIn(p, q) <= TOUCH_IN;
}

/** Top left corner of the check square: of the places off the overlaps the one with least of the drawing in it, farthest back. */
function squarePlace({ outline, centreLines }: TemplateSheet, box: BoundingBox): Point {
  const lines = [...outline, ...centreLines];
  const roomXIn = box.maxXIn - box.minXIn - 2 * OVERLAP_IN - CHECK_SQUARE_IN;
  const roomYIn = box.maxYIn - box.minYIn - 2 * OVERLAP_IN - CHECK_SQUARE_IN;
  let best: Point = { xIn: box.minXIn + OVERLAP_IN, yIn: box.maxYIn - OVERLAP_IN };
  let leastIn = Number.POSITIVE_INFINITY;
  for (let downIn = 0; downIn <= roomYIn; downIn += TRY_STEP_IN) {
    for (let acrossIn = 0; acrossIn <= roomXIn; acrossIn += TRY_STEP_IN) {
      const at = { xIn: box.minXIn + OVERLAP_IN + acrossIn, yIn: box.maxYIn - OVERLAP_IN - downIn };
      const heldIn = lengthWithinIn(lines, at);
      if (heldIn >= leastIn) continue;
      best = at;
      leastIn = heldIn;
    }
  }
  return best;
}

function lengthWithinIn(lines: readonly Segment[], { xIn, yIn }: Point): number {
  const box = {
    minXIn: xIn - CLEAR_IN,
    maxXIn: xIn + CHECK_SQUARE_IN + CLEAR_IN,
    minYIn: yIn - CHECK_SQUARE_IN - CLEAR_IN,
    maxYIn: yIn + CLEAR_IN,
  };
  return lines.reduce((sumIn, line) => {
    const part = clipped(line, box);
    return part === null ? sumIn : sumIn + distanceIn(part.a, part.b);
  }, 0);
}

/** Words below the frame, from its lower left corner. */
function bandWords(sheet: TemplateSheet, pageWords: string, corner: PaperPoint): Mark[] {
  const isOne = sheet.columns * sheet.rows === 1;
  const lines = [
    `${sheet.name}, full-size template, page ${pageWords}. ${sheet.faceWords}, this edge front.`,
    'Print at 100 %, not fitted to the page. Measure the square on every page: 100 mm each side.',
    ...(isOne
      ? []
      : [
          'Cut along the dashed frame and lay pages over each other so that the crosses meet; then tape them.',
        ]),
  ];
  return lines.map((words, i) => ({
    kind: 'text',
    words,
    at: { x: corner.x, y: corner.y + (i + 1) * LINE_IN },
    sizePt: BAND_PT,
    anchor: 'start',
    turnDeg: 0,
    isBold: i === 0,
    hasGround: false,
  }));
}
