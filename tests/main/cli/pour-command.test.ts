import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { pourPlan } from '../../../src-core/pour';
import { pourReport } from '../../../src-main/cli/report/pour-report';
import { mixOf, slabJob } from '../../core/pour/pour-jobs';
import { rectangle } from '../../support/pieces';
import { type CliOutcome, PROJECT, runHere, withFolder } from './run-here';

const GALLEY = 'assets/jobs/boathouse-galley.json';

async function pour(content: unknown, ...options: readonly string[]): Promise<CliOutcome> {
  return withFolder(async (folder) => {
    writeFileSync(join(folder, 'job.json'), JSON.stringify(content));
    return runHere(['pour', 'job.json', ...options], { folder });
  });
}

interface Report {
  readonly needsAttention: boolean;
  readonly pours: readonly {
    readonly id: string;
    readonly bags: { readonly bags: number } | null;
    readonly batches: readonly {
      readonly id: string;
      readonly bags: number;
      readonly tickId: string;
      readonly isDone: boolean;
      readonly trace: { readonly pieceId: string };
    }[];
    readonly clock: {
      readonly finish: readonly { readonly tickId: string; readonly trace: { readonly pieceId: string } }[];
      readonly buckets: readonly { readonly id: string; readonly trace: { readonly pieceId: string } }[];
    } | null;
  }[];
}

describe('pour', () => {
  test('prints every pour of the galley with its parts, within 100 columns, and gives 0', async () => {
    const { code, out, err } = await runHere(['pour', GALLEY]);
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(out.match(/^● Pour \d, day \d, 2027-04-2\d: /gm)).toHaveLength(4);
    for (const heading of [
      'Found',
      'Concrete',
      'Batches, minutes from the first water',
      'Buckets and lifting',
      'Crew',
      'Screed',
      'Finish, minutes from the first water',
      'Weather',
    ]) {
      expect(out.match(new RegExp(`^${heading}$`, 'gm'))).toHaveLength(4);
    }
    expect(out).toMatch(/^To buy\n- Bagged countertop mix, 80 lb: 31 bags and 1 in hand/m);
    expect(out).toMatch(/^- Silica: dry mix/m);
    expect(out).toMatch(/^- Wet concrete is caustic/m);
    expect(out).toContain('Planning arithmetic for one builder');
    expect(Math.max(...out.split('\n').map((line) => [...line].length))).toBeLessThanOrEqual(100);
  });

  // 60 * 24 * 2 / 1728 = 1.667 ft3; with .12 ft3 to top up 1.787 ft3, three bags of .6 ft3; 6.75 lb is midway of 6 and 7.5
  test('a slab of 1.67 cu ft takes 3 bags in two batches with 6.75 lb of water to a bag', async () => {
    const { out } = await pour(slabJob());
    expect(out).toContain('1.67 cu ft as drawn; 1.79 cu ft (0.0662 cu yd) to mix');
    expect(out).toContain('3 bags of 80 lb: Countertop mix, no pigment.');
    expect(out).toContain('To each bag: water 6.75 lb (0.809 gal); pigment none. Water to cement 0.338.');
    expect(out).toMatch(/^ +1 +2 +13\.5 lb \(1\.62 gal\) +none +0 +8 +15 +4 buckets to Piece$/m);
    expect(out).toMatch(/^ +2 +1 +6\.75 lb \(0\.809 gal\) +none/m);
    expect(out).toContain('Fill in this order: Piece.');
    expect(out).toContain('A straightedge of 36 in rides on the rim of the edge form on both sides');
  });

  test('prints litres, kilograms, millimetres, km/h and degrees Celsius where the job is metric', async () => {
    const { out } = await pour({ ...slabJob(), shownIn: 'metric' });
    expect(out).toContain('47.2 L as drawn; 50.6 L to mix');
    expect(out).toMatch(/water 3\.06 kg \(3\.06 L\)/);
    expect(out).toMatch(/A straightedge of 914 mm/);
    expect(out).toMatch(/air 20 °C, .* wind \d+ km\/h/s);
    const amounts = out.slice(out.indexOf('\nConcrete\n'), out.indexOf('\nFinish, '));
    expect(amounts).not.toMatch(/\d (lb|gal|cu ft|cu yd|in|psf)\b/);
  });

  test('gives 1 and says so first where a joint is cold, and names the least crew', async () => {
    const { code, out } = await pour(slabJob({ crew: { minutesABatch: 25 } }));
    expect(code).toBe(1);
    expect(out).toMatch(/^▲ Pour 1, day 0: Piece$/m);
    expect(out).toMatch(/^▲ Attention: Piece takes more concrete than this crew places/m);
    expect(out).toContain('5 minutes too slow');
  });

  test('gives 1 where water is refused, and prints no amount of it', async () => {
    const { code, out } = await pour(slabJob({ mixes: [mixOf({ waterLb: 12 })] }));
    expect(code).toBe(1);
    expect(out).toMatch(/^⬣ Refused: A bag of Countertop mix takes 6 lb to 7\.5 lb of water/m);
    expect(out).toContain('To each bag: water refused;');
  });

  test('gives 1 without bag data, with volumes, screed and weather alone', async () => {
    const { code, out } = await pour(slabJob({ mixes: [mixOf(null)] }));
    expect(code).toBe(1);
    expect(out).toContain('Only volumes can be given');
    expect(out).toMatch(/^Screed$/m);
    expect(out).not.toMatch(/^Batches/m);
    expect(out).not.toMatch(/^Finish/m);
  });

  // a job file whose outline crosses itself is refused before; a report says it all the same
  test('names a piece that cannot be drawn before every pour', () => {
    const job = slabJob();
    const crossed = [0, 60, 0, 60].map((xIn, k) => ({ xIn, yIn: k < 2 ? 0 : 24, radiusIn: 0 }));
    const bow = { ...job.pieces[0]!, id: 'bow', name: 'Bow', corners: crossed, edges: null };
    const both = { ...job, pieces: [...job.pieces, bow] };
    const report = pourReport(both, pourPlan(both), { colour: false });
    expect(report).toMatch(/^For every pour\n⬣ Refused: Bow cannot be drawn/m);
    expect(report).toMatch(/^● Pour 1, day 0: Piece$/m);
  });

  test('long names stay within 100 columns', async () => {
    const name = `${'Serving counter on the landing '.repeat(2)}${'x'.repeat(30)}`;
    const { out } = await pour(slabJob({}, { name, copies: 3, corners: rectangle(90, 24) }));
    expect(Math.max(...out.split('\n').map((line) => [...line].length))).toBeLessThanOrEqual(100);
  });

  test('gives everything as JSON, each item with an id and the piece that it is of', async () => {
    const { code, out } = await runHere(['pour', GALLEY, '--json']);
    const report = JSON.parse(out) as Report;
    expect(code).toBe(0);
    expect(report.needsAttention).toBe(false);
    for (const { batches, bags, clock } of report.pours) {
      expect(batches.reduce((sum, batch) => sum + batch.bags, 0)).toBe(bags!.bags);
      const items = [...batches, ...clock!.buckets];
      expect(new Set(items.map(({ id }) => id)).size).toBe(items.length);
      for (const { trace } of [...items, ...clock!.finish]) expect(trace.pieceId).not.toBe('');
    }
  });

  test('a batch that is ticked in the job is done in the JSON, and no other is', async () => {
    const { out } = await runHere(['pour', GALLEY, '--json']);
    const { tickId } = (JSON.parse(out) as Report).pours[1]!.batches[0]!;
    const job = JSON.parse(readFileSync(join(PROJECT, GALLEY), 'utf8')) as object;
    const ticked = await pour({ ...job, ticks: [{ id: tickId, done: true }] }, '--json');
    const done = (JSON.parse(ticked.out) as Report).pours.flatMap(({ batches }) =>
      batches.filter(({ isDone }) => isDone).map((batch) => batch.tickId),
    );
    expect(done).toEqual([tickId]);
  });

  test.each([
    [[], /^Say which job file to pour\./],
    [['none.json'], /none\.json: There is no such file/],
    [[GALLEY, '--fast'], /There is no option --fast/],
    [[GALLEY, 'two.json'], /One job file at a time/],
  ])('refuses %j with code 2', async (args, words) => {
    const { code, out, err } = await runHere(['pour', ...args]);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toMatch(words);
  });

  test('is in the help, and has help of its own', async () => {
    expect((await runHere(['--help'])).out).toMatch(/^ {2}pour +plan the day of each pour/m);
    expect((await runHere(['pour', '--help'])).out).toMatch(/^npm run -s cli -- pour JOB/);
  });
});
