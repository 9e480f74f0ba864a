import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { readCsv } from '../../support/read-csv';
import { smallJob, withValue } from '../../support/small-job';
import { type CliOutcome, runHere, withFolder } from './run-here';

const LEDGE = 'assets/jobs/bar-ledge.json';
const GALLEY = 'assets/jobs/boathouse-galley.json';

async function list(content: unknown, ...options: readonly string[]): Promise<CliOutcome> {
  return withFolder(async (folder) => {
    writeFileSync(join(folder, 'job.json'), JSON.stringify(content));
    return runHere(['list', 'job.json', ...options], { folder });
  });
}

describe('list', () => {
  test('prints groups, total, cut lists, protection and tools of a bar ledge, and gives 0', async () => {
    const { code, out, err } = await runHere(['list', LEDGE]);
    expect({ code, err }).toEqual({ code: 0, err: '' });
    for (const heading of [
      'Timber yard',
      "Builders' merchant",
      'Hardware',
      'Protection',
      'What is added',
      'Cut list: edge forms',
      'Cut list: backing boards',
      'Cut list: mesh',
      'Cut list: falsework',
      'Tools',
    ]) {
      expect(out).toMatch(new RegExp(`^${heading}$`, 'm'));
    }
    // A ledge of 96 in, eased at the back: 96 + 2 x 1.5 = 99 in in two parts, as no stick is longer than 8 ft
    expect(out).toMatch(/^ {2}- stick 1 \(8 ft\): [\d-/]+ \(Bar ledge, edge \d\)/m);
    expect(out).toMatch(/; left [\d-/]+$/m);
    expect(out).toMatch(
      /^\d+\.\d\d in all, at prices of which some are invented, without \d+ lines that have no price\.$/m,
    );
    expect(out).toContain('OSHA 29 CFR 1926.1153');
    expect(out).toContain('Planning arithmetic for one builder');
    expect(Math.max(...out.split('\n').map((line) => [...line].length))).toBeLessThanOrEqual(100);
  });

  test('gives 1 and says what is left out where the falsework of a piece cannot be built', async () => {
    const { code, out } = await runHere(['list', GALLEY]);
    expect(code).toBe(1);
    expect(out).toMatch(/^Left out, or not known$/m);
    expect(out).toContain('The falsework of "Foot ledge" cannot be built as designed');
  });

  test('gives the list alone as comma-separated text, a row a line', async () => {
    const { code, out } = await runHere(['list', LEDGE, '--csv']);
    expect(code).toBe(0);
    const [head, ...rows] = readCsv(out);
    expect(head).toContain('buy in words');
    expect(rows.length).toBeGreaterThan(10);
    expect(new Set(rows.map((row) => row.length))).toEqual(new Set([head!.length]));
    expect(new Set(rows.map(([id]) => id)).size).toBe(rows.length);
  });

  test('gives everything as JSON, each source with its id and its part of the drawing', async () => {
    const { code, out } = await runHere(['list', LEDGE, '--json']);
    expect(code).toBe(0);
    const report = JSON.parse(out) as {
      needsAttention: boolean;
      list: { groups: { lines: { id: string; sources: { id: string; trace: { pieceId: string } }[] }[] }[] };
      tools: { id: string }[];
      meshCuts: { pieces: { id: string }[] }[];
      pieces: { pieceId: string }[];
    };
    expect(report.needsAttention).toBe(false);
    expect(report.tools.map(({ id }) => id)).toContain('respirator');
    expect(report.pieces.map(({ pieceId }) => pieceId)).toEqual(['bar-ledge']);
    expect(report.meshCuts[0]!.pieces.length).toBeGreaterThan(0);
    const lines = report.list.groups.flatMap((group) => group.lines);
    for (const { sources } of lines) {
      expect(sources.length).toBeGreaterThan(0);
      expect(sources.every(({ id, trace }) => id !== '' && trace.pieceId === 'bar-ledge')).toBe(true);
    }
  });

  test('lists one piece alone, and prints metric where the job is metric', async () => {
    const { out } = await list(withValue(smallJob(), 'shownIn', 'metric'), '--piece', 'ledge');
    expect(out).not.toContain('Counter');
    expect(out).toMatch(/sticks? of 2438 mm/);
    expect(out).toMatch(/lengths in millimetres/);
    expect(out).not.toMatch(/lengths in inches|sq ft|\d lb\b/);
  });

  test.each([
    [[], /^Say which job file to list/],
    [['none.json'], /none\.json: There is no such file/],
    [[LEDGE, '--piece', 'x'], /There is no piece "x"\. Its pieces: /],
    [[LEDGE, '--fast'], /There is no option --fast/],
    [[LEDGE, 'two.json'], /One job file at a time/],
    [[LEDGE, '--csv', '--json'], /Ask for --csv or for --json, not for both/],
  ])('refuses %j with code 2', async (args, words) => {
    const { code, out, err } = await runHere(['list', ...args]);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toMatch(words);
  });

  test('is in the help, and has help of its own', async () => {
    expect((await runHere(['--help'])).out).toMatch(/^ {2}list +list what to cut/m);
    expect((await runHere(['list', '--help'])).out).toMatch(/^npm run -s cli -- list/);
  });
});
