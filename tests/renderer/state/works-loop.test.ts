import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { moveEdge, setField, setTick } from '../../../src-core/edit';
import type { WindowStore } from '../../../src-renderer/state/window-store';
import { createWindowStore } from '../../../src-renderer/state/window-store';
import { startWorksLoop } from '../../../src-renderer/state/works-loop';
import { isSameWork, NO_WORKS, useWorks } from '../../../src-renderer/state/works-store';
import { worksAnswers } from '../../../src-renderer/worker/works-answer';
import type { FromWorksWorker, ToWorksWorker } from '../../../src-renderer/worker/works-messages';
import { exampleJob } from '../../core/edit/editing';

/** Longer than a drawing has to rest. */
const LONG_MS = 1000;

interface Asked {
  readonly asked: ToWorksWorker;
  readonly reply: () => void;
}

let store: WindowStore;
let stop: () => void;
let asked: Asked[];

/** A loop whose workers answer as the true ones do, but only when they are told to. */
function start(): void {
  const answer = worksAnswers();
  stop = startWorksLoop(store, (listen: (answer: FromWorksWorker) => void) => ({
    send: (question) => asked.push({ asked: question, reply: () => listen(answer(question)) }),
    close: () => {},
  }));
}

const kinds = () => asked.map(({ asked: { kind } }) => kind);
/** Moves the front of the ledge outward. */
const drag = (toIn: number) => store.getState().run(moveEdge, { pieceId: 'ledge', index: 0, toIn });
const formLengthIn = () =>
  useWorks
    .getState()
    .takeoff!.list.groups.flatMap(({ lines }) => lines)
    .filter(({ id }) => id.startsWith('strip/'))
    .reduce((sum, { needed }) => sum + needed, 0);

beforeEach(() => {
  vi.useFakeTimers();
  const job = exampleJob('bar-ledge');
  store = createWindowStore({ ...job, pieces: [{ ...job.pieces[0]!, id: 'ledge' }] }, 'light');
  asked = [];
  useWorks.setState(NO_WORKS);
  start();
});

afterEach(() => {
  stop();
  vi.useRealTimers();
});

describe('the take-off beside the drawing', () => {
  test('nothing is asked before "Cut and buy" or "Pour it" is', () => {
    drag(1);
    store.getState().ask('hold');
    vi.advanceTimersByTime(LONG_MS);
    expect(asked).toEqual([]);
    expect(useWorks.getState().isWorking).toBe(false);
  });

  test('the quick take-off comes at once, the falsework once the drawing rests', () => {
    store.getState().ask('buy');
    expect(kinds()).toEqual(['takeoff']);
    expect(useWorks.getState().isWorking).toBe(true);
    asked[0]!.reply();
    expect(useWorks.getState().takeoff?.falseworkCuts).toBeNull();
    vi.advanceTimersByTime(LONG_MS);
    expect(kinds()).toEqual(['takeoff', 'whole']);
    asked[1]!.reply();
    const { takeoff, wholeList, isWorking, job } = useWorks.getState();
    expect(takeoff?.falseworkCuts).not.toBeNull();
    expect(wholeList).toBe(takeoff?.list);
    expect(job).toBe(store.getState().history.job);
    expect(isWorking).toBe(false);
  });

  test('a quick answer that comes after the whole one of the same drawing does not take the falsework out', () => {
    store.getState().ask('buy');
    vi.advanceTimersByTime(LONG_MS);
    asked[1]!.reply();
    asked[0]!.reply();
    expect(useWorks.getState().takeoff?.falseworkCuts).not.toBeNull();
  });

  test('a drag is followed without the falsework, and the answers between are those of the newest drawing', () => {
    store.getState().ask('buy');
    asked[0]!.reply();
    const before = formLengthIn();
    store.getState().beginDrag();
    drag(1);
    drag(1);
    drag(1);
    vi.advanceTimersByTime(LONG_MS);
    expect(kinds()).toEqual(['takeoff', 'takeoff']);
    asked[1]!.reply();
    expect(isSameWork(useWorks.getState().job, store.getState().history.job)).toBe(false);
    asked[2]!.reply();
    expect(kinds()).toEqual(['takeoff', 'takeoff', 'takeoff']);
    expect(isSameWork(useWorks.getState().job, store.getState().history.job)).toBe(true);
    // the front of a ledge moved by 3 in makes both of its returns 3 in longer
    expect(formLengthIn() - before).toBeCloseTo(6, 6);
    store.getState().endDrag();
    vi.advanceTimersByTime(LONG_MS);
    expect(kinds().at(-1)).toBe('whole');
  });

  test('falsework that was designed for an earlier drawing is kept as such and not shown as of this one', () => {
    store.getState().ask('buy');
    asked[0]!.reply();
    vi.advanceTimersByTime(LONG_MS);
    drag(2);
    asked[2]!.reply();
    const newer = useWorks.getState().takeoff;
    asked[1]!.reply();
    expect(useWorks.getState().takeoff).toBe(newer);
    expect(useWorks.getState().wholeList).not.toBeNull();
  });

  test('a tick and a new name ask for nothing, and the answers count as of the job with them', () => {
    store.getState().ask('buy');
    asked[0]!.reply();
    vi.advanceTimersByTime(LONG_MS);
    asked[1]!.reply();
    store.getState().run(setTick, { id: 'tape', done: true, words: 'tape' });
    store.getState().run(setField, { path: ['name'], value: 'Another name', title: 'Rename job' });
    vi.advanceTimersByTime(LONG_MS);
    expect(asked).toHaveLength(2);
    expect(isSameWork(useWorks.getState().job, store.getState().history.job)).toBe(true);
  });

  test('"Pour it" asks for the pour alone, and each answer is kept until the drawing changes', () => {
    store.getState().ask('pour');
    expect(kinds()).toEqual(['pour']);
    asked[0]!.reply();
    store.getState().ask('buy');
    asked[1]!.reply();
    store.getState().ask('pour');
    expect(kinds()).toEqual(['pour', 'takeoff']);
    expect(useWorks.getState().pour?.pours).toHaveLength(1);
    drag(1);
    asked[2]!.reply();
    expect(useWorks.getState().takeoff).toBeNull();
    expect(useWorks.getState().pour).not.toBeNull();
  });

  test('another job is begun with nothing, and an answer of the old one is not shown', () => {
    store.getState().ask('buy');
    const other = exampleJob('hearth');
    store.getState().openJob(other, { path: null, name: 'hearth', savedJob: null, isRecovered: false });
    asked[0]!.reply();
    expect(useWorks.getState().takeoff).toBeNull();
    asked[1]!.reply();
    expect(useWorks.getState().takeoff?.jobId).toBe(other.id);
  });

  test('a fault is told, and the next answer takes it away', () => {
    stop();
    const answers: ((answer: FromWorksWorker) => void)[] = [];
    stop = startWorksLoop(store, (listen) => {
      answers.push(listen);
      return { send: (question) => asked.push({ asked: question, reply: () => {} }), close: () => {} };
    });
    store.getState().ask('buy');
    answers[0]!({ kind: 'fault', run: 1, sentence: 'a number ran away' });
    expect(useWorks.getState()).toMatchObject({ fault: 'a number ran away', takeoff: null });
    drag(1);
    answers[0]!(worksAnswers()(asked.at(-1)!.asked));
    expect(useWorks.getState().fault).toBeNull();
  });
});
