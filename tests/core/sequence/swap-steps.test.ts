import { describe, expect, test } from 'vitest';
import type { JobDraft } from '../../../src-core/job';
import { isTemporary, swapStates, swapSteps } from '../../../src-core/sequence';
import { SWAP_DAY, sectionUnder, straightCounter } from './swap-jobs';

const withSteps = (steps: NonNullable<NonNullable<JobDraft['swap']>['steps']>) =>
  straightCounter(2, { swap: { steps } });

describe('the steps of a swap', () => {
  test('where none are drawn follow from the days of the supports, a step a day', () => {
    const job = straightCounter(2, { falsework: { sections: [sectionUnder('deck', [0, 0, 144, 25.5])] } });
    const [step, ...more] = swapSteps(job, job.pieces[0]!);
    expect(more).toEqual([]);
    expect(step).toMatchObject({
      id: `day-${SWAP_DAY}`,
      isDrawn: false,
      day: SWAP_DAY,
      sectionsOut: ['deck'],
    });
    expect(step!.supportsIn).toEqual(['cab-1', 'cab-2', 'cab-3', 'cab-4']);
    expect(step!.supportsOut).toHaveLength(9);
  });

  test('go by day, and what no drawn step names goes on the day that is drawn on it', () => {
    const job = withSteps([
      { id: 'second', day: 33, supportsOut: ['leg-2a', 'leg-2b'], supportsIn: ['cab-2'] },
      { id: 'first', day: 31, supportsOut: ['leg-1a', 'leg-1b'], supportsIn: ['cab-1'] },
    ]);
    const steps = swapSteps(job, job.pieces[0]!);
    expect(steps.map(({ id, isDrawn }) => [id, isDrawn])).toEqual([
      [`day-${SWAP_DAY}`, false],
      ['first', true],
      ['second', true],
    ]);
    expect(steps[0]!.supportsIn).toEqual(['cab-3', 'cab-4']);
  });

  test('of another piece are left out', () => {
    const job = straightCounter();
    const other = { ...job.pieces[0]!, id: 'other', supports: [] };
    expect(swapSteps({ ...job, pieces: [job.pieces[0]!, other] }, other)).toEqual([]);
  });
});

describe('the moments of a swap', () => {
  test('open a bay before they fill it', () => {
    const job = withSteps([
      { id: 'first', day: 20, supportsOut: ['leg-1a', 'leg-1b'], supportsIn: ['cab-1'] },
    ]);
    const [before, out, come] = swapStates(job, 'counter');
    expect([before, out, come].map((moment) => [moment!.stepId, moment!.phase, moment!.day])).toEqual([
      [null, 'before', 20],
      ['first', 'out', 20],
      ['first', 'in', 20],
    ]);
    expect(before!.standing).toContain('leg-1a');
    expect(before!.standing).not.toContain('cab-1');
    expect(out!.standing).not.toContain('leg-1a');
    expect(out!.standing).not.toContain('cab-1');
    expect(come!.standing).toContain('cab-1');
  });

  test('know a leg that is out for the move and straight back', () => {
    const job = withSteps([
      { id: 'first', day: 20, supportsOut: ['leg-1a', 'leg-2a'], supportsIn: ['cab-1', 'leg-2a'] },
    ]);
    const [before, out, come] = swapStates(job, 'counter');
    expect([before, out, come].map((moment) => moment!.standing.includes('leg-2a'))).toEqual([
      true,
      false,
      true,
    ]);
    const steps = swapSteps(job, job.pieces[0]!);
    const leg = (id: string) => job.pieces[0]!.supports.find((support) => support.id === id)!;
    expect(isTemporary(leg('leg-2a'), steps)).toBe(true);
    expect(isTemporary(leg('leg-1a'), steps)).toBe(true);
    expect(isTemporary(leg('cab-1'), steps)).toBe(false);
  });

  test('carry the falsework sections along', () => {
    const job = straightCounter(2, {
      falsework: {
        sections: [sectionUnder('deck-1', [0, 0, 36, 25.5]), sectionUnder('deck-2', [36, 0, 144, 25.5])],
      },
      swap: { steps: [{ id: 'first', day: 20, sectionsOut: ['deck-1'], supportsOut: ['leg-1a', 'leg-1b'] }] },
    });
    const moments = swapStates(job, 'counter');
    expect(moments.map(({ sections }) => sections)).toEqual([['deck-1', 'deck-2'], ['deck-2'], [], []]);
  });

  test('are none where nothing changes after the pour', () => {
    const job = straightCounter();
    const supports = job.pieces[0]!.supports.map((support) => ({ ...support, firstDay: 0, lastDay: null }));
    expect(swapStates({ ...job, pieces: [{ ...job.pieces[0]!, supports }] }, 'counter')).toEqual([]);
  });
});
