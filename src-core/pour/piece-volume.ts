/** Concrete in a piece, part by part, with true arcs. */
import type { Piece, PieceEdge } from '../job';
import { pieceRegion } from '../job';
import { cornerAnglesRad, distanceIn, regionAreaIn2, roundedAreaIn2 } from '../outline';
import type { ProfilePoint } from '../profile';
import { edgeSection, PROFILE_CHORD_IN } from '../profile';
import { slabSolid, slabVolumeIn3 } from '../solid';
import type { Trace, TracePart } from '../trace';
import { traceWord } from '../trace';
import { cornerGainIn2 } from './corner-gain';
import { faceLossIn2, overHeight } from './face-insets';

/** A part that adds to the concrete of a piece, or takes from it. */
export interface VolumePart {
  readonly id: string;
  readonly trace: Trace;
  readonly words: string;
  /** Negative where it takes away. */
  readonly volumeIn3: number;
}

export interface PieceVolume {
  readonly trace: Trace;
  /** Of one copy; they add up to `oneIn3`. Empty where the piece cannot be drawn. */
  readonly parts: readonly VolumePart[];
  readonly oneIn3: number;
  readonly copies: number;
  /** Of all copies. */
  readonly volumeIn3: number;
  /** Plan area with true arcs, and the same less openings, in2. */
  readonly grossAreaIn2: number;
  readonly areaIn2: number;
  readonly isDrawn: boolean;
}

const FREE_EDGE: PieceEdge = {
  kind: 'free',
  profile: { kind: 'eased', sizeIn: null, points: null },
  dripGroove: null,
};
/** Chords of faces are so fine here that an arris holds within a few parts in a hundred thousand. */
const FINE_CHORD_IN = 1e-5;
/** Chords of the solid that tells what the sums by edge cannot: profiles drawn smaller, grooves that stop short. */
const SOLID_CHORD_IN = 1 / 256;
/** Share of the volume by which sums by edge and solid may differ before the solid counts. */
const AGREE_RATIO = 2e-4;

/**
 * Concrete in a piece, in3: plan area with true arcs times thickness, less openings, edge profiles and drip grooves.
 * An edge loses its section times its length, and corners give back where two edges meet. Where profiles are too
 * large for the slab the solid, which draws them smaller, decides. Plane geometry.
 */
export function pieceVolume(piece: Piece): PieceVolume {
  const trace: Trace = { pieceId: piece.id, part: { kind: 'piece' } };
  const { copies, thicknessIn } = piece;
  if (!pieceRegion(piece).ok)
    return { trace, parts: [], oneIn3: 0, copies, volumeIn3: 0, grossAreaIn2: 0, areaIn2: 0, isDrawn: false };
  const part = (at: TracePart, words: string, volumeIn3: number, name = ''): VolumePart => {
    const from: Trace = { pieceId: piece.id, part: at };
    return { id: `${traceWord(from)}${name}`, trace: from, words, volumeIn3 };
  };
  const grossIn2 = roundedAreaIn2(piece.corners);
  const openings = piece.cutouts.map((cutout) => ({ cutout, areaIn2: cutoutAreaIn2(cutout.shape) }));
  const openIn2 = openings.reduce((sum, { areaIn2 }) => sum + areaIn2, 0);
  const parts = [
    part({ kind: 'piece' }, `outline of ${piece.name}, square edged`, grossIn2 * thicknessIn, '/outline'),
    ...openings.map(({ cutout, areaIn2 }) =>
      part({ kind: 'cutout', id: cutout.id }, `opening ${cutout.name ?? cutout.id}`, -areaIn2 * thicknessIn),
    ),
    ...edgeLossesIn3(piece).flatMap((lossIn3, index) =>
      lossIn3 === 0 ? [] : [part({ kind: 'edge', index }, `profile of edge ${index + 1}`, -lossIn3)],
    ),
  ];
  const bare = { ...piece, edges: edgesOf(piece).map(withoutGroove) };
  const byEdgeIn3 = sumIn3(parts);
  const fromSolidIn3 = hasProfiles(piece) ? solidIn3(bare, grossIn2 - openIn2) : byEdgeIn3;
  const offIn3 = fromSolidIn3 - byEdgeIn3;
  if (Math.abs(offIn3) > AGREE_RATIO * byEdgeIn3)
    parts.push(part({ kind: 'piece' }, 'profiles that are drawn smaller to fit the slab', offIn3, '/fitted'));
  const groovesIn3 = grooveIn3(piece, bare);
  if (groovesIn3 > 0) parts.push(part({ kind: 'piece' }, 'drip grooves', -groovesIn3, '/grooves'));
  const oneIn3 = sumIn3(parts);
  return {
    trace,
    parts,
    oneIn3,
    copies,
    volumeIn3: copies * oneIn3,
    grossAreaIn2: grossIn2,
    areaIn2: grossIn2 - openIn2,
    isDrawn: true,
  };
}

function sumIn3(parts: readonly VolumePart[]): number {
  return parts.reduce((sum, { volumeIn3 }) => sum + volumeIn3, 0);
}

function edgesOf(piece: Piece): readonly PieceEdge[] {
  return piece.corners.map((_, i) => piece.edges?.[i] ?? FREE_EDGE);
}

function withoutGroove(edge: PieceEdge): PieceEdge {
  return edge.kind === 'free' ? { ...edge, dripGroove: null } : edge;
}

/** Exact area of an opening with true arcs, in2. Plane geometry. */
function cutoutAreaIn2(shape: Piece['cutouts'][number]['shape']): number {
  switch (shape.kind) {
    case 'circle':
      return (Math.PI / 4) * shape.diameterIn ** 2;
    case 'rectangle':
      return shape.widthIn * shape.depthIn - (4 - Math.PI) * shape.radiusIn ** 2;
    case 'polygon':
      return roundedAreaIn2(shape.corners);
  }
}

function facesOf(piece: Piece, chordIn: number): readonly (readonly ProfilePoint[])[] {
  return edgesOf(piece).map((edge) => edgeSection(edge, piece.thicknessIn, chordIn).face);
}

function hasProfiles(piece: Piece): boolean {
  return facesOf(piece, PROFILE_CHORD_IN).some((face) => face.some(({ outIn }) => outIn !== 0));
}

interface Boundary {
  readonly turnsRad: readonly number[];
  /** Length of each edge, with its half of the arcs at its ends. */
  readonly lengthsIn: readonly number[];
}

function boundaryOf({ corners }: Piece): Boundary {
  const n = corners.length;
  const turnsRad = cornerAnglesRad(corners).map((angleRad) => Math.PI - angleRad);
  const spareIn = corners.map(
    ({ radiusIn }, i) => radiusIn * (Math.tan(Math.abs(turnsRad[i]!) / 2) - Math.abs(turnsRad[i]!) / 2),
  );
  const lengthsIn = corners.map((corner, i) => {
    const next = (i + 1) % n;
    return distanceIn(corner, corners[next]!) - spareIn[i]! - spareIn[next]!;
  });
  return { turnsRad, lengthsIn };
}

/** What the profile of each edge takes, in3; a corner is shared by its two edges. */
function edgeLossesIn3(piece: Piece): readonly number[] {
  const faces = facesOf(piece, FINE_CHORD_IN);
  const { turnsRad, lengthsIn } = boundaryOf(piece);
  const n = faces.length;
  const gainsIn3 = piece.corners.map(({ radiusIn }, i) => {
    const corner = { turnRad: turnsRad[i]!, radiusIn };
    return overHeight(faces[(i + n - 1) % n]!, faces[i]!, (beforeIn, afterIn) =>
      cornerGainIn2(corner, beforeIn, afterIn),
    );
  });
  const isFlat = faces.map((face) => face.every(({ outIn }) => outIn === 0));
  return faces.map((face, i) => {
    const before = (i + n - 1) % n;
    const next = (i + 1) % n;
    // Beside a plain edge the whole of a corner belongs to the profile that runs out there.
    const share = (other: number) => (isFlat[i] ? 0 : isFlat[other] ? 1 : 1 / 2);
    return faceLossIn2(face) * lengthsIn[i]! - share(before) * gainsIn3[i]! - share(next) * gainsIn3[next]!;
  });
}

/** Volume of the solid, with what its chords leave out or add put right to first order, in3. */
function solidIn3(piece: Piece, areaIn2: number): number {
  const region = pieceRegion(piece, SOLID_CHORD_IN);
  if (!region.ok) return 0;
  const planIn3 = (areaIn2 - regionAreaIn2(region)) * piece.thicknessIn;
  const [fine, coarse] = [facesOf(piece, FINE_CHORD_IN), facesOf(piece, PROFILE_CHORD_IN)];
  const facesIn3 = boundaryOf(piece).lengthsIn.reduce(
    (sum, lengthIn, i) => sum + lengthIn * (faceLossIn2(coarse[i]!) - faceLossIn2(fine[i]!)),
    0,
  );
  return slabVolumeIn3(slabSolid(piece, SOLID_CHORD_IN)) + planIn3 + facesIn3;
}

/** What drip grooves take, in3: the same slab without them, less the slab. */
function grooveIn3(piece: Piece, bare: Piece): number {
  const hasGroove = edgesOf(piece).some((edge) => edge.kind === 'free' && edge.dripGroove !== null);
  if (!hasGroove) return 0;
  return slabVolumeIn3(slabSolid(bare, SOLID_CHORD_IN)) - slabVolumeIn3(slabSolid(piece, SOLID_CHORD_IN));
}
