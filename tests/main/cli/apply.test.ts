import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { z } from 'zod';
import { governingCheck, stands } from '../../../src-core/checks';
import { readJobText } from '../../../src-core/job';
import { checkJob } from '../../../src-core/verdict';
import { runHere } from './run-here';

const LEDGE = 'assets/jobs/bar-ledge.json';
const folder = mkdtempSync(join(tmpdir(), 'ledgewright-'));
afterAll(() => rmSync(folder, { recursive: true }));

const offered = z.object({
  pieces: z.array(
    z.object({
      verdict: z.object({ words: z.string() }),
      changes: z.array(
        z.object({ id: z.string(), worstRatio: z.number(), patch: z.array(z.object({ op: z.string() })) }),
      ),
    }),
  ),
});

describe('remedies by command line', () => {
  test('the bar ledge that turns over is offered two changes or more; each, written and checked again, keeps its promise within 1 %', async () => {
    const said = await runHere(['check', LEDGE, '--remedies', '--json']);
    expect(said.code).toBe(1);
    const piece = offered.parse(JSON.parse(said.out)).pieces[0]!;
    expect(piece.verdict.words).toMatch(/^Needs /);
    expect(piece.changes.length).toBeGreaterThanOrEqual(2);
    for (const { id, worstRatio, patch } of piece.changes) {
      expect(patch.length).toBeGreaterThan(0);
      const out = join(folder, `${id}.json`);
      const applied = await runHere(['apply', LEDGE, '--remedy', id, '--out', out]);
      expect(applied).toMatchObject({ code: 0, err: '' });
      const reading = readJobText(readFileSync(out, 'utf8'));
      if (!reading.ok) throw new Error(reading.problems[0]?.sentence);
      const [again] = checkJob(reading.job, { changes: 'none' }).pieces;
      expect(stands(again!.verdict.level)).toBe(true);
      expect(Math.abs(governingCheck(again!.checks)!.ratio / worstRatio - 1)).toBeLessThan(0.01);
    }
  }, 240_000);

  test.each([
    { says: 'no remedy named', argv: ['apply', LEDGE, '--out', 'x.json'], fault: '--remedy is missing' },
    { says: 'no file to write', argv: ['apply', LEDGE, '--remedy', 'a'], fault: '--out is missing' },
    {
      says: 'the job itself as the file to write',
      argv: ['apply', LEDGE, '--remedy', 'a', '--out', LEDGE],
      fault: 'that is the job itself',
    },
    {
      says: 'no such job',
      argv: ['apply', 'none.json', '--remedy', 'a', '--out', 'x.json'],
      fault: 'none.json',
    },
  ])('$says ends with code 2 and a line', async ({ argv, fault }) => {
    const said = await runHere(argv);
    expect(said.code).toBe(2);
    expect(said.out).toBe('');
    expect(said.err).toContain(fault);
  });
});
