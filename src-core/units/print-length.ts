/** Prints lengths: inches and fractions, feet and inches, or millimetres. */
import { IN_PER_FT, MM_PER_IN } from './conversions';
import type { UnitSystem } from './quantity-specs';

export interface LengthPrint {
  readonly system: UnitSystem;
  /** Imperial: 25-1/2 in, or 2' 1-1/2". Inches unless told. */
  readonly style?: 'inches' | 'feet-inches';
  /** Imperial: 1, 1/2, 1/4 ... 1/64. A sixteenth unless told. */
  readonly roundToIn?: number;
  /** Metric: one of `MM_STEPS`. A millimetre unless told. */
  readonly roundToMm?: number;
}

const INCH_PARTS = [1, 2, 4, 8, 16, 32, 64];
const MM_STEPS = [10, 5, 1, 0.5, 0.1, 0.01];

/**
 * Prints a length in inches as a tape shows it, rounded to the nearest step (halves away from zero).
 * The text reads back within half a step; rounding carries into the next inch and foot; zero has no sign.
 */
export function printLength(valueIn: number, how: LengthPrint): string {
  if (!Number.isFinite(valueIn)) throw new Error(`A length must be finite to be printed: ${valueIn}`);
  return how.system === 'imperial' ? printInches(valueIn, how) : printMillimetres(valueIn, how);
}

/** Finest mark that is still written as a fraction, and how near to it a length is that mark, in. */
const FINEST_PARTS = 64;
const ON_MARK_IN = 1e-6;

/**
 * Prints a length that is not to be rounded to a tape, such as one that may be edited or a limit: 25-1/2 in, 0.08 in where no
 * mark of the tape fits, 647.7 mm. Decimals stop at four of an inch and two of a millimetre.
 */
export function printExactLength(valueIn: number, { system }: Pick<LengthPrint, 'system'>): string {
  if (!Number.isFinite(valueIn)) throw new Error(`A length must be finite to be printed: ${valueIn}`);
  if (system === 'metric') return `${trimmed(valueIn * MM_PER_IN, 2)} mm`;
  const marks = valueIn * FINEST_PARTS;
  if (Math.abs(marks - Math.round(marks)) < ON_MARK_IN * FINEST_PARTS) {
    return printLength(valueIn, { system, roundToIn: 1 / FINEST_PARTS });
  }
  return `${trimmed(valueIn, 4)} in`;
}

function trimmed(value: number, decimals: number): string {
  const text = value.toFixed(decimals).replace(/\.?0+$/, '');
  return text === '-0' ? '0' : text;
}

function printInches(valueIn: number, how: LengthPrint): string {
  const parts = Math.round(1 / (how.roundToIn ?? 1 / 16));
  if (!INCH_PARTS.includes(parts) || (how.roundToIn ?? 1 / 16) * parts !== 1) {
    throw new Error(`Inches are rounded to 1, 1/2 ... 1/64, not to ${how.roundToIn}`);
  }
  // All in whole parts of an inch, so that 11-31/32 carries to 1' 0" rather than to 12".
  const total = Math.round(Math.abs(valueIn) * parts);
  const sign = valueIn < 0 && total > 0 ? '-' : '';
  const inches = Math.floor(total / parts);
  const rest = total % parts;
  if (how.style !== 'feet-inches') return `${sign}${mixedNumber(inches, rest, parts)} in`;
  const feet = Math.floor(inches / IN_PER_FT);
  const over = mixedNumber(inches % IN_PER_FT, rest, parts);
  if (feet === 0) return `${sign}${over}"`;
  // 1' 0-1/8" rather than 1' 1/8": the zero keeps the eye from reading a foot and an eighth as 1-1/8.
  return inches % IN_PER_FT === 0 && rest > 0 ? `${sign}${feet}' 0-${over}"` : `${sign}${feet}' ${over}"`;
}

/** 1 and 8/16 gives 1-1/2. `parts` is a power of two. */
function mixedNumber(whole: number, rest: number, parts: number): string {
  if (rest === 0) return String(whole);
  let top = rest;
  let bottom = parts;
  while (top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  return whole === 0 ? `${top}/${bottom}` : `${whole}-${top}/${bottom}`;
}

function printMillimetres(valueIn: number, how: LengthPrint): string {
  const step = how.roundToMm ?? 1;
  if (!MM_STEPS.includes(step)) {
    throw new Error(`Millimetres are rounded to ${MM_STEPS.join(', ')}, not to ${step}`);
  }
  const steps = Math.round((Math.abs(valueIn) * MM_PER_IN) / step);
  const sign = valueIn < 0 && steps > 0 ? '-' : '';
  const decimals = step >= 1 ? 0 : step >= 0.1 ? 1 : 2;
  return `${sign}${(steps * step).toFixed(decimals)} mm`;
}
