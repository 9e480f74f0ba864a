/** Wet concrete lifts what lies in it and is lighter. */
import { formula } from '../workings';

/**
 * Uplift of a form in wet concrete, lbf; below 0 it stays down by itself. w: density of the wet concrete, lb/ft3;
 * V: volume that lies in the concrete, in3; Wo: the form's own weight, lb. Buoyancy (Archimedes).
 */
export const formUplift = formula<Readonly<Record<'w' | 'V' | 'Wo', number>>>({
  symbol: 'U',
  label: 'uplift of the form in wet concrete, less its own weight',
  formula: 'w * V / 1728 - Wo',
  units: { w: 'lb/ft3', V: 'in3', Wo: 'lb' },
  unit: 'lbf',
  source: 'buoyancy: weight of the concrete displaced',
  compute: ({ w, V, Wo }) => (w * V) / 1728 - Wo,
});

/** What is known of the uplift of a form that stands on the deck: when it acts, and why it is counted all the same. */
export const UPLIFT_WORDS =
  'A form that stands tight on the deck is pressed from its sides only and is not lifted. Once mix gets under it, it floats like a closed box of its size. It is held down as if it floated, which is on the safe side.';
