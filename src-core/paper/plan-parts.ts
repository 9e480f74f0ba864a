/** Parts of a piece's plan: lines first, then what they are called. */
import { stands } from '../analysis';
import { insideCornerMarks, seamMarks, supportCentre } from '../drawing';
import { cutoutCentre } from '../edit';
import type { PaperPoint } from '../figure';
import type { Cutout, Job, Piece, Support } from '../job';
import { cutoutInPlan, pieceOutline } from '../job';
import type { Point } from '../outline';
import { between, boundingBox, outlineEdges, patchOutline } from '../outline';
import { printMass, sentenceCase } from '../units';
import type { Board, Spot } from './board';
import { draw, isFree, keepFree, linesUnder, placeWords } from './board';
import { bareLength } from './figure-words';
import { linesOnce } from './lines-once';
import { areaMark, dotMark, lineMark, loopMark, textMark } from './marks';
import type { PlanView } from './plan-view';
import { movedOn, onWay, readableTurnDeg } from './plan-view';
import { NAME_PT, RING_IN, RING_OFF_IN, SMALL_PT } from './practice';
import { supportLoops, supportName } from './support-shapes';
import type { TurnedBox } from './words-box';
import { baselineIn } from './words-box';

/** Centre lines run this far past an opening, on paper, in. */
const CENTRE_PAST_IN = 0.09;
/** The hatched strip along an edge at a wall, on paper, in. */
const WALL_OFF_IN = 0.02;
const WALL_STRIP_IN = 0.07;
/** Cost of words on the hatch, as of a visible line. */
const HATCH_WEIGHT = 2;
/** Dot at an inside corner, on paper, in. */
const CORNER_DOT_IN = 0.035;

/** Lines of everything on a plan, without words. */
export function drawPlanParts(board: Board, view: PlanView, job: Job, piece: Piece): void {
  const { at, loop } = view;
  const outer = outerOf(piece);
  const below = staying(piece).flatMap((support) => supportLoops(support, outer).map(loop));
  for (const { from, to } of linesOnce(below)) draw(board, lineMark(from, to, 'hidden'));
  drawWallEdges(board, view, piece);
  for (const { from, to } of seamMarks(job, piece)) draw(board, lineMark(at(from), at(to), 'centre'));
  for (const load of piece.loads.fixed) {
    const corners = patchOutline(load.centre, load.widthIn, load.depthIn, (load.angleDeg * Math.PI) / 180);
    draw(board, loopMark(loop(corners), 'thin'));
  }
  piece.cutouts.forEach((cutout, index) => {
    const plan = cutoutInPlan(piece, index);
    if (!plan.ok) return;
    const points = loop(plan.points);
    draw(board, loopMark(points, 'visible'));
    drawCentreLines(board, view, cutout, plan.points);
  });
  draw(board, loopMark(loop(outer), 'cut'));
  for (const corner of insideCornerMarks(piece)) draw(board, dotMark(at(corner.at), CORNER_DOT_IN));
  drawFall(board, view, job, piece);
}

/** Names of openings, supports, joints, loads, corners. */
export function namePlanParts(board: Board, view: PlanView, job: Job, piece: Piece): void {
  const { at } = view;
  const outer = outerOf(piece);
  for (const cutout of piece.cutouts) {
    nameAt(board, openingWords(job, cutout), at(cutoutCentre(cutout.shape)), true);
  }
  for (const support of staying(piece)) {
    if (support.kind === 'wall' || support.kind === 'ledger') {
      nameOnLine(board, supportName(support), at(support.from), at(support.to));
      continue;
    }
    const centre = supportCentre(support) ?? middleOf(outer);
    const loops = supportLoops(support, outer);
    const target = support.kind === 'bracket' ? middleOf(loops[0] ?? outer) : centre;
    nameAt(board, supportName(support), at(target), false);
  }
  for (const load of piece.loads.fixed) {
    const weight = printMass(load.weightLb, { system: job.shownIn });
    nameAt(board, `${load.name}, ${weight}`, at(load.centre), false);
  }
  for (const { from, to, words } of seamMarks(job, piece)) {
    const [a, b] = [at(from), at(to)];
    alongLine(board, words, a, b);
  }
  for (const { corner, at: place } of insideCornerMarks(piece)) {
    placeWords(board, { words: `inside corner ${corner + 1}`, sizePt: SMALL_PT }, [], at(place));
  }
  piece.corners.forEach((corner, index) => {
    if (corner.radiusIn === 0) return;
    const words = `R ${bareLength(corner.radiusIn, job.shownIn)}`;
    placeWords(board, { words, sizePt: SMALL_PT }, [], at(arcMiddle(piece, index)));
  });
}

/** Ringed numbers of the edges, inside the outline where there is room. */
export function drawEdgeNumbers(board: Board, view: PlanView, piece: Piece): void {
  for (const { edge, a, b, inward } of outlineEdges(piece.corners)) {
    const [from, to] = [view.at(a), view.at(b)];
    const way = view.way(inward);
    const spots = [0.5, 0.42, 0.58, 0.34, 0.66, 0.25, 0.75, 0.15, 0.85].flatMap((share, i) =>
      [1, 1.9, -1, 2.8, -2].map((off, k) => ({
        centre: movedOn(onWay(from, to, share), way, off * RING_OFF_IN),
        cost: i * 0.03 + k * 0.12,
      })),
    );
    const best = spots
      .flatMap(({ centre, cost }) => {
        const box = ringBox(centre);
        return isFree(board, box) ? [{ centre, cost: cost + linesUnder(board, box) }] : [];
      })
      .sort((one, other) => one.cost - other.cost)[0];
    const words = String(edge + 1);
    if (best === undefined) {
      placeWords(board, { words: `edge ${words}`, sizePt: SMALL_PT }, [], onWay(from, to, 0.5));
      continue;
    }
    const baseline = { x: best.centre.x, y: best.centre.y + baselineIn(SMALL_PT) };
    keepFree(board, ringBox(best.centre));
    draw(board, dotMark(best.centre, RING_IN, 'paper', 'visible'));
    // drawn straight into the texts: its ring has taken the room
    board.texts.push(textMark(words, baseline, SMALL_PT, { anchor: 'middle', isBold: true }));
  }
}

function ringBox(centre: PaperPoint): TurnedBox {
  return { centre, halfWidth: RING_IN, halfHeight: RING_IN, turnDeg: 0 };
}

/** Words over their thing, else near it, else on a leader. */
function nameAt(board: Board, words: string, at: PaperPoint, isBold: boolean): void {
  const spots = NUDGES.map(([dx, dy], i): Spot => {
    return { centre: { x: at.x + dx, y: at.y + dy }, turnDeg: 0, leaderTo: null, cost: i * 0.03 };
  });
  placeWords(board, { words, sizePt: NAME_PT, isBold }, spots, at);
}

/** Places round a middle that still read as its name, on paper, in. */
const NUDGES: readonly (readonly [number, number])[] = [
  [0, 0],
  [0, -0.1],
  [0, 0.1],
  [0, -0.18],
  [0, 0.18],
  [0.12, -0.1],
  [-0.12, -0.1],
  [0.12, 0.1],
  [-0.12, 0.1],
];

/** Words on the centre line of a wall or ledger, anywhere along it. */
function nameOnLine(board: Board, words: string, a: PaperPoint, b: PaperPoint): void {
  const turnDeg = readableTurnDeg(a, b);
  const spots = [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8].map((share): Spot => {
    return { centre: onWay(a, b, share), turnDeg, leaderTo: null, cost: Math.abs(share - 0.5) * 0.2 };
  });
  placeWords(board, { words, sizePt: NAME_PT }, spots, onWay(a, b, 0.5));
}

/** Words along a line, beside it. */
function alongLine(board: Board, words: string, a: PaperPoint, b: PaperPoint): void {
  const turnDeg = readableTurnDeg(a, b);
  const rad = (turnDeg * Math.PI) / 180;
  const up = { x: Math.sin(rad), y: -Math.cos(rad) };
  const spots = [0.5, 0.35, 0.65, 0.25, 0.75].flatMap((share) =>
    [0.085, -0.085].map((offIn): Spot => {
      const centre = movedOn(onWay(a, b, share), up, offIn);
      return { centre, turnDeg, leaderTo: null, cost: Math.abs(share - 0.5) * 0.2 };
    }),
  );
  placeWords(board, { words, sizePt: SMALL_PT }, spots, onWay(a, b, 0.5));
}

function openingWords(job: Job, { name, purpose, shape }: Cutout): string {
  const length = (valueIn: number) => bareLength(valueIn, job.shownIn);
  const called = name ?? sentenceCase(purpose);
  switch (shape.kind) {
    case 'rectangle': {
      const radius = shape.radiusIn > 0 ? `, R ${length(shape.radiusIn)}` : '';
      return `${called} ${length(shape.widthIn)} x ${length(shape.depthIn)}${radius}`;
    }
    case 'circle':
      return `${called}, ${length(shape.diameterIn)} across`;
    case 'polygon':
      return called;
  }
}

/** Centre lines both ways, a little past the opening, in its own directions. */
function drawCentreLines(
  board: Board,
  { at, ratio }: PlanView,
  cutout: Cutout,
  points: readonly Point[],
): void {
  const { shape } = cutout;
  const centre = at(cutoutCentre(shape));
  const angleRad = shape.kind === 'rectangle' ? (shape.angleDeg * Math.PI) / 180 : 0;
  const box = boundingBox(points);
  const halves =
    shape.kind === 'rectangle'
      ? [shape.widthIn / 2, shape.depthIn / 2]
      : [(box.maxXIn - box.minXIn) / 2, (box.maxYIn - box.minYIn) / 2];
  halves.forEach((halfIn, k) => {
    const rad = angleRad + (k * Math.PI) / 2;
    const way = { x: Math.cos(rad), y: -Math.sin(rad) };
    const reach = halfIn * ratio + CENTRE_PAST_IN;
    draw(board, lineMark(movedOn(centre, way, -reach), movedOn(centre, way, reach), 'centre'));
  });
}

function drawWallEdges(board: Board, view: PlanView, piece: Piece): void {
  for (const { edge, a, b, inward } of outlineEdges(piece.corners)) {
    if (piece.edges?.[edge]?.kind !== 'wall') continue;
    const [from, to] = [view.at(a), view.at(b)];
    const out = view.way({ x: -inward.x, y: -inward.y });
    const near = [from, to].map((p) => movedOn(p, out, WALL_OFF_IN));
    const far = [to, from].map((p) => movedOn(p, out, WALL_OFF_IN + WALL_STRIP_IN));
    draw(board, areaMark([[...near, ...far]], 'masonry'));
    board.lines.push({ from: near[0]!, to: near[1]!, weight: HATCH_WEIGHT });
  }
}

/** Length of the arrow that shows a fall, and of its head, on paper, in. */
const FALL_ARROW_IN = 0.5;
const FALL_HEAD_IN = 0.1;

function drawFall(board: Board, view: PlanView, job: Job, piece: Piece): void {
  if (piece.fall === null) return;
  const { inPerFt, towardDeg } = piece.fall;
  const rad = (towardDeg * Math.PI) / 180;
  const way = { x: Math.cos(rad), y: -Math.sin(rad) };
  const side = { x: -way.y, y: way.x };
  const box = boundingBox(piece.corners);
  const middle = view.at({
    xIn: box.minXIn + (box.maxXIn - box.minXIn) * 0.68,
    yIn: (box.minYIn + box.maxYIn) / 2,
  });
  const [tail, tip] = [movedOn(middle, way, -FALL_ARROW_IN / 2), movedOn(middle, way, FALL_ARROW_IN / 2)];
  const neck = movedOn(tip, way, -FALL_HEAD_IN);
  draw(
    board,
    lineMark(tail, tip, 'visible'),
    areaMark([[tip, movedOn(neck, side, FALL_HEAD_IN / 3), movedOn(neck, side, -FALL_HEAD_IN / 3)]], 'ink'),
  );
  alongLine(board, `fall ${fallWords(job, inPerFt)}`, tail, tip);
}

/** "1/8 in a foot", "10 mm a metre". */
export function fallWords({ shownIn }: Job, inPerFt: number): string {
  if (shownIn === 'imperial') return `${bareLength(inPerFt, 'imperial')} in a foot`;
  return `${Number(((inPerFt / 12) * 1000).toFixed(1))} mm a metre`;
}

function staying(piece: Piece): Support[] {
  return piece.supports.filter((support) => stands(support, null));
}

function outerOf(piece: Piece): readonly Point[] {
  const outline = pieceOutline(piece);
  return outline.ok ? outline.outer : piece.corners;
}

function middleOf(points: readonly Point[]): Point {
  const box = boundingBox(points);
  return between({ xIn: box.minXIn, yIn: box.minYIn }, { xIn: box.maxXIn, yIn: box.maxYIn }, 0.5);
}

/** The middle of the arc at a rounded corner. */
function arcMiddle(piece: Piece, index: number): Point {
  const n = piece.corners.length;
  const corner = piece.corners[index]!;
  const toward = [piece.corners[(index + n - 1) % n]!, piece.corners[(index + 1) % n]!].map((other) => {
    const lengthIn = Math.hypot(other.xIn - corner.xIn, other.yIn - corner.yIn);
    return { x: (other.xIn - corner.xIn) / lengthIn, y: (other.yIn - corner.yIn) / lengthIn };
  });
  const [p, q] = toward as [{ x: number; y: number }, { x: number; y: number }];
  const halfRad = Math.acos(Math.max(-1, Math.min(1, p.x * q.x + p.y * q.y))) / 2;
  const bisector = { x: p.x + q.x, y: p.y + q.y };
  const lengthIn = Math.hypot(bisector.x, bisector.y);
  if (lengthIn < 1e-9 || halfRad < 1e-9) return corner;
  const offIn = corner.radiusIn / Math.sin(halfRad) - corner.radiusIn;
  return {
    xIn: corner.xIn + (bisector.x / lengthIn) * offIn,
    yIn: corner.yIn + (bisector.y / lengthIn) * offIn,
  };
}
