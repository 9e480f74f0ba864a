/** The sheet that carries a map over a slab, and what is painted on it. */
import {
  BufferAttribute,
  BufferGeometry,
  ClampToEdgeWrapping,
  DataTexture,
  LinearFilter,
  RepeatWrapping,
  SRGBColorSpace,
} from 'three';
import { placeInTable, shareTable } from './colour-of-share';

/** Height of the sheet over the top of the slab, in: enough not to flicker, too little to see. */
export const MAP_LIFT_IN = 0.03;
/** Width of a stripe and the space beside it, in. */
const HATCH_IN = 0.9;
const HATCH_PX = 32;

/** A sheet through the nodes of a map; the second coordinate of the table is not used, the first reads the colour. */
export function sheetGeometry(
  positions: Float32Array,
  triangles: Uint32Array,
  shares: Float32Array,
): BufferGeometry {
  const places = new Float32Array(shares.length * 2);
  for (const [node, share] of shares.entries()) {
    places[node * 2] = placeInTable(share);
    places[node * 2 + 1] = 0.5;
  }
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(positions, 3));
  geometry.setAttribute('uv', new BufferAttribute(places, 2));
  geometry.setIndex(new BufferAttribute(triangles, 1));
  return geometry;
}

/**
 * The colour table on the graphics card. Reading the colour for each pixel, rather than mixing the colours of the nodes, keeps every
 * pixel on the scale that the legend shows.
 */
export function tableTexture(): DataTexture {
  const pixels = shareTable();
  const texture = new DataTexture(pixels, pixels.length / 4, 1);
  texture.colorSpace = SRGBColorSpace;
  texture.wrapS = ClampToEdgeWrapping;
  texture.minFilter = LinearFilter;
  texture.magFilter = LinearFilter;
  texture.needsUpdate = true;
  return texture;
}

/** Triangles of the plan at one height, with places in the hatch. */
export function hatchGeometry(planTriangles: Float32Array, zIn: number): BufferGeometry {
  const positions = new Float32Array((planTriangles.length / 2) * 3);
  const places = new Float32Array(planTriangles.length);
  for (let v = 0; v < planTriangles.length / 2; v++) {
    const x = planTriangles[v * 2]!;
    const y = planTriangles[v * 2 + 1]!;
    positions.set([x, y, zIn], v * 3);
    places.set([x / HATCH_IN, y / HATCH_IN], v * 2);
  }
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(positions, 3));
  geometry.setAttribute('uv', new BufferAttribute(places, 2));
  return geometry;
}

/** Slanting stripes, opaque on nothing, that meet themselves at the tile's ends. */
export function hatchTexture(): DataTexture {
  const pixels = new Uint8Array(HATCH_PX * HATCH_PX * 4);
  for (let row = 0; row < HATCH_PX; row++) {
    for (let column = 0; column < HATCH_PX; column++) {
      const isStripe = (row + column) % HATCH_PX < HATCH_PX / 4;
      pixels.set([36, 39, 44, isStripe ? 255 : 0], (row * HATCH_PX + column) * 4);
    }
  }
  const texture = new DataTexture(pixels, HATCH_PX, HATCH_PX);
  texture.colorSpace = SRGBColorSpace;
  texture.wrapS = RepeatWrapping;
  texture.wrapT = RepeatWrapping;
  texture.minFilter = LinearFilter;
  texture.magFilter = LinearFilter;
  texture.needsUpdate = true;
  return texture;
}
