/**
 * The plan of a design as shapes in px: sections, their sticks, and legs by their numbers. Right is to the right, the front at the
 * bottom. Labels keep their size, whatever the scale.
 */
import type { DesignedSection, FalseworkDesign, FrameJoist } from '../../src-core/falsework';
import { placeInPlan, sectionCorners, turnedPlace } from '../../src-core/falsework';
import type { Piece } from '../../src-core/job';
import { pieceRegion } from '../../src-core/job';
import type { Point } from '../../src-core/outline';
import { boundingBox } from '../../src-core/outline';
import { legNumber, sectionLetter } from './section-letters';

/** Highest drawing, what is left free around it, and the letters of a leg's number, px. */
const MOST_HEIGHT_PX = 300;
const MARGIN_PX = 12;
/** From a dot to the line on which its number stands, inward along the section's depth, px. */
const LABEL_IN_PX = 12;

interface PlacePx {
  readonly x: number;
  readonly y: number;
}

export interface PlanStick {
  readonly key: string;
  readonly kind: FrameJoist['kind'] | 'header' | 'stringer' | 'ledger';
  readonly from: PlacePx;
  readonly to: PlacePx;
}

export interface PlanLeg {
  readonly id: string;
  readonly number: string;
  readonly at: PlacePx;
  /** Where its number stands: always toward the middle of its section, so that it cannot lie on a neighbour's. */
  readonly label: PlacePx;
  readonly anchor: 'start' | 'middle' | 'end';
}

export interface PlanSection {
  readonly id: string;
  readonly letter: string;
  readonly name: string;
  readonly outline: string;
  readonly openings: readonly string[];
  readonly letterAt: PlacePx;
  readonly sticks: readonly PlanStick[];
  readonly legs: readonly PlanLeg[];
}

export interface FormPlan {
  readonly widthPx: number;
  readonly heightPx: number;
  /** Outline of the slab above. */
  readonly slab: string;
  readonly sections: readonly PlanSection[];
}

type ToPx = (point: Point) => PlacePx;

/** The drawing in a width; null where there is no section to draw, or no width to draw in. */
export function formPlan(design: FalseworkDesign, piece: Piece, widthPx: number): FormPlan | null {
  if (design.sections.length === 0 || widthPx <= 2 * MARGIN_PX) return null;
  const region = pieceRegion(piece);
  const slab = region.ok ? [region.outer, ...region.holes] : [];
  const corners = design.sections.map(({ section }) => sectionCorners(section.frame));
  const box = boundingBox([...slab, ...corners].flat());
  const [acrossIn, deepIn] = [box.maxXIn - box.minXIn, box.maxYIn - box.minYIn];
  const scale = Math.min((widthPx - 2 * MARGIN_PX) / acrossIn, (MOST_HEIGHT_PX - 2 * MARGIN_PX) / deepIn);
  const leftPx = (widthPx - acrossIn * scale) / 2;
  const toPx: ToPx = ({ xIn, yIn }) => ({
    x: leftPx + (xIn - box.minXIn) * scale,
    y: MARGIN_PX + (box.maxYIn - yIn) * scale,
  });
  return {
    widthPx,
    heightPx: deepIn * scale + 2 * MARGIN_PX,
    slab: slab.map((loop) => loopPath(loop, toPx)).join(''),
    sections: design.sections.map((each, index) => drawnSection(each, sectionLetter(index), toPx)),
  };
}

function drawnSection(designed: DesignedSection, letter: string, toPx: ToPx): PlanSection {
  const { section, legs } = designed;
  const { frame } = section;
  const at = (p: number, q: number) => placeInPlan(frame, p, q);
  const middle = toPx(at(frame.widthIn / 2, frame.depthIn / 2));
  const corners = sectionCorners(frame);
  return {
    id: section.id,
    letter,
    name: section.name,
    outline: loopPath(corners, toPx),
    openings: section.openings.map(({ patch: { p0, p1, q0, q1 } }) =>
      loopPath([at(p0, q0), at(p1, q0), at(p1, q1), at(p0, q1)], toPx),
    ),
    letterAt: middle,
    sticks: sticksOf(designed, toPx),
    legs: legs.map((leg, i) => {
      const dot = toPx(leg.at);
      return {
        id: leg.id,
        number: legNumber(letter, i),
        at: dot,
        ...labelOf(dot, middle, corners.map(toPx)),
      };
    }),
  };
}

/** Inward in height; sideways its number starts or ends at the dot where that stands in an outer third. */
function labelOf(
  dot: PlacePx,
  middle: PlacePx,
  corners: readonly PlacePx[],
): Pick<PlanLeg, 'label' | 'anchor'> {
  const xs = corners.map(({ x }) => x);
  const outerPx = (Math.max(...xs) - Math.min(...xs)) / 6;
  const asidePx = middle.x - dot.x;
  const anchor = Math.abs(asidePx) < outerPx ? 'middle' : asidePx > 0 ? 'start' : 'end';
  const shiftPx = anchor === 'middle' ? 0 : anchor === 'start' ? -3 : 3;
  return {
    anchor,
    label: { x: dot.x + shiftPx, y: dot.y + (dot.y > middle.y ? -LABEL_IN_PX : LABEL_IN_PX) },
  };
}

function sticksOf({ section, worked: { framing } }: DesignedSection, toPx: ToPx): PlanStick[] {
  const { frame } = section;
  const { joistRun } = framing.arrangement;
  const at = (s: number, t: number) => {
    const { p, q } = turnedPlace(s, t, joistRun);
    return toPx(placeInPlan(frame, p, q));
  };
  const joists = framing.joists.map(
    ({ kind, s, t0, t1 }, i): PlanStick => ({ key: `joist-${i}`, kind, from: at(s, t0), to: at(s, t1) }),
  );
  const headers = framing.headers.map(
    ({ t, s0, s1 }, i): PlanStick => ({ key: `header-${i}`, kind: 'header', from: at(s0, t), to: at(s1, t) }),
  );
  const lines = framing.lines.flatMap(({ kind, t }, i): PlanStick[] =>
    kind === 'legs' ? [] : [{ key: `line-${i}`, kind, from: at(0, t), to: at(framing.acrossIn, t) }],
  );
  return [...joists, ...headers, ...lines];
}

function loopPath(points: readonly Point[], toPx: ToPx): string {
  const line = points.map(toPx).map(({ x, y }, i) => `${i === 0 ? 'M' : 'L'}${x.toFixed(2)} ${y.toFixed(2)}`);
  return `${line.join('')}Z`;
}

/** Kinds of stick that are drawn, for the key below the drawing. */
export function drawnKinds({ sections }: FormPlan): PlanStick['kind'][] {
  return [...new Set(sections.flatMap(({ sticks }) => sticks.map(({ kind }) => kind)))];
}

export interface KeyRow {
  readonly line: 'leg' | 'joist' | 'stringer' | 'ledger' | 'slab';
  readonly words: string;
}

/** The key of a drawing with these sticks. */
export function keyRows(kinds: readonly PlanStick['kind'][]): KeyRow[] {
  const isFramed = kinds.includes('header');
  const rows: readonly (KeyRow | null)[] = [
    { line: 'leg', words: 'leg' },
    { line: 'joist', words: isFramed ? 'joist, trimmer, header' : 'joist' },
    kinds.includes('stringer') ? { line: 'stringer', words: 'stringer' } : null,
    kinds.includes('ledger') ? { line: 'ledger', words: 'ledger' } : null,
    { line: 'slab', words: 'slab above' },
  ];
  return rows.filter((row) => row !== null);
}
