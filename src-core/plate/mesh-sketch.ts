import type { MeshSketch, SketchPiece } from './mesh-constrain';
import { type MeshGraph, segmentDistanceIn } from './mesh-graph';
import { type LatticeFrame, latticePoints } from './mesh-lattice';
import type { Ring } from './mesh-region';
import { divideEdge, type SpacingField } from './mesh-spacing';

/** Lattice points keep this many spacings away from kept lines and from fixed points. */
const CLEAR_OF_LINE_RATIO = 0.6;
const CLEAR_OF_POINT_RATIO = 0.65;
/** A point just as far away as asked is clear, however its distance was rounded. */
const ROUNDING_IN = 1e-7;

interface ClearanceGrid {
  readonly cellIn: number;
  readonly cells: Map<number, number[]>;
}

/** Places the nodes: vertices of the graph, divisions of its edges, then the lattice between them. */
export function sketchNodes(
  rings: readonly Ring[],
  graph: MeshGraph,
  frame: LatticeFrame,
  field: SpacingField,
): MeshSketch {
  const xIn = [...graph.xIn];
  const yIn = [...graph.yIn];
  const nodeLine = graph.xIn.map(() => 0);
  const pieces: SketchPiece[] = [];
  for (const [index, edge] of graph.edges.entries()) {
    const ax = graph.xIn[edge.a]!;
    const ay = graph.yIn[edge.a]!;
    const bx = graph.xIn[edge.b]!;
    const by = graph.yIn[edge.b]!;
    const line = index + 1;
    let from = edge.a;
    for (const ratio of divideEdge(field, ax, ay, bx, by)) {
      yIn.push(ay + ratio * (by - ay));
      const to = xIn.push(ax + ratio * (bx - ax)) - 1;
      nodeLine.push(line);
      pieces.push({ a: from, b: to, line, isRing: edge.isRing });
      from = to;
    }
    pieces.push({ a: from, b: edge.b, line, isRing: edge.isRing });
  }

  const grid = clearanceGrid(graph, xIn, yIn, pieces, field.sizeIn);
  const isClear = (px: number, py: number, spacingIn: number): boolean => {
    for (const index of grid.cells.get(cellKey(Math.floor(px / grid.cellIn), Math.floor(py / grid.cellIn))) ??
      []) {
      const piece = pieces[index];
      // Numbers past the pieces are vertices that stand alone.
      const a = piece ? piece.a : index - pieces.length;
      const b = piece ? piece.b : a;
      const clearIn = spacingIn * (piece ? CLEAR_OF_LINE_RATIO : CLEAR_OF_POINT_RATIO);
      const awayIn = piece
        ? segmentDistanceIn(px, py, xIn[a]!, yIn[a]!, xIn[b]!, yIn[b]!)
        : Math.hypot(px - xIn[a]!, py - yIn[a]!);
      if (awayIn < clearIn - ROUNDING_IN) return false;
    }
    return true;
  };
  const isFree = xIn.map(() => false);
  const lattice = latticePoints(rings, frame, field, isClear);
  for (let i = 0; i < lattice.xIn.length; i++) {
    xIn.push(lattice.xIn[i]!);
    yIn.push(lattice.yIn[i]!);
    nodeLine.push(0);
    isFree.push(true);
  }
  return { xIn, yIn, isFree, nodeLine, pieces };
}

/** Pieces and lone vertices by the cells in which a point could be too near to them. */
function clearanceGrid(
  graph: MeshGraph,
  xIn: readonly number[],
  yIn: readonly number[],
  pieces: readonly SketchPiece[],
  sizeIn: number,
): ClearanceGrid {
  const cells = new Map<number, number[]>();
  const enter = (index: number, a: number, b: number): void => {
    const reachIn = sizeIn * CLEAR_OF_POINT_RATIO;
    const right = Math.floor((Math.max(xIn[a]!, xIn[b]!) + reachIn) / sizeIn);
    const top = Math.floor((Math.max(yIn[a]!, yIn[b]!) + reachIn) / sizeIn);
    for (let i = Math.floor((Math.min(xIn[a]!, xIn[b]!) - reachIn) / sizeIn); i <= right; i++) {
      for (let j = Math.floor((Math.min(yIn[a]!, yIn[b]!) - reachIn) / sizeIn); j <= top; j++) {
        const key = cellKey(i, j);
        const cell = cells.get(key);
        if (cell) cell.push(index);
        else cells.set(key, [index]);
      }
    }
  };
  const isLone = graph.xIn.map(() => true);
  for (const edge of graph.edges) {
    isLone[edge.a] = false;
    isLone[edge.b] = false;
  }
  for (const [index, piece] of pieces.entries()) enter(index, piece.a, piece.b);
  for (const [vertex, lone] of isLone.entries()) if (lone) enter(pieces.length + vertex, vertex, vertex);
  return { cellIn: sizeIn, cells };
}

/** One number for a cell; more columns than this a slab cannot have, and a key met twice would only cost a look. */
function cellKey(i: number, j: number): number {
  return i * 1_000_003 + j;
}
