/**
 * Where a piece bears: every support turned into contact areas and the points that stand for them.
 * A strip or an area becomes a grid of springs whose weights keep the total stiffness and the stiffness against tilting.
 */
import type { BracketSupport, CabinetSupport, Piece, Support } from '../job';
import { STIFFNESS, stiffnessOf } from '../job';
import type { Direction, Point, Region } from '../outline';
import {
  circlePoints,
  clipPatchToRegion,
  directionAt,
  directionBetween,
  distanceIn,
  isPointOnSlab,
  leftOf,
  moved,
  polygonAreaIn2,
} from '../outline';
import type { BearingPlan, Common, Spot } from './bearing-grid';
import { centreOf, describe, gapOf, planGrid, rectangle, withTies } from './bearing-grid';

/** Contact of one bracket seat with the slab apart from the arm's own give: stiff, so that the arm governs. */
const SEAT_LBF_PER_IN = 200_000;
/** Sub-top between the panels: the rail's stiffness spread over about a foot. Derived, no source. */
const SUB_TOP_SHARE_PER_IN = 1 / 12;
const CIRCLE_CHORD_IN = 0.05;
const MOST_CONTACTS = 150;
const MOST_ATTEMPTS = 6;
/** Side of a leg's or post's head below which one point stands for it. */
const POINT_HEAD_IN = 2.5;

/** Whether a support stands on a day; without a day, whether it stays when the job is finished. */
export function stands(support: Support, day: number | null): boolean {
  if (day === null) return support.lastDay === null;
  return support.firstDay <= day && (support.lastDay === null || day <= support.lastDay);
}

/**
 * Every bearing of `supports` that the slab covers at least in part. `spacingIn` is the distance of contact points along a line at
 * the closest; it grows where there are so many bearings that they would make more than `mostContacts` points.
 */
export function planBearings(
  piece: Piece,
  region: Region,
  supports: readonly Support[],
  spacingIn: number,
  mostContacts: number = MOST_CONTACTS,
): BearingPlan[] {
  let stepIn = spacingIn;
  for (let attempt = 1; ; attempt++) {
    const plans = supports.flatMap((support) => planSupport(support, piece, region, stepIn));
    const points = plans.reduce((sum, { spots }) => sum + spots.length, 0);
    if (points <= mostContacts || attempt === MOST_ATTEMPTS) return plans;
    stepIn *= Math.max(1.1, Math.sqrt(points / mostContacts));
  }
}

function planSupport(support: Support, piece: Piece, region: Region, spacingIn: number): BearingPlan[] {
  const bounds = stiffnessOf(support);
  switch (support.kind) {
    case 'cabinet':
      return planCabinet(support, region, spacingIn);
    case 'wall': {
      const words = wordsFor(`${support.build} wall`, support);
      return planStrip(
        { support, part: null, words, region, spacingIn, bounds: bounds! },
        support,
        support.widthIn,
      );
    }
    case 'ledger':
      return planStrip(
        { support, part: null, words: wordsFor('ledger', support), region, spacingIn, bounds: bounds! },
        support,
        support.widthIn,
      );
    case 'pier': {
      const common = {
        support,
        part: null,
        words: wordsFor('pier', support),
        region,
        spacingIn,
        bounds: bounds!,
      } as const;
      const f = support.footprint;
      if (f.kind === 'circle') {
        const corners = circlePoints(f.centre, f.diameterIn / 2, CIRCLE_CHORD_IN);
        return planArea(common, corners, directionAt(0), 'area');
      }
      const u = directionAt((f.angleDeg * Math.PI) / 180);
      return planArea(common, rectangle(f.centre, u, f.widthIn, f.depthIn), u, 'area');
    }
    case 'full-bed':
      return planArea(
        { support, part: null, words: wordsFor('bed', support), region, spacingIn, bounds: bounds! },
        support.corners ?? region.outer,
        directionAt(pieceAxisRad(piece)),
        'area',
      );
    case 'leg': {
      const u = directionAt((support.angleDeg * Math.PI) / 180);
      return planHead(
        { support, part: null, words: wordsFor('leg', support), region, spacingIn, bounds: bounds! },
        support,
        u,
      );
    }
    case 'bracket':
      return support.roots.flatMap((root, index) => planArm(support, root, index, region, spacingIn));
  }
}

/** A cabinet bears on its sides, its front and back rail and an optional sub-top; never on its whole plan without one. */
function planCabinet(cabinet: CabinetSupport, region: Region, spacingIn: number): BearingPlan[] {
  const u = directionAt((cabinet.angleDeg * Math.PI) / 180);
  const v = leftOf(u);
  const at = (alongIn: number, acrossIn: number): Point =>
    moved(moved(cabinet.corner, u, alongIn), v, acrossIn);
  const half = cabinet.panelIn / 2;
  const { widthIn, depthIn } = cabinet;
  const name = cabinet.name ?? cabinet.id;
  const common = { support: cabinet, region, spacingIn };
  const sides = stiffnessOf(cabinet) ?? STIFFNESS.cabinetSide;
  const rails = cabinet.railStiffness ?? STIFFNESS.cabinetRail;

  const panel = (part: 'left-side' | 'right-side', alongIn: number) =>
    planStrip(
      { ...common, part, words: `${part === 'left-side' ? 'left' : 'right'} side of ${name}`, bounds: sides },
      { from: at(alongIn, 0), to: at(alongIn, depthIn) },
      cabinet.panelIn,
    );
  const rail = (part: 'front-rail' | 'back-rail', acrossIn: number) =>
    planStrip(
      {
        ...common,
        part,
        words: `${part === 'front-rail' ? 'front' : 'back'} rail of ${name}`,
        bounds: rails,
      },
      {
        from: at(cabinet.panelIn + spacingIn / 2, acrossIn),
        to: at(widthIn - cabinet.panelIn - spacingIn / 2, acrossIn),
      },
      cabinet.panelIn,
    );
  const plans = [...panel('left-side', half), ...panel('right-side', widthIn - half)];
  if (cabinet.frontRail) plans.push(...rail('front-rail', half));
  if (cabinet.backRail) plans.push(...rail('back-rail', depthIn - half));
  if (cabinet.subTop) {
    const bounds = { low: rails.low * SUB_TOP_SHARE_PER_IN, high: rails.high * SUB_TOP_SHARE_PER_IN };
    const inset = cabinet.panelIn + spacingIn / 2;
    const corners = [
      at(inset, inset),
      at(widthIn - inset, inset),
      at(widthIn - inset, depthIn - inset),
      at(inset, depthIn - inset),
    ];
    plans.push(
      ...planArea({ ...common, part: 'sub-top', words: `sub-top of ${name}`, bounds }, corners, u, 'area'),
    );
  }
  return plans;
}

/** A strip of bearing along a centre line; stiffness in lbf/in per inch of line. */
function planStrip(
  common: Common,
  line: { readonly from: Point; readonly to: Point },
  widthIn: number,
): BearingPlan[] {
  if (distanceIn(line.from, line.to) < 0.5) return [];
  const u = directionBetween(line.from, line.to);
  const v = leftOf(u);
  const half = widthIn / 2;
  const corners = [
    moved(line.from, v, -half),
    moved(line.to, v, -half),
    moved(line.to, v, half),
    moved(line.from, v, half),
  ];
  // a thin panel edge is a line: one row of points; a wall keeps its width, because a slab can lift off one side of it
  const rows = widthIn < POINT_HEAD_IN / 2 ? 1 : null;
  const perIn2 = { low: common.bounds.low / widthIn, high: common.bounds.high / widthIn };
  const plans = planGrid({ ...common, bounds: perIn2 }, corners, u, 'line', rows, widthIn);
  return withTies(plans, common, { a: line.from, b: line.to });
}

/** A bearing area; stiffness in lbf/in per in2. */
function planArea(common: Common, corners: readonly Point[], u: Direction, form: 'area'): BearingPlan[] {
  const plans = planGrid(common, corners, u, form, null, 0);
  const centre = centreOf(corners);
  return withTies(plans, common, { a: centre, b: centre });
}

/** The head of a leg: one to four points that share its stiffness. */
function planHead(
  common: Common,
  head: { readonly centre: Point; readonly widthIn: number; readonly depthIn: number },
  u: Direction,
): BearingPlan[] {
  const corners = rectangle(head.centre, u, head.widthIn, head.depthIn);
  const clipped = clipPatchToRegion(corners, common.region);
  const areaIn2 = clipped.reduce((sum, loop) => sum + polygonAreaIn2(loop), 0);
  if (areaIn2 < 1e-6) return [];
  const v = leftOf(u);
  const offsets = (sizeIn: number): number[] =>
    sizeIn < POINT_HEAD_IN ? [0] : [-sizeIn / (2 * Math.sqrt(3)), sizeIn / (2 * Math.sqrt(3))];
  const points = offsets(head.widthIn)
    .flatMap((du) => offsets(head.depthIn).map((dv) => moved(moved(head.centre, u, du), v, dv)))
    .filter((point) => isPointOnSlab(point, common.region));
  if (points.length === 0) points.push(centreOf(clipped[0]!));
  const share = 1 / points.length;
  const spots = points.map((at) => ({
    at,
    acts: 'push' as const,
    lowLbfPerIn: common.bounds.low * share,
    highLbfPerIn: common.bounds.high * share,
    gapIn: gapOf(common.support),
    tributaryIn2: areaIn2 * share,
    alongArmIn: null,
  }));
  const bearing = describe(common, clipped[0]!, areaIn2, 'patch', 0);
  return withTies([{ bearing, spots }], common, { a: head.centre, b: head.centre });
}

/** One arm of a bracket row: points along its centre line, bearing on the arm's own flexibility. */
function planArm(
  bracket: BracketSupport,
  root: Point,
  index: number,
  region: Region,
  spacingIn: number,
): BearingPlan[] {
  const u = directionAt((bracket.directionDeg * Math.PI) / 180);
  const centre = moved(root, u, bracket.reachIn / 2);
  const corners = rectangle(centre, u, bracket.reachIn, bracket.seatWidthIn);
  const clipped = clipPatchToRegion(corners, region);
  const areaIn2 = clipped.reduce((sum, loop) => sum + polygonAreaIn2(loop), 0);
  if (areaIn2 < 1e-6) return [];
  const intervals = Math.max(2, Math.ceil(bracket.reachIn / spacingIn));
  const spots: Spot[] = [];
  for (let i = 1; i <= intervals; i++) {
    const alongArmIn = (bracket.reachIn * i) / intervals;
    const at = moved(root, u, alongArmIn);
    if (!isPointOnSlab(at, region)) continue;
    spots.push({
      at,
      acts: 'push',
      lowLbfPerIn: bracket.stiffness?.low ?? SEAT_LBF_PER_IN,
      highLbfPerIn: bracket.stiffness?.high ?? SEAT_LBF_PER_IN,
      gapIn: gapOf(bracket),
      tributaryIn2: areaIn2 / intervals,
      alongArmIn: bracket.stiffness === null ? alongArmIn : null,
    });
  }
  if (bracket.hold.kind === 'tied' && spots.length > 0) {
    const { low, high } = bracket.hold.stiffness;
    const at = spots[Math.max(0, spots.length - 2)]!;
    spots.push({ ...at, acts: 'pull', lowLbfPerIn: low, highLbfPerIn: high, gapIn: 0, tributaryIn2: 0 });
  }
  if (spots.length === 0) return [];
  const name = bracket.name ?? bracket.id;
  const common = { support: bracket, part: 'arm' as const, words: `bracket ${index + 1} of ${name}` };
  return [{ bearing: describe(common, clipped[0]!, areaIn2, 'patch', bracket.seatWidthIn), spots }];
}

function pieceAxisRad(piece: Piece): number {
  const [a, b] = longestEdge(piece.corners);
  return Math.atan2(b.yIn - a.yIn, b.xIn - a.xIn);
}

function longestEdge(corners: readonly Point[]): readonly [Point, Point] {
  let best: readonly [Point, Point] = [corners[0]!, corners[1]!];
  for (let i = 0; i < corners.length; i++) {
    const next = [corners[i]!, corners[(i + 1) % corners.length]!] as const;
    if (distanceIn(...next) > distanceIn(...best) + 1e-9) best = next;
  }
  return best;
}

/** A name that says itself what it is ("stud wall to the water") stands alone; another follows its kind ("pier A"). */
function wordsFor(kind: string, { name, id }: Support): string {
  const noun = kind.split(' ').at(-1) ?? kind;
  return name?.includes(noun) === true ? name : `${kind} ${name ?? id}`;
}
