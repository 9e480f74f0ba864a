/** Heights at which the faces of a slab's edges are cut, and how far each stands back there. */
import type { ProfilePoint } from '../profile';

export interface FaceLevel {
  readonly upIn: number;
  /** By the number of the face. */
  readonly insetsIn: readonly number[];
}

/** Heights closer than this are one, in. */
const SAME_IN = 1e-4;

/**
 * Cuts all faces at every height where any of them has a point, from soffit to top. A height at which a face steps
 * back level comes twice, below the step and above it.
 */
export function faceLevels(faces: readonly (readonly ProfilePoint[])[]): readonly FaceLevel[] {
  const heightsIn = faces
    .flatMap((face) => face.map(({ upIn }) => upIn))
    .sort((p, q) => p - q)
    .filter((upIn, i, sorted) => i === 0 || upIn - sorted[i - 1]! > SAME_IN);
  const topIn = heightsIn.at(-1) ?? 0;
  return heightsIn.flatMap((upIn): FaceLevel[] => {
    const below = { upIn, insetsIn: faces.map((face) => insetAtIn(face, upIn, 'below')) };
    const above = { upIn, insetsIn: faces.map((face) => insetAtIn(face, upIn, 'above')) };
    if (upIn === 0) return [above];
    const isStep = above.insetsIn.some((insetIn, i) => Math.abs(insetIn - below.insetsIn[i]!) > SAME_IN);
    return isStep && upIn < topIn ? [below, above] : [below];
  });
}

function insetAtIn(face: readonly ProfilePoint[], upIn: number, side: 'below' | 'above'): number {
  const at = face.filter((point) => Math.abs(point.upIn - upIn) <= SAME_IN);
  const found = side === 'below' ? at[0] : at.at(-1);
  if (found !== undefined) return -found.outIn;
  const next = face.findIndex((point) => point.upIn > upIn);
  const [low, high] = [face[next - 1]!, face[next]!];
  const share = (upIn - low.upIn) / (high.upIn - low.upIn);
  return -(low.outIn + share * (high.outIn - low.outIn));
}
