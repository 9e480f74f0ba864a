/** Forms within the openings of a piece, and plugs for the small ones. */
import type { Cutout, CutoutShape, Job, Piece } from '../job';
import type { Corner, Point } from '../outline';
import { directionAt, leftOf, moved, roundedPerimeterIn } from '../outline';
import type { Trace } from '../trace';
import type { FormContext } from './context';
import { labelOf } from './context';
import { circleForm } from './curved-form';
import type { LoopForms } from './loop-forms';
import { loopForms, partJoints } from './loop-forms';
import { leastScrews, openingStand, shapeSize, takesPlug } from './opening-stand';
import { openingSide } from './sides';
import type { Plug } from './types';
import { walkOutline } from './walk';

export interface OpeningForms extends LoopForms {
  readonly plug: Plug | null;
}

/**
 * What forms an opening. The strips stand inside it, the slab's face on the opening's line, so that every corner of a
 * rectangle is an inside corner of the slab. An opening too narrow for two strips, or no wider than a hand, takes a plug. A
 * form on a bowl is held down through its drain, not by screws from below.
 */
export function openingForms(job: Job, piece: Piece, cutout: Cutout, round: FormContext): OpeningForms {
  const trace: Trace = { pieceId: piece.id, part: { kind: 'cutout', id: cutout.id } };
  const { shape } = cutout;
  const { standsOn, heightIn } = openingStand(job, piece, cutout);
  const context: FormContext = { ...round, heightIn, isScrewed: standsOn === 'deck' };
  const side = openingSide(job);
  if (takesPlug(shapeSize(shape), side.faceIn)) {
    return { forms: [], junctions: [], plug: plugOf(shape, trace, context) };
  }
  if (shape.kind === 'circle') {
    const form = circleForm(shape, side, labelOf(trace, 'form'), context);
    return { forms: [form], junctions: partJoints(form, context.concreteIn), plug: null };
  }
  const walk = walkOutline(cornersOf(shape), 'outside');
  const labels = {
    edge: (index: number) => labelOf(trace, 'side', index + 1),
    corner: (index: number) => labelOf(trace, 'corner', index + 1),
    edgeWords: (index: number) => `along side ${index + 1} of the opening "${cutout.name ?? cutout.id}"`,
  };
  const sides = walk.edges.map(() => side);
  return { ...loopForms(walk, sides, labels, context), plug: null };
}

/** Corners of an opening that the joints of forms keep off; a circle has none. */
export function openingCorners({ shape }: Cutout): readonly Point[] {
  return shape.kind === 'circle' ? [] : cornersOf(shape);
}

function plugOf(shape: CutoutShape, trace: Trace, { heightIn, isScrewed }: FormContext): Plug {
  const size = shapeSize(shape);
  const perimeterIn =
    shape.kind === 'circle' ? Math.PI * shape.diameterIn : roundedPerimeterIn(cornersOf(shape));
  return {
    ...labelOf(trace, 'plug'),
    ...size,
    isRound: shape.kind === 'circle',
    heightIn,
    perimeterIn,
    screws: isScrewed ? leastScrews(size) : 0,
  };
}

function cornersOf(shape: Exclude<CutoutShape, { readonly kind: 'circle' }>): readonly Corner[] {
  if (shape.kind === 'polygon') return shape.corners;
  const along = directionAt((shape.angleDeg * Math.PI) / 180);
  const across = leftOf(along);
  const signs = [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1],
  ] as const;
  return signs.map(([w, d]) => ({
    ...moved(moved(shape.centre, along, (w * shape.widthIn) / 2), across, (d * shape.depthIn) / 2),
    radiusIn: shape.radiusIn,
  }));
}
