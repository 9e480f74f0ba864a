/** An edge in section: its face, and the drip groove under it. */
import type { PieceEdge } from '../job';
import type { ProfilePoint } from './edge-profile';
import { edgeProfile, PROFILE_CHORD_IN, squareFace } from './edge-profile';

/** A square groove in the soffit that runs along an edge. */
export interface GrooveSection {
  /** From the face to the groove's nearer lip. */
  readonly setbackIn: number;
  readonly widthIn: number;
  readonly depthIn: number;
}

export interface EdgeSection {
  /** From soffit to top. */
  readonly face: readonly ProfilePoint[];
  readonly groove: GrooveSection | null;
  /** The whole line that a form follows: from the groove's far lip through it, along the soffit and up the face. */
  readonly line: readonly ProfilePoint[];
}

/** Concrete left between a groove and the face, and the share of the thickness it may cut. Common practice, no source. */
const LAND_IN = 1 / 16;
const DEEPEST_GROOVE_RATIO = 0.75;

/**
 * An edge of a slab in section. Wall and butted edges are square. A groove deeper than three quarters of the slab is
 * cut down to that, and one that would break out of the face moves in.
 */
export function edgeSection(
  edge: PieceEdge,
  thicknessIn: number,
  chordToleranceIn = PROFILE_CHORD_IN,
): EdgeSection {
  if (edge.kind !== 'free') {
    const face = squareFace(thicknessIn);
    return { face, groove: null, line: face };
  }
  const face = edgeProfile(edge.profile, thicknessIn, chordToleranceIn);
  if (edge.dripGroove === null) return { face, groove: null, line: face };
  const { widthIn } = edge.dripGroove;
  const depthIn = Math.min(edge.dripGroove.depthIn, DEEPEST_GROOVE_RATIO * thicknessIn);
  const setbackIn = Math.max(edge.dripGroove.setbackIn, deepestInsetIn(face, depthIn) + LAND_IN);
  const groove = { setbackIn, widthIn, depthIn };
  const farIn = -(setbackIn + widthIn);
  const line = [
    { outIn: farIn, upIn: 0 },
    { outIn: farIn, upIn: depthIn },
    { outIn: -setbackIn, upIn: depthIn },
    { outIn: -setbackIn, upIn: 0 },
    ...face,
  ];
  return { face, groove, line };
}

/** How far a face stands back from the outline anywhere from the soffit up to a height, in. */
export function deepestInsetIn(face: readonly ProfilePoint[], upToIn: number): number {
  let deepestIn = 0;
  let below: ProfilePoint | null = null;
  for (const point of face) {
    if (point.upIn <= upToIn) deepestIn = Math.max(deepestIn, -point.outIn);
    else if (below !== null && below.upIn < upToIn) {
      const share = (upToIn - below.upIn) / (point.upIn - below.upIn);
      deepestIn = Math.max(deepestIn, -(below.outIn + share * (point.outIn - below.outIn)));
    }
    below = point;
  }
  return deepestIn;
}
