import { describe, expect, test } from 'vitest';
import type { History } from '../../../src-core/edit';
import {
  beginHistory,
  moveEdge,
  movePiece,
  recordStep,
  redoStep,
  sealStep,
  setField,
  undoStep,
  useChange,
} from '../../../src-core/edit';
import type { Job } from '../../../src-core/job';
import type { Change } from '../../../src-core/remedies';
import { checkJob } from '../../../src-core/verdict';
import { done, exampleJob, pieceOf, refusal, sampleJob } from './editing';

/** The ledge's front edge dragged to each distance out in turn, from where it then is. */
function dragged(history: History, stepsIn: readonly number[]): History {
  return stepsIn.reduce(
    (at, toIn) => recordStep(at, done(moveEdge.perform(at.job, { pieceId: 'ledge', index: 0, toIn }))),
    history,
  );
}

function frontOf(job: Job): number {
  return pieceOf(job, 'ledge').corners[0]!.yIn;
}

describe('240 steps', () => {
  test('are undone one by one to the very first job object and done again to the very last, with every job between', () => {
    let history = beginHistory(sampleJob());
    const jobs = [history.job];
    for (let i = 1; i <= 240; i++) {
      const args = { path: ['pieces', 1, 'thicknessIn'], value: 1.5 + i / 1000, title: `Step ${i}` };
      history = recordStep(history, done(setField.perform(history.job, args)));
      jobs.push(history.job);
    }
    expect(history.past.length).toBe(240);
    for (let round = 0; round < 2; round++) {
      for (let i = 239; i >= 0; i--) {
        history = undoStep(history);
        expect(history.job).toBe(jobs[i]);
        expect(history.future[0]!.title).toBe(`Step ${i + 1}`);
      }
      expect(undoStep(history)).toBe(history);
      for (let i = 1; i <= 240; i++) {
        history = redoStep(history);
        expect(history.job).toBe(jobs[i]);
        expect(history.past.at(-1)!.title).toBe(`Step ${i}`);
      }
      expect(redoStep(history)).toBe(history);
    }
  }, 120_000);
});

describe('a drag', () => {
  test('of three moves is one step, undone as a whole', () => {
    const begun = beginHistory(sampleJob());
    const history = dragged(begun, [1, 0.5, 0.5]);
    expect([history.past.length, frontOf(history.job)]).toEqual([1, 38]);
    expect(undoStep(history).job).toBe(begun.job);
    expect(frontOf(redoStep(undoStep(history)).job)).toBe(38);
  });

  test('that was let go of is closed: the next drag of the same edge is a step of its own', () => {
    const first = sealStep(dragged(beginHistory(sampleJob()), [1, 1]));
    const second = dragged(first, [1, 1]);
    expect(second.past.map(({ title }) => title)).toEqual(['Move edge', 'Move edge']);
    expect(undoStep(second).job).toBe(first.job);
  });

  test('after an undo does not run into the step before it', () => {
    const history = undoStep(sealStep(dragged(dragged(beginHistory(sampleJob()), [1]), [1])));
    expect(dragged(history, [2]).past.length).toBe(1);
    expect(dragged(history, [2]).future).toEqual([]);
  });

  test('of something else in between makes three steps', () => {
    const one = dragged(beginHistory(sampleJob()), [1]);
    const moved = done(movePiece.perform(one.job, { pieceId: 'ledge', dxIn: 1, dyIn: 0 }));
    const history = dragged(recordStep(one, moved), [1]);
    expect(history.past.map(({ title }) => title)).toEqual(['Move edge', 'Move piece', 'Move edge']);
  });
});

test('a command that changes nothing makes no step', () => {
  const begun = beginHistory(sampleJob());
  const still = done(movePiece.perform(begun.job, { pieceId: 'ledge', dxIn: 0, dyIn: 0 }));
  expect(recordStep(begun, still)).toBe(begun);
});

describe('a change that was tried and passes', () => {
  const before = exampleJob('bar-ledge');
  const options = { meshSizeIn: 3, looksOnTheWay: false, changes: 'first' } as const;
  const change = checkJob(before, options).pieces[0]!.changes[0] as Change;

  test('is used under its own title, makes the piece stand, and is undone like anything else', () => {
    const edited = done(useChange.perform(before, { change }));
    expect(edited.title).toBe(`Use: ${change.title}`);
    expect(edited.job.mixes).toBe(before.mixes);
    const after = checkJob(edited.job, { meshSizeIn: 3, looksOnTheWay: false, changes: 'none' });
    expect(['holds', 'steel']).toContain(after.pieces[0]!.verdict.level);
    expect(undoStep(recordStep(beginHistory(before), edited)).job).toBe(before);
  }, 120_000);

  test('is refused by a job that it was not found for', () => {
    const problem = refusal(useChange.perform(sampleJob(), { change }));
    expect(problem.sentence).toBe(
      'The change cannot be made here: the job has changed since the patch was made.',
    );
  });
});
