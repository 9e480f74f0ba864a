import { armStrips, groundNode, heldEdges, middleNode, modelledSection, planEdges, plateDeck } from './deck';
import type { Moments, PlateInput, Triangle } from './plate-input';
import { iterationCount, type PrintedTable, readTables, tableFor } from './read';
import { ccxVersion, runCcx } from './run';

/** Moments at an integration point of a triangle. There are three, each standing for a third of its area. */
export type PointMoments = Moments & { readonly xIn: number; readonly yIn: number; readonly areaIn2: number };

export type PlateResult = {
  /** Deflection of each node, inches, down positive. */
  readonly downIn: number[];
  /** Force of each support on the slab, up positive; negative is a tie holding down. */
  readonly supportLbf: number[];
  /** Force of each arm on the slab, up positive. */
  readonly armLbf: number[];
  /** Force of each hold on the slab, up positive; the force of a held edge is shared between its two ends. */
  readonly holdLbf: number[];
  /** Moments at the integration points, three a triangle in the order of its corners. */
  readonly points: PointMoments[];
  readonly version: string;
  /** Wall time of the run. */
  readonly seconds: number;
  /** Iterations of the contact search; 0 for a linear run. */
  readonly iterations: number;
};

/** Barycentric place of integration point p of three: 2/3 at corner p, 1/6 at the others. */
const near = 2 / 3;
const away = 1 / 6;
/** Three-point Gauss rule through the thickness, bottom to top: place on -1..1 and weight. */
const layers = [
  { place: -Math.sqrt(0.6), weight: 5 / 9 },
  { place: 0, weight: 8 / 9 },
  { place: Math.sqrt(0.6), weight: 5 / 9 },
] as const;

/** A slab that moves this far hangs on nothing but the trace of stiffness left in its open springs. */
const looseSlabIn = 10;

/** Runs CalculiX on a slab. Deflections and forces in inches and pounds-force, moments in lb-in per inch. */
export function calculixPlate(input: PlateInput): PlateResult {
  const version = ccxVersion();
  if (version === null) throw new Error('ccx is not installed');
  const run = runCcx(plateDeck(input));
  const tables = readTables(run.dat);
  const { edges } = planEdges(input.triangles);
  const cornerCount = input.nodes.length;

  const moved = new Map(tableFor(tables, 'displacements', 'MIDDLE').map((row) => [row[0]!, row[3]!]));
  const downIn = input.nodes.map((_, corner) => -moved.get(middleNode(corner))!);
  const worstIn = downIn.reduce((worst, value) => Math.max(worst, Math.abs(value)), 0);
  if (!(worstIn < looseSlabIn)) throw new Error(`the slab is not held: it moves ${worstIn} in`);

  let supportLbf: number[] = [];
  if (input.supports.length > 0) {
    const ground = new Map(tableFor(tables, 'forces', 'GROUND').map((row) => [row[0]!, row[3]!]));
    supportLbf = input.supports.map(
      (_, spring) => ground.get(groundNode(cornerCount, edges.length, spring))!,
    );
  }

  return {
    downIn,
    supportLbf,
    armLbf: armStrips(input, edges.length).map(({ name }) =>
      tableFor(tables, 'forces', `${name}ROOT`).reduce((sum, row) => sum + row[3]!, 0),
    ),
    holdLbf: holdForces(input, tables),
    points: pointMoments(input, tableFor(tables, 'stresses', 'SLAB')),
    version,
    seconds: run.seconds,
    iterations: iterationCount(run.convergence),
  };
}

/** What each hold gives: the force the program prints at it is its reaction less the load standing on it. */
function holdForces(input: PlateInput, tables: readonly PrintedTable[]): number[] {
  const heights = input.holds.filter(({ raiseIn }) => raiseIn !== undefined);
  if (heights.length === 0) return input.holds.map(() => 0);
  const { edges, edgesOf } = planEdges(input.triangles);
  const printed = new Map(tableFor(tables, 'forces', 'HELD').map((row) => [row[0]!, row[3]!]));
  const loadOn = new Map<number, number>();
  for (const { node, forceLbf } of input.loads) loadOn.set(node, (loadOn.get(node) ?? 0) + forceLbf);
  const forces = new Map(
    heights.map(({ node }) => [node, printed.get(middleNode(node))! + (loadOn.get(node) ?? 0)]),
  );
  // Uniform pressure puts a third of a quadratic triangle's load on each side and nothing on its corners.
  const pressureOn = edges.map(() => 0);
  input.triangles.forEach((triangle, number) => {
    const force = ((input.pressurePsi ?? 0) * triangleAreaIn2(input, triangle)) / 3;
    for (const edge of edgesOf[number]!) pressureOn[edge]! += force;
  });
  for (const edge of heldEdges(input, edges)) {
    const { from, to } = edges[edge]!;
    if (!forces.has(from) || !forces.has(to)) continue;
    const low = 3 * input.nodes.length + 2 * edge + 1;
    const force = printed.get(low)! + printed.get(low + 1)! + pressureOn[edge]!;
    for (const end of [from, to]) forces.set(end, forces.get(end)! + force / 2);
  }
  return input.holds.map(({ node }) => forces.get(node) ?? 0);
}

function triangleAreaIn2({ nodes }: PlateInput, [a, b, c]: Triangle): number {
  const [p, q, r] = [nodes[a]!, nodes[b]!, nodes[c]!];
  return ((q.xIn - p.xIn) * (r.yIn - p.yIn) - (r.xIn - p.xIn) * (q.yIn - p.yIn)) / 2;
}

/** Integrates the printed stresses through the thickness: M = -integral of sigma z dz, z up. */
function pointMoments(input: PlateInput, stresses: readonly number[][]): PointMoments[] {
  const half = modelledSection(input).thicknessIn / 2;
  if (stresses.length !== 9 * input.triangles.length)
    throw new Error(`${stresses.length} rows of stress printed`);
  return input.triangles.flatMap((triangle, number) => {
    const corners = triangle.map((node) => input.nodes[node]!);
    const areaIn2 = triangleAreaIn2(input, triangle) / 3;
    return [0, 1, 2].map((point) => {
      const share = corners.map((_, corner) => (corner === point ? near : away));
      const moment = (column: number): number =>
        layers.reduce((sum, { place, weight }, layer) => {
          const row = stresses[9 * number + 3 * layer + point]!;
          return sum - row[column]! * place * weight * half * half;
        }, 0);
      return {
        xIn: corners.reduce((sum, { xIn }, corner) => sum + share[corner]! * xIn, 0),
        yIn: corners.reduce((sum, { yIn }, corner) => sum + share[corner]! * yIn, 0),
        areaIn2,
        mxLbfInPerIn: moment(2),
        myLbfInPerIn: moment(3),
        mxyLbfInPerIn: moment(5),
      };
    });
  });
}
