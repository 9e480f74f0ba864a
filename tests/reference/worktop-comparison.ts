import type { WorktopCase } from './worktop-cases';
import type { WorktopNumbers } from './worktop-measures';

/** One compared number: ours, the true slab's, and the thinned slab's where that was run. */
export interface ComparedRow {
  readonly quantity: string;
  readonly unit: string;
  readonly ours: number;
  readonly trueSlab: number;
  readonly thinned: number | null;
  /** Which of the two the limit is held against. */
  readonly heldAgainst: 'true' | 'thinned';
  readonly limitRatio: number;
  /** The limit is this share of the larger of the reference itself and this least amount. */
  readonly leastScale: number;
}

export const DEFLECTION_RATIO = 0.02;
const REACTION_RATIO = 0.01;
const MOMENT_RATIO = 0.04;
/** A bearing that carries less than this share of the load is held to 1 % of this share, not of its own trifle. */
const SMALL_BEARING_RATIO = 0.05;

/** Every compared number of a case. */
export function compareWorktop(
  worktop: WorktopCase,
  bearings: readonly string[],
  totalLbf: number,
  found: {
    readonly ours: WorktopNumbers;
    readonly trueSlab: WorktopNumbers;
    readonly thinned: WorktopNumbers | null;
  },
): ComparedRow[] {
  const { ours, trueSlab, thinned } = found;
  const rows = (
    key: keyof WorktopNumbers,
    names: readonly { readonly words: string; readonly asThin?: boolean }[],
    common: Pick<ComparedRow, 'unit' | 'limitRatio' | 'leastScale'>,
  ): ComparedRow[] =>
    names.map(({ words, asThin }, i) => ({
      ...common,
      quantity: words,
      ours: ours[key][i]!,
      trueSlab: trueSlab[key][i]!,
      thinned: thinned === null ? null : thinned[key][i]!,
      heldAgainst: asThin === true ? 'thinned' : 'true',
    }));
  return [
    ...rows(
      'deflectionsIn',
      [
        { words: 'supports settle' },
        ...worktop.deflections.map((place) => ({ ...place, words: `drop, ${place.words}` })),
      ],
      { unit: 'in', limitRatio: DEFLECTION_RATIO, leastScale: 0 },
    ),
    ...rows(
      'reactionsLbf',
      bearings.map((words) => ({ words: `on ${words}`, asThin: worktop.reactionsAsThin ?? false })),
      { unit: 'lbf', limitRatio: REACTION_RATIO, leastScale: SMALL_BEARING_RATIO * totalLbf },
    ),
    ...rows(
      'momentsLbfInPerIn',
      worktop.moments.map((place) => ({ ...place, words: `moment, ${place.words}` })),
      { unit: 'lbf-in/in', limitRatio: MOMENT_RATIO, leastScale: 0 },
    ),
  ];
}

/** Sentences on the rows that are beyond their limit. */
export function beyondLimit(rows: readonly ComparedRow[]): string[] {
  return rows.flatMap((row) => {
    const expected = row.heldAgainst === 'true' ? row.trueSlab : row.thinned;
    if (expected === null) return [`${row.quantity}: no thinned slab was run to hold it against`];
    const scale = Math.max(Math.abs(expected), row.leastScale);
    if (Math.abs(row.ours - expected) <= row.limitRatio * scale) return [];
    return [
      `${row.quantity}: ${row.ours} against ${expected} ${row.unit}, limit ${row.limitRatio * 100} % of ${scale}`,
    ];
  });
}

/** The rows of a case as lines of a table; a star marks the number that the limit is held against. */
export function tableLines(name: string, rows: readonly ComparedRow[]): string[] {
  return rows.map(({ quantity, unit, ours, trueSlab, thinned, heldAgainst }) => {
    const other = (value: number | null, is: 'true' | 'thinned'): string =>
      value === null
        ? ''
        : `${digits(value)} ${difference(ours, value).padStart(8)}${heldAgainst === is ? ' *' : '  '}`;
    const cells = [name.padEnd(22), quantity.padEnd(38), unit.padEnd(9), digits(ours)];
    return [...cells, other(trueSlab, 'true').padEnd(22), other(thinned, 'thinned')].join(' ').trimEnd();
  });
}

/** Head of the table that `tableLines` fills. */
export function tableHead(): string {
  const words = ['case'.padEnd(22), 'quantity'.padEnd(38), 'unit'.padEnd(9), 'ours'.padStart(11)];
  return [...words, 'CalculiX      diff    '.padStart(23), 'thinned by 8  diff'.padStart(21)].join(' ');
}

function digits(value: number): string {
  const size = Math.abs(value);
  if (size < 1e-6) return '0'.padStart(11);
  return (size < 1e-3 ? value.toFixed(7) : value.toPrecision(5)).padStart(11);
}

function difference(ours: number, theirs: number): string {
  return Math.abs(theirs) < 1e-3 && Math.abs(ours) < 1e-6
    ? '-'
    : `${((ours / theirs - 1) * 100).toFixed(2)} %`;
}
