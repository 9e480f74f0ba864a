/** How much of each handle is drawn where they crowd at a small scale. */
import type { Pixel } from './frame';
import type { Handle } from './handles';

/** Hidden handles keep their place in the order of Tab, and show while they have the focus. */
export type HandleSize = 'full' | 'small' | 'hidden';

export interface HandleSpot {
  readonly key: string;
  readonly role: Handle['role'];
  readonly at: Pixel;
  readonly isPicked: boolean;
  /** Length on the screen of what it takes hold of, px; null for what has none. */
  readonly lengthPx: number | null;
}

/** Of two handles nearer than this only one is drawn. */
const APART_PX = 12;
/** Handles nearer than this to another are drawn small. */
const FREE_PX = 24;
/** Of an edge or a cutout shorter than this the handle in its middle hides what it moves. */
const LEAST_LENGTH_PX = 34;

/** The outline comes before what lies on it and under it. */
const RANK: { readonly [R in Handle['role']]: number } = {
  corner: 1,
  edge: 2,
  piece: 3,
  cutout: 4,
  'cutout-size': 5,
  load: 6,
  support: 7,
  'support-end': 8,
};

/** What is drawn of each handle, by key: what is picked always whole. */
export function thinHandles(spots: readonly HandleSpot[]): ReadonlyMap<string, HandleSize> {
  const rankOf = ({ isPicked, role }: HandleSpot) => (isPicked ? 0 : RANK[role]);
  const inOrder = [...spots].sort((a, b) => rankOf(a) - rankOf(b));
  const shown: HandleSpot[] = [];
  for (const spot of inOrder) {
    const isLong = spot.lengthPx === null || spot.lengthPx >= LEAST_LENGTH_PX;
    if (spot.isPicked || (isLong && shown.every((other) => apartPx(spot, other) >= APART_PX)))
      shown.push(spot);
  }
  const isShown = new Set(shown);
  return new Map(
    spots.map((spot): [string, HandleSize] => {
      if (!isShown.has(spot)) return [spot.key, 'hidden'];
      const isFree = shown.every((other) => other === spot || apartPx(spot, other) >= FREE_PX);
      return [spot.key, spot.isPicked || isFree ? 'full' : 'small'];
    }),
  );
}

function apartPx({ at: a }: HandleSpot, { at: b }: HandleSpot): number {
  return Math.hypot(a.xPx - b.xPx, a.yPx - b.yPx);
}
