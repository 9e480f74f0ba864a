/** Readings of a floor as heights, whichever way they were taken. */
import type { Site } from '../job';
import type { Point } from '../outline';

export type LevelReadings = Site['levels'];

/** A place on the floor and its height above the datum. */
export interface FloorPoint extends Point {
  readonly heightIn: number;
}

/**
 * What height 0 is. The highest reading; or one reading whose height is known; or as read, where a height is taken as written and
 * a rod reading as so far below the line of sight.
 */
export type FloorDatum =
  | { readonly kind: 'highest' }
  | { readonly kind: 'reading'; readonly id: string; readonly heightIn: number }
  | { readonly kind: 'as-read' };

/**
 * Heights of the readings above the datum, in, in their order. A height grows as the floor rises, a rod reading as it falls, so a
 * rod reading is turned over. Surveying, any text.
 */
export function floorHeights(levels: LevelReadings, datum: FloorDatum): FloorPoint[] {
  const sign = levels.convention === 'rod' ? -1 : 1;
  const raw = levels.readings.map(({ id, xIn, yIn, valueIn }) => ({
    id,
    xIn,
    yIn,
    heightIn: sign * valueIn,
  }));
  const shiftIn = shiftOf(raw, datum);
  return raw.map(({ xIn, yIn, heightIn }) => ({ xIn, yIn, heightIn: heightIn + shiftIn }));
}

function shiftOf(
  raw: readonly { readonly id: string; readonly heightIn: number }[],
  datum: FloorDatum,
): number {
  if (datum.kind === 'as-read' || raw.length === 0) return 0;
  if (datum.kind === 'highest') return -Math.max(...raw.map(({ heightIn }) => heightIn));
  const known = raw.find(({ id }) => id === datum.id);
  if (known === undefined) throw new Error(`No level reading has the id ${datum.id}`);
  return datum.heightIn - known.heightIn;
}
