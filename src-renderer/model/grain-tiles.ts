/** The grain tiles of one scene on the graphics card: each is made when first used and shared by all parts. */
import {
  DataTexture,
  LinearFilter,
  LinearMipmapLinearFilter,
  RepeatWrapping,
  SRGBColorSpace,
  type Texture,
} from 'three';
import type { Grain } from './grain';
import { grainPixels, TILE_PX } from './grain';

export interface GrainTiles {
  readonly of: (grain: Grain) => Texture;
  readonly dispose: () => void;
}

/** An empty set of tiles. */
export function grainTiles(): GrainTiles {
  const made = new Map<Grain, DataTexture>();
  return {
    of: (grain) => {
      const tile = made.get(grain) ?? grainTexture(grain);
      made.set(grain, tile);
      return tile;
    },
    dispose: () => {
      for (const tile of made.values()) tile.dispose();
    },
  };
}

function grainTexture(grain: Grain): DataTexture {
  const texture = new DataTexture(grainPixels(grain), TILE_PX, TILE_PX);
  texture.colorSpace = SRGBColorSpace;
  texture.wrapS = RepeatWrapping;
  texture.wrapT = RepeatWrapping;
  texture.magFilter = LinearFilter;
  texture.minFilter = LinearMipmapLinearFilter;
  texture.generateMipmaps = true;
  texture.anisotropy = 4;
  texture.needsUpdate = true;
  return texture;
}
