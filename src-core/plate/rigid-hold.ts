/**
 * Whether supports stop a plate from moving as a rigid body. The pivots of the factor cannot tell: of a plate that is free to turn
 * they come out as rounding of either sign. The rigid motions themselves are known, so their stiffness is summed up directly.
 *
 * Glossary
 *   mode     0 sinking, 1 tilting along x, 2 tilting along y; about the middle of the slab
 *   spring   stiffness of a freedom; a held one counts as the stiffest spring there is
 */

/** Nodes with the connected part of the mesh that each belongs to. */
export interface PlateParts {
  readonly xIn: Float64Array;
  readonly yIn: Float64Array;
  readonly partOf: Int32Array;
  readonly partCount: number;
}

/** A mode that keeps less than this share of its stiffness when the other modes give way is loose. A ratio; by judgement. */
const SMALLEST_SHARE = 1e-10;

/**
 * A freedom (3 * node + mode, mesh order) that nothing resists, or -1. `fixed` and `springs` hold a number a freedom in mesh
 * order. Statics, no source.
 */
export function findLooseFreedom(
  parts: PlateParts,
  fixed: Uint8Array | undefined,
  springs: Float64Array | undefined,
): number {
  const stiffest = springs?.reduce((top, spring) => Math.max(top, spring), 0) ?? 0;
  const heldStiffness = stiffest > 0 ? stiffest : 1;
  for (let part = 0; part < parts.partCount; part++) {
    const loose = looseMode(parts, part, (freedom) =>
      fixed?.[freedom] === 1 ? heldStiffness : (springs?.[freedom] ?? 0),
    );
    if (loose >= 0) return 3 * parts.partOf.indexOf(part) + loose;
  }
  return -1;
}

/** The first rigid mode of a part that its supports do not stop, or -1. */
function looseMode(parts: PlateParts, part: number, stiffnessOf: (freedom: number) => number): number {
  const { xIn, yIn, partOf } = parts;
  const nodes = Array.from(partOf.keys()).filter((node) => partOf[node] === part);
  const midX = nodes.reduce((sum, node) => sum + xIn[node]!, 0) / nodes.length;
  const midY = nodes.reduce((sum, node) => sum + yIn[node]!, 0) / nodes.length;
  const stiffness = [0, 0, 0, 0, 0, 0, 0, 0, 0];
  const add = (amount: number, motion: readonly [number, number, number]): void => {
    for (let i = 0; i < 9; i++) {
      stiffness[i] = stiffness[i]! + amount * motion[Math.floor(i / 3)]! * motion[i % 3]!;
    }
  };
  for (const node of nodes) {
    const sinking = stiffnessOf(3 * node);
    if (sinking > 0) add(sinking, [1, xIn[node]! - midX, yIn[node]! - midY]);
    const tiltX = stiffnessOf(3 * node + 1);
    if (tiltX > 0) add(tiltX, [0, 1, 0]);
    const tiltY = stiffnessOf(3 * node + 2);
    if (tiltY > 0) add(tiltY, [0, 0, 1]);
  }
  return weakPivot(stiffness);
}

/** Eliminates a symmetric 3 x 3 in place. Gives the first row whose pivot is nothing beside its diagonal, or -1. */
function weakPivot(m: number[]): number {
  const diagonal = [m[0]!, m[4]!, m[8]!];
  for (let i = 0; i < 3; i++) {
    const pivot = m[4 * i]!;
    if (!(pivot > SMALLEST_SHARE * diagonal[i]!)) return i;
    for (let j = i + 1; j < 3; j++) {
      const share = m[3 * j + i]! / pivot;
      for (let k = i; k < 3; k++) m[3 * j + k] = m[3 * j + k]! - share * m[3 * i + k]!;
    }
  }
  return -1;
}
