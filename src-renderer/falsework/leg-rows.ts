/** Every leg as it is cut: its number, its length, its shim, the floor below it, and what is amiss with it. */
import type { FalseworkDesign } from '../../src-core/falsework';
import { legNumber, sectionLetter } from '../../src-core/falsework';
import { printForce, printLength, type UnitSystem } from '../../src-core/units';

/** Shims are printed to a thirty-second. */
const SHIM_STEP_IN = 1 / 32;

export interface LegRow {
  readonly id: string;
  readonly number: string;
  readonly cut: string;
  readonly shim: string;
  /** Height of the floor under its foot against the highest reading. */
  readonly floor: string;
  readonly load: string;
  readonly warnings: readonly string[];
}

export interface LegGroup {
  readonly letter: string;
  readonly name: string;
  /** Size of the lumber: 2x4. */
  readonly size: string;
  readonly rows: readonly LegRow[];
}

/** Legs by section, in the order of the drawing. Loads are rounded up. */
export function legGroups(design: FalseworkDesign, system: UnitSystem): LegGroup[] {
  return design.sections.map(({ section, worked, legs }, index) => {
    const letter = sectionLetter(index);
    return {
      letter,
      name: section.name,
      size: worked.framing.arrangement.legSize,
      rows: legs.map(({ id, leg, loadLbf }, i) => ({
        id,
        number: legNumber(letter, i),
        cut: leg.cutIn > 0 ? printLength(leg.cutIn, { system }) : 'no room',
        shim: leg.cutIn > 0 ? printLength(leg.shimIn, { system, roundToIn: SHIM_STEP_IN }) : 'none',
        floor: design.floor === null ? 'not read' : printLength(leg.floorIn, { system }),
        load: printForce(Math.ceil(loadLbf), { system, digits: 3 }),
        warnings: leg.warnings.map(({ sentence }) => sentence),
      })),
    };
  });
}
