/** The fine grain of concrete and timber as grey pixels that repeat without a seam. */
import type { Piece } from '../../src-core/job';

export type Grain = Piece['finish'] | 'timber';

/** Pixels along a side of the tile, and how much of the drawing one tile covers. */
export const TILE_PX = 256;
export const TILE_IN = 24;

interface Layer {
  /** Cells of the noise across the tile and along it. */
  readonly across: number;
  readonly along: number;
  /** Largest lightening or darkening, of 255. */
  readonly strength: number;
  /** Stones show as cells with edges, mottling as soft clouds. */
  readonly isSoft: boolean;
}

const LAYERS: { readonly [G in Grain]: readonly Layer[] } = {
  smooth: [
    { across: 6, along: 6, strength: 9, isSoft: true },
    { across: 64, along: 64, strength: 5, isSoft: true },
  ],
  honed: [
    { across: 10, along: 10, strength: 6, isSoft: true },
    { across: 128, along: 128, strength: 14, isSoft: false },
  ],
  exposed: [
    { across: 48, along: 48, strength: 38, isSoft: false },
    { across: 128, along: 128, strength: 16, isSoft: false },
  ],
  timber: [
    { across: 64, along: 2, strength: 12, isSoft: true },
    { across: 128, along: 8, strength: 8, isSoft: true },
  ],
};
/** Lightest grey; the material's colour is multiplied with it. */
const MOST = 255;

/** One tile, red green blue and opacity a pixel, row by row; the same each time. */
export function grainPixels(grain: Grain): Uint8Array {
  const layers = LAYERS[grain];
  const depth = layers.reduce((sum, { strength }) => sum + strength, 0);
  const pixels = new Uint8Array(TILE_PX * TILE_PX * 4);
  for (let row = 0; row < TILE_PX; row++) {
    for (let column = 0; column < TILE_PX; column++) {
      let grey = MOST - depth;
      for (const layer of layers) grey += layer.strength * noiseAt(layer, column / TILE_PX, row / TILE_PX);
      const at = (row * TILE_PX + column) * 4;
      pixels.fill(Math.round(grey), at, at + 3);
      pixels[at + 3] = 255;
    }
  }
  return pixels;
}

/** Value noise, -1 to 1; the lattice wraps at the tile's ends. */
function noiseAt({ across, along, isSoft }: Layer, u: number, v: number): number {
  const x = u * across;
  const y = v * along;
  const [left, low] = [Math.floor(x), Math.floor(y)];
  const at = (i: number, k: number) => scatter((left + i) % across, (low + k) % along);
  if (!isSoft) return at(0, 0);
  const [s, t] = [eased(x - left), eased(y - low)];
  return (at(0, 0) * (1 - s) + at(1, 0) * s) * (1 - t) + (at(0, 1) * (1 - s) + at(1, 1) * s) * t;
}

function eased(t: number): number {
  return t * t * (3 - 2 * t);
}

/** A number from -1 to 1 that looks random and is fixed for its cell (integer mixing after Jenkins). */
function scatter(i: number, k: number): number {
  let mixed = Math.imul(i + 1, 0x9e3779b1) ^ Math.imul(k + 1, 0x85ebca6b);
  mixed = Math.imul(mixed ^ (mixed >>> 15), 0xc2b2ae35);
  mixed ^= mixed >>> 13;
  return ((mixed >>> 0) / 0xffffffff) * 2 - 1;
}
