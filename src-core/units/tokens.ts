/** Cuts a typed quantity into numbers, fractions, units and signs. */
import { type Refusal, refuse } from './problems';
import type { QuantitySpec, Unit, UnitSystem } from './quantity-specs';

interface Span {
  /** First character and one past the last, in the typed text. */
  readonly start: number;
  readonly end: number;
}

export interface NumberToken extends Span {
  readonly kind: 'number';
  readonly value: number;
  /** Written with digits alone, so it can be the whole part of a mixed number. */
  readonly isWhole: boolean;
}

export interface FractionToken extends Span {
  readonly kind: 'fraction';
  readonly top: number;
  readonly bottom: number;
  /** One character such as ½, whose extent is never in doubt. */
  readonly isSingleCharacter: boolean;
}

export interface UnitToken extends Span {
  readonly kind: 'unit';
  readonly unit: Unit;
}

export interface SignToken extends Span {
  readonly kind: 'sign';
  readonly sign: string;
}

export type Token = NumberToken | FractionToken | UnitToken | SignToken;

export interface Reading {
  readonly text: string;
  readonly spec: QuantitySpec;
  readonly system: UnitSystem;
}

// Each replacement keeps the text's length, so that a span still points into what was typed.
const LIKE_SIGNS: readonly (readonly [RegExp, string])[] = [
  [/[“”„‟″˝]/g, '"'],
  [/[‘’‚‛′`´]/g, "'"],
  [/[−–—‐‑‒]/g, '-'],
  [/[⁄∕÷]/g, '/'],
  [/[×∙·✕]/g, '*'],
  [/²/g, '2'],
  [/³/g, '3'],
  [/º/g, '°'],
  [/[\s\u200b]/g, ' '],
];

const SINGLE_CHARACTER_FRACTIONS: ReadonlyMap<string, readonly [number, number]> = new Map([
  ['½', [1, 2]],
  ['⅓', [1, 3]],
  ['⅔', [2, 3]],
  ['¼', [1, 4]],
  ['¾', [3, 4]],
  ['⅕', [1, 5]],
  ['⅖', [2, 5]],
  ['⅗', [3, 5]],
  ['⅘', [4, 5]],
  ['⅙', [1, 6]],
  ['⅚', [5, 6]],
  ['⅛', [1, 8]],
  ['⅜', [3, 8]],
  ['⅝', [5, 8]],
  ['⅞', [7, 8]],
  ['⅒', [1, 10]],
]);

/** Cuts `reading.text` from character `from` on. */
export function readTokens(reading: Reading, from: number): { ok: true; tokens: Token[] } | Refusal {
  const text = LIKE_SIGNS.reduce((plain, [like, sign]) => plain.replace(like, sign), reading.text);
  const tokens: Token[] = [];
  let at = from;
  while (at < text.length) {
    if (text[at] === ' ') {
      at += 1;
      continue;
    }
    const token = readToken(text, at, reading, tokens.at(-1));
    if ('ok' in token) return token;
    tokens.push(token);
    at = token.end;
  }
  return { ok: true, tokens };
}

function readToken(text: string, at: number, reading: Reading, previous: Token | undefined): Token | Refusal {
  const rest = text.slice(at);
  const single = SINGLE_CHARACTER_FRACTIONS.get(text[at] ?? '');
  if (single) {
    const [top, bottom] = single;
    return { kind: 'fraction', top, bottom, isSingleCharacter: true, start: at, end: at + 1 };
  }
  const slashed = /^(\d+)\/(\d+)(?![\d.,])/.exec(rest);
  if (slashed) {
    return {
      kind: 'fraction',
      top: Number(slashed[1]),
      bottom: Number(slashed[2]),
      isSingleCharacter: false,
      start: at,
      end: at + slashed[0].length,
    };
  }
  const digits = /^[\d.,]*\d[\d.,]*/.exec(rest);
  if (digits) return readNumber(text, at, digits[0], reading);
  return readUnit(text, at, reading) ?? readSign(text, at, reading, previous);
}

function readNumber(text: string, at: number, digits: string, reading: Reading): NumberToken | Refusal {
  const end = at + digits.length;
  const part = reading.text.slice(at, end);
  const exponent = /^e[+-]?\d+/i.exec(text.slice(end));
  if (exponent) return refuse('no-exponent', reading.text.slice(at, end + exponent[0].length), reading);
  if (digits.includes(',')) {
    const isDecimalComma = /^\d*,\d+$/.test(digits);
    const looksLikeThousands = /^[1-9]\d{0,2},\d{3}$/.test(digits);
    if (!isDecimalComma || looksLikeThousands) return refuse('unclear-comma', part, reading);
  } else if (!/^\d*\.?\d*$/.test(digits)) {
    return refuse('not-understood', part, reading);
  }
  return {
    kind: 'number',
    value: Number(digits.replace(',', '.')),
    isWhole: /^\d+$/.test(digits),
    start: at,
    end,
  };
}

function readUnit(text: string, at: number, reading: Reading): UnitToken | Refusal | null {
  let best: { unit: Unit; spelling: string } | null = null;
  for (const unit of reading.spec.units) {
    for (const spelling of unit.spellings) {
      if (spelling.length <= (best?.spelling.length ?? 0)) continue;
      if (matchesSpelling(text, at, spelling)) best = { unit, spelling };
    }
  }
  if (!best) return null;
  const end = at + best.spelling.length;
  if (best.spelling.endsWith('.') && /\d/.test(text[end] ?? '')) {
    return refuse('not-understood', reading.text.slice(at), reading);
  }
  return { kind: 'unit', unit: best.unit, start: at, end };
}

function matchesSpelling(text: string, at: number, spelling: string): boolean {
  const end = at + spelling.length;
  if (text.slice(at, end).toLowerCase() !== spelling) return false;
  const last = spelling.at(-1) ?? '';
  const next = text[end] ?? '';
  // "m" must not be cut from "mm" or "m2", nor "lb/ft" from "lb/ft3"; but 2ft1.5in runs on by custom.
  if (/\p{L}/u.test(last) && /^([\p{L}^]|\/\p{L})/u.test(text.slice(end))) return false;
  return !(spelling.includes('/') && /[\d/^]/.test(next));
}

function readSign(
  text: string,
  at: number,
  reading: Reading,
  previous: Token | undefined,
): SignToken | Refusal {
  const sign = text[at] ?? '';
  if ('+-*/()'.includes(sign)) return { kind: 'sign', sign, start: at, end: at + 1 };
  const isTimes = /^x(?!\p{L})/iu.test(text.slice(at));
  if (isTimes) return { kind: 'sign', sign: '*', start: at, end: at + 1 };
  const word = /^[\p{L}°][\p{L}\p{N}°/^.]*/u.exec(text.slice(at));
  if (word && (previous?.kind === 'number' || previous?.kind === 'fraction')) {
    return refuse('unknown-unit', reading.text.slice(at, at + word[0].length), reading);
  }
  return refuse('not-understood', reading.text.slice(at), reading);
}
