/** What a slab's solid is swept from: its outline as lines to be moved inward, the faces of its edges, its openings. */
import type { Piece } from '../job';
import { pieceRegion } from '../job';
import type { Point } from '../outline';
import { edgesOf, isSimplePolygon, segmentDistanceIn, signedAreaIn2 } from '../outline';
import type { EdgeSection, ProfilePoint } from '../profile';
import { deepestInsetIn, edgeSection } from '../profile';
import type { RingLine } from './moved-ring';
import { movedRing, RUN_OUT_IN, ringLines } from './moved-ring';

export interface SlabPlan {
  readonly outer: readonly Point[];
  readonly holes: readonly (readonly Point[])[];
  /** Section of the edge that each segment of `outer` belongs to. */
  readonly sections: readonly EdgeSection[];
  readonly lines: readonly RingLine[];
  /** The different faces round the slab, by the numbers that `lines` use. */
  readonly faces: readonly (readonly ProfilePoint[])[];
}

/** Concrete left between a face and an opening. Common practice, no source. */
const LAND_IN = 1 / 16;
/** Where a profile would eat through a neck of slab or into an opening, all profiles are drawn this much smaller. */
const SMALLER_RATIO = 0.7;
const MOST_TRIES = 12;

const FREE_EDGE = {
  kind: 'free',
  profile: { kind: 'eased', sizeIn: null, points: null },
  dripGroove: null,
} as const;

/** The plan of a piece, arcs as chords within a tolerance; null where its outline or an opening cannot be drawn. */
export function slabPlan(piece: Piece, chordToleranceIn: number): SlabPlan | null {
  const region = pieceRegion(piece, chordToleranceIn);
  if (!region.ok) return null;
  const { outer, holes } = region;
  const byEdge = piece.corners.map((_, i) => edgeSection(piece.edges?.[i] ?? FREE_EDGE, piece.thicknessIn));
  const sections = region.edgeOfPoint.map((edge) => byEdge[edge]!);
  const { faces, faceOf } = differentFaces(sections);
  const lines = ringLines(outer, faceOf);
  return { outer, holes, sections, lines, faces: fitted(faces, lines, holes, piece.thicknessIn) };
}

function differentFaces(sections: readonly EdgeSection[]): {
  readonly faces: readonly (readonly ProfilePoint[])[];
  readonly faceOf: readonly number[];
} {
  const numbers = new Map<string, number>();
  const faces: (readonly ProfilePoint[])[] = [];
  const faceOf = sections.map(({ face }) => {
    const key = JSON.stringify(face);
    const known = numbers.get(key);
    if (known !== undefined) return known;
    numbers.set(key, faces.length);
    return faces.push(face) - 1;
  });
  return { faces, faceOf };
}

/** The faces, drawn smaller until the slab at its narrowest holds together and clears its openings. */
function fitted(
  faces: readonly (readonly ProfilePoint[])[],
  lines: readonly RingLine[],
  holes: readonly (readonly Point[])[],
  thicknessIn: number,
): readonly (readonly ProfilePoint[])[] {
  const deepestIn = faces.map((face) => deepestInsetIn(face, thicknessIn));
  let ratio = 1;
  for (let tries = 0; tries < MOST_TRIES; tries++) {
    const ring = movedRing(
      lines,
      deepestIn.map((insetIn) => ratio * insetIn),
    );
    if (ring !== null && holdsTogether(distinctPoints(ring), holes)) return scaled(faces, ratio);
    ratio *= SMALLER_RATIO;
  }
  return scaled(faces, 0);
}

function scaled(faces: readonly (readonly ProfilePoint[])[], ratio: number): (readonly ProfilePoint[])[] {
  return faces.map((face) =>
    ratio === 1 ? face : face.map(({ outIn, upIn }) => ({ outIn: ratio * outIn, upIn })),
  );
}

/** The points of a ring without repeats. */
export function distinctPoints(ring: readonly Point[]): readonly Point[] {
  return ring.filter((point, i) => !isSamePoint(point, ring[(i + ring.length - 1) % ring.length]!));
}

/** Whether two neighbours of a ring are one point. */
export function isSamePoint(p: Point, q: Point): boolean {
  return p === q || Math.abs(p.xIn - q.xIn) + Math.abs(p.yIn - q.yIn) < RUN_OUT_IN;
}

function holdsTogether(ring: readonly Point[], holes: readonly (readonly Point[])[]): boolean {
  if (ring.length < 3 || signedAreaIn2(ring) <= 0 || !isSimplePolygon(ring)) return false;
  const walls = edgesOf(ring);
  return holes.every((hole) =>
    edgesOf(hole).every((lip) =>
      walls.every(
        (wall) =>
          Math.max(wall.a.xIn, wall.b.xIn) < Math.min(lip.a.xIn, lip.b.xIn) - LAND_IN ||
          Math.min(wall.a.xIn, wall.b.xIn) > Math.max(lip.a.xIn, lip.b.xIn) + LAND_IN ||
          Math.max(wall.a.yIn, wall.b.yIn) < Math.min(lip.a.yIn, lip.b.yIn) - LAND_IN ||
          Math.min(wall.a.yIn, wall.b.yIn) > Math.max(lip.a.yIn, lip.b.yIn) + LAND_IN ||
          segmentDistanceIn(wall, lip) >= LAND_IN,
      ),
    ),
  );
}
