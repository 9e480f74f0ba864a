/** Forms round corner radii and round openings: a strip bent or kerfed to the arc, a shaped block where it is too tight. */
import type { Point } from '../outline';
import { turned } from '../outline';
import { formula } from '../workings';
import type { FormContext, Label } from './context';
import { squareEnd } from './form-ends';
import { partsOf } from './form-parts';
import { BENT_FROM_IN, BLOCK_SCREWS, KERFED_FROM_IN } from './practice';
import type { Side } from './sides';
import { splitRun } from './split-run';
import type { CurvedForm, EndKind } from './types';
import type { WalkCorner } from './walk';
import { arcOf } from './walk';

/** Length of an arc, in. r: radius of the slab's edge, in; t: turn, rad, not negative. Plane geometry. */
export const arcLength = formula<{ r: number; t: number }>({
  symbol: 'La',
  label: "strip round a curve, on the slab's face",
  formula: 'r * t',
  units: { r: 'in', t: 'rad' },
  unit: 'in',
  source: 'plane geometry: arc of a circle',
  compute: ({ r, t }) => r * t,
});

/** How a strip is made to follow a radius (in): bent cold, kerfed on its back, or a block shaped to it. Common practice, no source. */
export function madeFor(radiusIn: number): CurvedForm['made'] {
  if (radiusIn >= BENT_FROM_IN) return 'bent';
  return radiusIn >= KERFED_FROM_IN ? 'kerfed' : 'shaped-block';
}

interface Arc {
  readonly centre: Point;
  readonly from: Point;
  readonly radiusIn: number;
  readonly turnRad: number;
  readonly isClosed: boolean;
  readonly ends: readonly [EndKind, EndKind];
}

function curvedForm(arc: Arc, side: Side, label: Label, context: FormContext): CurvedForm {
  const { centre, from, radiusIn, turnRad, isClosed } = arc;
  const lengthIn = arcLength.compute({ r: radiusIn, t: Math.abs(turnRad) });
  const made = madeFor(radiusIn);
  const [start, end] = [squareEnd(arc.ends[0]), squareEnd(arc.ends[1])];
  const { jointsIn } = splitRun({
    lengthIn,
    startPastIn: 0,
    endPastIn: 0,
    stockIn: context.stockIn,
    keepOffIn: [],
  });
  const isScrewed = side.material === 'form-strip' && context.isScrewed;
  const parts = partsOf({ ...label, isScrewed, lengthIn, start, end }, jointsIn);
  return {
    ...label,
    shape: 'curved',
    kind: side.kind,
    material: side.material,
    profile: side.profile,
    groove: side.groove,
    heightIn: context.heightIn,
    faceIn: side.faceIn,
    slabFaceIn: lengthIn,
    centre,
    radiusIn,
    turnRad,
    from,
    to: isClosed ? from : turnedAbout(centre, from, turnRad),
    made,
    isClosed,
    parts: made === 'shaped-block' ? parts.map((part) => blockScrews(part)) : parts,
  };
}

/** A block takes its screws spread over its length. */
function blockScrews<Part extends CurvedForm['parts'][number]>(part: Part): Part {
  if (part.screwsAtIn.length === 0) return part;
  const lengthIn = part.toIn - part.fromIn;
  const screwsAtIn = Array.from(
    { length: BLOCK_SCREWS },
    (_, k) => ((2 * k + 1) * lengthIn) / (2 * BLOCK_SCREWS),
  );
  return { ...part, screwsAtIn };
}

/**
 * The form round a rounded corner. An exposed edge keeps its profile round the arc; where the two edges have different
 * profiles, or gaps, each takes its half.
 */
export function cornerForms(
  corner: WalkCorner,
  [incoming, outgoing]: readonly [Side, Side],
  label: Label,
  context: FormContext,
): CurvedForm[] {
  const { from, centre } = arcOf(corner);
  const whole = { centre, from, radiusIn: corner.radiusIn, turnRad: corner.turnRad, isClosed: false };
  const side = sharedSide(incoming, outgoing);
  if (side !== null) {
    if (side.faceIn === 0) return [];
    return [curvedForm({ ...whole, ends: ['tangent', 'tangent'] }, side, label, context)];
  }
  const halfRad = corner.turnRad / 2;
  const middle = turnedAbout(centre, from, halfRad);
  const halves: readonly [Side, Point, readonly [EndKind, EndKind], string][] = [
    [incoming, from, ['tangent', 'in-line'], 'first'],
    [outgoing, middle, ['in-line', 'tangent'], 'second'],
  ];
  return halves.flatMap(([half, start, ends, word]) =>
    half.faceIn === 0
      ? []
      : [
          curvedForm(
            { ...whole, from: start, turnRad: halfRad, ends },
            half,
            { ...label, id: `${label.id}/${word}` },
            context,
          ),
        ],
  );
}

/** The side that goes round the whole arc: the exposed one, or either where both are alike; null where each takes half. */
function sharedSide(incoming: Side, outgoing: Side): Side | null {
  if (incoming.kind === 'profiled' && outgoing.kind === 'flat') return incoming;
  if (incoming.kind === 'flat' && outgoing.kind === 'profiled') return outgoing;
  const key = ({ kind, material, profile, groove, faceIn }: Side) =>
    JSON.stringify([kind, material, profile, groove, faceIn]);
  return key(incoming) === key(outgoing) ? incoming : null;
}

/** The form round a circular opening: it lies within the circle, so the slab's edge turns inward all the way. */
export function circleForm(
  { centre, diameterIn }: { readonly centre: Point; readonly diameterIn: number },
  side: Side,
  label: Label,
  context: FormContext,
): CurvedForm {
  const radiusIn = diameterIn / 2;
  const from = { xIn: centre.xIn + radiusIn, yIn: centre.yIn };
  const turnRad = -2 * Math.PI;
  return curvedForm(
    { centre, from, radiusIn, turnRad, isClosed: true, ends: ['joint', 'joint'] },
    side,
    label,
    context,
  );
}

/** A point turned about a centre, counter-clockwise. */
export function turnedAbout(centre: Point, at: Point, byRad: number): Point {
  const arm = turned({ xIn: at.xIn - centre.xIn, yIn: at.yIn - centre.yIn }, byRad);
  return { xIn: centre.xIn + arm.xIn, yIn: centre.yIn + arm.yIn };
}
