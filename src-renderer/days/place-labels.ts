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

/**
 * Left to right, each on the level where it stands nearest over its knot. Where no words fit, the knot joins the one before it as
 * "3 events" and all are placed anew; what cannot stand at all is left without words.
 */
export function placeLabels(wishes: readonly LabelWish[], room: LabelRoom): PlacedLabel[] {
  const groups: Group[] = wishes
    .filter(({ texts }) => texts.length > 0)
    .map(({ xPx, texts, count }) => ({ knotsPx: [xPx], texts, count }))
    .sort((a, b) => a.knotsPx[0]! - b.knotsPx[0]!);
  for (;;) {
    const placed: PlacedLabel[] = [];
    const misfit = groups.findIndex((group) => {
      const label = placeOne(group, placed, room);
      if (label !== null) placed.push(label);
      return label === null;
    });
    if (misfit < 0) return placed;
    if (misfit === 0) groups.shift();
    else groups.splice(misfit - 1, 2, joined(groups[misfit - 1]!, groups[misfit]!));
  }
}

function joined(one: Group, other: Group): Group {
  const count = one.count + other.count;
  return { knotsPx: [...one.knotsPx, ...other.knotsPx], texts: [eventsWords(count)], count };
}

function placeOne(group: Group, placed: readonly PlacedLabel[], room: LabelRoom): PlacedLabel | null {
  const { knotsPx, texts } = group;
  const middlePx = (knotsPx[0]! + knotsPx.at(-1)!) / 2;
  for (const text of texts) {
    const widthPx = room.widthOf(text);
    if (widthPx > room.toPx - room.fromPx) continue;
    const wantedPx = middlePx - widthPx / 2;
    const tries = Array.from({ length: room.levels }, (_, level) => {
      const ends = placed
        .filter((label) => label.level === level)
        .map((label) => label.leftPx + label.widthPx);
      const freePx = Math.max(room.fromPx, ...ends.map((endPx) => endPx + GAP_PX));
      const leftPx = Math.max(freePx, Math.min(wantedPx, room.toPx - widthPx));
      return { level, leftPx, asidePx: Math.abs(leftPx - wantedPx), fits: leftPx + widthPx <= room.toPx };
    }).filter(
      ({ asidePx, fits, leftPx }) =>
        fits && (asidePx <= MOST_ASIDE_PX || leftPx === room.fromPx || leftPx === room.toPx - widthPx),
    );
    const best = tries.sort((a, b) => a.asidePx - b.asidePx || a.level - b.level)[0];
    if (best !== undefined) return { text, leftPx: best.leftPx, widthPx, level: best.level, knotsPx };
  }
  return null;
}
