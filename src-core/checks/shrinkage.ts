/** Movement as the slab dries and warms, and where it will crack if it cannot move. Cautions only: nothing falls for it. */
import type { PieceAnalysis, Printers } from '../analysis';
import { printersOf } from '../analysis';
import {
  closeJointSpacing,
  restrainedStress,
  shrinkageMovement,
  THERMAL_EXPANSION_PER_DEG_C,
  THIN_TOP_SHRINKAGE_RATIO,
  thermalMovement,
  wideJointSpacing,
} from '../concrete';
import type { CutoutShape, Piece } from '../job';
import type { Point } from '../outline';
import { distanceIn, isPointInPolygon, nearestOnSegment, patchOutline } from '../outline';
import { printDeflection } from '../units';
import type { Check, CheckContext, CheckRule } from './check';

/** Range of temperature of a piece outdoors, deg C: 50 deg F. Common practice, no source. */
const OUTDOOR_RANGE_C = 28;
/** Creep coefficient of a thin top that is held for months (a ratio). Common practice, no source. */
const CREEP_RATIO = 2;
/** A joint that comes this near to a corner leads its crack, in. */
const JOINT_AT_CORNER_IN = 1;
/** Bars that lie this far off the piece's own directions cross a corner's crack, deg. */
const DIAGONAL_FROM_DEG = 25;

export const shrinkage: CheckRule = {
  id: 'shrinkage',
  title: 'Shrinkage and movement',
  run: (context) => [judge(context)],
};

function judge({ job, analysis }: CheckContext): Check {
  const { piece, shape, concrete } = analysis;
  const print = printersOf(job);
  const fine = (valueIn: number) => printDeflection(valueIn, { system: job.shownIn, digits: 2 });
  const dry = shrinkageMovement({ eps: THIN_TOP_SHRINKAGE_RATIO, L: shape.lengthIn });
  const warm = thermalMovement({
    alpha: THERMAL_EXPANSION_PER_DEG_C,
    dT: OUTDOOR_RANGE_C,
    L: shape.lengthIn,
  });
  const isOutdoors = piece.exposure === 'outdoors';
  const walls = wallGaps(analysis);
  const tight = walls.filter(({ gapIn, movementIn }) => gapIn < movementIn);
  const leastGapIn = walls.reduce((least, { gapIn }) => Math.min(least, gapIn), Number.POSITIVE_INFINITY);
  const corners = barePoints(analysis);
  const bed = bedLines(analysis);
  const words =
    tight.length > 0
      ? `Along its length it shortens by ${fine(dry.value)} as it dries, and a wall holds it too tightly to move: it may crack.`
      : `Along its length it shortens by ${fine(dry.value)} as it dries; leave it free to move.`;
  return {
    id: shrinkage.id,
    title: shrinkage.title,
    pieceId: piece.id,
    where:
      corners[0] === undefined
        ? { kind: 'piece' }
        : { kind: 'point', at: { xIn: corners[0].xIn, yIn: corners[0].yIn } },
    demand: { value: dry.value, unit: 'in' },
    capacity: { value: Number.isFinite(leastGapIn) ? leastGapIn : 0, unit: 'in' },
    ratio: 0,
    level: 'holds',
    words,
    needs: [],
    workings: [
      dry.line,
      ...(isOutdoors ? [warm.line] : []),
      restrainedStress({ Ec: concrete.modulusPsi, eps: THIN_TOP_SHRINKAGE_RATIO, phic: CREEP_RATIO }).line,
      ...bed.lines,
    ],
    cautions: [
      ...tight.map(({ edge, gapIn, movementIn }) => gapCaution(edge, gapIn, movementIn, { print, fine })),
      ...(corners.length > 0
        ? [
            `${corners.length === 1 ? 'One inside corner has' : `${corners.length} inside and cutout corners have`} neither a joint nor a diagonal bar: a crack starts there. Put a bar across each, or lead a joint into it (common practice, no source).`,
          ]
        : []),
      ...bed.cautions(print),
    ],
  };
}

interface WallGap {
  readonly edge: number;
  readonly gapIn: number;
  /** Movement of the slab square to the wall. */
  readonly movementIn: number;
}

/** Gap of every wall edge beside what the slab moves square to it: drying, or the summer's heat outdoors where that is more. */
function wallGaps({ piece, shape }: PieceAnalysis): WallGap[] {
  return (piece.edges ?? []).flatMap((edge, index) => {
    if (edge.kind !== 'wall') return [];
    const a = piece.corners[index]!;
    const b = piece.corners[(index + 1) % piece.corners.length]!;
    const lengthIn = distanceIn(a, b);
    if (lengthIn <= 0) return [];
    const off = shape.outer.map(
      (p) => ((b.xIn - a.xIn) * (p.yIn - a.yIn) - (b.yIn - a.yIn) * (p.xIn - a.xIn)) / lengthIn,
    );
    const L = Math.max(...off) - Math.min(...off);
    const dry = shrinkageMovement.compute({ eps: THIN_TOP_SHRINKAGE_RATIO, L });
    const warm = thermalMovement.compute({ alpha: THERMAL_EXPANSION_PER_DEG_C, dT: OUTDOOR_RANGE_C, L });
    const movementIn = piece.exposure === 'outdoors' ? Math.max(dry, warm) : dry;
    return [{ edge: index, gapIn: edge.gapIn, movementIn }];
  });
}

function gapCaution(
  edge: number,
  gapIn: number,
  movementIn: number,
  { print, fine }: { readonly print: Printers; readonly fine: (valueIn: number) => string },
): string {
  const wanted = `isolate it with ${print.length(1 / 8)} to ${print.length(1 / 4)} of foam (common practice, no source)`;
  if (gapIn === 0) {
    return `Edge ${edge + 1} is cast hard against its wall and cannot move: expect it to crack as it dries. Strongly advised: ${wanted}.`;
  }
  return `The gap at edge ${edge + 1} is ${fine(gapIn)} and the slab moves ${fine(movementIn)} there: ${wanted}.`;
}

/** Inside corners and corners of cutouts that neither a joint nor a diagonal bar looks after. */
function barePoints({ piece, shape }: PieceAnalysis): Point[] {
  const axisDeg = (shape.axisRad * 180) / Math.PI;
  return [...shape.insideCorners, ...cutoutCorners(piece)].filter((at) => {
    const jointed = piece.joints.some(
      ({ from, to }) => distanceIn(at, nearestOnSegment(at, { a: from, b: to })) <= JOINT_AT_CORNER_IN,
    );
    const barred = piece.reinforcement.some(
      (steel) =>
        steel.kind === 'bars' &&
        isDiagonal(steel.angleDeg - axisDeg) &&
        (steel.corners === null || isPointInPolygon(at, steel.corners)),
    );
    return !jointed && !barred;
  });
}

function isDiagonal(angleDeg: number): boolean {
  const offDeg = Math.abs(((angleDeg % 90) + 90) % 90);
  return Math.min(offDeg, 90 - offDeg) >= DIAGONAL_FROM_DEG;
}

function cutoutCorners({ cutouts }: Piece): Point[] {
  return cutouts.flatMap(({ shape }) => cornersOf(shape));
}

function cornersOf(shape: CutoutShape): Point[] {
  switch (shape.kind) {
    case 'circle':
      return [];
    case 'polygon':
      return shape.corners.map(({ xIn, yIn }) => ({ xIn, yIn }));
    case 'rectangle':
      return patchOutline(shape.centre, shape.widthIn, shape.depthIn, (shape.angleDeg * Math.PI) / 180);
  }
}

/** Joint spacing is a rule of slabs on ground; it is a hint for a top on a full bed and means nothing for a span. */
function bedLines({ piece, shape, bearings }: PieceAnalysis): {
  readonly lines: Check['workings'];
  readonly cautions: (print: Printers) => string[];
} {
  if (!bearings.some(({ support }) => support.kind === 'full-bed')) return { lines: [], cautions: () => [] };
  const near = closeJointSpacing({ h: piece.thicknessIn });
  const wide = wideJointSpacing({ h: piece.thicknessIn });
  const isLong = shape.lengthIn > wide.value && piece.joints.length === 0;
  return {
    lines: [near.line, wide.line],
    cautions: (print) =>
      isLong
        ? [
            `On a full bed, joints ${print.length(near.value)} to ${print.length(wide.value)} apart are the usual rule (slabs on ground, from memory); this piece is ${print.length(shape.lengthIn)} long and has none.`,
          ]
        : [],
  };
}
