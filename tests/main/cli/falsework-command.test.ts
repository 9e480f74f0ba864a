import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { formJob } from '../../core/falsework/form-jobs';
import { smallJob, withValue } from '../../support/small-job';
import { type CliOutcome, runHere, withFolder } from './run-here';

const LEDGE = 'assets/jobs/bar-ledge.json';

async function falsework(content: unknown, ...options: readonly string[]): Promise<CliOutcome> {
  return withFolder(async (folder) => {
    writeFileSync(join(folder, 'job.json'), JSON.stringify(content));
    return runHere(['falsework', 'job.json', ...options], { folder });
  });
}

/** A counter poured on day 2 and another just like it poured on a day; their falsework comes out a week after. */
function pairOfSlabs(pourDay: number) {
  const job = formJob(36, 24);
  const [counter] = job.pieces;
  const corners = counter!.corners.map(({ xIn, yIn }) => ({ xIn: xIn + 100, yIn }));
  return { ...job, pieces: [counter, { ...counter, id: 'bench', name: 'Bench', pourDay, corners }] };
}

describe('falsework', () => {
  test('prints sections, legs, screws, parts, cut list and cautions of a bar ledge, and gives 0', async () => {
    const { code, out, err } = await runHere(['falsework', LEDGE]);
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(out).toMatch(/^● Bar ledge: 3 sections/m);
    for (const heading of ['Sections', 'Legs, cut to the floor', 'Screws', 'Parts', 'Cut list', 'Cautions']) {
      expect(out).toMatch(new RegExp(`^${heading}$`, 'm'));
    }
    expect(out).toContain('Nobody stands or works under a fresh slab');
    expect(out).toContain('Wet concrete burns');
    expect(out).toMatch(/(fewest|least length of) sticks, proved|within .+ of the proven least/);
    expect(out).toContain('Planning arithmetic for one builder');
    expect(Math.max(...out.split('\n').map((line) => [...line].length))).toBeLessThanOrEqual(100);
  });

  test('gives 1 and the sentences where something cannot be built', async () => {
    const { code, out } = await runHere(['falsework', 'assets/jobs/straight-counter.json']);
    expect(code).toBe(1);
    expect(out).toMatch(/^▲ Counter: no falsework section$/m);
    expect(out).toContain('B1 stands under "Counter" before the pour');
  });

  test('tells what of an earlier pour is used again, and what is left to buy for the whole job', async () => {
    const job = pairOfSlabs(16);
    const { out } = await falsework(job);
    expect(out).toMatch(
      /^- "Bench, section 1", built on day 15: Used again from "Counter, section 1", out on/m,
    );
    expect(out).toMatch(/^Bought for the whole job$/m);
    const [, bought, asked] =
      /^Lumber and panel for (\d+\.\d\d); without using anything again it would be (\d+\.\d\d)/m
        .exec(out)!
        .map(Number) as [number, number, number];
    expect(Math.abs(bought / asked - 0.5)).toBeLessThan(0.001);
    const together = await falsework(pairOfSlabs(2));
    expect(together.out).not.toContain('Used again');
    expect(together.out).not.toContain('Bought for the whole job');
    const { reuse } = JSON.parse((await falsework(job, '--json')).out) as { reuse: { uses: unknown[] } };
    expect(reuse.uses).toHaveLength(1);
  });

  test('gives everything as JSON with a patch for the job', async () => {
    const { code, out } = await runHere(['falsework', LEDGE, '--json']);
    const report = JSON.parse(out) as {
      needsAttention: boolean;
      pieces: { sections: { checks: unknown[]; legs: unknown[] }[]; patch: { path: string }[] }[];
    };
    expect(code).toBe(0);
    expect(report.needsAttention).toBe(false);
    expect(report.pieces[0]!.sections).toHaveLength(3);
    expect(report.pieces[0]!.sections[0]!.checks.length).toBeGreaterThan(10);
    expect(report.pieces[0]!.patch.map(({ path }) => path)).toContain('/falsework/sections');
  });

  test('looks at one piece, and prints metric where the job is metric', async () => {
    const metric = withValue(smallJob(), 'shownIn', 'metric');
    const { out } = await falsework(metric, '--piece', 'ledge');
    expect(out).not.toContain('Counter:');
    expect(out).toMatch(/\d mm/);
    expect(out).not.toMatch(/\d in by/);
  });

  test.each([
    [[], /^Say which job file/],
    [['none.json'], /none\.json: There is no such file/],
    [[LEDGE, '--piece', 'x'], /There is no piece "x"\. Its pieces: /],
    [[LEDGE, '--fast'], /There is no option --fast/],
    [[LEDGE, 'two.json'], /One job file at a time/],
  ])('refuses %j with code 2', async (args, words) => {
    const { code, out, err } = await runHere(['falsework', ...args]);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toMatch(words);
  });

  test('is in the help, and has help of its own', async () => {
    expect((await runHere(['--help'])).out).toMatch(/^ {2}falsework +design what holds/m);
    expect((await runHere(['falsework', '--help'])).out).toMatch(/^npm run -s cli -- falsework/);
  });
});
