/** Which of many labels can stand on the plan without covering each other, and where. */
import type { Pixel } from './frame';

/** An upright rectangle on the screen, px. */
export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export interface Label {
  readonly key: string;
  /** Where it may stand, the best place first; none where it would not fit anywhere. */
  readonly places: readonly Box[];
  /** A label that is asked for: it takes its best place though others stand there. */
  readonly isKept?: boolean;
}

/**
 * Gives each label the first of its places that is free, those that come first having the first right: the number of that place by
 * key. What finds none is left out. `taken` is where nothing may stand.
 */
export function declutter(labels: readonly Label[], taken: readonly Box[]): ReadonlyMap<string, number> {
  const full = [...taken];
  const placed = new Map<string, number>();
  for (const { key, places, isKept = false } of labels) {
    const free = places.findIndex((box) => !full.some((other) => overlap(box, other)));
    const at = free < 0 && isKept && places.length > 0 ? 0 : free;
    if (at < 0) continue;
    full.push(places[at]!);
    placed.set(key, at);
  }
  return placed;
}

/** Box of a size about its middle, turned by an angle. */
export function boxAbout({ xPx, yPx }: Pixel, widthPx: number, heightPx: number, turnDeg = 0): Box {
  const c = Math.abs(Math.cos((turnDeg * Math.PI) / 180));
  const s = Math.abs(Math.sin((turnDeg * Math.PI) / 180));
  const halfX = (c * widthPx + s * heightPx) / 2;
  const halfY = (s * widthPx + c * heightPx) / 2;
  return { left: xPx - halfX, right: xPx + halfX, top: yPx - halfY, bottom: yPx + halfY };
}

function overlap(a: Box, b: Box): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}
