/** Lines of workings as they are set: symbol and name, then one equals sign after another, then the source. */
import type { Line } from '../../src-core/workings';

export interface WorkingsRow {
  readonly key: string;
  readonly symbol: string;
  readonly label: string;
  /** Formula and formula with numbers; empty for a number that the plate engine found. */
  readonly steps: readonly string[];
  readonly result: string;
  readonly source: string;
}

/** Rows in the order of the workings. A step that only repeats the one before it, or the result, is left out. */
export function workingsRows(lines: readonly Line[]): WorkingsRow[] {
  return lines.map((line, index) => {
    const { symbol, label, formula, substituted, result, unit, source, fromMemory } = line;
    return {
      key: `${index}-${symbol}`,
      symbol,
      label,
      steps: [formula, substituted].filter(
        (step, k, steps) => step !== '' && step !== steps[k - 1] && step !== result,
      ),
      result: `${result} ${unit}`.trimEnd(),
      source: fromMemory && !source.includes('from memory') ? `${source}; from memory, verify` : source,
    };
  });
}
