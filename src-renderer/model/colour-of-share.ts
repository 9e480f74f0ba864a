/** The one colour scale of the maps: cividis, perceptually even and safe for the colour-blind (Nunez, Anderton & Renslow 2018). */
import { interpolateCividis } from 'd3-scale-chromatic';

/** Red, green and blue of the sRGB space, 0 to 255. */
export type Rgb = readonly [red: number, green: number, blue: number];

/** Entries of a table of the scale: neighbours differ by less than two steps of a channel. */
const TABLE_ENTRIES = 256;

/** Colour of a share of the limit. Below 0 and above 1 the scale's own ends; what passes 1 is hatched besides. */
export function colourOfShare(share: number): Rgb {
  if (Number.isNaN(share)) throw new Error('a share without a value has no colour');
  const [red, green, blue] = interpolateCividis(Math.min(1, Math.max(0, share)))
    .match(/\d+/g)!
    .map(Number);
  return [red!, green!, blue!];
}

/** The same as CSS writes it: "rgb(0, 34, 78)". */
export function cssOfShare(share: number): string {
  return `rgb(${colourOfShare(share).join(', ')})`;
}

/** The scale as one row of pixels, red green blue and opacity, share 0 in the first and 1 in the last. */
export function shareTable(): Uint8Array {
  const pixels = new Uint8Array(TABLE_ENTRIES * 4);
  for (let i = 0; i < TABLE_ENTRIES; i++) {
    pixels.set([...colourOfShare(i / (TABLE_ENTRIES - 1)), 255], i * 4);
  }
  return pixels;
}

/** Where in that row, 0 to 1 across it, the colour of a share is read: pixels are looked up at their middles. */
export function placeInTable(share: number): number {
  return (Math.min(1, Math.max(0, share)) * (TABLE_ENTRIES - 1) + 0.5) / TABLE_ENTRIES;
}
