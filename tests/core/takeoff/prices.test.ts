import { describe, expect, test } from 'vitest';
import { designJob } from '../../../src-core/falsework';
import type { Job } from '../../../src-core/job';
import { jobTakeoff, linesOf } from '../../../src-core/takeoff';
import { exampleJob, lineOf } from './cases';

const ledge = exampleJob('bar-ledge');
const falsework = designJob(ledge);

function withStock(stock: Job['stock']): Job {
  return { ...ledge, stock };
}

const STICK = {
  id: 'stick',
  name: '2 x 4, 8 ft',
  kind: 'lumber',
  lengthIn: 96,
  widthIn: 3.5,
  thicknessIn: 1.5,
} as const;

describe('lumber and panels of the falsework', () => {
  test('have invented prices by board foot and square foot where the job has none of its own', () => {
    // 2 x 4 x 96 / 144 = 5.333 board feet of 2x4 at 0.85 = 4.53 for 8 ft; a panel of 8 x 4 ft at 0.90 = 28.80
    const lines = linesOf(jobTakeoff(ledge, falsework).list);
    const lumber = lines.filter(({ id }) => id.startsWith('lumber/2x4/'));
    expect(lumber.length).toBeGreaterThan(0);
    for (const { id, priceEach, priceFrom } of lumber) {
      const lengthIn = Number(id.split('/')[2]);
      expect(priceEach).toBeCloseTo((2 * 4 * lengthIn * 0.85) / 144, 2);
      expect(priceFrom).toBe('invented');
    }
    const panel = lines.find(({ id }) => id.startsWith('panel/'))!;
    expect(panel.priceEach).toBeCloseTo(28.8, 9);
    expect(panel.cost).toBe(panel.buy * panel.priceEach!);
  });

  test("have the job's own price where its stock has that size and length", () => {
    const job = withStock([{ ...STICK, price: 5.25, priceFrom: 'own' }]);
    const { priceEach, priceFrom, buy, cost } = lineOf(jobTakeoff(job, designJob(job)), 'lumber/2x4/');
    expect([priceEach, priceFrom]).toEqual([5.25, 'own']);
    expect(cost).toBe(5.25 * buy);
  });

  test('are left out with their screws where no falsework is handed in, and the list says so', () => {
    const { list } = jobTakeoff(ledge, null);
    const names = linesOf(list).map(({ name }) => name);
    expect(names.filter((name) => name.includes('falsework'))).toEqual([]);
    expect(list.gaps).toEqual([expect.stringContaining('The falsework is left out')]);
    expect(jobTakeoff(ledge, falsework).list.gaps).toEqual([]);
  });
});

test('a line without a price has no cost and is counted in the total', () => {
  const { list } = jobTakeoff(ledge, null);
  const lines = linesOf(list);
  expect(
    lines.every(
      ({ priceEach, priceFrom, cost }) => priceEach === null && priceFrom === null && cost === null,
    ),
  ).toBe(true);
  expect(list.total).toEqual({
    cost: 0,
    unpriced: lines.length,
    hasInvented: false,
    words: 'No line has a price',
  });
});
