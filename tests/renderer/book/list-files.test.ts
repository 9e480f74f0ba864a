import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { designJob } from '../../../src-core/falsework';
import type { Job } from '../../../src-core/job';
import { readJobText } from '../../../src-core/job';
import { legTable, listFiles, partTable } from '../../../src-renderer/book/list-files';

function example(id: string): Job {
  const path = new URL(`../../../assets/jobs/${id}.json`, import.meta.url);
  const reading = readJobText(readFileSync(path, 'utf8'));
  if (!reading.ok) throw new Error(`${id} is no job`);
  return reading.job;
}

const ledge = example('bar-ledge');
const { designs } = designJob(ledge);
const sections = designs.flatMap((design) => design.sections);

/** Rows of a table as records by their heads. */
function records({ columns, rows }: ReturnType<typeof legTable>): Record<string, unknown>[] {
  return rows.map((row) => Object.fromEntries(columns.map((column, k) => [column, row[k]])));
}

describe('the lists of a job', () => {
  test('has every leg of the falsework once, numbered A1, A2 ... by its section', () => {
    const rows = records(legTable(designs, 'imperial'));
    expect(rows).toHaveLength(sections.reduce((sum, { legs }) => sum + legs.length, 0));
    expect(rows.length).toBeGreaterThan(3);
    expect(rows[0]).toMatchObject({ number: 'A1' });
    expect(new Set(rows.map(({ number }) => number)).size).toBe(rows.length);
    const [first] = sections[0]!.legs;
    expect(rows[0]!['cut in']).toBe(first!.leg.cutIn);
  });

  test('has as many legs among the parts as in the list of legs, and every deck panel', () => {
    const rows = records(partTable(designs, 'imperial'));
    const legs = rows.filter(({ part }) => part === 'leg').reduce((sum, { count }) => sum + Number(count), 0);
    expect(legs).toBe(sections.reduce((sum, section) => sum + section.legs.length, 0));
    expect(rows.filter(({ size }) => size === 'panel')).toHaveLength(
      sections.reduce((sum, { bill }) => sum + bill.panels.length, 0),
    );
  });

  test('come as comma-separated text, each with as many cells in a line as it has heads (RFC 4180)', () => {
    const files = listFiles(ledge);
    expect(files.map(({ id }) => id)).toEqual([
      'shopping-list',
      'edge-form-strips',
      'falsework-parts',
      'legs',
    ]);
    for (const { id, csv } of files) {
      const lines = csv.split('\r\n').slice(0, -1).map(cellsOf);
      expect(lines.length, id).toBeGreaterThan(1);
      expect(new Set(lines.map(({ length }) => length)).size, id).toBe(1);
    }
  });

  test('has every strip of every edge form once, and the stick of each that was cut', () => {
    const csv = listFiles(ledge).find(({ id }) => id === 'edge-form-strips')!.csv;
    const [heads, ...lines] = csv.split('\r\n').slice(0, -1).map(cellsOf);
    const ids = lines.map((cells) => cells[heads!.indexOf('id')]);
    expect(new Set(ids).size).toBe(ids.length);
    const lengths = lines.map((cells) => Number(cells[heads!.indexOf('length in')]));
    expect(lengths.every((lengthIn) => lengthIn > 0)).toBe(true);
  });
});

/** Cells of a line that has no line break within its quotes. */
function cellsOf(line: string): string[] {
  return [...line.matchAll(/("(?:[^"]|"")*"|[^,]*)(?:,|$)/g)]
    .map(([, cell]) => cell!)
    .slice(0, line === '' ? 1 : -1);
}
