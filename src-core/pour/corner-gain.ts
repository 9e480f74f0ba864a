/**
 * What a corner gives back of the area that its two edges lose when each moves inward. Each edge is counted as losing
 * its whole length times its inset; at an outside corner the two strips overlap, at an inside corner they part.
 */

/** Where the outline turns by less than this, faces that differ end in a return and meet in no mitre, rad. */
const RETURN_BELOW_RAD = Math.PI / 6;
/** Insets closer than this are one, in. */
const SAME_IN = 1e-9;

export interface CornerTurn {
  /** Turn of the outline: positive at an outside corner, negative at an inside one. */
  readonly turnRad: number;
  readonly radiusIn: number;
}

/** Area given back at a corner, in2, for insets of the edges before and after it, in. Plane geometry. */
export function cornerGainIn2(corner: CornerTurn, beforeIn: number, afterIn: number): number {
  const { turnRad, radiusIn } = corner;
  const isMitre = radiusIn === 0 && Math.abs(turnRad) >= RETURN_BELOW_RAD;
  if (isMitre && Math.abs(beforeIn - afterIn) > SAME_IN) return mitreIn2(turnRad, beforeIn, afterIn);
  return (roundedIn2(corner, beforeIn) + roundedIn2(corner, afterIn)) / 2;
}

/** Parallelogram between the corner and the mitre of two unequal insets, less what each edge lost beyond it. */
function mitreIn2(turnRad: number, beforeIn: number, afterIn: number): number {
  const squares = beforeIn ** 2 + afterIn ** 2;
  return (2 * beforeIn * afterIn - squares * Math.cos(turnRad)) / (2 * Math.sin(turnRad));
}

/**
 * One inset all round a corner. Its arc shrinks to nothing at an outside corner, and a mitre follows it; at an inside
 * corner it grows. Kite less sector, as in any handbook of mathematics.
 */
function roundedIn2({ turnRad, radiusIn }: CornerTurn, insetIn: number): number {
  if (turnRad < 0 && radiusIn > 0) return (turnRad / 2) * insetIn ** 2;
  const half = Math.tan(turnRad / 2);
  if (insetIn <= radiusIn) return (turnRad / 2) * insetIn ** 2;
  return (
    radiusIn ** 2 * (half - turnRad / 2) -
    2 * radiusIn * half * insetIn +
    radiusIn * turnRad * insetIn +
    half * insetIn ** 2
  );
}
