/** One worker and what it is doing: a newer run stops an older one between two runs of the engine. */
import type { FromWorker, ToWorker } from './messages';

export interface Lane {
  /** Whether the worker has ended what it was last given. */
  readonly isIdle: () => boolean;
  readonly send: (message: Exclude<ToWorker, { kind: 'share' }>) => void;
  /** Stops what is going on, without anything new. */
  readonly cancel: () => void;
  readonly close: () => void;
}

/** Starts a worker; `onMessage` gets all that it says. */
export function openLane(onMessage: (message: FromWorker) => void): Lane {
  const worker = new Worker(new URL('./check-worker.ts', import.meta.url), { type: 'module' });
  // Without cross-origin isolation there is no shared memory: runs then go on to their end and are ignored.
  const newestRun = globalThis.crossOriginIsolated ? new Int32Array(new SharedArrayBuffer(4)) : null;
  if (newestRun !== null) worker.postMessage({ kind: 'share', newestRun } satisfies ToWorker);
  let running = 0;
  worker.onmessage = ({ data }: MessageEvent<FromWorker>) => {
    if (data.kind === 'end') running--;
    onMessage(data);
  };
  return {
    isIdle: () => running === 0,
    send: (message) => {
      if (message.kind === 'check') running++;
      if (message.kind !== 'deflect' && newestRun !== null) Atomics.store(newestRun, 0, message.run);
      worker.postMessage(message);
    },
    cancel: () => {
      if (newestRun !== null) Atomics.store(newestRun, 0, -1);
    },
    close: () => worker.terminate(),
  };
}
