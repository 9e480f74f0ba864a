/**
 * A formula that shows its work. The function that computes a number also emits the line that a reader can
 * recompute by hand: formula, formula with the numbers put in, result, source.
 */

/** One line of workings. All texts are plain ASCII arithmetic, so that page, terminal and test read the same. */
export interface Line {
  /** What the number is, in a builder's words. */
  readonly label: string;
  /** Symbol of the source, e.g. `Mcr`. */
  readonly symbol: string;
  /** Right-hand side with symbols, e.g. `fr * h^2 / 6`. */
  readonly formula: string;
  /** Right-hand side with the printed numbers put in. */
  readonly substituted: string;
  /** Printed result without its unit, four significant digits unless it is exact in fewer. */
  readonly result: string;
  readonly unit: string;
  /** The unrounded value. */
  readonly value: number;
  readonly inputs: readonly LineInput[];
  /** Standard and clause, book and table, or "common practice, no source". */
  readonly source: string;
  /** True where a coefficient is recalled, not read: shown as "from memory, verify". */
  readonly fromMemory: boolean;
}

export interface LineInput {
  readonly symbol: string;
  readonly printed: string;
  readonly unit: string;
}

export interface Worked {
  readonly value: number;
  readonly line: Line;
}

export interface FormulaSpec<Inputs extends Readonly<Record<string, number>>> {
  readonly symbol: string;
  readonly label: string;
  /**
   * Right-hand side in plain arithmetic: + - * / ^, parentheses, sqrt, cbrt, exp, log, abs, min, max, ceil, cos, sin.
   * Every input appears as its own whole word.
   */
  readonly formula: string;
  /** Unit of each input by its symbol; '' for a ratio or a count. */
  readonly units: { readonly [K in keyof Inputs]: string };
  readonly unit: string;
  readonly source: string;
  readonly fromMemory?: boolean;
  readonly compute: (inputs: Inputs) => number;
}

export interface Formula<Inputs extends Readonly<Record<string, number>>> {
  /** The number and its line. */
  (inputs: Inputs): Worked;
  /** The number alone, for loops. */
  readonly compute: (inputs: Inputs) => number;
  readonly spec: FormulaSpec<Inputs>;
}

const INPUT_DIGITS = 7;
/** So many digits shorter without the last one, and that one is what rounding left: 7.000001 is 7. */
const NOISE_DIGITS = 4;
const RESULT_DIGITS = 4;
/** No quantity of a worktop is so small; what is left of a difference may be. */
const ROUNDING = 1e-12;

/** Prints `value` to `digits` significant digits without exponent, grouping or trailing zeros. */
export function printSignificant(value: number, digits: number): string {
  if (!Number.isFinite(value)) return String(value);
  if (Math.abs(value) < ROUNDING) return '0';
  const decimals = Math.min(20, Math.max(0, digits - 1 - Math.floor(Math.log10(Math.abs(value)))));
  const fixed = value.toFixed(decimals);
  return fixed.includes('.') ? fixed.replace(/\.?0+$/, '') : fixed;
}

function printInput(value: number): string {
  const full = printSignificant(value, INPUT_DIGITS);
  const shorter = printSignificant(value, INPUT_DIGITS - 1);
  return full.length - shorter.length >= NOISE_DIGITS ? shorter : full;
}

/** Builds a formula whose every call returns the value with the line of workings made from the same numbers. */
export function formula<Inputs extends Readonly<Record<string, number>>>(
  spec: FormulaSpec<Inputs>,
): Formula<Inputs> {
  const call = (inputs: Inputs): Worked => {
    const value = spec.compute(inputs);
    const printed = Object.entries(inputs).map(([symbol, number]) => ({
      symbol,
      printed: printInput(number),
      unit: spec.units[symbol] ?? '',
    }));
    return {
      value,
      line: {
        label: spec.label,
        symbol: spec.symbol,
        formula: spec.formula,
        substituted: substitute(spec.formula, printed),
        result: printSignificant(value, RESULT_DIGITS),
        unit: spec.unit,
        value,
        inputs: printed,
        source: spec.source,
        fromMemory: spec.fromMemory ?? false,
      },
    };
  };
  return Object.assign(call, { compute: spec.compute, spec });
}

function substitute(text: string, inputs: readonly LineInput[]): string {
  const printed = new Map(inputs.map((input) => [input.symbol, input.printed]));
  return text.replace(/[A-Za-z_][A-Za-z0-9_]*/g, (word) => {
    const number = printed.get(word);
    if (number === undefined) return word;
    return number.startsWith('-') ? `(${number})` : number;
  });
}

/**
 * A line for a number that the plate engine found and no short formula gives (a moment, a reaction).
 * It says where the number comes from instead of pretending to be arithmetic.
 */
export function readingLine(spec: {
  readonly symbol: string;
  readonly label: string;
  readonly value: number;
  readonly unit: string;
  readonly from: string;
}): Line {
  return {
    label: spec.label,
    symbol: spec.symbol,
    formula: '',
    substituted: '',
    result: printSignificant(spec.value, RESULT_DIGITS),
    unit: spec.unit,
    value: spec.value,
    inputs: [],
    source: spec.from,
    fromMemory: false,
  };
}
