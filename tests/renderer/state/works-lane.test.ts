import { describe, expect, test } from 'vitest';
import { worksLane } from '../../../src-renderer/state/works-lane';
import type { FromWorksWorker, ToWorksWorker } from '../../../src-renderer/worker/works-messages';
import { sampleJob } from '../../core/edit/editing';

const job = sampleJob();
const ask = (run: number): ToWorksWorker => ({ kind: 'takeoff', run, job });
const faultOf = ({ run }: ToWorksWorker): FromWorksWorker => ({ kind: 'fault', run, sentence: 'tried' });

/** A lane over a worker that answers when it is told to. */
function openLane() {
  const sent: ToWorksWorker[] = [];
  const heard: number[] = [];
  let opened = 0;
  let isClosed = false;
  let listen: (answer: FromWorksWorker) => void = () => {};
  const lane = worksLane(
    (listener) => {
      opened++;
      listen = listener;
      return {
        send: (asked) => sent.push(asked),
        close: () => {
          isClosed = true;
        },
      };
    },
    (answer, asked) => {
      expect(answer.run).toBe(asked.run);
      heard.push(asked.run);
    },
  );
  const reply = () => listen(faultOf(sent.at(-1)!));
  return { lane, sent, heard, reply, opened: () => opened, isClosed: () => isClosed };
}

describe('a worker that answers one question at a time', () => {
  test('is opened by the first question and not before, and once', () => {
    const { lane, sent, reply, opened } = openLane();
    expect(opened()).toBe(0);
    lane.ask(ask(1));
    reply();
    lane.ask(ask(2));
    expect([opened(), sent.length]).toEqual([1, 2]);
  });

  test('of questions that come while it is busy only the newest is asked', () => {
    const { lane, sent, heard, reply } = openLane();
    for (const run of [1, 2, 3, 4]) lane.ask(ask(run));
    expect(sent.map(({ run }) => run)).toEqual([1]);
    expect(lane.newest()?.run).toBe(4);
    reply();
    reply();
    expect(sent.map(({ run }) => run)).toEqual([1, 4]);
    expect(heard).toEqual([1, 4]);
    expect(lane.newest()).toBeNull();
  });

  test('what waits may be dropped; what is being answered is heard all the same', () => {
    const { lane, sent, heard, reply } = openLane();
    lane.ask(ask(1));
    lane.ask(ask(2));
    lane.drop();
    expect(lane.newest()?.run).toBe(1);
    reply();
    expect([sent.length, heard]).toEqual([1, [1]]);
  });

  test('closing ends the worker', () => {
    const { lane, isClosed } = openLane();
    lane.close();
    expect(isClosed()).toBe(false);
    lane.ask(ask(1));
    lane.close();
    expect(isClosed()).toBe(true);
  });
});
