/** Chains of support positions along the front and back of a piece, as a setting-out rod would carry them. */
import { stands } from '../analysis';
import type { Piece, Support } from '../job';
import type { Direction, OutlineEdge, Point } from '../outline';
import {
  between,
  directionAt,
  directionBetween,
  distanceIn,
  moved,
  nearestOnSegment,
  outlineEdges,
  TOUCH_IN,
} from '../outline';
import type { Dimension, DimensionSets } from './dimension';

/** Edges shorter than this share of the longest are ends, which carry no chain. */
const LEAST_SHARE = 0.5;
/** Sine and cosine that count as along and as across an edge. */
const ALONG = 0.05;
const ACROSS = 0.98;
/** Marks nearer to each other than this are one mark, in. */
const SAME_MARK_IN = 1 / 32;

/** Places of one support that a rod would be marked at, with what they have to run along or across. */
interface Marks {
  readonly support: Support;
  readonly at: readonly Point[];
  /** By this point the edge is chosen. */
  readonly anchor: Point;
  readonly line: { readonly direction: Direction; readonly runs: 'along' | 'across' } | null;
}

interface Mark {
  readonly atIn: number;
  /** Supports that share the mark. */
  readonly supports: readonly Support[];
  readonly isEnd: boolean;
}

/** One chain an edge that has supports along it, in the order of the edges: from end to end over every mark. Supports that stay only. */
export function supportChains(piece: Piece): Dimension[] {
  return [...supportChainsByEdge(piece).values()].flat();
}

/** The same by the number of the edge. */
export function supportChainsByEdge(piece: Piece): Map<number, Dimension[]> {
  const all = outlineEdges(piece.corners);
  const longestIn = Math.max(...all.map(({ lengthIn }) => lengthIn));
  const edges = all.filter(({ lengthIn }) => lengthIn >= longestIn * LEAST_SHARE);
  const byEdge = new Map<OutlineEdge, Marks[]>();
  for (const support of piece.supports.filter((one) => stands(one, null))) {
    const marks = marksOf(support);
    const edge = marks === null ? null : edgeFor(marks, edges);
    if (marks === null || edge === null) continue;
    byEdge.set(edge, [...(byEdge.get(edge) ?? []), marks]);
  }
  const chains = new Map<number, Dimension[]>();
  for (const edge of edges) {
    const chain = chainAlong(edge, byEdge.get(edge) ?? []);
    if (chain.length > 0) chains.set(edge.edge, chain);
  }
  return chains;
}

function marksOf(support: Support): Marks | null {
  switch (support.kind) {
    case 'cabinet': {
      const direction = directionAt((support.angleDeg * Math.PI) / 180);
      const right = moved(support.corner, direction, support.widthIn);
      const anchor = between(support.corner, right, 0.5);
      return { support, at: [support.corner, right], anchor, line: { direction, runs: 'along' } };
    }
    case 'wall':
    case 'ledger': {
      if (distanceIn(support.from, support.to) <= TOUCH_IN) return null;
      const middle = between(support.from, support.to, 0.5);
      const direction = directionBetween(support.from, support.to);
      return { support, at: [middle], anchor: middle, line: { direction, runs: 'across' } };
    }
    case 'pier': {
      const centre = support.footprint.centre;
      return { support, at: [centre], anchor: centre, line: null };
    }
    case 'leg':
      return { support, at: [support.centre], anchor: support.centre, line: null };
    case 'bracket': {
      const direction = directionAt((support.directionDeg * Math.PI) / 180);
      return { support, at: support.roots, anchor: support.roots[0]!, line: { direction, runs: 'across' } };
    }
    case 'full-bed':
      return null;
  }
}

function edgeFor({ anchor, line }: Marks, edges: readonly OutlineEdge[]): OutlineEdge | null {
  let best: OutlineEdge | null = null;
  let bestIn = Number.POSITIVE_INFINITY;
  for (const edge of edges) {
    if (line !== null && !runs(line, edge)) continue;
    const awayIn = distanceIn(anchor, nearestOnSegment(anchor, edge));
    if (awayIn < bestIn - TOUCH_IN) {
      best = edge;
      bestIn = awayIn;
    }
  }
  return best;
}

function runs({ direction, runs: way }: NonNullable<Marks['line']>, edge: OutlineEdge): boolean {
  const sine = Math.abs(direction.x * edge.direction.y - direction.y * edge.direction.x);
  return way === 'along' ? sine <= ALONG : sine >= ACROSS;
}

function chainAlong(edge: OutlineEdge, placed: readonly Marks[]): Dimension[] {
  const marks = marksAlong(edge, placed);
  if (marks.length <= 2) return [];
  const place = {
    kind: 'beside' as const,
    outward: { x: -edge.inward.x, y: -edge.inward.y },
    row: 0,
  };
  return marks.slice(1).map((mark, index) => {
    const before = marks[index]!;
    return {
      key: `chain-${edge.edge}-${index}`,
      of: 'support',
      words: `Along edge ${edge.edge + 1}, ${nameOf(before)} to ${nameOf(mark)}`,
      from: moved(edge.a, edge.direction, before.atIn),
      to: moved(edge.a, edge.direction, mark.atIn),
      lengthIn: mark.atIn - before.atIn,
      place,
      sets: whatMoves(before, mark, edge.direction),
    };
  });
}

/** Ends of the edge and every mark between, in order; marks at one place are one. */
function marksAlong(edge: OutlineEdge, placed: readonly Marks[]): Mark[] {
  const along = ({ xIn, yIn }: Point) =>
    (xIn - edge.a.xIn) * edge.direction.x + (yIn - edge.a.yIn) * edge.direction.y;
  const within = placed
    .flatMap(({ support, at }) => at.map((point) => ({ atIn: along(point), supports: [support] })))
    .filter(({ atIn }) => atIn >= -SAME_MARK_IN && atIn <= edge.lengthIn + SAME_MARK_IN)
    .sort((one, other) => one.atIn - other.atIn);
  const marks: Mark[] = [{ atIn: 0, supports: [], isEnd: true }];
  for (const mark of [...within, { atIn: edge.lengthIn, supports: [] }]) {
    const last = marks.at(-1)!;
    if (mark.atIn - last.atIn > SAME_MARK_IN) marks.push({ ...mark, isEnd: false });
    else marks[marks.length - 1] = { ...last, supports: [...last.supports, ...mark.supports] };
  }
  const last = marks.pop()!;
  return [...marks, { ...last, atIn: edge.lengthIn, isEnd: true }];
}

/** The cabinet whose width the length is, or the support whose place it tells, where it tells that of one alone. */
function whatMoves(before: Mark, after: Mark, direction: Direction): DimensionSets | null {
  const cabinet = before.supports.find((one) => one.kind === 'cabinet' && after.supports.includes(one));
  if (cabinet?.kind === 'cabinet') {
    return { kind: 'support-width', id: cabinet.id, depthIn: cabinet.depthIn };
  }
  const behind = alone(after);
  if (behind !== null && !before.supports.includes(behind)) {
    return { kind: 'support-place', id: behind.id, along: direction };
  }
  const ahead = alone(before);
  if (after.isEnd && ahead !== null) {
    return { kind: 'support-place', id: ahead.id, along: { x: -direction.x, y: -direction.y } };
  }
  return null;
}

/** The one support that a mark between the ends stands for, or null. */
function alone({ supports, isEnd }: Mark): Support | null {
  return supports.length === 1 && !isEnd ? supports[0]! : null;
}

function nameOf({ supports, isEnd }: Mark): string {
  return isEnd ? 'the end' : supports.map((one) => one.name ?? one.id).join(' and ');
}
