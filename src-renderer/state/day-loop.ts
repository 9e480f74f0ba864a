/** Keeps the verdicts of the day beside the playhead, and the swap of the piece that is held up. */
import type { FromDayWorker, ToDayWorker } from '../worker/day-messages';
import { useDays } from './day-store';
import type { WindowState, WindowStore } from './window-store';

/** A playhead that rests this long is looked at, ms. */
const REST_MS = 120;

/** Starts looking; gives the way to stop. The worker is made when the first day or swap is asked for. */
export function startDayLoop(store: WindowStore): () => void {
  let worker: Worker | null = null;
  let run = 0;
  let rest: ReturnType<typeof setTimeout> | undefined;

  function hear({ data }: MessageEvent<FromDayWorker>): void {
    if (data.run !== run) return;
    switch (data.kind) {
      case 'piece':
        useDays.setState(({ pieces }) => ({ pieces: { ...pieces, [data.result.id]: data.result } }));
        return;
      case 'held': {
        const { pieceId, falsework, swap, swapWords } = data;
        useDays.setState(({ held }) => ({
          held: { ...held, [pieceId]: { pieceId, falsework, swap, swapWords } },
        }));
        askNext();
        return;
      }
      case 'end':
        useDays.setState({ isWorking: false });
        return;
      case 'fault':
        useDays.setState({ fault: data.sentence, isWorking: false });
    }
  }

  function send(message: ToDayWorker): void {
    if (worker === null) {
      worker = new Worker(new URL('../worker/day-worker.ts', import.meta.url), { type: 'module' });
      worker.onmessage = hear;
    }
    worker.postMessage(message);
  }

  /** The swap of the piece first, where it is asked for and not yet known, then the day. */
  function askNext(): void {
    const state = store.getState();
    const { job } = state.history;
    const pieceId = state.selection?.pieceId ?? job.pieces[0]!.id;
    const { held, day: answered } = useDays.getState();
    if (state.question === 'hold' && held[pieceId] === undefined) {
      useDays.setState({ isWorking: true, fault: null });
      send({ kind: 'hold', run: ++run, job, pieceId });
    } else if (state.day !== null) {
      const isSameDay = answered === state.day;
      useDays.setState({
        day: state.day,
        isWorking: true,
        fault: null,
        ...(isSameDay ? {} : { pieces: {} }),
      });
      const ids = job.pieces.map(({ id }) => id);
      send({
        kind: 'day',
        run: ++run,
        job,
        day: state.day,
        pieceIds: [pieceId, ...ids.filter((id) => id !== pieceId)],
      });
    } else if (worker !== null) {
      send({ kind: 'stop', run: ++run });
      useDays.setState({ day: null, pieces: {}, isWorking: false });
    }
  }

  const stop = store.subscribe((state, before) => {
    const isOtherJob = state.history.job !== before.history.job;
    if (isOtherJob) useDays.setState({ held: {} });
    if (!isOtherJob && !isAskedAnew(state, before)) return;
    clearTimeout(rest);
    rest = setTimeout(askNext, REST_MS);
  });
  return () => {
    stop();
    clearTimeout(rest);
    worker?.terminate();
  };
}

function isAskedAnew(state: WindowState, before: WindowState): boolean {
  return (
    state.day !== before.day ||
    state.question !== before.question ||
    (state.question === 'hold' && state.selection?.pieceId !== before.selection?.pieceId)
  );
}
