/** Prints the numbers of a result in the units in which the job is shown. */
import type { Quantity } from '../checks';
import type { UnitSystem } from '../units';
import {
  IN2_PER_FT2,
  printArea,
  printCouple,
  printDeflection,
  printForce,
  printLength,
  printLineLoad,
  printMass,
  printMoment,
  printSpreadLoad,
  printStress,
} from '../units';
import { printSignificant } from '../workings';

const DIGITS = 4;
const TAPE_MARKS_PER_IN = 16;
const ON_A_MARK = 1e-9;
const HIGHEST_PRINTED = 999;

/** Prints a demand or a capacity. A unit without a printer of its own keeps its name. */
export function printQuantity({ value, unit }: Quantity, system: UnitSystem): string {
  const how = { system };
  switch (unit) {
    case 'lbf':
      return printForce(value, how);
    case 'lb':
      return printMass(value, how);
    case 'in':
      return printSize(value, system);
    case 'in2':
      return printArea(value, how);
    case 'ft2':
      return printArea(value * IN2_PER_FT2, how);
    case 'psi':
      return printStress(value, how);
    case 'psf':
      return printSpreadLoad(value, how);
    case 'lbf-in':
      return printCouple(value, how);
    case 'lbf-in/in':
      return printMoment(value, how);
    case 'lbf/in':
      return printLineLoad(value, how);
    default:
      return `${printSignificant(value, DIGITS)} ${unit}`.trimEnd();
  }
}

/** A length that lies on a tape's marks as a tape shows it, any other in decimals. */
function printSize(valueIn: number, system: UnitSystem): string {
  const marks = valueIn * TAPE_MARKS_PER_IN;
  const isOnTape = Math.abs(marks - Math.round(marks)) < ON_A_MARK;
  return system === 'imperial' && isOnTape
    ? printLength(valueIn, { system })
    : printDeflection(valueIn, { system });
}

/** Demand over capacity with two decimals. What is over the limit never reads 1.00. */
export function printRatio(ratio: number): string {
  if (ratio > HIGHEST_PRINTED) return `over ${HIGHEST_PRINTED}`;
  const rounded = ratio.toFixed(2);
  return ratio > 1 && rounded === '1.00' ? '1.01' : rounded;
}
