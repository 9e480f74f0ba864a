/** A piece, and all that belongs to it, moved or turned in plan. */
import type { CutoutShape, FalseworkSection, Job, Piece, Reinforcement, Support } from '../job';
import type { Point } from '../outline';

/** A movement in plan: where a point goes, and by how much directions turn counter-clockwise. */
export interface Motion {
  readonly point: (at: Point) => Point;
  readonly turnDeg: number;
}

/** Coordinates are kept to a billionth of an inch, so that sums of tape readings stay the numbers a person would write. */
const KEPT_PER_IN = 1e9;

/** A length without the dust of binary fractions, and nothing without a sign. */
export function cleanIn(lengthIn: number): number {
  // Adding nothing makes 0 of -0, which a job file could not keep.
  return Math.round(lengthIn * KEPT_PER_IN) / KEPT_PER_IN + 0;
}

/** A point without the dust of binary fractions; what else it carries stays. */
export function cleanPoint<At extends Point>(at: At): At {
  return { ...at, xIn: cleanIn(at.xIn), yIn: cleanIn(at.yIn) };
}

/** Straight along. */
export function shift(dxIn: number, dyIn: number): Motion {
  return { point: ({ xIn, yIn }) => ({ xIn: cleanIn(xIn + dxIn), yIn: cleanIn(yIn + dyIn) }), turnDeg: 0 };
}

/** A quarter turn counter-clockwise about a point. */
export function quarterTurn(about: Point): Motion {
  return {
    point: ({ xIn, yIn }) => ({
      xIn: cleanIn(about.xIn - (yIn - about.yIn)),
      yIn: cleanIn(about.yIn + (xIn - about.xIn)),
    }),
    turnDeg: 90,
  };
}

/** The piece with its corners, openings, joints, steel, supports and loads moved along. */
export function movedPiece(piece: Piece, motion: Motion): Piece {
  const { fall } = piece;
  return {
    ...piece,
    corners: allMoved(piece.corners, motion),
    fall: fall === null ? null : { ...fall, towardDeg: turnedDeg(fall.towardDeg, motion) },
    joints: piece.joints.map((joint) => ({
      ...joint,
      from: motion.point(joint.from),
      to: motion.point(joint.to),
    })),
    cutouts: piece.cutouts.map((cutout) => ({ ...cutout, shape: movedShape(cutout.shape, motion) })),
    reinforcement: piece.reinforcement.map((layer) => movedSteel(layer, motion)),
    supports: piece.supports.map((support) => movedSupport(support, motion)),
    loads: {
      ...piece.loads,
      fixed: piece.loads.fixed.map((load) => ({
        ...load,
        centre: motion.point(load.centre),
        angleDeg: turnedDeg(load.angleDeg, motion),
      })),
    },
  };
}

/** A cutout's shape moved along. */
export function movedShape(shape: CutoutShape, motion: Motion): CutoutShape {
  switch (shape.kind) {
    case 'rectangle':
      return { ...shape, centre: motion.point(shape.centre), angleDeg: turnedDeg(shape.angleDeg, motion) };
    case 'circle':
      return { ...shape, centre: motion.point(shape.centre) };
    case 'polygon':
      return { ...shape, corners: allMoved(shape.corners, motion) };
  }
}

/** A support moved along. */
export function movedSupport(support: Support, motion: Motion): Support {
  switch (support.kind) {
    case 'cabinet':
      return {
        ...support,
        corner: motion.point(support.corner),
        angleDeg: turnedDeg(support.angleDeg, motion),
      };
    case 'wall':
    case 'ledger':
      return { ...support, from: motion.point(support.from), to: motion.point(support.to) };
    case 'pier': {
      const { footprint } = support;
      const centre = motion.point(footprint.centre);
      if (footprint.kind === 'circle') return { ...support, footprint: { ...footprint, centre } };
      const angleDeg = turnedDeg(footprint.angleDeg, motion);
      return { ...support, footprint: { ...footprint, centre, angleDeg } };
    }
    case 'leg':
      return {
        ...support,
        centre: motion.point(support.centre),
        angleDeg: turnedDeg(support.angleDeg, motion),
      };
    case 'bracket':
      return {
        ...support,
        roots: allMoved(support.roots, motion),
        directionDeg: turnedDeg(support.directionDeg, motion),
      };
    case 'full-bed':
      return support.corners === null ? support : { ...support, corners: allMoved(support.corners, motion) };
  }
}

/** The job's falsework, with the sections under one piece moved along with it. */
export function movedFalsework(
  falsework: Job['falsework'],
  pieceId: string,
  motion: Motion,
): Job['falsework'] {
  const sections = falsework.sections.map(
    (section): FalseworkSection =>
      section.pieceId === pieceId ? { ...section, corners: allMoved(section.corners, motion) } : section,
  );
  return { ...falsework, sections };
}

function movedSteel(layer: Reinforcement, motion: Motion): Reinforcement {
  switch (layer.kind) {
    case 'mesh':
      return { ...layer, angleDeg: turnedDeg(layer.angleDeg, motion) };
    case 'bars': {
      const corners = layer.corners === null ? null : allMoved(layer.corners, motion);
      return { ...layer, angleDeg: turnedDeg(layer.angleDeg, motion), corners };
    }
    case 'fabric':
    case 'fibre':
      return layer;
  }
}

function allMoved<At extends Point>(points: readonly At[], motion: Motion): At[] {
  return points.map((at) => ({ ...at, ...motion.point(at) }));
}

/** Kept within one turn either way, as the job file asks. */
function turnedDeg(angleDeg: number, { turnDeg }: Motion): number {
  if (turnDeg === 0) return angleDeg;
  const turned = angleDeg + turnDeg;
  return turned >= 360 ? turned - 360 : turned;
}
