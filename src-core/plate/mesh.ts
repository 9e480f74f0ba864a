import { triangulateSketch } from './mesh-constrain';
import { buildGraph, MERGE_IN } from './mesh-graph';
import { type LatticeFrame, latticeFrame, toFrame } from './mesh-lattice';
import { refineNarrow } from './mesh-refine';
import {
  cleanRings,
  type MeshPoint,
  type MeshProblem,
  type MeshSegment,
  type Ring,
  ringAreaIn2,
} from './mesh-region';
import { sketchNodes } from './mesh-sketch';
import { smoothNodes } from './mesh-smooth';
import { spacingField } from './mesh-spacing';
import {
  allEdges,
  restoreDelaunay,
  settleTies,
  type TieRank,
  type Triangulation,
} from './mesh-triangulation';

/** A slab cut into triangles. */
export interface PlateMesh {
  readonly xIn: Float64Array;
  readonly yIn: Float64Array;
  /** Counter-clockwise node triples. */
  readonly triangles: Uint32Array;
  readonly sizeIn: number;
}

export interface MeshInput {
  readonly outer: readonly MeshPoint[];
  readonly holes: readonly (readonly MeshPoint[])[];
  /** Points that become nodes, such as contact points; those nearer than `mergeIn` share one, and move onto an edge as near. */
  readonly fixedPoints: readonly MeshPoint[];
  /** 0.02 in where left out. More spares a rough mesh the small triangles between points that lie close together. */
  readonly mergeIn?: number | undefined;
  /** Lines inside the slab that triangles do not cross; what lies outside is left out. */
  readonly segments: readonly MeshSegment[];
  readonly sizeIn: number;
}

export type MeshResult =
  | {
      readonly ok: true;
      readonly mesh: PlateMesh;
      /** Node of each fixed point, -1 where it lies outside the slab. */
      readonly fixedNodes: Int32Array;
    }
  | { readonly ok: false; readonly problem: MeshProblem };

/** More nodes than this would keep a builder waiting. */
const MAX_NODES = 60_000;
const SMOOTHING_PASSES = 3;
const REFINING_ROUNDS = 12;
/** Nodes as far from the middle of the outline as this count as mirror images. */
const SAME_PLACE_IN = 1e-6;

/**
 * Cuts an outline with cutouts into triangles of about the given size (inches): nodes along the edges and kept lines,
 * a hexagonal lattice between them, constrained Delaunay triangulation, smoothing, and mending of narrow triangles.
 * The order of the fixed points does not matter; a turned or mirrored outline gets its mesh turned or mirrored.
 */
export function meshRegion(input: MeshInput): MeshResult {
  const problem = numberProblem(input);
  if (problem) return { ok: false, problem };
  const cleaned = cleanRings(input.outer, input.holes);
  if (!cleaned.ok) return cleaned;
  const { rings } = cleaned;
  const fine = finenessProblem(rings, input.sizeIn);
  if (fine) return { ok: false, problem: fine };

  // The lattice follows the outline as given: a mirrored outline names its edges in the mirrored order.
  const frame = latticeFrame(rings[0]!);
  const order = placesInOrder(frame, input.fixedPoints);
  const graph = buildGraph(
    rings,
    order.map((i) => input.fixedPoints[i]!),
    placesInOrder(frame, input.segments.map(middleOf)).map((i) => input.segments[i]!),
    input.mergeIn ?? MERGE_IN,
  );
  const field = spacingField(graph, input.sizeIn);
  const working = triangulateSketch(sketchNodes(rings, graph, frame, field));
  const rank = tieRank(frame, working);
  restoreDelaunay(working, allEdges(working));
  settleTies(working, rank);
  smooth(working, rank);
  for (let round = 0; round < REFINING_ROUNDS; round++) {
    if (refineNarrow(working, graph, field, rank) === 0) break;
    smooth(working, rank);
  }
  const { mesh, newNumbers } = finishedMesh(working, input.sizeIn);
  const fixedNodes = new Int32Array(order.length).fill(-1);
  for (const [place, i] of order.entries()) {
    const vertex = graph.fixedVertices[place]!;
    if (vertex >= 0) fixedNodes[i] = newNumbers[vertex]!;
  }
  return { ok: true, mesh, fixedNodes };
}

function numberProblem(input: MeshInput): MeshProblem | null {
  if (!(input.sizeIn > 0 && Number.isFinite(input.sizeIn))) {
    return {
      code: 'mesh-size-not-positive',
      sentence: `The mesh size is ${input.sizeIn} in; it must be more than zero.`,
    };
  }
  for (const point of [
    ...input.fixedPoints,
    ...input.segments.flatMap((segment) => [segment.a, segment.b]),
  ]) {
    if (Number.isFinite(point.xIn) && Number.isFinite(point.yIn)) continue;
    return {
      code: 'number-not-finite',
      sentence: `A point to mesh lies at ${point.xIn}, ${point.yIn}; give it numbers.`,
    };
  }
  return null;
}

function finenessProblem(rings: readonly Ring[], sizeIn: number): MeshProblem | null {
  const areaIn2 = Math.abs(ringAreaIn2(rings[0]!));
  // A lattice point of a hexagonal lattice takes sqrt(3) / 2 of a square of its pitch.
  const nodes = areaIn2 / (sizeIn * sizeIn * (Math.sqrt(3) / 2));
  if (nodes <= MAX_NODES) return null;
  return {
    code: 'mesh-too-fine',
    sentence: `A mesh size of ${sizeIn} in needs about ${Math.round(nodes)} nodes on this slab, more than ${MAX_NODES}; use a larger size.`,
  };
}

function middleOf(segment: MeshSegment): MeshPoint {
  return { xIn: (segment.a.xIn + segment.b.xIn) / 2, yIn: (segment.a.yIn + segment.b.yIn) / 2 };
}

/** Indices of points from the middle of the outline outwards, so that the order given does not matter. */
function placesInOrder(frame: LatticeFrame, points: readonly MeshPoint[]): number[] {
  const places = points.map((point) => toFrame(frame, point.xIn, point.yIn));
  const compare = (i: number, j: number): number => {
    const p = places[i]!;
    const q = places[j]!;
    for (const difference of [Math.abs(p.u) - Math.abs(q.u), p.v - q.v, p.u - q.u]) {
      if (Math.abs(difference) > SAME_PLACE_IN) return difference;
    }
    return i - j;
  };
  return points.map((_, i) => i).sort(compare);
}

function smooth(working: Triangulation, rank: TieRank): void {
  for (let pass = 0; pass < SMOOTHING_PASSES; pass++) {
    smoothNodes(working);
    restoreDelaunay(working, allEdges(working));
    settleTies(working, rank);
  }
}

/** Of two cuts through four corners the one nearer to the middle of the outline comes first, whichever way it is turned. */
function tieRank(frame: LatticeFrame, working: Triangulation): TieRank {
  return (a, b) => {
    const p = toFrame(frame, working.x[a]!, working.y[a]!);
    const q = toFrame(frame, working.x[b]!, working.y[b]!);
    return [
      Math.abs(p.u) + Math.abs(q.u),
      Math.abs(p.v) + Math.abs(q.v),
      Math.abs(p.u * p.v) + Math.abs(q.u * q.v),
      p.u * p.v + q.u * q.v,
    ];
  };
}

/** The mesh without unused nodes, and the new number of each old node, -1 where it is unused. */
function finishedMesh(
  working: Triangulation,
  sizeIn: number,
): { readonly mesh: PlateMesh; readonly newNumbers: Int32Array } {
  const newNumbers = new Int32Array(working.nodeCount).fill(-1);
  let used = 0;
  for (let node = 0; node < working.nodeCount; node++)
    if (working.leaving[node]! >= 0) newNumbers[node] = used++;
  const xIn = new Float64Array(used);
  const yIn = new Float64Array(used);
  for (let node = 0; node < working.nodeCount; node++) {
    if (newNumbers[node]! < 0) continue;
    xIn[newNumbers[node]!] = working.x[node]!;
    yIn[newNumbers[node]!] = working.y[node]!;
  }
  const triangles = new Uint32Array(3 * working.triangleCount);
  for (let e = 0; e < triangles.length; e++) triangles[e] = newNumbers[working.corner[e]!]!;
  return { mesh: { xIn, yIn, triangles, sizeIn }, newNumbers };
}
