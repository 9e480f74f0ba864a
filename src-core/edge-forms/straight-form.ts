/** A straight form along one edge. */
import type { FormContext, Label } from './context';
import { endAtCorner, longLength, longPastIn, squareEnd } from './form-ends';
import { partsOf } from './form-parts';
import type { Side } from './sides';
import { linesAcross, splitRun } from './split-run';
import type { FormEnd, StraightForm } from './types';
import type { WalkCorner, WalkEdge } from './walk';
import { isStraight } from './walk';

/** An edge with its two corners and what stands along it and its neighbours. */
export interface FormedEdge {
  readonly edge: WalkEdge;
  readonly own: Side;
  readonly before: { readonly corner: WalkCorner; readonly side: Side };
  readonly after: { readonly corner: WalkCorner; readonly side: Side };
}

/** The form along an edge. It adds a caution where its strip does not fit. */
export function straightForm(
  { edge, own, before, after }: FormedEdge,
  label: Label,
  words: string,
  context: FormContext,
): StraightForm {
  const start = endTowards(own, before.corner, before.side);
  const end = endTowards(own, after.corner, after.side);
  const role = roleOf(own, before, after);
  const slabFaceIn = edge.lengthIn;
  const a = longPastIn(start);
  const b = longPastIn(end);
  if (slabFaceIn + start.outerFacePastIn + end.outerFacePastIn <= 0) {
    context.cautions.push(`The strip ${words} has no room for its ends; fill the place with a solid block.`);
  }
  const { jointsIn, isForced } = splitRun({
    lengthIn: slabFaceIn,
    startPastIn: a,
    endPastIn: b,
    stockIn: context.stockIn,
    keepOffIn: linesAcross({ a: edge.from, b: edge.to }, context.cutoutCorners, context.seams),
  });
  if (isForced) {
    context.cautions.push(
      jointsIn.length === 0
        ? `The end of the strip ${words} is cut so sharp that no strip in stock is long enough; build it up on site.`
        : `A joint of the strip ${words} cannot keep off the corners of cutouts and the seams; back it with a block.`,
    );
  }
  const isScrewed = own.material === 'form-strip' && context.isScrewed;
  return {
    ...label,
    shape: 'straight',
    role,
    kind: own.kind,
    material: own.material,
    profile: own.profile,
    groove: own.groove,
    heightIn: context.heightIn,
    faceIn: own.faceIn,
    from: edge.from,
    to: edge.to,
    slabFaceIn,
    longIn: longLength.compute({ L: slabFaceIn, a, b }),
    start,
    end,
    pastSlabIn: role === 'return' ? (before.side.isWall ? start : end).slabFacePastIn : null,
    parts: partsOf({ ...label, isScrewed, lengthIn: slabFaceIn, start, end }, jointsIn),
  };
}

function endTowards(own: Side, corner: WalkCorner, next: Side): FormEnd {
  return corner.tangentIn > 0 ? squareEnd('tangent') : endAtCorner(own, next, corner.turnRad);
}

/** A return runs from an exposed edge at one end to a wall at a corner at the other. */
function roleOf(own: Side, before: FormedEdge['before'], after: FormedEdge['after']): StraightForm['role'] {
  if (own.kind === 'sink') return 'opening';
  if (own.kind === 'flat') return 'back';
  const runsTo = ({ corner, side }: FormedEdge['before']) =>
    side.isWall && corner.tangentIn === 0 && !isStraight(corner.turnRad);
  const isReturn =
    (runsTo(before) && after.side.kind === 'profiled') || (runsTo(after) && before.side.kind === 'profiled');
  return isReturn ? 'return' : 'face';
}

/** What two radii leave between them is nothing below this, in. */
const LEAST_IN = 1 / 64;

/** Whether the radii at its ends leave an edge any straight part. */
export function hasStraight({ lengthIn }: WalkEdge): boolean {
  return lengthIn > LEAST_IN;
}
