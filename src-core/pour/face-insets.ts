/** How far the face of an edge stands back from its outline over the height of the slab, in straight stretches. */
import type { ProfilePoint } from '../profile';

/** A stretch of height over which faces stand back by amounts that change evenly. */
interface Stretch {
  readonly fromIn: number;
  readonly toIn: number;
  /** Inset at its foot and at its head, in. */
  readonly footIn: number;
  readonly headIn: number;
}

/** Stretches shorter than this hold nothing, in. */
const SHORTEST_IN = 1e-9;

function stretchesOf(face: readonly ProfilePoint[]): readonly Stretch[] {
  return face.slice(1).flatMap((head, k) => {
    const foot = face[k]!;
    if (head.upIn - foot.upIn <= SHORTEST_IN) return [];
    return [{ fromIn: foot.upIn, toIn: head.upIn, footIn: -foot.outIn, headIn: -head.outIn }];
  });
}

/** Area between a square edge and its face in section, in2. Plane geometry, trapezia. */
export function faceLossIn2(face: readonly ProfilePoint[]): number {
  return stretchesOf(face).reduce(
    (sum, { fromIn, toIn, footIn, headIn }) => sum + ((footIn + headIn) / 2) * (toIn - fromIn),
    0,
  );
}

/**
 * Integral over the height of `area(d1, d2)`, where d1 and d2 are the insets of two faces, in3 for an area in in2.
 * Simpson's rule on stretches where both change evenly: exact while the area is a polynomial of third degree or less.
 */
export function overHeight(
  first: readonly ProfilePoint[],
  second: readonly ProfilePoint[],
  area: (firstIn: number, secondIn: number) => number,
): number {
  const [ones, others] = [stretchesOf(first), stretchesOf(second)];
  let sumIn3 = 0;
  for (let i = 0, j = 0; i < ones.length && j < others.length; ) {
    const [one, other] = [ones[i]!, others[j]!];
    const fromIn = Math.max(one.fromIn, other.fromIn);
    const toIn = Math.min(one.toIn, other.toIn);
    const heightIn = toIn - fromIn;
    if (heightIn > SHORTEST_IN) {
      const at = (share: number) => {
        const upIn = fromIn + share * heightIn;
        return area(insetIn(one, upIn), insetIn(other, upIn));
      };
      sumIn3 += (heightIn / 6) * (at(0) + 4 * at(0.5) + at(1));
    }
    if (one.toIn <= other.toIn) i++;
    else j++;
  }
  return sumIn3;
}

function insetIn({ fromIn, toIn, footIn, headIn }: Stretch, upIn: number): number {
  return footIn + ((headIn - footIn) * (upIn - fromIn)) / (toIn - fromIn);
}
