import { footRatio, type MeshGraph, segmentDistanceIn } from './mesh-graph';

/**
 * The spacing wanted at each place: the mesh size, but less beside features that lie closer together than that, so
 * that no triangle has to bridge a narrow gap with a long side. Spacing grows with the distance from such a place.
 */
export interface SpacingField {
  readonly sizeIn: number;
  /** Places that ask for less than the mesh size. */
  readonly sourceXIn: readonly number[];
  readonly sourceYIn: readonly number[];
  readonly sourceSpacingIn: readonly number[];
}

/** Spacing gained per inch away from a narrow place. */
export const SPACING_GROWTH = 0.5;
/** Spacing beside a gap in gap widths: a right triangle across it then keeps 1 / tan(30 deg). */
const SPACING_PER_GAP = 1.7;
/** Along a long narrow gap the spacing stops shrinking here, in mesh sizes, so that a hairline gap cannot flood the mesh. */
const LEAST_SPACING_RATIO = 0.08;
/** An edge is divided in as many parts as its length holds spacings, a last part of less than this left out. */
const SPARE_PART_RATIO = 0.3;
/** Steps of the sum of 1 / spacing, in spacings. */
const SUM_STEP_RATIO = 0.5;

/** The spacing field of a graph. Lengths in inches; common practice in mesh making, no source. */
export function spacingField(graph: MeshGraph, sizeIn: number): SpacingField {
  const sourceXIn: number[] = [];
  const sourceYIn: number[] = [];
  const sourceSpacingIn: number[] = [];
  const ask = (xIn: number, yIn: number, spacingIn: number): void => {
    if (spacingIn >= sizeIn) return;
    sourceXIn.push(xIn);
    sourceYIn.push(yIn);
    sourceSpacingIn.push(spacingIn);
  };
  const { xIn: vx, yIn: vy, edges } = graph;
  for (let v = 0; v < vx.length; v++) {
    let gapIn = sizeIn;
    for (let w = 0; w < vx.length; w++) {
      if (w !== v) gapIn = Math.min(gapIn, Math.hypot(vx[w]! - vx[v]!, vy[w]! - vy[v]!));
    }
    for (const { a, b } of edges) {
      if (a === v || b === v) continue;
      const awayIn = segmentDistanceIn(vx[v]!, vy[v]!, vx[a]!, vy[a]!, vx[b]!, vy[b]!);
      if (awayIn * SPACING_PER_GAP >= sizeIn) continue;
      gapIn = Math.min(gapIn, awayIn * SPACING_PER_GAP);
      const t = footRatio(vx[v]!, vy[v]!, vx[a]!, vy[a]!, vx[b]!, vy[b]!);
      ask(vx[a]! + t * (vx[b]! - vx[a]!), vy[a]! + t * (vy[b]! - vy[a]!), awayIn * SPACING_PER_GAP);
    }
    ask(vx[v]!, vy[v]!, gapIn);
  }
  for (let e = 0; e < edges.length; e++) askAlongEdge(graph, e, sizeIn, ask);
  return { sizeIn, sourceXIn, sourceYIn, sourceSpacingIn };
}

/** Asks for less along the part of an edge that has another beside it, sampling as closely as the spacing there. */
function askAlongEdge(
  graph: MeshGraph,
  e: number,
  sizeIn: number,
  ask: (xIn: number, yIn: number, spacingIn: number) => void,
): void {
  const { xIn: vx, yIn: vy, edges } = graph;
  const { a, b } = edges[e]!;
  const ax = vx[a]!;
  const ay = vy[a]!;
  const dx = vx[b]! - ax;
  const dy = vy[b]! - ay;
  const lengthIn = Math.hypot(dx, dy);
  const reachIn = sizeIn / SPACING_PER_GAP;
  const beside = edges.filter((other) => {
    if (other.a === a || other.a === b || other.b === a || other.b === b) return false;
    return boxesWithin(graph, e, other.a, other.b, reachIn);
  });
  if (beside.length === 0) return;
  const parts: [number, number][] = [[0, 1]];
  for (let part = parts.pop(); part; part = parts.pop()) {
    const middle = (part[0] + part[1]) / 2;
    const px = ax + middle * dx;
    const py = ay + middle * dy;
    let gapIn = Number.POSITIVE_INFINITY;
    for (const other of beside) {
      const awayIn = segmentDistanceIn(px, py, vx[other.a]!, vy[other.a]!, vx[other.b]!, vy[other.b]!);
      gapIn = Math.min(gapIn, awayIn);
    }
    const spacingIn = Math.max(gapIn * SPACING_PER_GAP, sizeIn * LEAST_SPACING_RATIO);
    ask(px, py, spacingIn);
    const partIn = (part[1] - part[0]) * lengthIn;
    // No place on this part can come nearer than the middle's gap less half the part.
    const isNarrow = gapIn - partIn / 2 < reachIn;
    if (isNarrow && partIn > 2 * Math.min(spacingIn, sizeIn))
      parts.push([part[0], middle], [middle, part[1]]);
  }
}

function boxesWithin(graph: MeshGraph, e: number, c: number, d: number, reachIn: number): boolean {
  const { xIn: vx, yIn: vy, edges } = graph;
  const { a, b } = edges[e]!;
  return (
    Math.max(vx[a]!, vx[b]!) + reachIn > Math.min(vx[c]!, vx[d]!) &&
    Math.max(vx[c]!, vx[d]!) + reachIn > Math.min(vx[a]!, vx[b]!) &&
    Math.max(vy[a]!, vy[b]!) + reachIn > Math.min(vy[c]!, vy[d]!) &&
    Math.max(vy[c]!, vy[d]!) + reachIn > Math.min(vy[a]!, vy[b]!)
  );
}

/** Spacing wanted at a point, inches. */
export function spacingAtIn(field: SpacingField, xIn: number, yIn: number): number {
  const { sizeIn, sourceXIn, sourceYIn, sourceSpacingIn } = field;
  let spacingIn = sizeIn;
  for (let s = 0; s < sourceXIn.length; s++) {
    // Most sources are too far away to matter; the square spares them the root.
    const roomIn = (spacingIn - sourceSpacingIn[s]!) / SPACING_GROWTH;
    if (roomIn <= 0) continue;
    const dx = sourceXIn[s]! - xIn;
    const dy = sourceYIn[s]! - yIn;
    const squareIn2 = dx * dx + dy * dy;
    if (squareIn2 < roomIn * roomIn) spacingIn = sourceSpacingIn[s]! + SPACING_GROWTH * Math.sqrt(squareIn2);
  }
  return spacingIn;
}

/**
 * Ratios strictly between 0 and 1 at which the segment from a to b is divided, even where the field is even.
 * The same places come out for b to a.
 */
export function divideEdge(field: SpacingField, ax: number, ay: number, bx: number, by: number): number[] {
  const lengthIn = Math.hypot(bx - ax, by - ay);
  const ratios = [0];
  const sums = [0];
  addSum(0, 1, spacingAtIn(field, ax, ay), spacingAtIn(field, bx, by));
  const total = sums[sums.length - 1]!;
  const parts = Math.max(1, Math.ceil(total - SPARE_PART_RATIO));
  const divisions: number[] = [];
  let step = 1;
  for (let k = 1; k < parts; k++) {
    const wanted = (total * k) / parts;
    while (sums[step]! < wanted) step++;
    const share = (wanted - sums[step - 1]!) / (sums[step]! - sums[step - 1]!);
    divisions.push(ratios[step - 1]! + share * (ratios[step]! - ratios[step - 1]!));
  }
  return divisions;

  function addSum(s: number, t: number, spacingS: number, spacingT: number): void {
    const stepIn = (t - s) * lengthIn;
    if (stepIn <= SUM_STEP_RATIO * Math.min(spacingS, spacingT)) {
      ratios.push(t);
      sums.push(sums[sums.length - 1]! + (stepIn / 2) * (1 / spacingS + 1 / spacingT));
      return;
    }
    const middle = (s + t) / 2;
    const spacingMiddle = spacingAtIn(field, ax + middle * (bx - ax), ay + middle * (by - ay));
    addSum(s, middle, spacingS, spacingMiddle);
    addSum(middle, t, spacingMiddle, spacingT);
  }
}
