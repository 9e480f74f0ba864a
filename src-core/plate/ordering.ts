/**
 * Elimination order of the nodes, so that the factor keeps a short profile: for a long worktop about as many nodes a row as
 * the slab has across.
 *
 * Glossary
 *   position   place of a node in the elimination order
 *   profile    for each row the distance from its first neighbour to itself; the work of a factor grows with its square
 *   level      steps along triangle sides from one end of the slab
 *
 * Sources: Cuthill & McKee 1969 with George's reversal 1971; ends by Gibbs, Poole & Stockmeyer 1976; relaxed levels after the
 * idea of Barnard, Pothen & Simon, "A spectral algorithm for envelope reduction", 1995.
 */

/** Neighbours of each node, itself left out: those of node i are `list[start[i]]` up to `list[start[i + 1] - 1]`, rising. */
export interface NodeGraph {
  readonly start: Int32Array;
  readonly list: Int32Array;
}

export interface NodeOrder {
  /** Position of each node. */
  readonly positionOf: Int32Array;
  /** Node at each position. */
  readonly nodeAt: Int32Array;
}

/** Which nodes share a triangle. No source. */
export function nodeGraph(nodeCount: number, triangles: Uint32Array): NodeGraph {
  const bound = new Int32Array(nodeCount + 1);
  for (const node of triangles) bound[node + 1] = bound[node + 1]! + 2;
  for (let i = 0; i < nodeCount; i++) bound[i + 1] = bound[i + 1]! + bound[i]!;
  const fill = bound.slice(0, nodeCount);
  const raw = new Int32Array(bound[nodeCount]!);
  for (let t = 0; t < triangles.length; t += 3) {
    for (let corner = 0; corner < 3; corner++) {
      const node = triangles[t + corner]!;
      raw[fill[node]!] = triangles[t + ((corner + 1) % 3)]!;
      raw[fill[node]! + 1] = triangles[t + ((corner + 2) % 3)]!;
      fill[node] = fill[node]! + 2;
    }
  }
  const start = new Int32Array(nodeCount + 1);
  let length = 0;
  for (let i = 0; i < nodeCount; i++) {
    let previous = -1;
    for (const other of raw.subarray(bound[i]!, bound[i + 1]!).sort()) {
      if (other !== previous) raw[length++] = other;
      previous = other;
    }
    start[i + 1] = length;
  }
  return { start, list: raw.slice(0, length) };
}

/**
 * The cheapest of six orders: reverse Cuthill-McKee, relaxed levels, and a sweep along the slab's longest axis, each
 * forwards and backwards. The sweep is hard to beat on a plain strip, relaxed levels on anything with a corner in it.
 * Sources at the head of the file; the sweep: common practice, no source.
 */
export function orderNodes(graph: NodeGraph, xIn: Float64Array, yIn: Float64Array): NodeOrder {
  const levels = endLevels(graph);
  const ways = [cuthillMckee(graph, levels), relaxedLevels(graph, levels), sweep(xIn, yIn)];
  const orders = ways.flatMap((nodeAt) => [nodeAt, nodeAt.slice().reverse()]);
  let best: NodeOrder | null = null;
  let bestWork = Number.POSITIVE_INFINITY;
  for (const nodeAt of orders) {
    const order = { nodeAt, positionOf: invert(nodeAt) };
    const work = factorWork(graph, order);
    if (work < bestWork) {
      best = order;
      bestWork = work;
    }
  }
  if (best === null) throw new Error(`no order for ${graph.start.length - 1} nodes`);
  return best;
}

/** First position that each position's row of the factor reaches back to; its own where it has no earlier neighbour. */
export function firstPositions(graph: NodeGraph, order: NodeOrder): Int32Array {
  const first = new Int32Array(order.nodeAt.length);
  for (let position = 0; position < first.length; position++) {
    const node = order.nodeAt[position]!;
    let lowest = position;
    for (let at = graph.start[node]!; at < graph.start[node + 1]!; at++) {
      lowest = Math.min(lowest, order.positionOf[graph.list[at]!]!);
    }
    first[position] = lowest;
  }
  return first;
}

/** Sum of squared row lengths, in nodes: the work of the factor but for a constant. A pure number. */
export function factorWork(graph: NodeGraph, order: NodeOrder): number {
  return firstPositions(graph, order).reduce((sum, first, at) => sum + (at - first + 1) ** 2, 0);
}

function invert(nodeAt: Int32Array): Int32Array {
  const positionOf = new Int32Array(nodeAt.length);
  for (let position = 0; position < nodeAt.length; position++) positionOf[nodeAt[position]!] = position;
  return positionOf;
}

function degree(graph: NodeGraph, node: number): number {
  return graph.start[node + 1]! - graph.start[node]!;
}

interface Levels {
  /** Reached nodes, level by level. */
  readonly nodes: readonly number[];
  readonly depth: number;
  readonly widest: number;
}

/** Breadth-first levels from `roots`; writes each reached node's level into `levelOf`, which holds -1 for all others. */
function levelsFrom(graph: NodeGraph, roots: readonly number[], levelOf: Int32Array): Levels {
  const nodes = [...roots];
  const widths = [nodes.length];
  for (const root of roots) levelOf[root] = 0;
  for (let head = 0; head < nodes.length; head++) {
    const node = nodes[head]!;
    const level = levelOf[node]! + 1;
    for (let at = graph.start[node]!; at < graph.start[node + 1]!; at++) {
      const other = graph.list[at]!;
      if (levelOf[other] !== -1) continue;
      levelOf[other] = level;
      widths[level] = (widths[level] ?? 0) + 1;
      nodes.push(other);
    }
  }
  return { nodes, depth: widths.length, widest: widths.reduce((top, width) => Math.max(top, width)) };
}

const MOST_END_ROUNDS = 20;
const END_CANDIDATES = 5;

/** A whole end of the part of the graph around `seed`: the nodes farthest from a node that is about as far off as can be. */
function farEnd(graph: NodeGraph, seed: number): number[] {
  const levelOf = new Int32Array(graph.start.length - 1);
  const from = (root: number): Levels => levelsFrom(graph, [root], levelOf.fill(-1));
  const lastOf = (levels: Levels): number[] =>
    levels.nodes.filter((node) => levelOf[node] === levels.depth - 1);
  let levels = from(seed);
  for (let round = 0; round < MOST_END_ROUNDS; round++) {
    const candidates = lastOf(levels).sort((i, j) => degree(graph, i) - degree(graph, j));
    let end = candidates;
    let narrowest = Number.POSITIVE_INFINITY;
    let deeper: Levels | null = null;
    for (const candidate of candidates.slice(0, END_CANDIDATES)) {
      const trial = from(candidate);
      if (trial.depth > levels.depth) {
        deeper = trial;
        break;
      }
      if (trial.widest < narrowest) {
        narrowest = trial.widest;
        end = lastOf(trial);
      }
    }
    if (deeper === null) return end;
    levels = deeper;
  }
  return lastOf(levels);
}

/** Connected part of each node, parts counted from 0. */
export function nodeParts(graph: NodeGraph): { readonly partOf: Int32Array; readonly partCount: number } {
  const levelOf = new Int32Array(graph.start.length - 1).fill(-1);
  const partOf = new Int32Array(levelOf.length);
  let partCount = 0;
  for (let seed = 0; seed < levelOf.length; seed++) {
    if (levelOf[seed] !== -1) continue;
    for (const node of levelsFrom(graph, [seed], levelOf).nodes) partOf[node] = partCount;
    partCount++;
  }
  return { partOf, partCount };
}

/** Levels from a whole end of each connected part. */
interface EndLevels {
  readonly levelOf: Int32Array;
  /** Part of each node. */
  readonly partOf: Int32Array;
  readonly ends: readonly (readonly number[])[];
}

function endLevels(graph: NodeGraph): EndLevels {
  const nodeCount = graph.start.length - 1;
  const levelOf = new Int32Array(nodeCount).fill(-1);
  const partOf = new Int32Array(nodeCount);
  const ends: number[][] = [];
  for (let seed = 0; seed < nodeCount; seed++) {
    if (levelOf[seed] !== -1) continue;
    const end = farEnd(graph, seed);
    for (const node of levelsFrom(graph, end, levelOf).nodes) partOf[node] = ends.length;
    ends.push(end);
  }
  return { levelOf, partOf, ends };
}

/** Reverse Cuthill-McKee from a whole end of each part. */
function cuthillMckee(graph: NodeGraph, { ends }: EndLevels): Int32Array {
  const nodeCount = graph.start.length - 1;
  const done = new Uint8Array(nodeCount);
  const nodeAt = new Int32Array(nodeCount);
  let tail = 0;
  let head = 0;
  const number = (node: number): void => {
    if (done[node] === 1) return;
    done[node] = 1;
    nodeAt[tail++] = node;
  };
  for (const end of ends) {
    end.forEach(number);
    while (head < tail) {
      const node = nodeAt[head++]!;
      const from = tail;
      for (let at = graph.start[node]!; at < graph.start[node + 1]!; at++) number(graph.list[at]!);
      nodeAt.subarray(from, tail).sort((i, j) => degree(graph, i) - degree(graph, j));
    }
  }
  return nodeAt.reverse();
}

/** Enough to straighten the levels of a worktop at 1 in; more gains little, and a smaller mesh needs fewer. Counts; by trial. */
const MOST_RELAXING_PASSES = 200;
const NODES_A_PASS = 20;

/**
 * Nodes by their level after each level was set to the mean around it time and again. What stays is the field that changes
 * slowest over the slab: its lines run straight across each leg, where the bare levels run aslant round corners.
 */
function relaxedLevels(graph: NodeGraph, { levelOf, partOf }: EndLevels): Int32Array {
  const nodeCount = graph.start.length - 1;
  // Parts stay apart: the means of one part never reach the levels of another.
  const height = Float64Array.from(levelOf, (level, node) => level + 2 * nodeCount * partOf[node]!);
  const passes = Math.min(MOST_RELAXING_PASSES, Math.ceil(nodeCount / NODES_A_PASS));
  for (let pass = 0; pass < passes; pass++) {
    for (let node = 0; node < nodeCount; node++) {
      const end = graph.start[node + 1]!;
      let sum = height[node]!;
      let count = 1;
      for (let at = graph.start[node]!; at < end; at++, count++) sum += height[graph.list[at]!]!;
      height[node] = sum / count;
    }
  }
  return sortByHeight(height);
}

/** Nodes by their distance along the axis in which the slab is longest, ties by the distance across. */
function sweep(xIn: Float64Array, yIn: Float64Array): Int32Array {
  const meanX = xIn.reduce((sum, x) => sum + x, 0) / xIn.length;
  const meanY = yIn.reduce((sum, y) => sum + y, 0) / xIn.length;
  let xx = 0;
  let yy = 0;
  let xy = 0;
  for (let i = 0; i < xIn.length; i++) {
    const x = xIn[i]! - meanX;
    const y = yIn[i]! - meanY;
    xx += x * x;
    yy += y * y;
    xy += x * y;
  }
  const angle = Math.atan2(2 * xy, xx - yy) / 2;
  const c = Math.cos(angle);
  const s = Math.sin(angle);
  // A tilt of a thousandth breaks ties the same way for every line of nodes.
  return sortByHeight(xIn.map((x, i) => x * (c - 0.001 * s) + yIn[i]! * (s + 0.001 * c)));
}

function sortByHeight(height: Float64Array): Int32Array {
  return Int32Array.from(height.keys()).sort((i, j) => height[i]! - height[j]! || i - j);
}
