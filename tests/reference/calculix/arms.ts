import type { Cantilever, NodeSpring, PlanNode } from './plate-input';

/**
 * Arms under a slab as strips of C3D20R bricks, two across the width and one through the depth, so that the middle line of
 * the arm has nodes for the springs from the slab (C3D20, integrated in full, would be 6 % too stiff). An arm lies one spring
 * length below it:
 *
 *      back     root   contact      contact        stations along the arm, two to a brick;
 *        o-------o-------o------------o            (i, j, k) counts half bricks along, across and up,
 *      held    held in  spring      spring         brick corners where all three are even, mid-sides
 *               height                             where one is odd, nothing elsewhere.
 *
 * A rigid fixing clamps the root and has no back span. A fixing that turns is the pinned back span L of a beam laid on two
 * supports: its end turns by M L / 3 E I, and the root does not sink.
 */

/** Section of the strip: so slender that shear adds .3 % to the bending 3 in out, and .03 % 9 in out. */
const sectionWidthIn = 1;
const sectionDepthIn = 0.2;
const backSpanIn = 6;
/** Bricks between two neighbouring stations of root, contacts and back. */
const bricksPerSpan = 2;
/** Half bricks across and up. */
const across = 4;
const up = 2;
const middle = { j: across / 2, k: up / 2 } as const;

/** An arm of the deck: where its stations lie and which numbers its nodes and bricks have. */
export type ArmStrip = {
  readonly arm: Cantilever;
  readonly firstNode: number;
  readonly firstElement: number;
  readonly name: string;
  /** Ends and middles of the bricks, from the wall face outwards; the back span is below 0. */
  readonly stationsIn: readonly number[];
  /** Number of the station at the wall face. */
  readonly root: number;
};

/** Numbers every arm, the first nodes and elements free for them given. */
export function planArms(
  arms: readonly Cantilever[],
  nodes: readonly PlanNode[],
  free: { readonly node: number; readonly element: number },
): ArmStrip[] {
  let { node, element } = free;
  return arms.map((arm, number) => {
    const backIn = arm.fixingTurnPerLbfIn > 0 ? [-backSpanIn, 0] : [0];
    const contactsIn = arm.contacts.map((contact) => alongIn(arm, nodes[contact.node]!));
    const endsIn = [...backIn, ...[...new Set(contactsIn)].sort((a, b) => a - b)];
    const stationsIn = endsIn.slice(1).flatMap((toIn, span) => {
      const fromIn = endsIn[span]!;
      const steps = 2 * bricksPerSpan;
      return Array.from({ length: steps }, (_, step) => fromIn + ((toIn - fromIn) * step) / steps);
    });
    stationsIn.push(endsIn.at(-1)!);
    const strip = {
      arm,
      firstNode: node,
      firstElement: element,
      name: `ARM${number + 1}`,
      stationsIn,
      root: stationsIn.indexOf(0),
    };
    node += stationsIn.length * (across + 1) * (up + 1);
    element += stationsIn.length - 1;
    return strip;
  });
}

/** Distance of a slab node from the arm's root; throws where it does not lie over the arm's middle line. */
function alongIn(arm: Cantilever, { xIn, yIn }: PlanNode): number {
  const [cos, sin] = [Math.cos(arm.directionRad), Math.sin(arm.directionRad)];
  const [dx, dy] = [xIn - arm.root.xIn, yIn - arm.root.yIn];
  const along = dx * cos + dy * sin;
  if (!(along > 0) || Math.abs(dy * cos - dx * sin) > 1e-6)
    throw new Error(`(${xIn}, ${yIn}) is not over the arm that starts at (${arm.root.xIn}, ${arm.root.yIn})`);
  return along;
}

function nodeAt({ firstNode }: ArmStrip, i: number, j: number, k: number): number {
  return firstNode + (i * (across + 1) + j) * (up + 1) + k;
}

/** Every spring between the slab and the arms, with the node of the arm that it stands on. */
export function armSprings(
  strips: readonly ArmStrip[],
  nodes: readonly PlanNode[],
): { spring: NodeSpring; lowNode: number }[] {
  return strips.flatMap((strip) =>
    strip.arm.contacts.map((spring) => {
      const station = strip.stationsIn.indexOf(alongIn(strip.arm, nodes[spring.node]!));
      return { spring, lowNode: nodeAt(strip, station, middle.j, middle.k) };
    }),
  );
}

/** Coordinates of every node of an arm whose middle line lies at height `zIn`. */
export function armNodes(
  strip: ArmStrip,
  zIn: number,
): { node: number; xIn: number; yIn: number; zIn: number }[] {
  const { root, directionRad } = strip.arm;
  const [cos, sin] = [Math.cos(directionRad), Math.sin(directionRad)];
  return strip.stationsIn.flatMap((along, i) =>
    places(i).map(({ j, k }) => {
      const leftIn = sectionWidthIn * (j / across - 0.5);
      return {
        node: nodeAt(strip, i, j, k),
        xIn: root.xIn + along * cos - leftIn * sin,
        yIn: root.yIn + along * sin + leftIn * cos,
        zIn: zIn + sectionDepthIn * (k / up - 0.5),
      };
    }),
  );
}

/** Places of the nodes of one station: a brick has none in the middle of a face or of itself. */
function places(i: number): { j: number; k: number }[] {
  return Array.from({ length: (across + 1) * (up + 1) }, (_, n) => ({
    j: Math.floor(n / (up + 1)),
    k: n % (up + 1),
  })).filter(({ j, k }) => (i % 2) + (j % 2) + (k % 2) <= 1);
}

/** Bricks, materials and, for printing, the set of held nodes of one arm. */
export function armCards(strip: ArmStrip): string[] {
  const { arm, name, root, stationsIn } = strip;
  const { flexuralRigidityLbfIn2, fixingTurnPerLbfIn } = arm;
  const lines = [...brickCards(strip, name, root, stationsIn.length - 1, flexuralRigidityLbfIn2)];
  if (root > 0)
    lines.push(...brickCards(strip, `${name}BACK`, 0, root, backSpanIn / (3 * fixingTurnPerLbfIn)));
  lines.push(`*NSET,NSET=${name}ROOT`, ...heldNodes(strip).map(({ node }) => `${node},`));
  return lines;
}

function brickCards(
  strip: ArmStrip,
  set: string,
  from: number,
  to: number,
  rigidityLbfIn2: number,
): string[] {
  const lines = [`*ELEMENT,TYPE=C3D20R,ELSET=${set}`];
  const modulusPsi = (12 * rigidityLbfIn2) / (sectionWidthIn * sectionDepthIn ** 3);
  const ring = [
    [0, 0],
    [2, 0],
    [2, 2],
    [0, 2],
  ] as const;
  const sides = [
    [1, 0],
    [2, 1],
    [1, 2],
    [0, 1],
  ] as const;
  for (let i = from; i < to; i += 2) {
    for (let j = 0; j < across; j += 2) {
      const level = (cells: typeof ring | typeof sides, k: number): number[] =>
        cells.map(([di, dj]) => nodeAt(strip, i + di, j + dj, k));
      const nodes = [
        level(ring, 0),
        level(ring, up),
        level(sides, 0),
        level(sides, up),
        level(ring, 1),
      ].flat();
      lines.push(
        `${strip.firstElement + i + j / 2},${nodes.slice(0, 10).join(',')},`,
        nodes.slice(10).join(','),
      );
    }
  }
  return [
    ...lines,
    `*MATERIAL,NAME=${set}`,
    '*ELASTIC',
    `${modulusPsi.toExponential(12).replace('e', 'E')},0.0`,
    `*SOLID SECTION,ELSET=${set},MATERIAL=${set}`,
  ];
}

/** What holds an arm: the whole root section, or the middle lines of its root (height alone) and of its back end. */
export function heldNodes(strip: ArmStrip): { node: number; axes: '1,3' | '3,3' }[] {
  const { root } = strip;
  if (root === 0) return places(0).map(({ j, k }) => ({ node: nodeAt(strip, 0, j, k), axes: '1,3' }));
  return [0, 2, 4].flatMap((j) => [
    { node: nodeAt(strip, root, j, middle.k), axes: '3,3' as const },
    { node: nodeAt(strip, 0, j, middle.k), axes: '1,3' as const },
  ]);
}
