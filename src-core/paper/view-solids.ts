/** The slabs of a job and what stays under them as faces. */
import { stands } from '../analysis';
import type { BracketSupport, Job, Piece, Support } from '../job';
import { bearingPatches, pieceRegion } from '../job';
import type { Direction, Point, Region } from '../outline';
import { directionAt, leftOf, moved, signedAreaIn2 } from '../outline';
import { supportLoops } from './support-shapes';
import type { Face, FaceLook, Place3 } from './view-faces';
import { drawnOutFaces } from './view-faces';

/** Arcs of a picture on a page are drawn with chords that leave them by at most this, in. */
const CHORD_IN = 1 / 8;
/** As in the model: a ledger's height, a bed's depth, a heel's thickness, a strut's depth. Common practice, no source. */
const LEDGER_IN = 5.5;
const BED_IN = 0.5;
const HEEL_IN = 0.25;
const STRUT_IN = 1.5;
/** A support whose height is not known stands on the floor, and is drawn at least this high, in. */
const LEAST_HEIGHT_IN = 0.25;

/** Tops are bare paper; sides that look along x are toned, those that look to the front are not. */
const toned = ({ x, z }: Place3) => (z < 0.5 && Math.abs(x) > Math.SQRT1_2 ? 'light' : 'paper');
const SLAB: FaceLook = { pen: 'visible', fillOf: toned };
/** What stands below in a finer pen, its top toned: seen through an opening it lies deep. */
const BELOW: FaceLook = { pen: 'thin', fillOf: (normal) => (normal.z > 0.5 ? 'dark' : toned(normal)) };

/** A slab with its plan and its faces. */
export interface SlabFaces {
  readonly piece: Piece;
  readonly region: Region;
  readonly faces: readonly Face[];
}

/** Every slab of a job that can be drawn. */
export function slabFaces(job: Job): SlabFaces[] {
  return job.pieces.flatMap((piece): SlabFaces[] => {
    const region = pieceRegion(piece, CHORD_IN);
    if (!region.ok) return [];
    const soffitIn = piece.topElevationIn - piece.thicknessIn;
    const loops = [
      raised(region.outer, soffitIn),
      ...region.holes.map((hole) => raised([...hole].reverse(), soffitIn)),
    ];
    return [{ piece, region, faces: drawnOutFaces(loops, upright(piece.thicknessIn), SLAB) }];
  });
}

/** Everything that stays under the slabs of a job. */
export function supportFaces(job: Job): Face[] {
  return job.pieces.flatMap((piece) => {
    const region = pieceRegion(piece, CHORD_IN);
    const outer = region.ok ? region.outer : piece.corners;
    const soffitIn = piece.topElevationIn - piece.thicknessIn;
    return piece.supports
      .filter((support) => stands(support, null))
      .flatMap((support) => facesOf(support, outer, soffitIn - support.gapIn));
  });
}

function facesOf(support: Support, outer: readonly Point[], topIn: number): Face[] {
  const boxes = (heightIn: number) =>
    supportLoops(support, outer).flatMap((loop) => {
      const lowIn = topIn - Math.max(heightIn, LEAST_HEIGHT_IN);
      return drawnOutFaces([raised(counterClockwise(loop), lowIn)], upright(topIn - lowIn), BELOW);
    });
  switch (support.kind) {
    case 'cabinet':
    case 'leg':
      return boxes(topIn);
    case 'wall':
    case 'pier':
      return boxes(support.heightIn ?? topIn);
    case 'ledger':
      return boxes(Math.min(LEDGER_IN, topIn));
    case 'full-bed':
      return boxes(BED_IN);
    case 'bracket':
      return bracketFaces(support, outer, topIn);
  }
}

/** Arms as bars, their heels, and the struts of knee braces. */
function bracketFaces(bracket: BracketSupport, outer: readonly Point[], topIn: number): Face[] {
  const { arm, heelIn, reachIn, seatWidthIn } = bracket;
  const deepIn = arm.kind === 'angle' ? arm.legDepthIn : arm.depthIn;
  const along = directionAt((bracket.directionDeg * Math.PI) / 180);
  const arms = bearingPatches(bracket, outer).flatMap(({ corners }) =>
    drawnOutFaces([raised(counterClockwise(corners), topIn - deepIn)], upright(deepIn), BELOW),
  );
  const others = bracket.roots.flatMap((root) => {
    const across = leftOf(along);
    const near = moved(root, across, -seatWidthIn / 2);
    const heel = plate(near, along, across, seatWidthIn, [
      [0, topIn - heelIn],
      [HEEL_IN, topIn - heelIn],
      [HEEL_IN, topIn - deepIn],
      [0, topIn - deepIn],
    ]);
    if (arm.kind !== 'knee-brace') return heel;
    const strut = plate(near, along, across, seatWidthIn, [
      [HEEL_IN, topIn - deepIn - arm.dropIn],
      [HEEL_IN, topIn - deepIn - arm.dropIn + STRUT_IN],
      [reachIn - STRUT_IN, topIn - deepIn],
      [reachIn, topIn - deepIn],
    ]);
    return [...heel, ...strut];
  });
  return [...arms, ...others];
}

/** An upright plate: places along a way and heights, drawn out across it. */
function plate(
  from: Point,
  along: Direction,
  across: Direction,
  widthIn: number,
  outline: readonly (readonly [number, number])[],
): Face[] {
  const loop = outline.map(([alongIn, z]): Place3 => {
    const { xIn, yIn } = moved(from, along, alongIn);
    return { x: xIn, y: yIn, z };
  });
  // along x up points to the right of the way across, so a loop that runs round by heights is turned
  const isTurned = signedAreaIn2(outline.map(([xIn, yIn]) => ({ xIn, yIn }))) > 0;
  const way = { x: across.x * widthIn, y: across.y * widthIn, z: 0 };
  return drawnOutFaces([isTurned ? loop.reverse() : loop], way, BELOW);
}

function raised(points: readonly Point[], z: number): Place3[] {
  return points.map(({ xIn, yIn }) => ({ x: xIn, y: yIn, z }));
}

function upright(heightIn: number): Place3 {
  return { x: 0, y: 0, z: heightIn };
}

function counterClockwise(points: readonly Point[]): readonly Point[] {
  return signedAreaIn2(points) >= 0 ? points : [...points].reverse();
}
