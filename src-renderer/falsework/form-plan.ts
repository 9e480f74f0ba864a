/**
 * The plan of a design as shapes in px: sections, their sticks, and legs by their numbers. Right is to the right, the front at the
 * bottom. Labels keep their size, whatever the scale.
 */
import type { DesignedSection, FalseworkDesign, FrameJoist } from '../../src-core/falsework';
import { legNumber, placeInPlan, sectionCorners, sectionLetter, turnedPlace } from '../../src-core/falsework';
import type { Piece } from '../../src-core/job';
import { pieceRegion } from '../../src-core/job';
import type { Point } from '../../src-core/outline';
import { boundingBox } from '../../src-core/outline';
import { type Anchor, type PlacePx, placeNumbers } from './place-numbers';

/** Highest drawing, and what is left free around it, px. */
const MOST_HEIGHT_PX = 300;
const MARGIN_PX = 12;

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
  /** Where its number stands. */
  readonly label: PlacePx;
  readonly anchor: Anchor;
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
  const frame = { widthPx, heightPx: deepIn * scale + 2 * MARGIN_PX };
  return {
    ...frame,
    slab: slab.map((loop) => loopPath(loop, toPx)).join(''),
    sections: numbered(
      design.sections.map((each, index) => drawnSection(each, sectionLetter(index), toPx)),
      frame,
    ),
  };
}

type Unnumbered = Omit<PlanSection, 'legs'> & { readonly legs: readonly Omit<PlanLeg, 'label' | 'anchor'>[] };

/** Numbers of all sections are placed together, since a leg stands close to the next section's. */
function numbered(
  sections: readonly Unnumbered[],
  frame: { readonly widthPx: number; readonly heightPx: number },
): PlanSection[] {
  const dots = sections.flatMap(({ legs, letterAt }) =>
    legs.map(({ id, number, at }) => ({ id, number, at, middle: letterAt })),
  );
  const letters = sections.map(({ letter, letterAt }) => ({ text: letter, at: letterAt }));
  const placed = placeNumbers(dots, letters, frame);
  const byId = new Map(dots.map(({ id }, i) => [id, placed[i]!]));
  return sections.map((section) => ({
    ...section,
    legs: section.legs.map((leg) => ({ ...leg, ...byId.get(leg.id)! })),
  }));
}

function drawnSection(designed: DesignedSection, letter: string, toPx: ToPx): Unnumbered {
  const { section, legs } = designed;
  const { frame } = section;
  const at = (p: number, q: number) => placeInPlan(frame, p, q);
  return {
    id: section.id,
    letter,
    name: section.name,
    outline: loopPath(sectionCorners(frame), toPx),
    openings: section.openings.map(({ patch: { p0, p1, q0, q1 } }) =>
      loopPath([at(p0, q0), at(p1, q0), at(p1, q1), at(p0, q1)], toPx),
    ),
    letterAt: toPx(at(frame.widthIn / 2, frame.depthIn / 2)),
    sticks: sticksOf(designed, toPx),
    legs: legs.map((leg, i) => ({ id: leg.id, number: legNumber(letter, i), at: toPx(leg.at) })),
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
