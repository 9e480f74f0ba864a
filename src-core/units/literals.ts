/**
 * Reads one number as people write it (25-1/2, 25 1/2, .5, 1/2) with its unit (2' 1-1/2", 648 mm).
 * A hyphen joins a mixed number only where it touches both sides.
 */
import { type ProblemCode, type Refusal, refuse } from './problems';
import { toCore, type Unit } from './quantity-specs';
import type { FractionToken, Reading, SignToken, Token } from './tokens';

/** `bare` has no unit yet; `measured` is in core units; `ratio` is one measure divided by another. */
export interface Operand {
  readonly ok: true;
  readonly sort: 'bare' | 'measured' | 'ratio';
  readonly value: number;
  readonly start: number;
  readonly end: number;
}

/** A reading in progress: `at` is the next token. */
export interface Cursor extends Reading {
  readonly tokens: readonly Token[];
  readonly isSum: boolean;
  at: number;
}

/** Refuses with the part of the text from character `start` up to `end`. */
export function refuseAt(cursor: Cursor, code: ProblemCode, start: number, end?: number): Refusal {
  return refuse(code, cursor.text.slice(start, end), cursor);
}

export function signAt(cursor: Cursor, index: number): SignToken | null {
  const token = cursor.tokens[index];
  return token?.kind === 'sign' ? token : null;
}

export function unitAt(cursor: Cursor, index: number): Unit | null {
  const token = cursor.tokens[index];
  return token?.kind === 'unit' ? token.unit : null;
}

/** Whether tokens `index` and the next one touch, without a space. */
export function touchesNext(cursor: Cursor, index: number): boolean {
  return cursor.tokens[index]?.end === cursor.tokens[index + 1]?.start;
}

/** Reads a number with its unit, or feet and inches; `sign` holds for the whole of it, as in -2' 6". */
export function readMeasure(cursor: Cursor, sign: 1 | -1): Operand | Refusal {
  const unsigned = readLiteral(cursor, false);
  if (!unsigned.ok) return unsigned;
  const number: Operand = { ...unsigned, value: sign * unsigned.value };
  const unit = unitAt(cursor, cursor.at);
  if (!unit) return number;
  const end = cursor.tokens[cursor.at]!.end;
  if (isDivision(cursor.tokens[cursor.at - 1]))
    return refuseAt(cursor, 'unclear-division', number.start, end);
  cursor.at += 1;
  const measure: Operand = { ...number, sort: 'measured', value: toCore(number.value, unit), end };
  const pair = cursor.spec.feetAndInches;
  if (!pair || unit !== pair.feet) return measure;
  return readInchesAfter(cursor, measure, sign, Number.isInteger(number.value));
}

/** 24/2 before a unit: twelve feet, or 24 by 2 ft? Only a fraction of less than one is surely a fraction. */
function isDivision(token: Token | undefined): boolean {
  return token?.kind === 'fraction' && token.top >= token.bottom;
}

/** Reads the inches of 2' 1-1/2", if any follow the feet. */
function readInchesAfter(
  cursor: Cursor,
  feet: Operand,
  sign: 1 | -1,
  isWholeFeet: boolean,
): Operand | Refusal {
  // 2'-6" is the draughtsman's way; in a sum the same hyphen may be a subtraction.
  const isHyphen =
    !cursor.isSum &&
    signAt(cursor, cursor.at)?.sign === '-' &&
    touchesNext(cursor, cursor.at - 1) &&
    touchesNext(cursor, cursor.at);
  const first = cursor.tokens[cursor.at + (isHyphen ? 1 : 0)];
  if (first?.kind !== 'number' && first?.kind !== 'fraction') return feet;
  if (isHyphen) cursor.at += 1;
  const inches = readLiteral(cursor, true);
  if (!inches.ok) return inches;
  const inch = cursor.spec.feetAndInches?.inch;
  const mark = unitAt(cursor, cursor.at);
  if (mark && mark !== inch)
    return refuseAt(cursor, 'not-understood', inches.start, cursor.tokens[cursor.at]!.end);
  if (!mark && cursor.isSum) return refuseAt(cursor, 'unmarked-inches', feet.start, inches.end);
  const end = mark ? cursor.tokens[cursor.at]!.end : inches.end;
  if (!isWholeFeet) return refuseAt(cursor, 'split-feet', feet.start, end);
  if (mark) cursor.at += 1;
  return { ...feet, value: feet.value + sign * inches.value, end };
}

/** Reads a whole number, decimal, fraction or mixed number. */
function readLiteral(cursor: Cursor, isAfterFeet: boolean): Operand | Refusal {
  const token = cursor.tokens[cursor.at];
  if (token?.kind === 'fraction') {
    cursor.at += 1;
    if (token.bottom === 0) return refuseAt(cursor, 'divide-by-zero', token.start, token.end);
    // 11/2 is more often a lost space than five and a half; in a sum it is a division.
    if (!cursor.isSum && token.top >= token.bottom) {
      return refuseAt(cursor, 'improper-fraction', token.start, token.end);
    }
    return bare(token.top / token.bottom, token.start, token.end);
  }
  if (token?.kind === 'number') {
    const fraction = fractionAfterWhole(cursor, isAfterFeet);
    if (!fraction) {
      cursor.at += 1;
      return bare(token.value, token.start, token.end);
    }
    cursor.at = cursor.tokens.indexOf(fraction) + 1;
    if (fraction.bottom === 0) return refuseAt(cursor, 'divide-by-zero', token.start, fraction.end);
    if (fraction.top >= fraction.bottom) {
      return refuseAt(cursor, 'improper-fraction', token.start, fraction.end);
    }
    return bare(token.value + fraction.top / fraction.bottom, token.start, fraction.end);
  }
  if (token?.kind === 'unit') return refuseAt(cursor, 'no-number', token.start);
  if (token) return refuseAt(cursor, token.sign === '(' ? 'needs-equals' : 'not-understood', token.start);
  return refuseAt(cursor, 'unfinished', 0);
}

/** The fraction that makes a mixed number with the whole number at the cursor, or null. */
function fractionAfterWhole(cursor: Cursor, isAfterFeet: boolean): FractionToken | null {
  if (!wholeAt(cursor, cursor.at)) return null;
  const next = cursor.tokens[cursor.at + 1];
  if (next?.kind === 'fraction') return next;
  const isHyphen =
    signAt(cursor, cursor.at + 1)?.sign === '-' &&
    touchesNext(cursor, cursor.at) &&
    touchesNext(cursor, cursor.at + 1);
  if (!isHyphen || (cursor.isSum && !isAfterFeet)) return null;
  const joined = cursor.tokens[cursor.at + 2];
  return joined?.kind === 'fraction' ? joined : null;
}

export function wholeAt(cursor: Cursor, index: number): boolean {
  const token = cursor.tokens[index];
  return token?.kind === 'number' && token.isWhole;
}

function bare(value: number, start: number, end: number): Operand {
  return { ok: true, sort: 'bare', value, start, end };
}
