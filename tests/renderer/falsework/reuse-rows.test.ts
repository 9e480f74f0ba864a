import { expect, test } from 'vitest';
import { designFalsework } from '../../../src-core/falsework';
import { boughtWords, reuseRows } from '../../../src-renderer/falsework/reuse-rows';
import { formJob } from '../../core/falsework/form-jobs';
import { EXAMPLE_DESIGNS } from './form-designs';

const first = formJob(36, 24);
const [counter] = first.pieces;
const bench = {
  ...counter!,
  id: 'bench',
  name: 'Bench',
  pourDay: 16,
  corners: counter!.corners.map((corner) => ({ ...corner, xIn: corner.xIn + 100 })),
};
const job = { ...first, pieces: [counter!, bench] };

test('a slab built on day 15 of what came out on day 9 says so by the letter of its section, and buys nothing', () => {
  const design = designFalsework(job, 'bench');
  const [row, ...more] = reuseRows(job, design);
  expect(more).toEqual([]);
  expect(row!.where).toBe('Section A, built on day 15:');
  expect(row!.words).toMatch(/^Used again from "Counter, section 1", out on day 9: /);
  expect(boughtWords(design)).toMatch(/^Lumber and panel bought for this piece: 0\.00, of \d+\.\d\d that/);
});

test('the first slab says what it goes on to', () => {
  expect(reuseRows(job, designFalsework(job, 'counter')).map(({ where }) => where)).toEqual([
    'For "Bench, section 1", built on day 15:',
  ]);
});

test('the pieces of the examples, whose falsework all stands at once, have no rows', () => {
  for (const { job: example, design } of EXAMPLE_DESIGNS) expect(reuseRows(example, design)).toEqual([]);
});
