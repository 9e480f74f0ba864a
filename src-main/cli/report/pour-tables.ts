/** Batches and finish of a pour as tables of at most a page's width. */
import Table from 'cli-table3';
import type { FinishKind, Pour } from '../../../src-core/pour';
import type { UnitSystem } from '../../../src-core/units';
import { countWords, pigmentWords, volumeWords, waterWords } from './pour-words';
import { BORDERS } from './table-borders';

type Align = 'left' | 'right';

const BATCH_COLUMNS: readonly (readonly [heading: string, width: number, align: Align])[] = [
  ['No.', 5, 'right'],
  ['Bags', 6, 'right'],
  ['Water', 22, 'right'],
  ['Pigment', 10, 'right'],
  ['Water in', 10, 'right'],
  ['Ready', 7, 'right'],
  ['Placed by', 11, 'right'],
  ['Goes to', 29, 'left'],
];

const FINISH_COLUMNS: readonly (readonly [heading: string, width: number, align: Align])[] = [
  ['From', 6, 'right'],
  ['Until', 7, 'right'],
  ['Form', 26, 'left'],
  ['Step', 14, 'left'],
  ['How', 47, 'left'],
];

const KIND_WORDS: { readonly [K in FinishKind]: string } = {
  screed: 'screed',
  fill: 'fill',
  'screed-again': 'screed again',
  vibrate: 'vibrate',
  bleed: 'wait',
  float: 'float',
  trowel: 'trowel',
};

/** Every batch with its amounts, its minutes and its buckets. */
export function batchTable(pour: Pour, system: UnitSystem): string[] {
  const rows = pour.batches.map((batch) => [
    String(batch.number),
    String(batch.bags),
    waterWords(batch, system),
    pigmentWords(batch.pigmentLb, pour.colour, system),
    minute(batch.waterMinutes),
    minute(batch.readyMinutes),
    minute(batch.placedMinutes),
    goesTo(pour, batch.number, system),
  ]);
  return tableLines(BATCH_COLUMNS, rows);
}

/** What is done to the concrete of each form, by the clock. How a step is done stands beside the first of its kind. */
export function finishTable(pour: Pour): string[] {
  const told = new Set<FinishKind>();
  const steps = [...(pour.clock?.finish ?? [])].sort((a, b) => a.fromMinutes - b.fromMinutes);
  const rows = steps.map(({ kind, fromMinutes, toMinutes, pieceId, copy, words }) => {
    const how = told.has(kind) ? '' : words;
    told.add(kind);
    return [minute(fromMinutes), minute(toMinutes), formName(pour, pieceId, copy), KIND_WORDS[kind], how];
  });
  return rows.length === 0 ? [] : tableLines(FINISH_COLUMNS, rows);
}

/** "Gate-pier cap 2" where a piece is cast more than once. */
export function formName({ pieces }: Pour, pieceId: string, copy: number): string {
  const { name, copies } = pieces.find((piece) => piece.pieceId === pieceId)!;
  return copies === 1 ? name : `${name} ${copy}`;
}

/** Less than this is rounding of the arithmetic, ft3. */
const LEAST_KEPT_FT3 = 0.005;

function goesTo(pour: Pour, number: number, system: UnitSystem): string {
  const counts = new Map<string, number>();
  for (const { batch, pieceId, copy } of pour.clock?.buckets ?? []) {
    if (batch !== number) continue;
    const name = formName(pour, pieceId, copy);
    counts.set(name, (counts.get(name) ?? 0) + 1);
  }
  const { keptFt3 } = pour.batches[number - 1]!;
  return [
    ...[...counts].map(([name, count]) => `${countWords(count, 'bucket', 'buckets')} to ${name}`),
    ...(keptFt3 < LEAST_KEPT_FT3 ? [] : [`${volumeWords(keptFt3, system)} kept back`]),
  ].join('; ');
}

function minute(minutes: number): string {
  return String(Math.round(minutes));
}

function tableLines(
  columns: readonly (readonly [heading: string, width: number, align: Align])[],
  rows: readonly (readonly string[])[],
): string[] {
  const table = new Table({
    colWidths: columns.map(([, width]) => width),
    colAligns: columns.map(([, , align]) => align),
    wordWrap: true,
    chars: Object.fromEntries(BORDERS.map((name) => [name, ''])),
    style: { head: [], border: [], 'padding-left': 0, 'padding-right': 2, compact: true },
  });
  table.push(
    columns.map(([heading]) => heading),
    ...rows.map((row) => [...row]),
  );
  return table
    .toString()
    .split('\n')
    .map((line) => line.trimEnd());
}
