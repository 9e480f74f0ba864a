/** The section across a piece at its longest overhang, with what carries it there. */
import type { Dimension } from '../drawing';
import { overhangDimensions } from '../drawing';
import type { Figure, PaperPoint } from '../figure';
import type { Job, Piece } from '../job';
import { pieceRegion } from '../job';
import type { Direction, Point, Region } from '../outline';
import { boundingBox, clipSegmentToRegion, directionBetween, moved } from '../outline';
import { edgeSection } from '../profile';
import type { SteelRun } from '../solid';
import { steelRuns } from '../solid';
import { printLength } from '../units';
import type { Board, Spot } from './board';
import { boardMarks, draw, newBoard, placeWords } from './board';
import type { PaperDimension } from './dimension-line';
import { drawLane, placeLoose } from './dimension-line';
import type { SectionSteel } from './edge-kinds';
import { sectionSteel } from './edge-kinds';
import { bareLength, dimensionNote } from './figure-words';
import { atLargestScale, finishedFigure } from './finish';
import { drawFurniture } from './furniture';
import { areaMark, lineMark } from './marks';
import { fallWords } from './plan-parts';
import { NAME_PT, SMALL_PT } from './practice';
import type { PaperScale, PaperSize } from './scale';
import { PLAN_SCALES } from './scale';
import { drawCutSteel, drawSteel, sectionView } from './section-parts';
import type { CutLine, CutSupport, Stretch } from './section-supports';
import { BELOW_IN, cutSupports, drawCutSupport } from './section-supports';

/** Stretches shorter than this are rounding, in. */
const LEAST_STRETCH_IN = 0.01;
/** Steel at heights nearer than this is one set, in. */
const SAME_HEIGHT_IN = 1e-6;

/**
 * Across the piece where it reaches farthest past what stays under it, the free edge to the right: slab, steel, supports, overhang and
 * back span. null where the slab overhangs nothing.
 */
export function overhangSection(job: Job, piece: Piece, room: PaperSize): Figure | null {
  const region = pieceRegion(piece);
  const longest = overhangDimensions(piece).reduce<Dimension | null>(
    (best, next) => (best === null || next.lengthIn > best.lengthIn ? next : best),
    null,
  );
  if (!region.ok || longest === null) return null;
  const inward = directionBetween(longest.from, longest.to);
  const line = { from: longest.from, inward };
  const slab = slabStretches(line, region);
  const runs = steelRuns(piece);
  const below = cutSupports(piece, line, region.outer);
  const draw = (scale: PaperScale): Figure => {
    const board = newBoard();
    drawSection(board, { job, piece, longest, inward, runs, slab, below }, scale.ratio);
    drawFurniture(board, {
      ratio: scale.ratio,
      system: job.shownIn,
      notes: [`${dimensionNote(job.shownIn)} Broken lines lie behind the section.`],
      leastWidthIn: Math.min(room.widthIn, 3.2),
      hasFront: false,
    });
    return finishedFigure(
      {
        id: `overhang-${piece.id}`,
        title: `Section of ${piece.name} at its longest overhang`,
        scaleWords: scale.words,
        words: sectionWords(job, piece, longest, below),
      },
      boardMarks(board),
    );
  };
  return atLargestScale(PLAN_SCALES[job.shownIn], room, draw);
}

interface ToDraw {
  readonly job: Job;
  readonly piece: Piece;
  readonly longest: Dimension;
  readonly inward: Direction;
  /** Every bar and wire of the piece. */
  readonly runs: readonly SteelRun[];
  /** From the free edge inward. */
  readonly slab: readonly Stretch[];
  readonly below: readonly CutSupport[];
}

function drawSection(board: Board, toDraw: ToDraw, ratio: number): void {
  const { piece, longest, inward, slab, below } = toDraw;
  const view = sectionView(ratio);
  const { at } = view;
  const { thicknessIn } = piece;
  for (const support of below) drawCutSupport(board, view, support, piece.topElevationIn - thicknessIn);
  const steel = sectionSteel(piece, inward);
  slab.forEach(({ fromIn, toIn }, k) => {
    const face = k === 0 ? ownFace(piece, longest, thicknessIn) : [at(-fromIn, 0), at(-fromIn, thicknessIn)];
    const nearFace = k === 0 ? face.map((p) => ({ x: p.x * ratio, y: p.y * ratio })) : face;
    const loop = [at(-toIn, 0), ...nearFace, at(-toIn, thicknessIn)];
    draw(board, areaMark([loop], 'concrete', 'cut'));
    const lines = steel.filter(({ isLine }) => isLine);
    drawSteel(board, view, lines, [-toIn, -fromIn], { atFrom: true, atTo: true });
  });
  for (const set of steel.filter(({ isLine }) => !isLine)) {
    for (const atIn of cutAlong(toDraw, set)) drawCutSteel(board, view, set, -atIn);
  }
  for (let k = 1; k < slab.length; k++) {
    const [fromIn, toIn] = [slab[k - 1]!.toIn, slab[k]!.fromIn];
    draw(
      board,
      lineMark(at(-fromIn, 0), at(-toIn, 0), 'thin'),
      lineMark(at(-fromIn, thicknessIn), at(-toIn, thicknessIn), 'thin'),
    );
  }
  dimension(board, toDraw, ratio);
  nameParts(board, toDraw, ratio);
}

/** How far in from the free edge the section cuts the bars or wires of a set, in, where they lie in the model. */
function cutAlong({ piece, longest, inward, runs }: ToDraw, { layerId, upIn }: SectionSteel): number[] {
  const zIn = piece.topElevationIn - piece.thicknessIn + upIn;
  const on = ([xIn, yIn]: readonly [number, number, number]) => {
    const [dx, dy] = [xIn - longest.from.xIn, yIn - longest.from.yIn];
    return { alongIn: dx * inward.x + dy * inward.y, besideIn: dy * inward.x - dx * inward.y };
  };
  return runs
    .filter((run) => run.layerId === layerId && Math.abs(run.from[2] - zIn) < SAME_HEIGHT_IN)
    .flatMap(({ from, to }): number[] => {
      const [a, b] = [on(from), on(to)];
      if (a.besideIn > 0 === b.besideIn > 0) return [];
      return [a.alongIn + ((b.alongIn - a.alongIn) * a.besideIn) / (a.besideIn - b.besideIn)];
    });
}

/** Face of the free edge, soffit to top, in slab inches turned to the paper's y. */
function ownFace(piece: Piece, longest: Dimension, thicknessIn: number) {
  const edge = longest.sets?.kind === 'edge-place' ? piece.edges?.[longest.sets.index] : undefined;
  const points =
    edge === undefined
      ? [
          { outIn: 0, upIn: 0 },
          { outIn: 0, upIn: thicknessIn },
        ]
      : edgeSection(edge, thicknessIn).line;
  return points.map(({ outIn, upIn }) => ({ x: outIn, y: -upIn }));
}

function dimension(board: Board, { job, piece, longest, slab, below }: ToDraw, ratio: number): void {
  const { at } = sectionView(ratio);
  const { thicknessIn } = piece;
  const length = (valueIn: number) => bareLength(valueIn, job.shownIn);
  const endIn = slab.at(-1)!.toIn;
  const first = slab[0]!;
  const placesIn = [
    0,
    longest.lengthIn,
    endIn,
    ...below.flatMap(({ stretch }) => (stretch === null ? [] : [stretch.fromIn, stretch.toIn])),
  ]
    .filter((placeIn) => placeIn > -LEAST_STRETCH_IN && placeIn < endIn + LEAST_STRETCH_IN)
    .sort((a, b) => a - b)
    .filter((placeIn, i, sorted) => i === 0 || placeIn - sorted[i - 1]! > 1 / 8);
  const top = (fromIn: number, toIn: number, words: string): PaperDimension => ({
    from: at(-toIn, thicknessIn),
    to: at(-fromIn, thicknessIn),
    words,
  });
  const up = { x: 0, y: -1 };
  const chain = placesIn.slice(1).map((placeIn, i) => {
    const beforeIn = placesIn[i]!;
    return top(beforeIn, placeIn, length(placeIn - beforeIn));
  });
  const { lane, loose } = drawLane(board, chain, up, 0);
  const lastIn = Math.max(
    longest.lengthIn,
    ...below.flatMap(({ stretch }) =>
      stretch === null || stretch.fromIn > first.toIn + LEAST_STRETCH_IN
        ? []
        : [Math.min(stretch.toIn, first.toIn)],
    ),
  );
  const spans = [top(0, longest.lengthIn, `overhang ${length(longest.lengthIn)}`)];
  if (lastIn - longest.lengthIn > 1 / 8) {
    spans.unshift(top(longest.lengthIn, lastIn, `back span ${length(lastIn - longest.lengthIn)}`));
  }
  const outer = drawLane(board, spans, up, lane + (loose.length > 0 ? 2 : 1));
  const thick = { from: at(-endIn, thicknessIn), to: at(-endIn, 0), words: length(thicknessIn) };
  const side = drawLane(board, [thick], { x: -1, y: 0 }, 0);
  placeLoose(board, [...loose, ...outer.loose, ...side.loose]);
}

function nameParts(board: Board, { job, piece, longest, inward, slab, below }: ToDraw, ratio: number): void {
  const { at } = sectionView(ratio);
  const { thicknessIn } = piece;
  const widthIn = slab.at(-1)!.toIn;
  for (const { name, stretch, behind } of below) {
    const reach = stretch ?? behind;
    if (reach === null) continue;
    const middleIn = -(reach.fromIn + reach.toIn) / 2;
    const words = stretch === null ? `${name}, behind` : name;
    const depths = stretch === null ? [0.5] : [0.45, 0.6, 0.3, 0.75].map((share) => share * BELOW_IN);
    const spots = depths.map((downIn, i): Spot => {
      return { centre: at(middleIn, -downIn), turnDeg: 0, leaderTo: null, cost: 0.1 + i * 0.05 };
    });
    placeWords(board, { words, sizePt: NAME_PT }, spots, at(middleIn, -depths[0]!));
  }
  const words = edgeWords(longest);
  placeWords(board, { words, sizePt: SMALL_PT }, [], at(0, thicknessIn / 2));
  const top = `top ${bareLength(piece.topElevationIn, job.shownIn)} above the floor`;
  onTop(board, top, at(-widthIn * 0.75, thicknessIn));
  const fall = fallAcross(job, piece, inward, words);
  if (fall !== null) onTop(board, fall, at(-widthIn * 0.35, thicknessIn));
}

/** Words just over the top of the slab. */
function onTop(board: Board, words: string, target: PaperPoint): void {
  const spots = [0, 0.3, -0.3, 0.6, -0.6].map((shiftIn): Spot => {
    const centre = { x: target.x + shiftIn, y: target.y - OVER_TOP_IN };
    return { centre, turnDeg: 0, leaderTo: null, cost: Math.abs(shiftIn) * 0.2 };
  });
  placeWords(board, { words, sizePt: SMALL_PT }, spots, target);
}

/** From the top of a slab up to the middle of words on it, on paper, in. */
const OVER_TOP_IN = 0.11;

/** "edge 1". */
function edgeWords({ sets }: Dimension): string {
  return sets?.kind === 'edge-place' ? `edge ${sets.index + 1}` : 'edge';
}

/** Which way the top falls in the section; null where it lies level. */
function fallAcross(job: Job, { fall }: Piece, inward: Direction, edge: string): string | null {
  if (fall === null || fall.inPerFt === 0) return null;
  const rad = (fall.towardDeg * Math.PI) / 180;
  const toEdge = -(Math.cos(rad) * inward.x + Math.sin(rad) * inward.y);
  const way =
    Math.abs(toEdge) < ALONG_COSINE ? `along ${edge}` : `${toEdge > 0 ? 'toward' : 'away from'} ${edge}`;
  return `falls ${fallWords(job, fall.inPerFt)}, ${way}`;
}

/** A fall within this (cosine) of square to the section is along the edge. */
const ALONG_COSINE = 0.3;

/** Stretches of slab that the line cuts, from its beginning. */
function slabStretches({ from, inward }: CutLine, region: Region): Stretch[] {
  const { minXIn, maxXIn, minYIn, maxYIn } = boundingBox(region.outer);
  const farIn = Math.hypot(maxXIn - minXIn, maxYIn - minYIn) + 1;
  const along = ({ xIn, yIn }: Point) => (xIn - from.xIn) * inward.x + (yIn - from.yIn) * inward.y;
  return clipSegmentToRegion({ a: moved(from, inward, -1), b: moved(from, inward, farIn) }, region)
    .map(({ a, b }) => ({ fromIn: Math.min(along(a), along(b)), toIn: Math.max(along(a), along(b)) }))
    .filter(({ fromIn, toIn }) => toIn - fromIn > LEAST_STRETCH_IN && toIn > 0)
    .sort((a, b) => a.fromIn - b.fromIn);
}

function sectionWords(job: Job, piece: Piece, longest: Dimension, below: readonly CutSupport[]): string {
  const length = (valueIn: number) => printLength(valueIn, { system: job.shownIn });
  const names = below.filter(({ stretch }) => stretch !== null).map(({ name }) => name);
  return [
    `Section of ${piece.name}, ${length(piece.thicknessIn)} thick: ${edgeWords(longest)} overhangs ${length(longest.lengthIn)}`,
    names.length === 0 ? '.' : ` past what stays under it: ${names.join(', ')}.`,
  ].join('');
}
