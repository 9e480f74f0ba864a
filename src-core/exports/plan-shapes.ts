/** The plan of a job as lines, loops, circles and words at true scale, in layers, before any file format. */
import { stands } from '../analysis';
import type { Dimension } from '../drawing';
import { namePoint, pieceDimensions, seamMarks, supportCentre } from '../drawing';
import { cutoutCentre } from '../edit';
import type { Job, Piece, Support } from '../job';
import { bearingPatches, cutoutInPlan, pieceOutline } from '../job';
import type { Point } from '../outline';
import { between, directionAt, leftOf, moved } from '../outline';
import { printLength } from '../units';
import { openingLoop, pieceLoop, straightLoop } from './arc-loops';
import { dimensionShapes, readableDeg } from './dimension-shapes';
import type { PlanLayer } from './plan-layers';
import type { PlanShape } from './plan-shape';
import { LINE_RATIO, NAME_HEIGHT_IN } from './practice';
import { supportWords } from './support-words';

const DIMENSION_LAYERS = {
  edge: 'edge-dims',
  overhang: 'overhang-dims',
  support: 'support-dims',
  cutout: 'opening-dims',
} as const satisfies Record<Dimension['of'], PlanLayer>;

/**
 * Every piece once, where it lies in plan, whatever the number of its copies: outline, openings, what it stands on, joints,
 * dimensions and names. Inches in the drawing's coordinates. An opening that cannot be drawn is left out.
 */
export function planShapes(job: Job): readonly PlanShape[] {
  return job.pieces.flatMap((piece) => [
    ...supportShapes(piece),
    { kind: 'loop' as const, layer: 'slab-outline' as const, vertices: pieceLoop(piece) },
    ...openingShapes(piece),
    ...seamShapes(job, piece),
    ...pieceDimensions(piece).flatMap((dimension) =>
      dimensionShapes(
        dimension,
        DIMENSION_LAYERS[dimension.of],
        printLength(dimension.lengthIn, { system: job.shownIn }),
      ),
    ),
    named(pieceWords(job, piece), namePoint(piece)),
  ]);
}

function pieceWords(job: Job, { name, thicknessIn, copies }: Piece): string {
  const thick = `${name}, ${printLength(thicknessIn, { system: job.shownIn })} thick`;
  return copies > 1 ? `${thick}, ${copies} of them` : thick;
}

function named(words: string, at: Point, turnDeg = 0): PlanShape {
  return { kind: 'words', layer: 'names', words, at, heightIn: NAME_HEIGHT_IN, turnDeg };
}

/** So that the name of a support in the middle of a slab or under an opening does not lie on the other's. */
function lineLower({ xIn, yIn }: Point): Point {
  return { xIn, yIn: yIn - LINE_RATIO * NAME_HEIGHT_IN };
}

function openingShapes(piece: Piece): PlanShape[] {
  return piece.cutouts.flatMap(({ shape, name, purpose }, index): PlanShape[] => {
    if (!cutoutInPlan(piece, index).ok) return [];
    const outline: PlanShape =
      shape.kind === 'circle'
        ? { kind: 'circle', layer: 'openings', centre: shape.centre, radiusIn: shape.diameterIn / 2 }
        : { kind: 'loop', layer: 'openings', vertices: openingLoop(shape) };
    return [outline, named(name ?? purpose, cutoutCentre(shape))];
  });
}

function seamShapes(job: Job, piece: Piece): PlanShape[] {
  return seamMarks(job, piece).flatMap(({ from, to, words }): PlanShape[] => [
    { kind: 'line', layer: 'joints', from, to },
    named(words, between(from, to, 0.5), readableDeg(from, to)),
  ]);
}

function supportShapes(piece: Piece): PlanShape[] {
  const outline = pieceOutline(piece);
  const outer = outline.ok ? outline.outer : piece.corners;
  return piece.supports.flatMap((support): PlanShape[] => {
    const layer = stands(support, null) ? 'supports' : 'temporary-supports';
    const centre = supportCentre(support);
    return [
      ...bodyShapes(support, outer, layer),
      ...(centre === null ? [] : [named(supportWords(support), lineLower(centre))]),
    ];
  });
}

/** Where a support bears, and the whole of a cabinet. */
function bodyShapes(support: Support, outer: readonly Point[], layer: PlanLayer): PlanShape[] {
  if (support.kind === 'pier' && support.footprint.kind === 'circle') {
    const { centre, diameterIn } = support.footprint;
    return [{ kind: 'circle', layer, centre, radiusIn: diameterIn / 2 }];
  }
  const bearings = bearingPatches(support, outer).map(({ corners }) => corners);
  const loops = support.kind === 'cabinet' ? [cabinetCorners(support), ...bearings] : bearings;
  return loops.map((corners) => ({ kind: 'loop', layer, vertices: straightLoop(corners) }));
}

function cabinetCorners({
  corner,
  angleDeg,
  widthIn,
  depthIn,
}: Extract<Support, { kind: 'cabinet' }>): Point[] {
  const along = directionAt((angleDeg * Math.PI) / 180);
  const right = moved(corner, along, widthIn);
  return [corner, right, moved(right, leftOf(along), depthIn), moved(corner, leftOf(along), depthIn)];
}
