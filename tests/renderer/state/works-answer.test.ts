import { describe, expect, test } from 'vitest';
import { moveEdge } from '../../../src-core/edit';
import type { Job } from '../../../src-core/job';
import { pourPlan } from '../../../src-core/pour';
import { jobTakeoff } from '../../../src-core/takeoff';
import { keptTakeoffs, takeoffKey, worksAnswers } from '../../../src-renderer/worker/works-answer';
import { done, exampleJob, pieceOf, sampleJob } from '../../core/edit/editing';

/** What a worker is sent arrives as a copy. */
function copied(job: Job): Job {
  return structuredClone(job);
}

const galley = exampleJob('boathouse-galley');
const wider = done(moveEdge.perform(galley, { pieceId: 'bar-ledge', index: 0, toIn: 1 })).job;

describe('take-offs that are kept', () => {
  test('a drag of the bar ledge takes off the bar ledge alone', () => {
    const takeoffOf = keptTakeoffs();
    const before = copied(galley);
    const after = copied(wider);
    const first = new Map(before.pieces.map((piece) => [piece.id, takeoffOf(before, piece)]));
    for (const piece of after.pieces) {
      const isKept = takeoffOf(after, piece) === first.get(piece.id);
      expect([piece.id, isKept]).toEqual([piece.id, piece.id !== 'bar-ledge']);
    }
  });

  test('a take-off of the changed job with kept pieces is the one without', () => {
    const job = sampleJob();
    const changed = done(moveEdge.perform(job, { pieceId: 'ledge', index: 0, toIn: 1 })).job;
    const answer = worksAnswers();
    answer({ kind: 'takeoff', run: 1, job: copied(job) });
    const answered = answer({ kind: 'takeoff', run: 2, job: copied(changed) });
    expect(answered).toEqual({ kind: 'takeoff', run: 2, takeoff: jobTakeoff(changed, null) });
  });

  test('a piece is taken off anew when one that it butts against changes, or what the job builds with', () => {
    // the counter of this job butts against the ledge
    const job = sampleJob();
    const [counter, ledge] = [pieceOf(job, 'counter'), pieceOf(job, 'ledge')];
    const key = takeoffKey(job, counter);
    const thicker = { ...ledge, thicknessIn: ledge.thicknessIn + 0.5 };
    const withLedge = { ...job, pieces: job.pieces.map((piece) => (piece === ledge ? thicker : piece)) };
    expect(takeoffKey(withLedge, counter)).not.toBe(key);
    expect(takeoffKey({ ...job, forms: { ...job.forms, stripWidthIn: 2 } }, counter)).not.toBe(key);
    expect(takeoffKey({ ...job, shownIn: 'metric' }, counter)).not.toBe(key);
    expect(takeoffKey({ ...job, stock: [{ ...galley.stock[0]! }] }, counter)).not.toBe(key);
    expect(takeoffKey({ ...job, name: 'Another name', ticks: [{ id: 'a', done: true }] }, counter)).toBe(key);
  });

  test('a piece keeps its take-off while another that does not touch it changes', () => {
    const ids = galley.pieces.filter(
      (piece) => takeoffKey(galley, piece) !== takeoffKey(wider, pieceOf(wider, piece.id)),
    );
    expect(ids.map(({ id }) => id)).toEqual(['bar-ledge']);
  });
});

describe('what a worker answers', () => {
  test('the whole take-off has the falsework in it, the quick one has not, and the pour is the plan of the core', () => {
    const job = exampleJob('bar-ledge');
    const answer = worksAnswers();
    const quick = answer({ kind: 'takeoff', run: 1, job });
    const whole = answer({ kind: 'whole', run: 2, job });
    expect(quick.kind === 'takeoff' && quick.takeoff.falseworkCuts).toBeNull();
    expect(whole.kind === 'takeoff' && whole.takeoff.falseworkCuts).not.toBeNull();
    expect(answer({ kind: 'pour', run: 3, job })).toEqual({ kind: 'pour', run: 3, pour: pourPlan(job) });
  });

  test('a fault of the tool is answered as a sentence', () => {
    const job = { ...galley, pieces: null } as unknown as Job;
    const answered = worksAnswers()({ kind: 'takeoff', run: 4, job });
    expect(answered).toMatchObject({ kind: 'fault', run: 4, sentence: expect.stringMatching(/\w/) });
  });
});
