/**
 * Reads a sum behind `=`: + - * /, brackets, mixed units. Wherever a tight minus may join a mixed number or
 * subtract, the text is refused: a wrong length costs a pour, a question costs a keystroke.
 *
 *   sum     = product { (+ | -) product }
 *   product = factor { (* | /) factor }
 *   factor  = [ + | - ] ( '(' sum ')' [ unit ] | measure )
 */
import {
  type Cursor,
  type Operand,
  readMeasure,
  refuseAt,
  signAt,
  touchesNext,
  unitAt,
  wholeAt,
} from './literals';
import type { Refusal } from './problems';
import { toCore } from './quantity-specs';

/** Reads the whole of `cursor` as a sum. */
export function readSum(cursor: Cursor): Operand | Refusal {
  const unclear = findUnclearMinus(cursor);
  if (unclear) return unclear;
  const sum = readTerms(cursor);
  if (!sum.ok) return sum;
  const left = cursor.tokens[cursor.at];
  if (!left) return sum;
  const isBracket = signAt(cursor, cursor.at)?.sign === ')';
  return refuseAt(cursor, isBracket ? 'unmatched-bracket' : 'not-understood', left.start);
}

/** Finds 24-1/2 and 2'-6" inside a sum: each can be read as one number or as a subtraction. */
function findUnclearMinus(cursor: Cursor): Refusal | null {
  for (let at = 1; at + 1 < cursor.tokens.length; at += 1) {
    if (signAt(cursor, at)?.sign !== '-') continue;
    const before = touchesNext(cursor, at - 1);
    const after = touchesNext(cursor, at);
    if (!before && !after) continue;
    const mayJoin = mayBeMixedNumber(cursor, at) || mayBeFeetAndInches(cursor, at);
    if (!mayJoin || (before && after && isMarkedInches(cursor, at))) continue;
    const first = unitAt(cursor, at - 1) ? at - 2 : at - 1;
    return refuseAt(cursor, 'unclear-minus', cursor.tokens[first]?.start ?? 0, cursor.tokens[at + 1]!.end);
  }
  return null;
}

function mayBeMixedNumber(cursor: Cursor, at: number): boolean {
  const fraction = cursor.tokens[at + 1];
  return wholeAt(cursor, at - 1) && fraction?.kind === 'fraction' && fraction.top < fraction.bottom;
}

function mayBeFeetAndInches(cursor: Cursor, at: number): boolean {
  const pair = cursor.spec.feetAndInches;
  if (!pair || unitAt(cursor, at - 1) !== pair.feet) return false;
  let end = at + 1;
  while (cursor.tokens[end]?.kind === 'number' || cursor.tokens[end]?.kind === 'fraction') end += 1;
  const unit = unitAt(cursor, end);
  return end > at + 1 && (unit === null || unit === pair.inch);
}

/** The 1-1/2" of 2' 1-1/2": feet before and an inch mark after leave one reading. */
function isMarkedInches(cursor: Cursor, at: number): boolean {
  const pair = cursor.spec.feetAndInches;
  return pair !== undefined && unitAt(cursor, at - 2) === pair.feet && unitAt(cursor, at + 2) === pair.inch;
}

function readTerms(cursor: Cursor): Operand | Refusal {
  let left = readProduct(cursor);
  for (;;) {
    if (!left.ok) return left;
    const sign = signAt(cursor, cursor.at)?.sign;
    if (sign !== '+' && sign !== '-') return left;
    cursor.at += 1;
    const right = readProduct(cursor);
    if (!right.ok) return right;
    left = addTerms(cursor, left, right, sign === '+' ? 1 : -1);
  }
}

function addTerms(cursor: Cursor, left: Operand, right: Operand, factor: 1 | -1): Operand | Refusal {
  const { start } = left;
  const { end } = right;
  if (left.sort === right.sort) return { ...left, value: left.value + factor * right.value, end };
  if (left.sort === 'ratio' || right.sort === 'ratio') return refuseAt(cursor, 'wrong-kind', start, end);
  const value = inBareUnit(cursor, left) + factor * inBareUnit(cursor, right);
  return { ok: true, sort: 'measured', value, start, end };
}

/** Core value of an operand, a bare number taken in the unit that a bare field would have. */
export function inBareUnit(cursor: Cursor, operand: Operand): number {
  return operand.sort === 'measured'
    ? operand.value
    : toCore(operand.value, cursor.spec.bareUnit[cursor.system]);
}

function readProduct(cursor: Cursor): Operand | Refusal {
  let left = readFactor(cursor);
  for (;;) {
    if (!left.ok) return left;
    const operator = signAt(cursor, cursor.at);
    if (operator?.sign !== '*' && operator?.sign !== '/') return left;
    if (operator.sign === '/' && hasBareFractionBeside(cursor)) {
      return refuseAt(cursor, 'unclear-division', left.start, cursor.tokens[cursor.at + 1]?.end);
    }
    cursor.at += 1;
    const right = readFactor(cursor);
    if (!right.ok) return right;
    left = operator.sign === '*' ? multiply(cursor, left, right) : divide(cursor, left, right);
  }
}

/** 6 / 1/2 and 1/2/4: a calculator, which knows no fractions, would read them otherwise. */
function hasBareFractionBeside(cursor: Cursor): boolean {
  const before = cursor.tokens[cursor.at - 1];
  const after = cursor.tokens[cursor.at + 1];
  const isTightBefore =
    before?.kind === 'fraction' && !before.isSingleCharacter && touchesNext(cursor, cursor.at - 1);
  return isTightBefore || (after?.kind === 'fraction' && !after.isSingleCharacter);
}

function multiply(cursor: Cursor, left: Operand, right: Operand): Operand | Refusal {
  const { start } = left;
  const { end } = right;
  if (left.sort === 'measured' && right.sort === 'measured')
    return refuseAt(cursor, 'wrong-kind', start, end);
  const sorts = [left.sort, right.sort];
  const sort = sorts.includes('measured') ? 'measured' : sorts.includes('ratio') ? 'ratio' : 'bare';
  return { ok: true, sort, value: left.value * right.value, start, end };
}

function divide(cursor: Cursor, left: Operand, right: Operand): Operand | Refusal {
  const { start } = left;
  const { end } = right;
  if (right.value === 0) return refuseAt(cursor, 'divide-by-zero', start, end);
  const value = left.value / right.value;
  if (right.sort !== 'measured') {
    const sort = left.sort === 'bare' ? right.sort : left.sort;
    return { ok: true, sort, value, start, end };
  }
  if (left.sort !== 'measured') return refuseAt(cursor, 'wrong-kind', start, end);
  return { ok: true, sort: 'ratio', value, start, end };
}

function readFactor(cursor: Cursor): Operand | Refusal {
  const sign = signAt(cursor, cursor.at);
  if (sign?.sign !== '+' && sign?.sign !== '-') return readAfterSign(cursor, 1);
  cursor.at += 1;
  const operand = readAfterSign(cursor, sign.sign === '-' ? -1 : 1);
  return operand.ok ? { ...operand, start: sign.start } : operand;
}

/** Reads a bracket or a measure, and gives it the sign found before it. */
function readAfterSign(cursor: Cursor, sign: 1 | -1): Operand | Refusal {
  const open = signAt(cursor, cursor.at);
  if (open?.sign !== '(') return readMeasure(cursor, sign);
  cursor.at += 1;
  const inside = readTerms(cursor);
  if (!inside.ok) return inside;
  const close = signAt(cursor, cursor.at);
  if (close?.sign !== ')') return refuseAt(cursor, 'unmatched-bracket', open.start);
  cursor.at += 1;
  const bracketed: Operand = { ...inside, value: sign * inside.value, start: open.start, end: close.end };
  const unit = unitAt(cursor, cursor.at);
  if (!unit) return bracketed;
  const { end } = cursor.tokens[cursor.at]!;
  if (inside.sort !== 'bare') return refuseAt(cursor, 'wrong-kind', open.start, end);
  cursor.at += 1;
  return { ...bracketed, sort: 'measured', value: toCore(bracketed.value, unit), end };
}
