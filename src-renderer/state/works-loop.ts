/** Keeps the take-off beside the drawing while "Cut and buy" is asked, and the pour plan while "Pour it" is. */
import type { Job } from '../../src-core/job';
import type { FromWorksWorker, ToWorksWorker } from '../worker/works-messages';
import type { WindowState, WindowStore } from './window-store';
import type { OpenWorks, WorksPort } from './works-lane';
import { worksLane } from './works-lane';
import { isSameWork, NO_WORKS, useWorks } from './works-store';

/** A drawing that rests this long has its falsework designed, ms. */
const REST_MS = 350;

/** Starts looking; gives the way to stop. */
export function startWorksLoop(store: WindowStore, open: OpenWorks = openWorker): () => void {
  let run = 0;
  let shownRun = 0;
  let rest: ReturnType<typeof setTimeout> | undefined;
  const quick = worksLane(open, hear);
  // The falsework takes seconds: in a worker of its own it holds up no drag.
  const whole = worksLane(open, hear);

  function hear(answer: FromWorksWorker, { job }: ToWorksWorker): void {
    // of a job that was closed meanwhile
    if (job.id !== store.getState().history.job.id) return;
    if (answer.kind === 'fault') {
      useWorks.setState({ fault: answer.sentence });
    } else {
      if (answer.kind === 'takeoff' && answer.takeoff.falseworkCuts !== null) {
        useWorks.setState({ wholeList: answer.takeoff.list });
      }
      if (answer.run >= shownRun) show(answer, job);
    }
    markWorking();
  }

  /**
   * An answer that comes after a newer one is not shown, nor one without the falsework after one with it. The other answer is dropped
   * where it is of another drawing.
   */
  function show(answer: Exclude<FromWorksWorker, { kind: 'fault' }>, job: Job): void {
    shownRun = answer.run;
    useWorks.setState((known) => {
      const isSame = isSameWork(known.job, job);
      const { pour, takeoff } = isSame ? known : NO_WORKS;
      const kept = { job: isSame ? known.job : job, pour, takeoff, fault: null };
      if (answer.kind === 'pour') return { ...kept, pour: answer.pour };
      const isLess =
        answer.takeoff.falseworkCuts === null && takeoff !== null && takeoff.falseworkCuts !== null;
      return isLess ? kept : { ...kept, takeoff: answer.takeoff };
    });
  }

  function markWorking(): void {
    const isWorking = rest !== undefined || quick.newest() !== null || whole.newest() !== null;
    if (useWorks.getState().isWorking !== isWorking) useWorks.setState({ isWorking });
  }

  function askNext(): void {
    const { question, history, isDragging } = store.getState();
    const { job } = history;
    clearTimeout(rest);
    rest = undefined;
    if (question === 'buy' || question === 'pour') {
      const known = useWorks.getState();
      const isKnown = isSameWork(known.job, job);
      if (isKnown && known.job !== job) useWorks.setState({ job });
      const kind = question === 'buy' ? 'takeoff' : 'pour';
      const asked = quick.newest();
      const isAsked = asked?.kind === kind && isSameWork(asked.job, job);
      if (!(isKnown && known[kind] !== null) && !isAsked) quick.ask({ kind, run: ++run, job });
      if (question === 'buy' && !isDragging) askWhole();
    } else {
      quick.drop();
      whole.drop();
    }
    markWorking();
  }

  /** The falsework, once the drawing rests and where it is not known yet. */
  function askWhole(): void {
    const { job } = store.getState().history;
    const known = useWorks.getState();
    const isKnown = isSameWork(known.job, job) && known.takeoff?.falseworkCuts != null;
    if (isKnown || isSameWork(whole.newest()?.job ?? null, job)) return;
    rest = setTimeout(() => {
      rest = undefined;
      whole.ask({ kind: 'whole', run, job });
      markWorking();
    }, REST_MS);
  }

  const stop = store.subscribe((state, before) => {
    if (state.history.job.id !== before.history.job.id) useWorks.setState(NO_WORKS);
    if (isAskedAnew(state, before)) askNext();
  });
  askNext();
  return () => {
    stop();
    clearTimeout(rest);
    quick.close();
    whole.close();
  };
}

function isAskedAnew(state: WindowState, before: WindowState): boolean {
  return (
    state.history.job !== before.history.job ||
    state.question !== before.question ||
    state.isDragging !== before.isDragging
  );
}

function openWorker(listen: (answer: FromWorksWorker) => void): WorksPort {
  const worker = new Worker(new URL('../worker/works-worker.ts', import.meta.url), { type: 'module' });
  worker.onmessage = ({ data }: MessageEvent<FromWorksWorker>) => listen(data);
  return { send: (asked) => worker.postMessage(asked), close: () => worker.terminate() };
}
