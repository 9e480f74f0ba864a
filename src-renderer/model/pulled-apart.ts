/** How far the parts of a piece are lifted when the drawing is pulled apart. */

const SLAB_IN = 18;
const BOWL_IN = 9;

/** Lift of a part in inches for a share from 0, together, to 1. Supports stay on the floor. */
export function liftIn(part: 'slab' | 'bowl' | 'support', share: number): number {
  switch (part) {
    case 'slab':
      return SLAB_IN * share;
    case 'bowl':
      return BOWL_IN * share;
    case 'support':
      return 0;
  }
}
