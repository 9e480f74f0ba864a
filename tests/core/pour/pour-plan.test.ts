import { describe, expect, test } from 'vitest';
import { jobSchema, readJob } from '../../../src-core/job';
import { pourPlan, tickIdOf } from '../../../src-core/pour';
import type { Line } from '../../../src-core/workings';
import { randomJob } from '../../support/random-job';
import { lastDigit, recompute, recomputeTolerance } from '../../support/recompute';
import { seededRandom } from '../../support/seeded-random';
import { exampleJobs } from '../solid/closed-shell';
import { corners } from '../solid/pieces';
import { BAG, mixOf, slabJob } from './pour-jobs';

const GALLEY = exampleJobs().find(({ file }) => file.includes('boathouse'))!.job;
const PLAN = pourPlan(GALLEY);
const PLANS = exampleJobs().map(({ file, job }) => ({ file, job, plan: pourPlan(job) }));

describe('the pours of the galley', () => {
  test('are four, on days 0 to 3, the grey counter by itself', () => {
    expect(PLAN.pours.map(({ day, pieces }) => [day, ...pieces.map(({ pieceId }) => pieceId)])).toEqual([
      [0, 'serving-counter'],
      [1, 'bar-ledge', 'foot-ledge'],
      [2, 'fish-bench', 'bench-seat', 'stove-hearth'],
      [3, 'gate-cap'],
    ]);
    expect(PLAN.pours[0]!.colour).toEqual({ pigment: 'Slate grey', pigmentRatio: 0.03 });
  });

  test('give each bag of the grey counter .6 lb of pigment, 3 % of 20 lb', () => {
    const { bags, batches } = PLAN.pours[0]!;
    expect(bags!.perBag.pigmentLb).toBeCloseTo(0.6, 12);
    for (const batch of batches) expect(batch.pigmentLb! / batch.bags).toBeCloseTo(0.6, 12);
  });

  test('say that an 80 lb bag takes two, and that half a bucket of 50.1 lb does not', () => {
    // 5 gal x 231 / 1728 x .5 x 150 = 50.13 lb, under the 51 of NIOSH 94-110.
    expect(PLAN.bucket.weightLb).toBeCloseTo(50.13, 2);
    expect(PLAN.findings.map(({ kind }) => kind)).toEqual(['bag-heavy']);
  });

  test('carry the cautions: silica, caustic concrete, lifting', () => {
    const words = PLAN.cautions.join(' ');
    for (const word of ['Silica', 'caustic', 'Lifting', '1926.1153']) expect(words).toContain(word);
  });
});

describe.each(PLANS)('$file', ({ job, plan }) => {
  test('adds up: pieces to pours, parts to totals, bags to batches, buckets to forms', () => {
    for (const pour of plan.pours) {
      const { drawnFt3, overfillFt3, wasteFt3, topUpFt3, totalFt3 } = pour.volumes;
      const drawn = pour.pieces.reduce((sum, { volume }) => sum + volume.volumeIn3 / 1728, 0);
      expect(drawnFt3).toBeCloseTo(drawn, 10);
      expect(drawnFt3 + overfillFt3 + wasteFt3 + topUpFt3).toBeCloseTo(totalFt3, 10);
      const bags = pour.batches.reduce((sum, batch) => sum + batch.bags, 0);
      expect(bags).toBe(pour.bags!.bags);
      expect(pour.batches.every((batch) => batch.bags <= job.crew.mixerBags)).toBe(true);
      expect(bags * pour.bags!.yieldFt3 - pour.bags!.surplusFt3).toBeCloseTo(totalFt3, 10);
      const tipped = pour.clock!.buckets.reduce((sum, { volumeFt3 }) => sum + volumeFt3, 0);
      expect(tipped).toBeCloseTo(drawnFt3 + overfillFt3, 8);
      for (const { pieceId, copy, volumeFt3 } of pour.clock!.order) {
        const own = pour.clock!.buckets.filter((one) => one.pieceId === pieceId && one.copy === copy);
        expect(own.reduce((sum, bucket) => sum + bucket.volumeFt3, 0)).toBeCloseTo(volumeFt3, 8);
      }
      expect(pour.clock!.buckets.every(({ volumeFt3 }) => volumeFt3 <= pour.clock!.bucketFt3 + 1e-9)).toBe(
        true,
      );
    }
  });

  test('has one id for each thing, and a tick for it that the job file takes', () => {
    const items = plan.pours.flatMap((pour) => [
      pour,
      ...pour.pieces,
      ...pour.batches,
      ...pour.findings,
      ...pour.clock!.buckets,
      ...pour.clock!.finish,
      ...pour.screed.flatMap(({ runs, rails, plugs }) => [...runs, ...rails, ...plugs]),
    ]);
    const ids = [...items, ...plan.findings, ...plan.mixes].map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    const ticks = items.map((item) => ({ id: tickIdOf(item), done: true }));
    expect(new Set(ticks.map(({ id }) => id)).size).toBe(items.length);
    expect(jobSchema.parse({ ...job, ticks }).ticks).toEqual(ticks);
  });

  test('prints workings that a reader can compute again', () => {
    const lines: readonly Line[] = [
      ...plan.bucket.lines,
      ...plan.pours.flatMap((pour) => [
        ...pour.pieces.flatMap((piece) => piece.lines),
        ...pour.volumes.lines,
        ...pour.bags!.lines,
        ...pour.clock!.lines,
        ...pour.weather.lines,
      ]),
    ];
    expect(lines.length).toBeGreaterThan(15);
    for (const line of lines) {
      const off = Math.abs(recompute(line) - Number(line.result));
      expect(off, `${line.symbol} = ${line.substituted}`).toBeLessThanOrEqual(
        Math.max(recomputeTolerance(line), lastDigit(line.result)),
      );
    }
  });

  test('is plain data and the same on every run', () => {
    expect(structuredClone(plan)).toEqual(plan);
    expect(JSON.stringify(pourPlan(job))).toBe(JSON.stringify(plan));
  });
});

describe('pours part', () => {
  const two = (first: object, second: object) => {
    const job = slabJob({ mixes: [mixOf(), { ...mixOf(), id: 'other', name: 'Other mix' }] });
    const [piece] = job.pieces;
    return pourPlan({
      ...job,
      pieces: [
        { ...piece!, ...first },
        { ...piece!, id: 'second', name: 'Second', ...second },
      ],
    });
  };
  const grey = { pigment: 'Grey', pigmentRatio: 0.03 };

  test.each([
    ['days', {}, { pourDay: 1 }, 2, false],
    ['mixes', {}, { mixId: 'other' }, 2, true],
    ['colours', {}, { colour: grey }, 2, true],
    ['shares of one pigment', { colour: { ...grey, pigmentRatio: 0.02 } }, { colour: grey }, 2, true],
    ['nothing', { colour: grey }, { colour: { ...grey } }, 1, false],
  ])('by %s', (_, first, second, count, isShared) => {
    const { pours } = two(first, second);
    expect(pours).toHaveLength(count);
    const said = pours.some(({ findings }) => findings.some(({ kind }) => kind === 'several-pours'));
    expect(said).toBe(isShared);
  });
});

test('a bucket filled to 60 % weighs 60.2 lb of 150 pcf: fill it to 50 %, or carry it by two', () => {
  const { bucket, findings } = pourPlan(slabJob({ crew: { bucketFill: 0.6 } }));
  expect(bucket.weightLb).toBeCloseTo(60.16, 2);
  // 51 / (5 x 231 / 1728 x 150) = .5087
  expect(bucket.mostFillRatio).toBeCloseTo(0.5087, 4);
  const heavy = findings.find(({ kind }) => kind === 'bucket-heavy')!;
  expect(heavy.words).toContain('weighs 60.2 lb, over the 51 lb of one pair of hands: fill it to 50 %');
});

test('a piece that cannot be drawn is refused, and the others are poured', () => {
  const job = slabJob();
  const [piece] = job.pieces;
  const crossed = corners([0, 0], [10, 10], [10, 0], [0, 10]);
  const plan = pourPlan({
    ...job,
    pieces: [piece!, { ...piece!, id: 'bow', name: 'Bow', corners: crossed, edges: null }],
  });
  expect(plan.pours.map(({ pieces }) => pieces.map(({ pieceId }) => pieceId))).toEqual([['piece']]);
  expect(plan.findings.find(({ kind }) => kind === 'piece-undrawn')).toMatchObject({
    level: 'refused',
    trace: { pieceId: 'bow' },
  });
});

test('ids that read alike have ticks of their own', () => {
  expect(tickIdOf({ id: 'pour/0/a-b' })).not.toBe(tickIdOf({ id: 'pour/0/a/b' }));
  const long = 'x'.repeat(70);
  expect(tickIdOf({ id: `${long}/1` })).not.toBe(tickIdOf({ id: `${long}/2` }));
});

test('60 random jobs have a plan whose times and volumes are all finite', () => {
  let planned = 0;
  for (let seed = 1; seed <= 60; seed++) {
    const reading = readJob(randomJob(seededRandom(seed)));
    if (!reading.ok) continue;
    const { mixes, ...rest } = reading.job;
    const bagged = { ...rest, mixes: mixes.map((mix) => ({ ...mix, bag: { ...BAG, waterLb: null } })) };
    for (const pour of pourPlan(bagged).pours) {
      const numbers = [
        pour.volumes.totalFt3,
        pour.clock!.leastSlackMinutes,
        ...pour.clock!.buckets.flatMap(({ at, toMinutes }) => [at.xIn, at.yIn, toMinutes]),
        ...pour.clock!.finish.map(({ toMinutes }) => toMinutes),
        ...pour.screed.flatMap(({ runs }) => runs.map(({ straightedgeIn }) => straightedgeIn)),
      ];
      expect(numbers.filter((number) => !Number.isFinite(number))).toEqual([]);
      planned++;
    }
  }
  expect(planned).toBeGreaterThan(50);
});
