/** The face of a slab's edge in section. */
import type { EdgeProfile } from '../job';
import {
  CHAMFER_LEG_IN,
  COVE_RADIUS_IN,
  EASED_RADIUS_IN,
  HALF_BULLNOSE_MOST_IN,
  OGEE_SIZE_IN,
  ROUND_OVER_RADIUS_IN,
  STEP_SIZE_IN,
} from './sizes';

/** A point of an edge's section. */
export interface ProfilePoint {
  /** Outward from the face, the line of the outline in plan: 0 on it, negative inside the slab. */
  readonly outIn: number;
  /** Above the soffit. */
  readonly upIn: number;
}

/** Chords leave a curve by at most this much, finer than a form liner is bent. Common practice, no source. */
export const PROFILE_CHORD_IN = 1 / 256;
/** Chords for areas, so that the smallest arris holds within a few parts in a thousand. */
const AREA_CHORD_IN = 1e-5;
/** Least count of chords in a quarter circle, so that the smallest radius still shades round. */
const QUARTER_CHORDS = 4;

/** The plain face of a wall edge, a butted edge or a square profile, bottom to top. */
export function squareFace(thicknessIn: number): readonly ProfilePoint[] {
  return [
    { outIn: 0, upIn: 0 },
    { outIn: 0, upIn: thicknessIn },
  ];
}

/**
 * The face of an edge from the soffit (up 0) to the top (up `thicknessIn`): it never goes down, and never out past
 * the outline. A size that the thickness cannot hold is cut down to it. An own profile is read bottom to top: a point
 * lower than the one before it is raised to it, one that sticks out slides the whole profile back to the face, and
 * the ends run plumb to soffit and top.
 */
export function edgeProfile(
  profile: EdgeProfile,
  thicknessIn: number,
  chordToleranceIn = PROFILE_CHORD_IN,
): readonly ProfilePoint[] {
  if (!(thicknessIn > 0)) throw new Error(`Thickness ${thicknessIn} in is not positive`);
  return fitted(drawn(profile, thicknessIn, chordToleranceIn), thicknessIn);
}

/** Section area that a profile takes off a square edge, in2. Plane geometry: trapezia between fine chords. */
export function profileAreaLostIn2(profile: EdgeProfile, thicknessIn: number): number {
  const points = edgeProfile(profile, thicknessIn, AREA_CHORD_IN);
  return points
    .slice(1)
    .reduce(
      (sumIn2, { outIn, upIn }, k) => sumIn2 - ((outIn + points[k]!.outIn) / 2) * (upIn - points[k]!.upIn),
      0,
    );
}

function drawn(profile: EdgeProfile, thicknessIn: number, chordIn: number): readonly ProfilePoint[] {
  const sized = (ownIn: number, mostIn = thicknessIn) => Math.min(profile.sizeIn ?? ownIn, mostIn);
  switch (profile.kind) {
    case 'square':
      return squareFace(thicknessIn);
    case 'eased':
      return roundedTop(sized(EASED_RADIUS_IN), thicknessIn, chordIn);
    case 'round-over':
      return roundedTop(sized(ROUND_OVER_RADIUS_IN), thicknessIn, chordIn);
    case 'half-bullnose':
      return roundedTop(sized(Math.min(thicknessIn, HALF_BULLNOSE_MOST_IN)), thicknessIn, chordIn);
    case 'bullnose': {
      const radiusIn = sized(thicknessIn / 2, thicknessIn / 2);
      const below = arc({ outIn: -radiusIn, upIn: radiusIn }, radiusIn, [-Math.PI / 2, 0], chordIn);
      return [...below, ...roundedTop(radiusIn, thicknessIn, chordIn)];
    }
    case 'chamfer': {
      const legIn = sized(CHAMFER_LEG_IN);
      return [
        { outIn: 0, upIn: thicknessIn - legIn },
        { outIn: -legIn, upIn: thicknessIn },
      ];
    }
    case 'cove':
      return arc({ outIn: 0, upIn: thicknessIn }, sized(COVE_RADIUS_IN), [-Math.PI / 2, -Math.PI], chordIn);
    case 'ogee': {
      const sizeIn = sized(OGEE_SIZE_IN);
      const halfIn = sizeIn / 2;
      const round = arc({ outIn: -halfIn, upIn: thicknessIn - sizeIn }, halfIn, [0, Math.PI / 2], chordIn);
      const hollow = arc({ outIn: -halfIn, upIn: thicknessIn }, halfIn, [-Math.PI / 2, -Math.PI], chordIn);
      return [...round, ...hollow];
    }
    case 'stepped': {
      const sizeIn = sized(STEP_SIZE_IN);
      return [
        { outIn: 0, upIn: thicknessIn - sizeIn },
        { outIn: -sizeIn, upIn: thicknessIn - sizeIn },
        { outIn: -sizeIn, upIn: thicknessIn },
      ];
    }
    case 'own':
      return profile.points ?? [];
  }
}

function roundedTop(radiusIn: number, thicknessIn: number, chordIn: number): ProfilePoint[] {
  return arc({ outIn: -radiusIn, upIn: thicknessIn - radiusIn }, radiusIn, [0, Math.PI / 2], chordIn);
}

/** Chords of an arc between two angles from the outward direction, both ends included. */
function arc(
  centre: ProfilePoint,
  radiusIn: number,
  [fromRad, toRad]: readonly [number, number],
  chordIn: number,
): ProfilePoint[] {
  const sweepRad = Math.abs(toRad - fromRad);
  const stepRad = 2 * Math.acos(Math.max(0, 1 - chordIn / radiusIn));
  const least = Math.ceil((QUARTER_CHORDS * sweepRad) / (Math.PI / 2) - 1e-9);
  const chords = Math.max(least, Math.ceil(sweepRad / stepRad));
  return Array.from({ length: chords + 1 }, (_, k) => {
    const angleRad = fromRad + ((toRad - fromRad) * k) / chords;
    return {
      outIn: centre.outIn + radiusIn * Math.cos(angleRad),
      upIn: centre.upIn + radiusIn * Math.sin(angleRad),
    };
  });
}

/** Points of a section closer than this are one, in. */
const SAME_IN = 1e-4;

function fitted(points: readonly ProfilePoint[], thicknessIn: number): readonly ProfilePoint[] {
  const first = points[0];
  const last = points.at(-1);
  if (first === undefined || last === undefined) return squareFace(thicknessIn);
  const slideIn = Math.max(0, ...points.map(({ outIn }) => outIn));
  const face: ProfilePoint[] = [];
  let upIn = 0;
  const ends = [{ outIn: first.outIn, upIn: 0 }, ...points, { outIn: last.outIn, upIn: thicknessIn }];
  for (const point of ends) {
    const outIn = point.outIn - slideIn;
    upIn = snapped(Math.max(upIn, Math.min(thicknessIn, point.upIn)), thicknessIn);
    const before = face.at(-1);
    if (before !== undefined && Math.abs(before.outIn - outIn) + upIn - before.upIn <= SAME_IN) continue;
    face.push({ outIn: outIn > -1e-9 ? 0 : outIn, upIn });
  }
  return face;
}

/** Rounding of an arc's end must not leave a film of slab below or above it. */
function snapped(upIn: number, thicknessIn: number): number {
  if (upIn <= SAME_IN) return 0;
  return upIn >= thicknessIn - SAME_IN ? thicknessIn : upIn;
}
