/** Backing boards under the whole of a piece: every part, its cuts and marks, the seams, and what is left over. */
import type { Job, Piece } from '../job';
import { pieceRegion } from '../job';
import type { Direction, Point, Region, Segment } from '../outline';
import { distanceIn, regionAreaIn2 } from '../outline';
import type { Trace } from '../trace';
import { traceWord } from '../trace';
import type { BoardMark } from './board-marks';
import { boardMark, partShape, shapeOnBoard } from './board-marks';
import type { LaidPart } from './board-parts';
import type { BoardStock } from './board-stock';
import { boardStock } from './board-stock';
import type { CutBoard, Placed } from './cut-boards';
import type { BoardFinding } from './findings';
import { boardFindings } from './findings';
import { layCandidates } from './lay-candidates';
import { toPlan } from './lay-frame';
import type { LaidOut, LaySite } from './lay-out';
import { bestWay } from './lay-out';
import type { LayCandidate } from './layout';
import { SAME_IN, TAPE_PAST_IN } from './practice';
import type { SeamFault } from './seam-rules';
import { seamRules } from './seam-rules';
import type { ShapeCut } from './shape-cuts';

export interface BoardPart {
  readonly id: string;
  readonly trace: Trace;
  /** In plan: counter-clockwise, openings clockwise. */
  readonly inPlan: Region;
  readonly areaIn2: number;
  /** A whole board, uncut. */
  readonly isFull: boolean;
  /** The rectangle round it as it lies: along its front, and from the front to the back, in. */
  readonly widthIn: number;
  readonly depthIn: number;
  /** From its own front left corner, in. */
  readonly shape: Region;
  /** The board that it is cut from, and where on it. */
  readonly placed: Placed;
  readonly onBoard: Region;
  /** What is sawn within its rectangle; the rectangle itself comes from the cuts of its board. */
  readonly shapeCuts: readonly ShapeCut[];
  /** null for a whole board, which lies either way up. */
  readonly mark: BoardMark | null;
}

export interface BoardSeam {
  readonly id: string;
  readonly trace: Trace;
  readonly a: Point;
  readonly b: Point;
  readonly lengthIn: number;
  readonly faults: readonly SeamFault[];
}

/** Boards of one copy of a piece. */
export interface BackingBoards {
  readonly pieceId: string;
  readonly trace: Trace;
  readonly board: BoardStock;
  /** Direction in plan from left to right of every part, and the way in which the boards' length runs. */
  readonly axis: Direction;
  readonly lengthAlong: LayCandidate['lengthAlong'];
  readonly isStaggered: boolean;
  /** From the front to the back and from left to right. */
  readonly parts: readonly BoardPart[];
  /** Every board with its cuts in order; parts name them by their place in this list. */
  readonly boards: readonly CutBoard[];
  readonly boardCount: number;
  /** No way of laying needs fewer boards than this, by area alone. */
  readonly leastBoards: number;
  /** Fewer are impossible by area; otherwise they are only the fewest of the ways tried. */
  readonly isProvedFewest: boolean;
  /** These parts cannot be cut from fewer boards. */
  readonly isCuttingProved: boolean;
  readonly waysTried: number;
  readonly seams: readonly BoardSeam[];
  readonly seamIn: number;
  /** Tape over the seams, a little past each end, in. */
  readonly tapeIn: number;
  /** Area under the slab, and area of the boards it takes, in2; share that is wasted, a ratio. */
  readonly areaIn2: number;
  readonly boardsIn2: number;
  readonly wasteRatio: number;
  readonly findings: readonly BoardFinding[];
}

/**
 * The boards under a piece, laid so that seams keep off corners and overhangs and fewest boards are cut. null where the
 * job lays none, or the piece cannot be built as drawn.
 */
export function backingBoards(job: Job, piece: Piece): BackingBoards | null {
  const region = pieceRegion(piece);
  if (!region.ok || job.falsework.backingBoardIn === 0) return null;
  const board = boardStock(job);
  const site: LaySite = { region, rules: seamRules(piece, region), board, kerfIn: job.forms.kerfIn };
  const candidates = layCandidates(region, site.rules, board);
  const trace: Trace = { pieceId: piece.id, part: { kind: 'piece' } };
  const areaIn2 = regionAreaIn2(region);
  const boardIn2 = board.lengthIn * board.widthIn;
  const leastBoards = Math.ceil(areaIn2 / boardIn2 - SAME_IN);
  const way = bestWay(candidates, site);
  const { axis, lengthAlong, isStaggered } = way.candidate;
  const { boards, isProved } = way.cutting;
  const boardCount = boards.length;
  const seams = seamsInPlan(way, trace);
  const laid = {
    pieceId: piece.id,
    trace,
    board,
    axis,
    lengthAlong,
    isStaggered,
    parts: way.parts.map((part, i) => partOf(way, part, i, trace)),
    boards,
    boardCount,
    leastBoards,
    isProvedFewest: boardCount === leastBoards,
    isCuttingProved: isProved,
    waysTried: candidates.length,
    seams,
    seamIn: way.seamIn,
    tapeIn: way.seamIn + 2 * TAPE_PAST_IN * seams.length,
    areaIn2,
    boardsIn2: boardCount * boardIn2,
    wasteRatio: 1 - areaIn2 / (boardCount * boardIn2),
  };
  return { ...laid, findings: boardFindings(job, laid) };
}

function partOf(way: LaidOut, part: LaidPart, i: number, trace: Trace): BoardPart {
  const { axis } = way.candidate;
  const placed = way.cutting.placed[i]!;
  const shape = partShape(part);
  const plan = (points: readonly Point[]) => points.map((point) => toPlan(point, axis));
  return {
    id: `${traceWord(trace)}/board/${i + 1}`,
    trace,
    inPlan: { outer: plan(part.outer), holes: part.holes.map(plan) },
    areaIn2: part.areaIn2,
    isFull: part.isFull,
    widthIn: part.widthIn,
    depthIn: part.depthIn,
    shape,
    placed,
    onBoard: shapeOnBoard(shape, part.depthIn, placed),
    shapeCuts: way.shapeCuts[i]!,
    mark: part.isFull ? null : boardMark(part, shape, placed),
  };
}

function seamsInPlan(way: LaidOut, trace: Trace): BoardSeam[] {
  return way.seams.map(({ seam, faults }, i) => {
    const { a, b }: Segment = {
      a: toPlan(seam.a, way.candidate.axis),
      b: toPlan(seam.b, way.candidate.axis),
    };
    return { id: `${traceWord(trace)}/seam/${i + 1}`, trace, a, b, lengthIn: distanceIn(a, b), faults };
  });
}
