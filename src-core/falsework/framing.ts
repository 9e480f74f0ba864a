/**
 * One section framed: joists, trimmers, headers, lines of support and legs, each at its place. Letters: s across the joists, t along
 * them, both from a corner of the section, in.
 */
import { LUMBER } from '../timber';
import { type Arrangement, JOIST_IN, type JoistRun, sectionSpread } from './arrangement';
import type { Patch } from './frame';
import type { FalseworkPractice } from './practice';
import type { DeckOpening, Section } from './section';

/** A stick of the deck's frame. A tail is a joist that an opening cuts short. */
export interface FrameJoist {
  readonly kind: 'joist' | 'trimmer' | 'tail';
  readonly s: number;
  readonly t0: number;
  readonly t1: number;
  /** Strips of deck that it carries. */
  readonly strips: readonly { readonly t0: number; readonly t1: number; readonly widthIn: number }[];
  /** Headers that it bears on (a tail) by their number. */
  readonly headers: readonly number[];
}

/** Across an opening from trimmer to trimmer: carries the tails, and its share of what hangs in the opening. */
export interface FrameHeader {
  readonly opening: number;
  readonly t: number;
  readonly s0: number;
  readonly s1: number;
}

export interface FramedOpening {
  readonly opening: DeckOpening;
  readonly s0: number;
  readonly s1: number;
  readonly t0: number;
  readonly t1: number;
}

/** A line of support under the joists. */
export interface FrameLine {
  readonly kind: 'stringer' | 'legs' | 'ledger';
  readonly t: number;
  /** Legs under a stringer. */
  readonly legsAt: readonly number[];
}

export interface Framing {
  readonly section: Section;
  readonly arrangement: Arrangement;
  readonly acrossIn: number;
  readonly alongIn: number;
  readonly joists: readonly FrameJoist[];
  readonly headers: readonly FrameHeader[];
  readonly openings: readonly FramedOpening[];
  readonly lines: readonly FrameLine[];
  /** Widest distance between neighbouring joists under the deck, and how many spans a panel crosses. */
  readonly widestIn: number;
  readonly gaps: number;
}

/** A trimmer or header stands this far clear of its opening, in. */
const CLEAR_IN = 0.25;
const MARGIN_IN = JOIST_IN / 2 + CLEAR_IN;
/** Shortest span of a joist, and how near to an opening a line of support may lie below its header, in. */
const LEAST_SPAN_IN = 6;
const LINE_CLEAR_IN = 1.75;
/** A ledger is 1-1/2 in thick, at the wall. */
const LEDGER_IN = 1.5;

/** The framing of a section in one arrangement; null where its parts do not fit together. */
export function frameSection(
  section: Section,
  arrangement: Arrangement,
  practice: FalseworkPractice,
): Framing | null {
  const { acrossIn, alongIn } = sectionSpread(section, arrangement.joistRun);
  const openings = section.openings
    .filter(({ isFramed }) => isFramed)
    .map((opening) => ({ opening, ...turnedPatch(opening.patch, arrangement.joistRun) }))
    .sort((a, b) => a.s0 - b.s0);
  const lines = linesOf(arrangement, acrossIn, alongIn, practice.seamIn);
  if (
    lines === null ||
    !openings.every((opening) => isFrameable(opening, lines, acrossIn, practice.seamIn))
  ) {
    return null;
  }
  for (let i = 0; i + 1 < openings.length; i++) {
    if (openings[i + 1]!.s0 - openings[i]!.s1 < 2 * MARGIN_IN + JOIST_IN) return null;
  }
  const bored = section.openings
    .filter(({ isFramed }) => !isFramed)
    .map(({ patch }) => turnedPatch(patch, arrangement.joistRun));
  const even = evenPlaces(arrangement.joistCount, acrossIn, practice.seamIn).map((s) =>
    clearOf(s, bored, acrossIn),
  );
  const placed = placesOf(even, openings);
  const headers = openings.flatMap(({ s0, s1, t0, t1 }, opening): FrameHeader[] => [
    { opening, t: t0 - MARGIN_IN, s0: s0 - MARGIN_IN, s1: s1 + MARGIN_IN },
    { opening, t: t1 + MARGIN_IN, s0: s0 - MARGIN_IN, s1: s1 + MARGIN_IN },
  ]);
  const joists = placed.flatMap((place) => joistsAt(place, placed, openings, { acrossIn, alongIn }));
  const spots = [...new Set(placed.map(({ s }) => s))];
  const gapsIn = spots.slice(1).flatMap((s, i) => {
    const isVoid = openings.some(({ s0, s1 }) => spots[i]! < s0 && s > s1);
    return isVoid ? [2 * MARGIN_IN] : [s - spots[i]!];
  });
  return {
    section,
    arrangement,
    acrossIn,
    alongIn,
    joists,
    headers,
    openings,
    lines,
    widestIn: Math.max(...gapsIn),
    gaps: gapsIn.length,
  };
}

/** A patch of a section as seen along its joists. */
export function turnedPatch(
  { p0, p1, q0, q1 }: Patch,
  run: JoistRun,
): { s0: number; s1: number; t0: number; t1: number } {
  return run === 'back' ? { s0: p0, s1: p1, t0: q0, t1: q1 } : { s0: q0, s1: q1, t0: p0, t1: p1 };
}

/** A place of the framing in the section's own measures. */
export function turnedPlace(s: number, t: number, run: JoistRun): { p: number; q: number } {
  return run === 'back' ? { p: s, q: t } : { p: t, q: s };
}

/** Depth of a size of lumber on edge, in. */
export function lumberDepthIn(size: Arrangement['joistSize']): number {
  return LUMBER[size].widthIn;
}

function linesOf(
  { lineEndIn, lineCount, ledgerSide, beamSize, legsALine, legEndIn }: Arrangement,
  acrossIn: number,
  alongIn: number,
  seamIn: number,
): FrameLine[] | null {
  const firstIn = ledgerSide === 'left' ? LEDGER_IN / 2 : seamIn + lineEndIn;
  const lastIn =
    alongIn - (ledgerSide === 'back' || ledgerSide === 'right' ? LEDGER_IN / 2 : seamIn + lineEndIn);
  const stepIn = (lastIn - firstIn) / (lineCount - 1);
  if (stepIn < LEAST_SPAN_IN) return null;
  const legsAt = beamSize === null ? [] : legPlaces(legsALine, legEndIn + seamIn, acrossIn);
  if (legsAt === null) return null;
  return Array.from({ length: lineCount }, (_, i): FrameLine => {
    const isLedger = ledgerSide !== null && i === (ledgerSide === 'left' ? 0 : lineCount - 1);
    const t = firstIn + i * stepIn;
    if (isLedger) return { kind: 'ledger', t, legsAt: [] };
    return beamSize === null ? { kind: 'legs', t, legsAt: [] } : { kind: 'stringer', t, legsAt };
  });
}

function legPlaces(count: number, endIn: number, acrossIn: number): number[] | null {
  const stepIn = (acrossIn - 2 * endIn) / (count - 1);
  if (stepIn < LEAST_SPAN_IN) return null;
  return Array.from({ length: count }, (_, i) => endIn + i * stepIn);
}

function isFrameable(
  { s0, s1, t0, t1 }: FramedOpening,
  lines: readonly FrameLine[],
  acrossIn: number,
  seamIn: number,
): boolean {
  const edgeIn = seamIn + JOIST_IN + CLEAR_IN;
  if (s0 < edgeIn || s1 > acrossIn - edgeIn) return false;
  if (lines.some(({ t }) => t > t0 - LINE_CLEAR_IN && t < t1 + LINE_CLEAR_IN)) return false;
  // Tails need a line before and behind the opening, or they would hang on their header alone.
  return lines.some(({ t }) => t < t0) && lines.some(({ t }) => t > t1);
}

function evenPlaces(count: number, acrossIn: number, seamIn: number): number[] {
  const firstIn = seamIn + JOIST_IN / 2;
  const stepIn = (acrossIn - 2 * firstIn) / (count - 1);
  return Array.from({ length: count }, (_, i) => firstIn + i * stepIn);
}

/** A joist that a bored hole would strike is moved to the nearer side of it. */
function clearOf(
  s: number,
  bored: readonly { readonly s0: number; readonly s1: number }[],
  acrossIn: number,
) {
  const struck = bored.find(({ s0, s1 }) => s > s0 - MARGIN_IN && s < s1 + MARGIN_IN);
  if (struck === undefined) return s;
  const [low, high] = [struck.s0 - MARGIN_IN, struck.s1 + MARGIN_IN];
  if (low < JOIST_IN / 2) return high;
  if (high > acrossIn - JOIST_IN / 2) return low;
  return s - low <= high - s ? low : high;
}

interface JoistPlace {
  readonly s: number;
  readonly isTrimmer: boolean;
  /** Openings that cut it short. */
  readonly cutBy: readonly number[];
}

/** Trimmers beside each opening; joists that would stand against one are left out. */
function placesOf(even: readonly number[], openings: readonly FramedOpening[]): JoistPlace[] {
  const trimmers = openings.flatMap(({ s0, s1 }) => [s0 - MARGIN_IN, s1 + MARGIN_IN]);
  const joists = even
    .filter((s) => trimmers.every((trimmer) => Math.abs(s - trimmer) >= JOIST_IN))
    .map((s) => ({
      s,
      isTrimmer: false,
      cutBy: openings.flatMap(({ s0, s1 }, i) => (s > s0 - MARGIN_IN && s < s1 + MARGIN_IN ? [i] : [])),
    }));
  return [...joists, ...trimmers.map((s) => ({ s, isTrimmer: true, cutBy: [] }))].sort((a, b) => a.s - b.s);
}

interface Spread {
  readonly acrossIn: number;
  readonly alongIn: number;
}

function joistsAt(
  place: JoistPlace,
  places: readonly JoistPlace[],
  openings: readonly FramedOpening[],
  spread: Spread,
): FrameJoist[] {
  const strips = stripsOf(place, places, openings, spread);
  const [cut] = place.cutBy;
  if (cut === undefined) {
    const kind = place.isTrimmer ? 'trimmer' : 'joist';
    return [{ kind, s: place.s, t0: 0, t1: spread.alongIn, strips, headers: [] }];
  }
  const { t0, t1 } = openings[cut]!;
  const part = (from: number, to: number, header: number): FrameJoist => ({
    kind: 'tail',
    s: place.s,
    t0: from,
    t1: to,
    strips: strips.filter((strip) => strip.t0 >= from - 1e-9 && strip.t1 <= to + 1e-9),
    headers: [header],
  });
  return [part(0, t0, 2 * cut), part(t1, spread.alongIn, 2 * cut + 1)];
}

/** The strips of deck that a joist carries, opening by opening along it: half way to each neighbour, or to the lip of the opening. */
function stripsOf(
  place: JoistPlace,
  places: readonly JoistPlace[],
  openings: readonly FramedOpening[],
  { acrossIn, alongIn }: Spread,
): { t0: number; t1: number; widthIn: number }[] {
  const cuts = [...new Set([0, alongIn, ...openings.flatMap(({ t0, t1 }) => [t0, t1])])].sort(
    (a, b) => a - b,
  );
  return cuts.slice(1).flatMap((t1, i) => {
    const t0 = cuts[i]!;
    const middle = (t0 + t1) / 2;
    const open = openings.map((opening) => middle > opening.t0 && middle < opening.t1);
    if (place.cutBy.some((cut) => open[cut])) return [];
    const present = places.filter(({ cutBy }) => !cutBy.some((cut) => open[cut]));
    const at = present.indexOf(place);
    const [before, after] = [present[at - 1]?.s ?? null, present[at + 1]?.s ?? null];
    const lips = openings.filter((_, k) => open[k]);
    const leftLip = lips.find(({ s0, s1 }) => before !== null && s0 > before && s1 < place.s);
    const rightLip = lips.find(({ s0, s1 }) => after !== null && s1 < after && s0 > place.s);
    const left = leftLip?.s1 ?? (before === null ? 0 : (before + place.s) / 2);
    const right = rightLip?.s0 ?? (after === null ? acrossIn : (after + place.s) / 2);
    return [{ t0, t1, widthIn: right - left }];
  });
}
