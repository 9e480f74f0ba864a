/** One worker that answers one question at a time: while it is busy only the newest question waits, and the ones between are dropped. */
import type { FromWorksWorker, ToWorksWorker } from '../worker/works-messages';

/** A worker as the lane needs it. */
export interface WorksPort {
  readonly send: (asked: ToWorksWorker) => void;
  readonly close: () => void;
}

/** Opens a worker that gives its answers to `listen`. */
export type OpenWorks = (listen: (answer: FromWorksWorker) => void) => WorksPort;

export interface WorksLane {
  readonly ask: (asked: ToWorksWorker) => void;
  /** What is being answered or waits; null where nothing does. */
  readonly newest: () => ToWorksWorker | null;
  /** Forgets what waits. What is being answered goes on to its end. */
  readonly drop: () => void;
  readonly close: () => void;
}

/** Opens the worker when the first question comes. `hear` gets every answer with the question that it answers. */
export function worksLane(
  open: OpenWorks,
  hear: (answer: FromWorksWorker, asked: ToWorksWorker) => void,
): WorksLane {
  let port: WorksPort | null = null;
  let answering: ToWorksWorker | null = null;
  let waiting: ToWorksWorker | null = null;

  function send(asked: ToWorksWorker): void {
    port ??= open(take);
    answering = asked;
    waiting = null;
    port.send(asked);
  }

  function take(answer: FromWorksWorker): void {
    const answered = answering;
    answering = null;
    if (waiting !== null) send(waiting);
    if (answered !== null) hear(answer, answered);
  }

  return {
    ask: (asked) => {
      if (answering === null) send(asked);
      else waiting = asked;
    },
    newest: () => waiting ?? answering,
    drop: () => {
      waiting = null;
    },
    close: () => port?.close(),
  };
}
