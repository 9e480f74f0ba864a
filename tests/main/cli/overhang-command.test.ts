import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { CliIo } from '../../../src-main/cli/io';
import { runCli } from '../../../src-main/cli/run-cli';
import { runHere } from './run-here';

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'ledgewright-overhang-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Runs `overhang` with a cache of the tests' own. */
async function overhang(...args: readonly string[]) {
  const out: string[] = [];
  const err: string[] = [];
  let clockMs = 0;
  const io: CliIo = {
    version: '1.2.3',
    currentFolder: folder,
    cacheFolder: folder,
    out: { write: (text) => out.push(text), isTerminal: false },
    err: { write: (text) => err.push(text), isTerminal: false },
    colour: false,
    nowMs: () => {
      clockMs += 1;
      return clockMs;
    },
  };
  const code = await runCli(['overhang', ...args], io);
  return { code, out: out.join(''), err: err.join('') };
}

/** A thick ledge on a block wall has the least to compute. */
const THICK = ['--root', 'block', '--thickness', '4'];

describe('overhang', () => {
  test('prints one thickness and every bracket spacing, and the second time what was kept', async () => {
    const first = await overhang(...THICK);
    expect({ code: first.code, err: first.err }).toEqual({ code: 0, err: '' });
    expect(first.out).toMatch(/^4 in +over 16 in +over 16 in +⬣ engineer/m);
    expect(first.out).toMatch(/^Brackets at +● Holds +◆ Holds with steel$/m);
    expect(first.out).toMatch(/^48 in +⬣ engineer/m);
    expect(first.out).toContain('0 of 6 rows kept from before');
    const second = await overhang(...THICK);
    expect(second.out).toContain('6 of 6 rows kept from before');
    const table = (text: string) => text.slice(0, text.indexOf('Computed in'));
    expect(table(second.out)).toBe(table(first.out));
  });

  test('keeps within 100 columns', async () => {
    const { out } = await overhang(...THICK);
    expect(Math.max(...out.split('\n').map((line) => [...line].length))).toBeLessThanOrEqual(100);
  });

  test('gives the rows as JSON, in core units', async () => {
    const { code, out } = await overhang(...THICK, '--json');
    const report = JSON.parse(out) as {
      rows: { over: string; entries: { kind: string; overhangIn: number | null }[] }[];
      rowsFromCache: number;
      units: string;
    };
    expect(code).toBe(0);
    expect(report.rowsFromCache).toBe(6);
    expect(report.rows.map(({ over }) => over)).toEqual(['thickness', ...Array(5).fill('spacing')]);
    expect(report.rows[0]!.entries[0]).toMatchObject({ kind: 'capped', overhangIn: 16 });
    expect(report.units).toMatch(/^inch/);
  });

  test('prints lengths in millimetres, rounded down, and reads them so', async () => {
    const { out } = await overhang('--root', 'block', '--thickness', '101.6', '--metric');
    expect(out).toContain('6 of 6 rows kept from before');
    expect(out).toMatch(/^102 mm +over 405 mm/m);
  });

  test.each([
    [['--thickness', '0.5'], /^--thickness: From 1 to 6 in thick is decided here/],
    [['--thickness', 'thick'], /^--thickness thick: /],
    [['--root', 'brick'], /^--root brick: say stud or block\.$/m],
    [['--load', 'dancing'], /^--load dancing: say leaning or sitting/],
    [['--steel', '#3@x'], /^--steel: Bars lie 1 to 48 in apart\.$/m],
    [['--steel', 'chicken-wire'], /^--steel: There is no mesh "chicken-wire"/],
    [['--bracket', 'hook'], /^--bracket: There is no bracket "hook"/],
    [['--strength', '20'], /^--strength: Concrete has 500 to 20000 psi/],
    [['job.json'], /^The chart is of no job file/],
    [['--slow'], /^There is no option --slow\.$/m],
  ])('refuses %j with code 2 and a line that says why', async (args, words) => {
    const { code, out, err } = await overhang(...args);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toMatch(words);
  });

  test('is in the help, and has help of its own', async () => {
    expect((await runHere(['--help'])).out).toMatch(/^ {2}overhang +how far a ledge may reach/m);
    expect((await overhang('--help')).out).toMatch(/^npm run -s cli -- overhang/);
  });
});
