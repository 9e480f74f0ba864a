/** A job turned, mirrored and moved on the drawing, as the same job drawn by somebody else. */
import type { CutoutShape, Job, JobDraft, Piece, Reinforcement, Support } from '../../src-core/job';

export interface Motion {
  readonly turnDeg: number;
  /** Left and right change places before the turn. */
  readonly mirror: boolean;
  readonly xIn: number;
  readonly yIn: number;
}

interface Place {
  readonly xIn: number;
  readonly yIn: number;
}

type MovePoint = (place: Place) => Place;
type TurnLine = (deg: number) => number;

/** The job with every piece in its new place. Falsework sections and swap steps are left out. */
export function movedJob(job: Job, motion: Motion): JobDraft {
  return {
    format: job.format,
    version: job.version,
    id: job.id,
    name: job.name,
    shownIn: job.shownIn,
    mixes: job.mixes,
    pieces: job.pieces.map((piece) => movedPiece(piece, motion)),
  };
}

function movedPiece(piece: Piece, motion: Motion): JobDraft['pieces'][number] {
  const at = pointMover(motion);
  const line = (deg: number) => wrap((motion.mirror ? -deg : deg) + motion.turnDeg);
  return {
    ...piece,
    corners: piece.corners.map((corner) => ({ ...corner, ...at(corner) })),
    fall: null,
    joints: [],
    cutouts: piece.cutouts.map((cutout) => ({ ...cutout, shape: movedShape(cutout.shape, at, line) })),
    reinforcement: piece.reinforcement.map((steel) => movedSteel(steel, at, line)),
    supports: piece.supports.map((support) => movedSupport(support, motion, at, line)),
    loads: {
      ...piece.loads,
      fixed: piece.loads.fixed.map((load) => ({
        ...load,
        centre: at(load.centre),
        angleDeg: line(load.angleDeg),
      })),
    },
  };
}

function movedShape(shape: CutoutShape, at: MovePoint, line: TurnLine): CutoutShape {
  switch (shape.kind) {
    case 'rectangle':
      return { ...shape, centre: at(shape.centre), angleDeg: line(shape.angleDeg) };
    case 'circle':
      return { ...shape, centre: at(shape.centre) };
    case 'polygon':
      return { ...shape, corners: shape.corners.map((corner) => ({ ...corner, ...at(corner) })) };
  }
}

function movedSteel(steel: Reinforcement, at: MovePoint, line: TurnLine): Reinforcement {
  switch (steel.kind) {
    case 'mesh':
      return { ...steel, angleDeg: line(steel.angleDeg) };
    case 'bars':
      return { ...steel, angleDeg: line(steel.angleDeg), corners: steel.corners?.map(at) ?? null };
    case 'fabric':
    case 'fibre':
      return steel;
  }
}

function movedSupport(support: Support, motion: Motion, at: MovePoint, line: TurnLine): Support {
  switch (support.kind) {
    case 'cabinet': {
      // seen from the front, a mirrored cabinet starts at what was its right-hand corner
      const rad = (support.angleDeg * Math.PI) / 180;
      const right = {
        xIn: support.corner.xIn + support.widthIn * Math.cos(rad),
        yIn: support.corner.yIn + support.widthIn * Math.sin(rad),
      };
      return {
        ...support,
        corner: at(motion.mirror ? right : support.corner),
        angleDeg: line(support.angleDeg),
      };
    }
    case 'wall':
    case 'ledger':
      return { ...support, from: at(support.from), to: at(support.to) };
    case 'pier':
      return support.footprint.kind === 'circle'
        ? { ...support, footprint: { ...support.footprint, centre: at(support.footprint.centre) } }
        : {
            ...support,
            footprint: {
              ...support.footprint,
              centre: at(support.footprint.centre),
              angleDeg: line(support.footprint.angleDeg),
            },
          };
    case 'leg':
      return { ...support, centre: at(support.centre), angleDeg: line(support.angleDeg) };
    case 'bracket':
      return {
        ...support,
        roots: support.roots.map(at),
        directionDeg: wrap(
          (motion.mirror ? 180 - support.directionDeg : support.directionDeg) + motion.turnDeg,
        ),
      };
    case 'full-bed':
      return { ...support, corners: support.corners?.map(at) ?? null };
  }
}

function pointMover({ turnDeg, mirror, xIn, yIn }: Motion): (place: Place) => Place {
  const rad = (turnDeg * Math.PI) / 180;
  const c = Math.cos(rad);
  const s = Math.sin(rad);
  return (place) => {
    const x = mirror ? -place.xIn : place.xIn;
    return { xIn: c * x - s * place.yIn + xIn, yIn: s * x + c * place.yIn + yIn };
  };
}

function wrap(deg: number): number {
  return ((deg % 360) + 360) % 360;
}
