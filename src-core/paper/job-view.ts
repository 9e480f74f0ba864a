/** A picture of a whole job for the cover: slabs and what stays under them, seen from the front left and above. */
import { namePoint } from '../drawing';
import type { Figure, Mark, PaperPoint } from '../figure';
import type { Job } from '../job';
import type { Board } from './board';
import { boardMarks, draw, newBoard, placeWords } from './board';
import { farthestFirst } from './depth-order';
import { marksExtent } from './extent';
import { finishedFigure } from './finish';
import { areaMark, lineMark } from './marks';
import { FIGURE_MARGIN_IN, NAME_PT, PT_PER_IN } from './practice';
import type { PaperSize } from './scale';
import type { Face, FaceCorner, Place3 } from './view-faces';
import { dot } from './view-faces';
import type { SlabFaces } from './view-solids';
import { slabFaces, supportFaces } from './view-solids';
import { visiblePlace } from './visible-place';
import { wholeAgain } from './whole-again';

/**
 * A dimetric axonometric view whose x and z scales are alike, the eye 30 degrees above the floor: with elevation e and turn a the
 * scales are fx2 = 1 - cos2(e) sin2(a) and fz2 = cos2(e), alike for sin2(a) = tan2(e). Source: plane geometry; kind of view: ISO 5456-3.
 */
const ELEVATION_RAD = Math.PI / 6;
const TURN_RAD = Math.asin(Math.tan(ELEVATION_RAD));

const [COS_E, SIN_E] = [Math.cos(ELEVATION_RAD), Math.sin(ELEVATION_RAD)];
const [COS_A, SIN_A] = [Math.cos(TURN_RAD), Math.sin(TURN_RAD)];
/** From the floor to the eye: to the front, left and up. */
const TO_EYE: Place3 = { x: -SIN_A * COS_E, y: -COS_A * COS_E, z: SIN_E };

/** Faces turned less than this to the eye (cosine) are seen on edge. */
const ON_EDGE = 1e-6;
/** Room kept on all sides for names, in. */
const NAME_ROOM_IN = 0.3;

/** The job as it stands when it is finished, as large as its room, to no scale. null where no piece can be drawn. */
export function jobView(job: Job, room: PaperSize): Figure | null {
  const slabs = slabFaces(job);
  const seen = [...slabs.flatMap(({ faces }) => faces), ...supportFaces(job)].filter(
    ({ normal }) => dot(normal, TO_EYE) > ON_EDGE,
  );
  if (slabs.length === 0) return null;
  const ordered = wholeAgain(farthestFirst(seen, TO_EYE), onPlane);
  const names = slabNames(slabs, ordered);
  const points = seen.flatMap(({ loops }) => loops.flat().map((corner) => onPlane(corner)));
  const size = marksExtent([{ kind: 'run', points, isClosed: false, pen: 'thin' }]);
  const spareIn = 2 * (NAME_ROOM_IN + FIGURE_MARGIN_IN);
  const fullIn = Math.min(
    (room.widthIn - spareIn) / (size.maxX - size.minX),
    (room.heightIn - spareIn) / (size.maxY - size.minY),
  );
  const head = {
    id: `view-${job.id}`,
    title: `View of ${job.name}`,
    scaleWords: null,
    words: viewWords(job),
  };
  for (let shrink = 1; ; shrink *= SHRINK_RATIO) {
    const figure = finishedFigure(head, viewMarks(ordered, names, fullIn * shrink));
    const fits = figure.widthIn <= room.widthIn && figure.heightIn <= room.heightIn;
    if (fits || shrink < LEAST_SHRINK) return figure;
  }
}

/** Where names stand out too far, the picture is made this much smaller, so often at the most. */
const SHRINK_RATIO = 0.95;
const LEAST_SHRINK = 0.4;

/** Inches of the picture's plane at full size, y down. */
function onPlane({ x, y, z }: Place3): PaperPoint {
  const [right, away] = [COS_A * x - SIN_A * y, SIN_A * x + COS_A * y];
  return { x: right, y: -(away * SIN_E + z * COS_E) };
}

function viewMarks(ordered: readonly Face[], names: readonly SlabName[], ratio: number): Mark[] {
  const board = newBoard();
  const onPaper = (place: Place3): PaperPoint => {
    const { x, y } = onPlane(place);
    return { x: x * ratio, y: y * ratio };
  };
  for (const face of ordered) draw(board, ...faceMarks(face, onPaper));
  for (const { words, at } of names) nameSlab(board, words, onPaper(at));
  return boardMarks(board);
}

interface SlabName {
  readonly words: string;
  readonly at: Place3;
}

/** Names of the slabs that are seen, each with a place on its top to point at. */
function slabNames(slabs: readonly SlabFaces[], ordered: readonly Face[]): SlabName[] {
  return slabs.flatMap(({ piece, region, faces }): SlabName[] => {
    const slab = { faces, region, topIn: piece.topElevationIn };
    const at = visiblePlace(ordered, slab, namePoint(piece), onPlane);
    const words = piece.copies > 1 ? `${piece.name}, ${piece.copies} of them` : piece.name;
    return at === null ? [] : [{ words, at }];
  });
}

function faceMarks({ loops, fill, pen }: Face, onPaper: (place: Place3) => PaperPoint): Mark[] {
  const shape = loops.map((loop) => loop.map(onPaper));
  // a tone is dots on what lies below it, so bare paper comes first
  const areas =
    fill === 'paper' ? [areaMark(shape, 'paper')] : [areaMark(shape, 'paper'), areaMark(shape, fill)];
  const ink = loops.flatMap((loop) =>
    loop.flatMap((corner: FaceCorner, i) =>
      corner.isInked ? [lineMark(onPaper(corner), onPaper(loop[(i + 1) % loop.length]!), pen)] : [],
    ),
  );
  return [...areas, ...ink];
}

function nameSlab(board: Board, words: string, target: PaperPoint): void {
  const raise = (NAME_PT * 2.2) / PT_PER_IN;
  const spots = [1, 1.5, 2, 2.6].flatMap((rise) =>
    [0, 0.25, -0.25, 0.5, -0.5].map((shift) => ({
      centre: { x: target.x + shift, y: target.y - rise * raise },
      turnDeg: 0,
      leaderTo: target,
      cost: 0.3 * rise + 0.3 * Math.abs(shift),
    })),
  );
  placeWords(board, { words, sizePt: NAME_PT, isBold: true }, spots, target);
}

function viewWords(job: Job): string {
  const names = job.pieces.map(({ name }) => name);
  return `View from the front left and above of the finished work: ${names.join(', ')}, each on what stays under it.`;
}
