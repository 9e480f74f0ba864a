/** One more thing to stand on: cabinet rails, posts under the overhang or the span, a panel across the span. */
import type { Piece, Support } from '../job';
import { STIFFNESS } from '../job';
import type { Point, Segment } from '../outline';
import {
  between,
  clipSegmentToRegion,
  directionAt,
  directionBetween,
  distanceIn,
  leftOf,
  moved,
  slabDistanceIn,
} from '../outline';
import type { Reach } from './reach';
import { reachesOf } from './reach';
import type { Ladder, LadderContext, Run, Step } from './step';
import { counted, freshId, ladder } from './step';

/** A post of two 2x4, or a 4x4: 3-1/2 in square. */
const POST_IN = 3.5;
/** Middle of a post from the free edge, so that it stands wholly under the slab and out of the way of knees. */
const POST_SETBACK_IN = 2.5;
const POST_END_IN = 4;
/** A post at a corner stands at least this far from it, towards the middle of the piece. */
const CORNER_IN = 6;
/** Posts of one row stand no closer than this. */
const CLOSEST_POSTS_IN = 16;
const MOST_POSTS = 6;
const PANEL_IN = 0.75;
const RAY_IN = 10_000;
/** Overhang below which a post at its tip is no use. */
const LEAST_OVERHANG_IN = 4;
/** Span below which nothing more fits under it. */
const LEAST_SPAN_IN = 12;

/** Rails and sub-tops first, then posts, then panels. Posts for a piece that nothing carries yet. */
export function supportLadder(context: LadderContext): Ladder {
  const { analysis, piece } = context;
  const none = 'There is no place for another support.';
  if (analysis === null) return ladder('extra-support', [[postsAllRound(context)]], 4, none);
  const reach = reachesOf(piece, analysis)[0];
  const underTip =
    reach === undefined || reach.overhangIn < LEAST_OVERHANG_IN ? [] : postsUnder(context, reach);
  const groups: Run[][] = [[cabinetRun(context)], [underTip], [postsMidSpan(context)], [panels(context)]];
  return ladder('extra-support', groups, 1, none);
}

/** Cabinets under the piece get the rails that they lack; then a sub-top. */
function cabinetRun({ piece }: LadderContext): Step[] {
  const bare = piece.supports.filter((one) => one.kind === 'cabinet' && !one.subTop);
  const lacking = bare.filter((one) => one.kind === 'cabinet' && !(one.frontRail && one.backRail));
  const rails = lacking.reduce(
    (sum, one) => sum + (one.kind === 'cabinet' ? Number(!one.frontRail) + Number(!one.backRail) : 0),
    0,
  );
  const changed = (change: object): Piece => ({
    ...piece,
    supports: piece.supports.map((one) =>
      one.kind === 'cabinet' && !one.subTop ? ({ ...one, ...change } as Support) : one,
    ),
  });
  const steps: Step[] = [];
  if (rails > 0) {
    const title = `Rails along front and back of ${counted(lacking.length, 'cabinet')}`;
    const railed = changed({ frontRail: true, backRail: true });
    steps.push(supportStep(railed, title, rails, [counted(rails, 'rail')]));
  }
  if (bare.length > 0) {
    const title = `A sub-top on ${counted(bare.length, 'cabinet')}`;
    steps.push(supportStep(changed({ subTop: true }), title, bare.length, [counted(bare.length, 'sub-top')]));
  }
  return steps;
}

/** One to six posts in a row just inside the free edge. They take the room that the overhang is there to give. */
function postsUnder(context: LadderContext, reach: Reach): Step[] {
  const along = directionBetween(reach.from, reach.to);
  const setbackIn = Math.min(POST_SETBACK_IN, reach.overhangIn / 2);
  const line: Segment = {
    a: moved(moved(reach.from, along, POST_END_IN), reach.inward, setbackIn),
    b: moved(moved(reach.to, along, -POST_END_IN), reach.inward, setbackIn),
  };
  const lengthIn = distanceIn(reach.from, reach.to) - 2 * POST_END_IN;
  if (lengthIn <= 0) return [];
  const most = Math.min(MOST_POSTS, Math.floor(lengthIn / CLOSEST_POSTS_IN) + 1);
  const angleDeg = degrees(along);
  return Array.from({ length: most }, (_, i) => i + 1).flatMap((count) => {
    const alone = moved(reach.at, reach.inward, setbackIn);
    const places = count === 1 ? [alone] : spread(line, count);
    const title =
      count === 1
        ? 'A post under the free edge'
        : `${count} posts under the free edge, ${context.print.length(lengthIn / (count - 1))} apart`;
    return postStep(context, places, angleDeg, { title, givesLess: true }) ?? [];
  });
}

/** One post in the middle of the longest span, then two and three across the slab there. */
function postsMidSpan(context: LadderContext): Step[] {
  const line = acrossSpan(context, 0);
  if (line === null) return [];
  const angleDeg = degrees(directionBetween(line.a, line.b));
  return [1, 2, 3].flatMap((count) => {
    const places = count === 1 ? [between(line.a, line.b, 0.5)] : spread(shortened(line), count);
    const title =
      count === 1 ? 'A post under the middle of the span' : `${count} posts across the middle of the span`;
    return postStep(context, places, angleDeg, { title, givesLess: false }) ?? [];
  });
}

/** One panel across the slab in the middle of the longest span, then two at its thirds. */
function panels(context: LadderContext): Step[] {
  const spanIn = context.analysis?.shape.freeSpan?.spanIn ?? 0;
  const sets = [[0], [-spanIn / 6, spanIn / 6]];
  return sets.flatMap((offsets) => {
    const lines = offsets.flatMap((offsetIn) => acrossSpan(context, offsetIn) ?? []);
    if (lines.length < offsets.length) return [];
    let piece = context.piece;
    for (const line of lines) piece = withSupport(piece, panelOn(context, piece, line));
    const title =
      lines.length === 1 ? 'A panel across the middle of the span' : 'Two panels at the thirds of the span';
    return [supportStep(piece, title, lines.length, [counted(lines.length, 'panel')])];
  });
}

/** Posts at the corners of a piece that nothing carries, then more along its length. */
function postsAllRound(context: LadderContext): Step[] {
  const { corners } = context.piece;
  const n = corners.length;
  const middle = {
    xIn: corners.reduce((sum, p) => sum + p.xIn, 0) / n,
    yIn: corners.reduce((sum, p) => sum + p.yIn, 0) / n,
  };
  const inside = (p: Point) =>
    between(p, middle, Math.min(0.5, Math.max(0.15, CORNER_IN / distanceIn(p, middle))));
  const atCorners = corners.map(inside);
  const halves = corners.map((p, i) => inside(between(p, corners[(i + 1) % n]!, 0.5)));
  return [atCorners, [...atCorners, ...halves]].flatMap(
    (places) =>
      postStep(context, places, 0, { title: `${places.length} posts round the edge`, givesLess: false }) ??
      [],
  );
}

function postStep(
  context: LadderContext,
  places: readonly Point[],
  angleDeg: number,
  { title, givesLess }: { readonly title: string; readonly givesLess: boolean },
): Step | null {
  const standsClear = places.every((place) => slabDistanceIn(place, context.region) >= POST_IN / 2);
  if (!standsClear) return null;
  let { piece } = context;
  for (const centre of places) {
    const post: Support = {
      ...plainSupport(freshId(context.job, piece, 'post')),
      kind: 'leg',
      centre,
      widthIn: POST_IN,
      depthIn: POST_IN,
      angleDeg,
    };
    piece = withSupport(piece, post);
  }
  return supportStep(piece, title, places.length, [counted(places.length, 'post')], givesLess);
}

function panelOn({ job }: LadderContext, piece: Piece, line: Segment): Support {
  return {
    ...plainSupport(freshId(job, piece, 'panel')),
    name: 'panel',
    kind: 'wall',
    build: 'stud',
    stiffness: STIFFNESS.cabinetSide,
    from: line.a,
    to: line.b,
    widthIn: PANEL_IN,
    studSpacingIn: 16,
    heightIn: null,
  };
}

function plainSupport(id: string) {
  return {
    id,
    firstDay: 0,
    lastDay: null,
    gapIn: 0,
    raisedIn: 0,
    stiffness: null,
    hold: { kind: 'resting' as const },
  };
}

/** The line across the slab through the middle of the longest span, or beside it; null without a span worth it. */
function acrossSpan({ analysis, region }: LadderContext, offsetIn: number): Segment | null {
  const span = analysis?.shape.freeSpan;
  if (span === null || span === undefined || span.spanIn < LEAST_SPAN_IN) return null;
  const way = directionAt(span.directionRad);
  const middle = moved(span.at, way, offsetIn);
  const across = leftOf(way);
  const parts = clipSegmentToRegion(
    { a: moved(middle, across, -RAY_IN), b: moved(middle, across, RAY_IN) },
    region,
  );
  const here = parts.find(
    ({ a, b }) => distanceIn(a, middle) + distanceIn(middle, b) < distanceIn(a, b) + 0.01,
  );
  return here ?? null;
}

function spread({ a, b }: Segment, count: number): Point[] {
  return Array.from({ length: count }, (_, i) => between(a, b, i / (count - 1)));
}

function shortened({ a, b }: Segment): Segment {
  const along = directionBetween(a, b);
  const byIn = Math.min(POST_END_IN, distanceIn(a, b) / 4);
  return { a: moved(a, along, byIn), b: moved(b, along, -byIn) };
}

function supportStep(
  piece: Piece,
  title: string,
  parts: number,
  partsWords: readonly string[],
  givesLess = false,
): Step {
  return {
    kind: 'extra-support',
    piece,
    ratedSupportIds: [],
    words: () => ({ title, parts, partsWords }),
    givesLess,
    shortTitle: title,
  };
}

function withSupport(piece: Piece, support: Support): Piece {
  return { ...piece, supports: [...piece.supports, support] };
}

function degrees({ x, y }: { readonly x: number; readonly y: number }): number {
  return Math.round(((Math.atan2(y, x) * 180) / Math.PI) * 1e6) / 1e6;
}
