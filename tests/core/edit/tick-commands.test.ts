import { describe, expect, test } from 'vitest';
import { setTick } from '../../../src-core/edit';
import { done, refusal, sampleJob } from './editing';

describe('ticks of the day', () => {
  const job = sampleJob();
  const batch = { id: 'batch-1', words: 'batch 1' };

  test('a batch that is mixed is ticked, and the tick survives being written and read', () => {
    const ticked = done(setTick.perform(job, { ...batch, done: true }));
    expect(ticked.title).toBe('Tick batch 1');
    expect(ticked.job.ticks).toEqual([{ id: 'batch-1', done: true }]);
  });

  test('a tick that is taken away leaves nothing behind', () => {
    const ticked = done(setTick.perform(job, { ...batch, done: true }));
    const unticked = done(setTick.perform(ticked.job, { ...batch, done: false }));
    expect(unticked.title).toBe('Untick batch 1');
    expect(unticked.job).toEqual(job);
  });

  test('a name that no file could keep is refused', () => {
    expect(refusal(setTick.perform(job, { id: 'batch 1!', done: true, words: 'batch 1' })).path).toMatch(
      /ticks/,
    );
  });
});
