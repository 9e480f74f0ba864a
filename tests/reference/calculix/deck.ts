import { type ArmStrip, armCards, armNodes, armSprings, heldNodes, planArms } from './arms';
import type { NodeHold, NodeSpring, PlateInput, Triangle } from './plate-input';

/**
 * The slab as quadratic wedges (C3D15), one through the thickness, built here rather than left to the program's own
 * shell expansion so that every node is known:
 *
 *        top  3i+3          e_top          corner i of the plan owns three nodes, bottom, middle, top;
 *        mid  3i+2                         edge e of the plan owns two, bottom and top.
 *     bottom  3i+1          e_bottom
 *
 * Forces and springs act at the middle nodes, pressure half on each face, so nothing stretches the middle plane.
 */

/** A plan edge: its two corner nodes and how many triangles share it. */
export type PlanEdge = { readonly from: number; readonly to: number; triangleCount: number };

/** Length of the contact springs: long, so that their own turning is nothing. */
const springLengthIn = 100;
/** Slope left in an open spring, as a share of its stiffness: keeps a lifting slab from being singular. */
const openShareRatio = 1e-8;
/** How far a spring's table reaches either way; beyond it the program would hold the force constant. */
const tableReachIn = 50;
/** Puts the knee of a support that just touches on the open side, so that the first iteration finds it bearing. */
const kneeShiftIn = 1e-9;

export const bottomNode = (corner: number): number => 3 * corner + 1;
export const middleNode = (corner: number): number => 3 * corner + 2;
export const topNode = (corner: number): number => 3 * corner + 3;

/** The edges of a plan mesh and, for each triangle, the numbers of its edges 01, 12, 20. */
export function planEdges(triangles: readonly Triangle[]): {
  edges: PlanEdge[];
  edgesOf: [number, number, number][];
} {
  const numberOf = new Map<string, number>();
  const edges: PlanEdge[] = [];
  const edge = (a: number, b: number): number => {
    const key = a < b ? `${a},${b}` : `${b},${a}`;
    let found = numberOf.get(key);
    if (found === undefined) {
      found = edges.length;
      numberOf.set(key, found);
      edges.push({ from: a, to: b, triangleCount: 0 });
    }
    edges[found]!.triangleCount += 1;
    return found;
  };
  const edgesOf = triangles.map(([a, b, c]): [number, number, number] => [
    edge(a, b),
    edge(b, c),
    edge(c, a),
  ]);
  return { edges, edgesOf };
}

/** The node of the ground under spring number `spring`, both counted from 0. */
export function groundNode(cornerCount: number, edgeCount: number, spring: number): number {
  return 3 * cornerCount + 2 * edgeCount + 1 + spring;
}

/** The arms of a slab, numbered behind its own nodes, grounds, triangles and springs. */
export function armStrips(input: PlateInput, edgeCount: number): ArmStrip[] {
  const arms = input.arms ?? [];
  const springCount = arms.reduce((sum, { contacts }) => sum + contacts.length, input.supports.length);
  return planArms(arms, input.nodes, {
    node: groundNode(input.nodes.length, edgeCount, input.supports.length),
    element: input.triangles.length + springCount + 1,
  });
}

/** Thickness and modulus that the deck uses for a slab, inches and psi, after thinning. */
export function modelledSection(input: PlateInput): { thicknessIn: number; modulusPsi: number } {
  const ratio = input.thinningRatio ?? 1;
  return { thicknessIn: input.thicknessIn / ratio, modulusPsi: input.modulusPsi * ratio ** 3 };
}

/** The input deck for a slab: inches, pounds-force, psi, z up. */
export function plateDeck(input: PlateInput): string {
  const { edges, edgesOf } = planEdges(input.triangles);
  const cornerCount = input.nodes.length;
  const lowEdge = (edge: number): number => 3 * cornerCount + 2 * edge + 1;
  const { thicknessIn, modulusPsi } = modelledSection(input);
  const half = thicknessIn / 2;
  const strips = armStrips(input, edges.length);
  const lines: string[] = ['*NODE,NSET=ALL'];
  const put = (node: number, x: number, y: number, z: number): void => {
    lines.push(`${node},${decimal(x)},${decimal(y)},${decimal(z)}`);
  };

  input.nodes.forEach(({ xIn, yIn }, corner) => {
    put(bottomNode(corner), xIn, yIn, -half);
    put(middleNode(corner), xIn, yIn, 0);
    put(topNode(corner), xIn, yIn, half);
  });
  edges.forEach(({ from, to }, edge) => {
    const a = input.nodes[from]!;
    const b = input.nodes[to]!;
    put(lowEdge(edge), (a.xIn + b.xIn) / 2, (a.yIn + b.yIn) / 2, -half);
    put(lowEdge(edge) + 1, (a.xIn + b.xIn) / 2, (a.yIn + b.yIn) / 2, half);
  });
  input.supports.forEach(({ node }, spring) => {
    const at = input.nodes[node]!;
    put(groundNode(cornerCount, edges.length, spring), at.xIn, at.yIn, -springLengthIn);
  });
  for (const strip of strips) {
    for (const { node, xIn, yIn, zIn } of armNodes(strip, -springLengthIn)) put(node, xIn, yIn, zIn);
  }

  lines.push('*ELEMENT,TYPE=C3D15,ELSET=SLAB');
  input.triangles.forEach(([a, b, c], triangle) => {
    const [ab, bc, ca] = edgesOf[triangle]!;
    const corners = [a, b, c];
    const sides = [ab, bc, ca];
    const nodes = [
      ...corners.map(bottomNode),
      ...corners.map(topNode),
      ...sides.map(lowEdge),
      ...sides.map((side) => lowEdge(side) + 1),
      ...corners.map(middleNode),
    ];
    lines.push(`${triangle + 1},${nodes.slice(0, 8).join(',')},`, nodes.slice(8).join(','));
  });
  lines.push('*MATERIAL,NAME=CONCRETE', '*ELASTIC', `${decimal(modulusPsi)},${decimal(input.poissonRatio)}`);
  lines.push('*SOLID SECTION,ELSET=SLAB,MATERIAL=CONCRETE');

  lines.push(...strips.flatMap(armCards));
  const springs = [
    ...input.supports.map((spring, number) => ({
      spring,
      lowNode: groundNode(cornerCount, edges.length, number),
    })),
    ...armSprings(strips, input.nodes),
  ];
  lines.push(...springCards(springs, input.triangles.length));
  lines.push(...holdCards(input, edges, strips, lowEdge));
  lines.push(...stepCards(input, edges, strips, lowEdge));
  return `${lines.join('\n')}\n`;
}

/** Springs from the slab down to the ground or an arm, one SPRINGA element each, alike ones under one table. */
function springCards(
  springs: readonly { readonly spring: NodeSpring; readonly lowNode: number }[],
  triangleCount: number,
): string[] {
  const lines: string[] = [];
  const groups = new Map<string, number[]>();
  springs.forEach(({ spring: { stiffnessLbfPerIn, gapIn, kind } }, number) => {
    const key = `${kind} ${stiffnessLbfPerIn} ${gapIn}`;
    groups.set(key, [...(groups.get(key) ?? []), number]);
  });
  let group = 0;
  for (const members of groups.values()) {
    group += 1;
    lines.push(`*ELEMENT,TYPE=SPRINGA,ELSET=SPRING${group}`);
    for (const number of members) {
      const { spring, lowNode } = springs[number]!;
      lines.push(`${triangleCount + 1 + number},${middleNode(spring.node)},${lowNode}`);
    }
    lines.push(`*SPRING,ELSET=SPRING${group},NONLINEAR`, ...springTable(springs[members[0]!]!.spring));
  }
  // The program iterates only if it has read a nonlinear material; this one is used by no element. SPRING1 and
  // SPRING2 would not do: version 2.20 takes their slope from an unset elongation. SPRINGA is sound.
  if (springs.length > 0) {
    lines.push('*MATERIAL,NAME=UNUSED', '*ELASTIC', '1.0,0.0', '*PLASTIC', '1.0,0.0');
  }
  return lines;
}

/** Force against elongation (upward motion of the slab) of one spring, tension positive, in rising elongation. */
function springTable({ stiffnessLbfPerIn, gapIn, kind }: NodeSpring): string[] {
  const reach = tableReachIn;
  const bearing = stiffnessLbfPerIn;
  const open = stiffnessLbfPerIn * openShareRatio;
  const row = (force: number, elongation: number): string => `${decimal(force)},${decimal(elongation)}`;
  if (kind === 'both')
    return [row(-bearing * (reach - gapIn), -reach), row(bearing * (reach + gapIn), reach)];
  if (kind === 'push') {
    const knee = -gapIn + kneeShiftIn;
    return [row(-bearing * (reach + knee), -reach), row(0, knee), row(open * (reach - knee), reach)];
  }
  const knee = gapIn - kneeShiftIn;
  return [row(-open * (reach + knee), -reach), row(0, knee), row(bearing * (reach - knee), reach)];
}

/** What is held: prescribed heights and slopes, the ground, the roots of arms, and three in-plane freedoms at two nodes. */
function holdCards(
  input: PlateInput,
  edges: readonly PlanEdge[],
  strips: readonly ArmStrip[],
  lowEdge: (edge: number) => number,
): string[] {
  const byNode = new Map<number, NodeHold>(input.holds.map((hold) => [hold.node, hold]));
  const held: string[] = [];
  const equations: string[] = [];
  const fix = (node: number, axis: number, value = 0): void => {
    held.push(`${node},${axis},${axis},${decimal(value)}`);
  };
  for (const hold of byNode.values()) {
    const through = [bottomNode(hold.node), middleNode(hold.node), topNode(hold.node)];
    if (hold.raiseIn !== undefined) fix(middleNode(hold.node), 3, hold.raiseIn);
    if (hold.flatAlongX === true) for (const node of through) fix(node, 1);
    if (hold.flatAlongY === true) for (const node of through) fix(node, 2);
  }
  for (const edge of heldEdges(input, edges)) {
    const a = byNode.get(edges[edge]!.from)!;
    const b = byNode.get(edges[edge]!.to)!;
    const pair = [lowEdge(edge), lowEdge(edge) + 1];
    if (a.raiseIn !== undefined && b.raiseIn !== undefined) {
      const terms = `${pair[0]},3,1.,${pair[1]},3,1.,${middleNode(a.node)},3,-1.,${middleNode(b.node)},3,-1.`;
      equations.push('*EQUATION', '4', terms);
    }
    if (a.flatAlongX === true && b.flatAlongX === true) for (const node of pair) fix(node, 1);
    if (a.flatAlongY === true && b.flatAlongY === true) for (const node of pair) fix(node, 2);
  }
  input.supports.forEach((_, spring) => {
    held.push(`${groundNode(input.nodes.length, edges.length, spring)},1,3`);
  });
  for (const { node, axes } of strips.flatMap(heldNodes)) held.push(`${node},${axes}`);
  const [anchor, far] = anchorNodes(input);
  fix(middleNode(anchor.corner), 1);
  fix(middleNode(anchor.corner), 2);
  fix(middleNode(far.corner), far.acrossAxis);
  return [...equations, '*BOUNDARY', ...new Set(held)];
}

/** Numbers of the boundary edges both of whose ends are held. */
export function heldEdges(input: PlateInput, edges: readonly PlanEdge[]): number[] {
  const nodes = new Set(input.holds.map(({ node }) => node));
  return edges.flatMap(({ from, to, triangleCount }, edge) =>
    triangleCount === 1 && nodes.has(from) && nodes.has(to) ? [edge] : [],
  );
}

/** Node 0, and the node furthest from it with the axis in which holding it stops the slab turning in plan. */
function anchorNodes({ nodes }: PlateInput): [{ corner: number }, { corner: number; acrossAxis: 1 | 2 }] {
  const first = nodes[0]!;
  const distance = (corner: number): number =>
    Math.hypot(nodes[corner]!.xIn - first.xIn, nodes[corner]!.yIn - first.yIn);
  const far = nodes.reduce((best, _, corner) => (distance(corner) > distance(best) ? corner : best), 0);
  const alongX = Math.abs(nodes[far]!.xIn - first.xIn) >= Math.abs(nodes[far]!.yIn - first.yIn);
  return [{ corner: 0 }, { corner: far, acrossAxis: alongX ? 2 : 1 }];
}

/** Loads, tight convergence, and what is to be printed. */
function stepCards(
  input: PlateInput,
  edges: readonly PlanEdge[],
  strips: readonly ArmStrip[],
  lowEdge: (edge: number) => number,
): string[] {
  const lines: string[] = ['*NSET,NSET=MIDDLE'];
  input.nodes.forEach((_, corner) => {
    lines.push(`${middleNode(corner)},`);
  });
  const heldNodes = [
    ...input.holds.flatMap(({ node, raiseIn }) => (raiseIn === undefined ? [] : [middleNode(node)])),
    ...heldEdges(input, edges).flatMap((edge) => [lowEdge(edge), lowEdge(edge) + 1]),
  ];
  if (heldNodes.length > 0) lines.push('*NSET,NSET=HELD', ...heldNodes.map((node) => `${node},`));
  if (input.supports.length > 0) {
    lines.push('*NSET,NSET=GROUND');
    input.supports.forEach((_, spring) => {
      lines.push(`${groundNode(input.nodes.length, edges.length, spring)},`);
    });
  }
  lines.push('*STEP,INC=1000', '*STATIC,DIRECT', '1.,1.');
  if (input.supports.length + strips.length > 0) {
    lines.push('*CONTROLS,PARAMETERS=FIELD', '1.E-6,1.E-4,0.01,,1.E-6,1.E-6,1.E-6,1.E-8');
  }
  if (input.loads.length > 0) {
    const forceAt = new Map<number, number>();
    for (const { node, forceLbf } of input.loads) forceAt.set(node, (forceAt.get(node) ?? 0) + forceLbf);
    lines.push('*CLOAD', ...[...forceAt].map(([node, force]) => `${middleNode(node)},3,${decimal(-force)}`));
  }
  if (input.pressurePsi !== undefined) {
    lines.push(
      '*DLOAD',
      `SLAB,P1,${decimal(-input.pressurePsi / 2)}`,
      `SLAB,P2,${decimal(input.pressurePsi / 2)}`,
    );
  }
  lines.push('*NODE PRINT,NSET=MIDDLE', 'U');
  if (heldNodes.length > 0) lines.push('*NODE PRINT,NSET=HELD', 'RF');
  if (input.supports.length > 0) lines.push('*NODE PRINT,NSET=GROUND', 'RF');
  for (const { name } of strips) lines.push(`*NODE PRINT,NSET=${name}ROOT`, 'RF');
  lines.push('*EL PRINT,ELSET=SLAB', 'S', '*END STEP');
  return lines;
}

/** A number the program reads as real: it tells reals from integers by the point, and reads no more than 20 characters. */
function decimal(value: number): string {
  return value.toExponential(12).replace('e', 'E');
}
