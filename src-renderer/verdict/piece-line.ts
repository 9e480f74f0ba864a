/** The line under a verdict that says which slab it is about. */
import type { UnitSystem } from '../../src-core/units';
import { IN2_PER_FT2, printArea, printLength, printMass } from '../../src-core/units';
import type { PieceResult } from '../../src-core/verdict';

const DIGITS = 3;

type Measures = Pick<PieceResult, 'thicknessIn' | 'areaFt2' | 'weightLb' | 'copies'>;

/** "1-1/2 in thick, 17 sq ft, 308 lb each, 3 of them". Area and weight are left out where the slab was not measured. */
export function pieceLine({ thicknessIn, areaFt2, weightLb, copies }: Measures, system: UnitSystem): string {
  const each = copies > 1 ? ' each' : '';
  return [
    `${printLength(thicknessIn, { system })} thick`,
    ...(areaFt2 > 0 ? [printArea(areaFt2 * IN2_PER_FT2, { system, digits: DIGITS })] : []),
    ...(weightLb > 0 ? [`${printMass(weightLb, { system, digits: DIGITS })}${each}`] : []),
    ...(copies > 1 ? [`${copies} of them`] : []),
  ].join(', ');
}
