/** Places for the words beside the knots: none over another, each near its knot, neighbours together where there is no room. */
import { eventsWords } from './knots';

export interface LabelWish {
  /** Place of the knot on the string, px. */
  readonly xPx: number;
  /** Words to try, the fullest first. */
  readonly texts: readonly string[];
  /** Events that the words stand for. */
  readonly count: number;
}

export interface PlacedLabel {
  readonly text: string;
  readonly leftPx: number;
  readonly widthPx: number;
  /** 0 is next to the string. */
  readonly level: number;
  /** Knots that it stands for, px. */
  readonly knotsPx: readonly number[];
}

export interface LabelRoom {
  /** The words lie between these, px. */
  readonly fromPx: number;
  readonly toPx: number;
  readonly levels: number;
  readonly widthOf: (text: string) => number;
}

interface Group {
  readonly knotsPx: readonly number[];
  readonly texts: readonly string[];
  readonly count: number;
}

/** Clear room between two labels on a level, px. */
const GAP_PX = 8;
/** A label stands at most this far from over its knot, px, but where an end of the string pushes it in. */
const MOST_ASIDE_PX = 30;
/** A leader begins at least this far within its words, px, and passes other words at least that far off. */
const LEADER_INSET_PX = 4;
const LEADER_CLEAR_PX = 1;
/** Ways to place what lies left of a knot that are kept in mind. */
const WAYS = 8;

/** Labels placed so far, and how well: how far aside they stand in all, and how high. */
interface Way {
  readonly placed: readonly PlacedLabel[];
  readonly asidePx: number;
  readonly levels: number;
}

/**
 * Each as near over its knot as can be, next to the string before a level higher, and no leader through the words of another. Where no
 * words fit, the knot joins the one before it as "3 events" and all are placed anew; what cannot stand at all is left without words.
 */
export function placeLabels(wishes: readonly LabelWish[], room: LabelRoom): PlacedLabel[] {
  const groups: Group[] = wishes
    .filter(({ texts }) => texts.length > 0)
    .map(({ xPx, texts, count }) => ({ knotsPx: [xPx], texts, count }))
    .sort((a, b) => a.knotsPx[0]! - b.knotsPx[0]!);
  for (;;) {
    let ways: readonly Way[] = [{ placed: [], asidePx: 0, levels: 0 }];
    const misfit = groups.findIndex((group) => {
      const next = waysOn(group, ways, room);
      if (next.length > 0) ways = next;
      return next.length === 0;
    });
    if (misfit < 0) return [...ways[0]!.placed];
    if (misfit === 0) groups.shift();
    else groups.splice(misfit - 1, 2, joined(groups[misfit - 1]!, groups[misfit]!));
  }
}

/** Where the leader of a label leaves its words for a knot, px. */
export function leaderFromPx({ leftPx, widthPx }: PlacedLabel, knotPx: number): number {
  return Math.max(leftPx + LEADER_INSET_PX, Math.min(knotPx, leftPx + widthPx - LEADER_INSET_PX));
}

function joined(one: Group, other: Group): Group {
  const count = one.count + other.count;
  return { knotsPx: [...one.knotsPx, ...other.knotsPx], texts: [eventsWords(count)], count };
}

/** The best ways to go on with one more label, with the fullest of its words that fit. */
function waysOn(group: Group, ways: readonly Way[], room: LabelRoom): readonly Way[] {
  for (const text of group.texts) {
    const next = ways.flatMap((way) => waysWith(group, text, way, room));
    next.sort((a, b) => a.asidePx - b.asidePx || a.levels - b.levels);
    if (next.length > 0) return next.slice(0, WAYS);
  }
  return [];
}

function waysWith({ knotsPx }: Group, text: string, way: Way, room: LabelRoom): Way[] {
  const { placed } = way;
  const widthPx = room.widthOf(text);
  const wantedPx = (knotsPx[0]! + knotsPx.at(-1)!) / 2 - widthPx / 2;
  return Array.from({ length: room.levels }, (_, level) => level).flatMap((level) => {
    const ends = placed.filter((label) => label.level === level).map((label) => label.leftPx + label.widthPx);
    const freePx = Math.max(room.fromPx, ...ends.map((endPx) => endPx + GAP_PX));
    const nextPx = Math.max(freePx, Math.min(wantedPx, room.toPx - widthPx));
    const leftPx = Math.max(nextPx, ...leadersThrough(placed, level, nextPx, widthPx).map(beyond));
    const asidePx = Math.abs(leftPx - wantedPx);
    const isNear = asidePx <= MOST_ASIDE_PX || leftPx === room.fromPx || leftPx === room.toPx - widthPx;
    const label = { text, leftPx, widthPx, level, knotsPx };
    if (leftPx + widthPx > room.toPx || !isNear) return [];
    if (placed.some((other) => crosses(label, other) || crosses(other, label))) return [];
    return [{ placed: [...placed, label], asidePx: way.asidePx + asidePx, levels: way.levels + level }];
  });
}

/** Where leaders of what stands higher would come down through words at a place, px. */
function leadersThrough(
  placed: readonly PlacedLabel[],
  level: number,
  leftPx: number,
  widthPx: number,
): number[] {
  return placed
    .filter((other) => other.level > level)
    .flatMap((other) => other.knotsPx.map((knotPx) => Math.max(knotPx, leaderFromPx(other, knotPx))))
    .filter((leaderPx) => leaderPx > leftPx - LEADER_CLEAR_PX && leaderPx < leftPx + widthPx);
}

function beyond(leaderPx: number): number {
  return leaderPx + LEADER_INSET_PX;
}

/** Whether a leader of a label would run through the words of one below it. */
function crosses(label: PlacedLabel, below: PlacedLabel): boolean {
  if (below.level >= label.level) return false;
  const fromPx = below.leftPx - LEADER_CLEAR_PX;
  const toPx = below.leftPx + below.widthPx + LEADER_CLEAR_PX;
  return label.knotsPx.some((knotPx) => {
    const topPx = leaderFromPx(label, knotPx);
    return Math.max(topPx, knotPx) > fromPx && Math.min(topPx, knotPx) < toPx;
  });
}
