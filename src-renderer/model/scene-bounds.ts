/** How much room the drawing takes, for the camera and for the light. */
import type { Job, Piece } from '../../src-core/job';

/** x, y as in the plan and z up from the floor, in. */
export type Place = readonly [x: number, y: number, z: number];

export interface Bounds {
  readonly least: Place;
  readonly most: Place;
}

/** A piece with what stands below it, down to the floor. */
export function pieceBounds(piece: Piece): Bounds {
  const xs = piece.corners.map(({ xIn }) => xIn);
  const ys = piece.corners.map(({ yIn }) => yIn);
  const soffit = piece.topElevationIn - piece.thicknessIn;
  return {
    least: [Math.min(...xs), Math.min(...ys), Math.min(0, soffit)],
    most: [Math.max(...xs), Math.max(...ys), Math.max(0, piece.topElevationIn)],
  };
}

/** The same, corner by corner of the outline: an L does not fill the box round it. */
export function cornerBounds(piece: Piece): Bounds[] {
  const { least, most } = pieceBounds(piece);
  return piece.corners.map(({ xIn, yIn }) => ({ least: [xIn, yIn, least[2]], most: [xIn, yIn, most[2]] }));
}

/** All pieces of a job. */
export function jobBounds(job: Job): Bounds {
  return job.pieces.map(pieceBounds).reduce(united);
}

/** The least box that holds both. */
export function united(a: Bounds, b: Bounds): Bounds {
  const of = (pick: (x: number, y: number) => number, p: Place, q: Place): Place => [
    pick(p[0], q[0]),
    pick(p[1], q[1]),
    pick(p[2], q[2]),
  ];
  return { least: of(Math.min, a.least, b.least), most: of(Math.max, a.most, b.most) };
}

/** Middle of a box and the radius of the ball round it. */
export function ballRound({ least, most }: Bounds): { readonly middle: Place; readonly radiusIn: number } {
  return {
    middle: [(least[0] + most[0]) / 2, (least[1] + most[1]) / 2, (least[2] + most[2]) / 2],
    radiusIn: Math.hypot(most[0] - least[0], most[1] - least[1], most[2] - least[2]) / 2,
  };
}

/** Where along x the cut stands, in, for a share of the job's length; a hair inside the ends, so that a face is cut. */
export function cutAtIn({ least, most }: Bounds, share: number): number {
  const hairIn = 1e-3;
  const at = least[0] + (most[0] - least[0]) * share;
  return Math.min(most[0] - hairIn, Math.max(least[0] + hairIn, at));
}
