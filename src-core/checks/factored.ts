/** Factored effects from the lasting part and the whole of a service effect. */
import type { Formula } from '../workings';
import { formula } from '../workings';

/**
 * Factored effect of self weight and live load, in the unit given. D: the lasting part; S: lasting and live together,
 * both in service. Where the contact of the slab changes with the load this is not exact: for information and for shear,
 * while moments on steel are solved anew under factored load. ASCE 7-22 2.3.1, combinations 1 and 2.
 */
export function factoredEffect(
  symbol: string,
  label: string,
  unit: string,
): Formula<{ readonly D: number; readonly S: number }> {
  return formula<{ readonly D: number; readonly S: number }>({
    symbol,
    label,
    formula: 'max(1.4 * D, 1.2 * D + 1.6 * (S - D))',
    units: { D: unit, S: unit },
    unit,
    source: 'ASCE 7-22 2.3.1, combinations 1 and 2 (D: lasting part, S: lasting and live together)',
    compute: ({ D, S }) => Math.max(1.4 * D, 1.2 * D + 1.6 * (S - D)),
  });
}
