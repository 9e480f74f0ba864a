/**
 * Reads quantities as people write them. Decisions, each of them tested:
 * - A bare number is in the field's unit: inch, lbf, psi, psf, pcf, lb, F under imperial; mm, N, MPa, kPa, kg/m3, kg, C under metric.
 * - A tight hyphen joins a mixed number (25-1/2) and feet to inches (2'-6"); a spaced minus outside `=` is refused.
 * - Behind `=` a minus with a space on both sides subtracts; a tight 24-1/2 is refused, since both readings are plausible.
 * - 2' 14" counts as 38 in. A fraction of one or more (11/2) needs `=`: it is more often a lost space.
 *   Behind `=` it is a division, and refused right before a unit (24/2 ft).
 * - A comma is a decimal comma; 1,500 is refused, since it may be thousands. Powers of ten (1e3) are refused.
 */
import { type Cursor, type Operand, readMeasure, refuseAt, signAt, unitAt, wholeAt } from './literals';
import { type Refusal, refuse } from './problems';
import {
  BED_STIFFNESS,
  DENSITY,
  FORCE,
  LENGTH,
  LINE_LOAD,
  LINE_STIFFNESS,
  MASS,
  POINT_STIFFNESS,
  type QuantitySpec,
  SPREAD_LOAD,
  STRESS,
  TEMPERATURE,
  type UnitSystem,
} from './quantity-specs';
import { inBareUnit, readSum } from './sums';
import { readTokens } from './tokens';

const LONGEST_TEXT = 200;
/** Beyond this many core units a number is a slip of the pen, and prints with a power of ten. */
const LARGEST_VALUE = 1e12;
const ABSOLUTE_ZERO_C = -273.15;

/** Reads a length in inches. */
export function parseLength(text: string, system: UnitSystem): { ok: true; valueIn: number } | Refusal {
  const read = parseQuantity(LENGTH, text, system);
  return read.ok ? { ok: true, valueIn: read.value } : read;
}

/** Reads a force in pounds-force. A mass (90 kg) means its weight under standard gravity. */
export function parseForce(text: string, system: UnitSystem): { ok: true; valueLbf: number } | Refusal {
  const read = parseQuantity(FORCE, text, system);
  return read.ok ? { ok: true, valueLbf: read.value } : read;
}

/** Reads a stress or strength in psi. */
export function parseStress(text: string, system: UnitSystem): { ok: true; valuePsi: number } | Refusal {
  const read = parseQuantity(STRESS, text, system);
  return read.ok ? { ok: true, valuePsi: read.value } : read;
}

/** Reads a load spread over an area, in psf. */
export function parseSpreadLoad(text: string, system: UnitSystem): { ok: true; valuePsf: number } | Refusal {
  const read = parseQuantity(SPREAD_LOAD, text, system);
  return read.ok ? { ok: true, valuePsf: read.value } : read;
}

/** Reads a load along a line, in pounds-force an inch. */
export function parseLineLoad(
  text: string,
  system: UnitSystem,
): { ok: true; valueLbfPerIn: number } | Refusal {
  const read = parseQuantity(LINE_LOAD, text, system);
  return read.ok ? { ok: true, valueLbfPerIn: read.value } : read;
}

/** Reads a density in pounds a cubic foot; a weight density (24 kN/m3) is taken at standard gravity. */
export function parseDensity(text: string, system: UnitSystem): { ok: true; valuePcf: number } | Refusal {
  const read = parseQuantity(DENSITY, text, system);
  return read.ok ? { ok: true, valuePcf: read.value } : read;
}

/** Reads a weight in pounds, as a scale or a bag label gives it. */
export function parseMass(text: string, system: UnitSystem): { ok: true; valueLb: number } | Refusal {
  const read = parseQuantity(MASS, text, system);
  return read.ok ? { ok: true, valueLb: read.value } : read;
}

/** Reads a temperature in degrees Celsius; sums are refused, since 40 F + 40 F means nothing. */
export function parseTemperature(text: string, system: UnitSystem): { ok: true; valueC: number } | Refusal {
  const read = parseQuantity(TEMPERATURE, text, system);
  if (!read.ok) return read;
  if (read.value < ABSOLUTE_ZERO_C) return refuse('below-absolute-zero', text, { spec: TEMPERATURE, system });
  return { ok: true, valueC: read.value };
}

/** Reads the stiffness of a point support in pounds-force an inch. */
export function parsePointStiffness(
  text: string,
  system: UnitSystem,
): { ok: true; valueLbfPerIn: number } | Refusal {
  const read = parseQuantity(POINT_STIFFNESS, text, system);
  return read.ok ? { ok: true, valueLbfPerIn: read.value } : read;
}

/** Reads the stiffness of a line support in pounds-force an inch, per inch of line. */
export function parseLineStiffness(
  text: string,
  system: UnitSystem,
): { ok: true; valueLbfPerIn2: number } | Refusal {
  const read = parseQuantity(LINE_STIFFNESS, text, system);
  return read.ok ? { ok: true, valueLbfPerIn2: read.value } : read;
}

/** Reads the stiffness of a bed (mortar, pier top) in pounds-force an inch, per square inch. */
export function parseBedStiffness(
  text: string,
  system: UnitSystem,
): { ok: true; valueLbfPerIn3: number } | Refusal {
  const read = parseQuantity(BED_STIFFNESS, text, system);
  return read.ok ? { ok: true, valueLbfPerIn3: read.value } : read;
}

function parseQuantity(
  spec: QuantitySpec,
  text: string,
  system: UnitSystem,
): { ok: true; value: number } | Refusal {
  const reading = { text, spec, system };
  if (text.length > LONGEST_TEXT) return refuse('too-long', '', reading);
  if (text.trim() === '') return refuse('empty', '', reading);
  const equals = /^\s*=/.exec(text);
  const isSum = equals !== null;
  if (isSum && spec === TEMPERATURE) return refuse('no-sums', text, reading);
  const cut = readTokens(reading, equals?.[0].length ?? 0);
  if (!cut.ok) return cut;
  const cursor: Cursor = { ...reading, tokens: cut.tokens, isSum, at: 0 };
  const operand = isSum ? readSum(cursor) : readPlain(cursor);
  if (!operand.ok) return operand;
  if (operand.sort === 'ratio') return refuse('wrong-kind', text, reading);
  const value = inBareUnit(cursor, operand);
  if (!(Math.abs(value) <= LARGEST_VALUE)) return refuse('too-large', text, reading);
  // Adding 0 turns -0 into 0.
  return { ok: true, value: value + 0 };
}

/** Reads one signed measure, to the end of the text. */
function readPlain(cursor: Cursor): Operand | Refusal {
  const sign = signAt(cursor, 0)?.sign;
  if (sign === '-' || sign === '+') cursor.at = 1;
  const measure = readMeasure(cursor, sign === '-' ? -1 : 1);
  if (!measure.ok) return measure;
  const left = cursor.tokens[cursor.at];
  return left ? refuseLeftover(cursor, left.start, measure) : measure;
}

function refuseLeftover(cursor: Cursor, start: number, read: Operand): Refusal {
  const sign = signAt(cursor, cursor.at)?.sign;
  if (sign === undefined || sign === ')') return refuseAt(cursor, 'not-understood', start);
  const next = cursor.tokens[cursor.at + 1];
  const afterFeet = unitAt(cursor, cursor.at - 1) === cursor.spec.feetAndInches?.feet;
  const mayJoin = (wholeAt(cursor, cursor.at - 1) && next?.kind === 'fraction') || (afterFeet && next);
  return sign === '-' && mayJoin
    ? refuseAt(cursor, 'unclear-minus', read.start)
    : refuseAt(cursor, 'needs-equals', 0);
}
