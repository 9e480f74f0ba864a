/** Colour and sheen of what stands round a slab. */
import type { SolidMaterial } from '../../src-core/solid';
import type { Rgb } from './colour-of-share';
import type { Grain } from './grain';

export interface MaterialLook {
  readonly rgb: Rgb;
  readonly roughness: number;
  readonly metalness: number;
  readonly grain: Grain | null;
}

/** Everyday colours of the materials; none says anything about strength. */
export const MATERIAL_LOOKS: { readonly [M in SolidMaterial]: MaterialLook } = {
  concrete: { rgb: [176, 172, 163], roughness: 0.85, metalness: 0, grain: 'honed' },
  timber: { rgb: [222, 194, 146], roughness: 0.8, metalness: 0, grain: 'timber' },
  'painted-panel': { rgb: [181, 191, 184], roughness: 0.6, metalness: 0, grain: null },
  block: { rgb: [203, 197, 186], roughness: 0.95, metalness: 0, grain: 'honed' },
  brick: { rgb: [168, 108, 86], roughness: 0.95, metalness: 0, grain: 'honed' },
  steel: { rgb: [72, 77, 84], roughness: 0.5, metalness: 0.2, grain: null },
  stone: { rgb: [184, 175, 160], roughness: 0.9, metalness: 0, grain: 'exposed' },
  mortar: { rgb: [212, 207, 197], roughness: 1, metalness: 0, grain: 'honed' },
  sink: { rgb: [190, 195, 199], roughness: 0.35, metalness: 0.35, grain: null },
  equipment: { rgb: [62, 65, 70], roughness: 0.6, metalness: 0, grain: null },
};
