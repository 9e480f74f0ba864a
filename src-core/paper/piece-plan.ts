/** The dimensioned plan of a piece. */
import { stands } from '../analysis';
import type { Dimension } from '../drawing';
import { pieceDimensions } from '../drawing';
import type { Figure, PaperPoint } from '../figure';
import type { Job, Piece } from '../job';
import { pieceRegion } from '../job';
import type { OutlineEdge } from '../outline';
import { boundingBox, outlineEdges } from '../outline';
import type { Board } from './board';
import { boardMarks, newBoard } from './board';
import type { LooseFigure, PaperDimension } from './dimension-line';
import { drawLane, drawOnSpot, placeLoose } from './dimension-line';
import { bareLength, dimensionNote } from './figure-words';
import { atLargestScale, finishedFigure } from './finish';
import { drawFurniture } from './furniture';
import { drawEdgeNumbers, drawPlanParts, namePlanParts } from './plan-parts';
import type { PlanView } from './plan-view';
import { planView } from './plan-view';
import { LEAST_DIMENSION_IN } from './practice';
import type { PaperScale, PaperSize } from './scale';
import { PLAN_SCALES } from './scale';
import { supportLoops, supportName } from './support-shapes';

/**
 * The plan of a piece at the largest standard scale that its room takes: outline, openings with their centre lines, what stays under
 * it, joints, fixed loads, and dimensions in lanes outside it. null where its outline cannot be drawn.
 */
export function piecePlan(job: Job, piece: Piece, room: PaperSize): Figure | null {
  const region = pieceRegion(piece);
  if (!region.ok) return null;
  const below = piece.supports.filter((support) => stands(support, null));
  const loops = below.flatMap((support) => supportLoops(support, region.outer));
  const box = boundingBox([...region.outer, ...loops.flat()]);
  const dimensions = pieceDimensions(piece).filter(({ lengthIn }) => lengthIn >= LEAST_DIMENSION_IN);
  const draw = (scale: PaperScale): Figure => {
    const view = planView(box, scale.ratio);
    const board = newBoard();
    drawPlanParts(board, view, job, piece);
    const loose = drawLanes(board, view, job, piece, dimensions);
    const onSpot = dimensions.filter(({ place }) => place.kind === 'on');
    drawOnSpot(
      board,
      onSpot.map((dimension) => onPaper(dimension, view, job)),
    );
    drawEdgeNumbers(board, view, piece);
    placeLoose(board, loose);
    namePlanParts(board, view, job, piece);
    drawFurniture(board, {
      ratio: scale.ratio,
      system: job.shownIn,
      notes: planNotes(job, piece),
      leastWidthIn: Math.min(room.widthIn, LEAST_NOTE_IN),
      hasFront: true,
    });
    return finishedFigure(
      {
        id: `plan-${piece.id}`,
        title: `Plan of ${piece.name}`,
        scaleWords: scale.words,
        words: planWords(job, piece),
      },
      boardMarks(board),
    );
  };
  return atLargestScale(PLAN_SCALES[job.shownIn], room, draw);
}

/** Notes of a small plan are broken no narrower than this, in. */
const LEAST_NOTE_IN = 3.2;

/** Dimensions outside the outline: chains in the nearest lanes, whole edges beyond. */
function drawLanes(
  board: Board,
  view: PlanView,
  job: Job,
  piece: Piece,
  dimensions: readonly Dimension[],
): LooseFigure[] {
  const repeated = repeatedEdges(outlineEdges(piece.corners));
  const beside = dimensions.filter(({ key }) => !repeated.has(key));
  const groups = laneGroups(beside);
  const loose: LooseFigure[] = [];
  const lanes = new Map<string, number>();
  for (const { line, outward, members } of groups) {
    const before = lanes.get(line);
    const { lane, loose: own } = drawLane(
      board,
      members.map((dimension) => onPaper(dimension, view, job)),
      view.way(outward),
      before ?? 0,
    );
    // figures without room want a row of their own beyond the chain
    lanes.set(line, lane + (own.length > 0 ? 2 : 1));
    loose.push(...own);
  }
  return loose;
}

interface LaneGroup {
  /** The line of the outline that they are measured along. */
  readonly line: string;
  readonly outward: { readonly x: number; readonly y: number };
  readonly members: Dimension[];
}

/** Dimensions beside the outline by their line and row; nearest rows first. */
function laneGroups(dimensions: readonly Dimension[]): LaneGroup[] {
  const groups = new Map<string, LaneGroup & { readonly row: number }>();
  for (const dimension of dimensions) {
    if (dimension.place.kind !== 'beside') continue;
    const { outward, row } = dimension.place;
    const awayIn = dimension.from.xIn * outward.x + dimension.from.yIn * outward.y;
    const line = [outward.x, outward.y, awayIn].map((value) => value.toFixed(4)).join(' ');
    const key = `${line} ${row}`;
    const group = groups.get(key) ?? { line, outward, row, members: [] };
    group.members.push(dimension);
    groups.set(key, group);
  }
  return [...groups.values()].sort((a, b) => a.row - b.row);
}

/** Keys of edges that an earlier edge opposite, as long and in line with them, has measured. */
function repeatedEdges(edges: readonly OutlineEdge[]): ReadonlySet<string> {
  const isRepeated = (edge: OutlineEdge, earlier: OutlineEdge) => {
    const { direction } = edge;
    const along = (p: { readonly xIn: number; readonly yIn: number }) =>
      p.xIn * direction.x + p.yIn * direction.y;
    const turn = direction.x * earlier.direction.y - direction.y * earlier.direction.x;
    return (
      Math.abs(turn) < SAME_IN &&
      Math.abs(along(edge.a) - along(earlier.b)) < SAME_IN &&
      Math.abs(along(edge.b) - along(earlier.a)) < SAME_IN
    );
  };
  return new Set(
    edges.flatMap((edge, i) =>
      edges.slice(0, i).some((earlier) => isRepeated(edge, earlier)) ? [`edge-${edge.edge}`] : [],
    ),
  );
}

/** Lengths nearer than this are one, in. */
const SAME_IN = 1e-6;

function onPaper({ from, to, lengthIn }: Dimension, { at }: PlanView, job: Job): PaperDimension {
  const [a, b]: [PaperPoint, PaperPoint] = [at(from), at(to)];
  return { from: a, to: b, words: bareLength(lengthIn, job.shownIn) };
}

function planNotes(job: Job, piece: Piece): string[] {
  const hasWall = piece.edges?.some(({ kind }) => kind === 'wall') === true;
  return [
    `${dimensionNote(job.shownIn)} Ringed numbers are edges. Broken lines: what stays under the slab.${
      hasWall ? ' Hatched: a wall.' : ''
    }`,
  ];
}

function planWords(job: Job, piece: Piece): string {
  const { minXIn, maxXIn, minYIn, maxYIn } = boundingBox(piece.corners);
  const size = `${bareLength(maxXIn - minXIn, job.shownIn)} by ${bareLength(maxYIn - minYIn, job.shownIn)}`;
  const unit = job.shownIn === 'imperial' ? 'in' : 'mm';
  const openings = piece.cutouts.map(({ name, purpose }) => name ?? purpose);
  const below = piece.supports.filter((support) => stands(support, null)).map(supportName);
  return [
    `Plan of ${piece.name}, ${size} ${unit} overall, ${piece.corners.length} edges.`,
    openings.length === 0 ? 'No openings.' : `Openings: ${openings.join(', ')}.`,
    below.length === 0 ? 'Nothing stays under it.' : `It stays on: ${below.join(', ')}.`,
  ].join(' ');
}
