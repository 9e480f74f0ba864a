import type { Solid, SolidMaterial } from './types';

/** One part of a support before it is known whose it is. */
export interface SupportPart {
  readonly material: SolidMaterial;
  readonly solid: Solid;
}
