import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { straightCounter } from '../../core/sequence/swap-jobs';
import type { CliOutcome } from './run-here';
import { runHere, withFolder } from './run-here';

/** A 60 in counter on two cabinets that come on day 30 and stand on feet, held until then by a leg a bay and a ledger. */
function pair(more: Record<string, unknown> = {}) {
  const cabinet = (id: string, xIn: number) => ({
    kind: 'cabinet',
    id,
    name: id.toUpperCase(),
    corner: { xIn, yIn: 1.5 },
    widthIn: 30,
    depthIn: 24,
    firstDay: 30,
    feet: { count: 4, shortestIn: 3.5, longestIn: 6, ratingLb: 300 },
  });
  const leg = (id: string, xIn: number) => ({ kind: 'leg', id, centre: { xIn, yIn: 4 }, lastDay: 30 });
  return {
    format: 'ledgewright-job',
    version: 1,
    id: 'pair',
    name: 'Counter on two',
    mixes: [{ id: 'mix', name: 'Mix', strengthPsi: 5000, strengthFrom: 'tested' }],
    pieces: [
      {
        id: 'counter',
        name: 'Counter',
        use: 'counter',
        corners: [
          { xIn: 0, yIn: 0 },
          { xIn: 60, yIn: 0 },
          { xIn: 60, yIn: 25.5 },
          { xIn: 0, yIn: 25.5 },
        ],
        thicknessIn: 1.5,
        topElevationIn: 36,
        mixId: 'mix',
        supports: [
          cabinet('b1', 0),
          cabinet('b2', 30),
          leg('leg-1', 15),
          leg('leg-2', 45),
          {
            kind: 'ledger',
            id: 'ledger',
            from: { xIn: 0, yIn: 24.75 },
            to: { xIn: 60, yIn: 24.75 },
            widthIn: 1.5,
            lastDay: 30,
          },
        ],
      },
    ],
    ...more,
  };
}

const DRAWN = {
  swap: {
    workingLoadPsf: 10,
    steps: [
      { id: 'first', day: 30, supportsOut: ['leg-1'], supportsIn: ['b1'] },
      { id: 'second', day: 30, supportsOut: ['leg-2'], supportsIn: ['b2'] },
      { id: 'last', day: 30, supportsOut: ['ledger'] },
    ],
  },
};

async function swap(job: object, ...options: readonly string[]): Promise<CliOutcome> {
  return withFolder(async (folder) => {
    writeFileSync(join(folder, 'job.json'), JSON.stringify(job));
    return runHere(['swap', 'job.json', ...options], { folder });
  });
}

describe('swap', () => {
  test("walks through the job's own steps: what goes, what comes, how near to cracking, and what feet may be wound", async () => {
    const { code, out, err } = await swap(pair(DRAWN));
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(out).toContain("Counter: the job's own steps");
    expect(out).toMatch(/^ 30 +leg-1 +B1 +0\.\d\d +bay open, /m);
    expect(out).toMatch(/^- all feet of B1: up as far as it winds, as the slab lifts off first, short /m);
    expect(out).toMatch(/^- Start the swap: Day 9, 9 days old/m);
    expect(out).toContain('If in doubt leave');
    expect(Math.max(...out.split('\n').map((line) => [...line].length))).toBeLessThanOrEqual(100);
  });

  test('proposes an order where the job has none, and in millimetres where it is shown so', async () => {
    const { code, out } = await swap(pair({ shownIn: 'metric', swap: { workingLoadPsf: 10 } }));
    expect(code).toBe(0);
    expect(out).toContain('Counter: proposed order; the mildest of all orders that stand');
    expect(out).toMatch(/slips in with 13 mm to spare/);
  });

  test('prints in 64ths how far a foot between others may be wound up', async () => {
    const { out } = await swap(straightCounter(1.5), '--piece', 'counter');
    expect(out).toMatch(/^- all feet of cab-\d: up \d+\/\d+ in, short /m);
    expect(Math.max(...out.split('\n').map((line) => [...line].length))).toBeLessThanOrEqual(100);
  });

  test('gives the same as JSON, every moment with what stands and its checks', async () => {
    const { code, out } = await swap(pair(DRAWN), '--json');
    const report = JSON.parse(out) as {
      pieces: {
        level: string;
        from: string;
        steps: { id: string; heights: { part: string }[] }[];
        moments: {
          phase: string;
          standing: string[];
          cracking: { ratio: number };
          checks: { id: string }[];
        }[];
        worstMoment: number;
      }[];
      units: string;
      notice: string;
    };
    expect(code).toBe(0);
    const [piece] = report.pieces as [(typeof report.pieces)[number]];
    expect(piece.from).toBe('job');
    expect(piece.steps.map(({ id }) => id)).toEqual(['first', 'second', 'last']);
    expect(piece.steps[0]!.heights.map(({ part }) => part)).toEqual(['whole', 'left-side', 'right-side']);
    expect(piece.moments).toHaveLength(6);
    expect(piece.moments[1]!.standing).toEqual(['leg-2', 'ledger']);
    expect(piece.moments.every(({ checks }) => checks.some(({ id }) => id === 'bending-plain'))).toBe(true);
    expect(out).not.toContain('"workings"');
    expect(report.notice).toContain('leave the props in');
  });

  test('leaves with 1 where a cabinet does not go under, and says by how much', async () => {
    const job = pair(DRAWN);
    job.pieces[0]!.topElevationIn = 35;
    const { code, out } = await swap(job);
    expect(code).toBe(1);
    expect(out).toMatch(/▲ Day 30\. Height of the cabinet under the slab: The soffit is 33-1\/2 in over the/);
  });

  test('of the example holds at every step, the worst below 0.9 of what cracks the slab', async () => {
    const { out } = await runHere([
      'swap',
      'assets/jobs/boathouse-galley.json',
      '--piece',
      'serving-counter',
      '--json',
    ]);
    const [piece] = (
      JSON.parse(out) as {
        pieces: {
          level: string;
          offer: unknown;
          moments: { ratio: number; cracking: { ratio: number } }[];
        }[];
      }
    ).pieces;
    expect(piece).toMatchObject({ level: 'holds', offer: null });
    expect(Math.max(...piece!.moments.map(({ cracking }) => cracking.ratio))).toBeLessThan(0.9);
    expect(Math.max(...piece!.moments.map(({ ratio }) => ratio))).toBeLessThanOrEqual(1);
  }, 60_000);

  test('says where a prop stands that an order needs, and that sizes of a finished piece decide nothing', async () => {
    const lengthIn = 75;
    const job = pair({ swap: { workingLoadPsf: 50 } });
    const [piece] = job.pieces as [(typeof job.pieces)[number]];
    const corners = [
      { xIn: 0, yIn: 0 },
      { xIn: lengthIn, yIn: 0 },
      { xIn: lengthIn, yIn: 25.5 },
      { xIn: 0, yIn: 25.5 },
    ];
    const supports = piece.supports.map((support) => {
      if (support.kind === 'cabinet' && 'corner' in support) {
        const xIn = support.id === 'b1' ? 1.5 : 37.5;
        return { ...support, widthIn: 36, corner: { xIn, yIn: 1.5 } };
      }
      if (support.kind === 'leg')
        return { ...support, centre: { xIn: support.id === 'leg-1' ? 20 : 56, yIn: 4 } };
      return { ...support, to: { xIn: lengthIn, yIn: 24.75 } };
    });
    const { out } = await swap({ ...job, pieces: [{ ...piece, corners, supports }] });
    expect(out).toMatch(/^Props that this order needs$/m);
    expect(out).toMatch(/^- Set a 2x4 prop \(prop 1\) under the slab 3\/4 in from the left, /m);
    expect(out).toMatch(/a caution and decide nothing/);
  }, 60_000);

  test('looks for an order though the job has one, when asked', async () => {
    const { out } = await swap(pair(DRAWN), '--propose');
    expect(out).toContain('Counter: proposed order');
  });

  test('says that there is nothing to swap where nothing changes after the pour', async () => {
    const job = pair();
    const [piece] = job.pieces as [(typeof job.pieces)[number]];
    const stays = piece.supports.map((support) => ({ ...support, firstDay: 0, lastDay: null }));
    const { code, out } = await swap({ ...job, pieces: [{ ...piece, supports: stays }] });
    expect(code).toBe(0);
    expect(out).toContain('- Counter: Nothing under it changes after its pour.');
  });

  test.each([
    [['--piece', 'other'], /^job\.json: There is no piece "other"\. Its pieces: counter$/m],
    [['--slow'], /^There is no option --slow\.$/m],
    [['second.json'], /^One job file at a time/m],
  ])('refuses %j with code 2 and a line that says why', async (options, words) => {
    const { code, out, err } = await swap(pair(), ...options);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toMatch(words);
  });

  test('refuses a missing file and one that is not a job with code 2', async () => {
    expect((await runHere(['swap', 'nowhere.json'])).code).toBe(2);
    expect((await runHere(['swap'])).code).toBe(2);
    expect((await swap({ format: 'other' })).code).toBe(2);
  });

  test('is in the help, and has help of its own', async () => {
    expect((await runHere(['--help'])).out).toMatch(/^ {2}swap +walk through the swap/m);
    expect((await runHere(['swap', '--help'])).out).toMatch(/^npm run -s cli -- swap/);
  });
});
