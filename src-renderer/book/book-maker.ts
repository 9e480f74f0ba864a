/** The worker that makes the book, as questions with answers. */

import type { Paper } from '../../src-core/figure';
import type { Job } from '../../src-core/job';
import type { BookAnswer, BookPages, FromBookWorker, ToBookWorker } from '../worker/book-messages';
import type { ListFile } from './list-files';

export interface BookProgress {
  readonly done: number;
  readonly total: number;
  readonly words: string;
}

/** For one job as it stands; what is asked of it is no longer answered after `close`. */
export interface BookMaker {
  readonly pages: (paper: Paper) => Promise<BookPages>;
  /** Of the pages that were asked for last. */
  readonly document: (title: string, fontCss: string) => Promise<string>;
  /** Made at the first asking. */
  readonly lists: () => Promise<readonly ListFile[]>;
  readonly close: () => void;
}

export interface BookPort {
  readonly send: (asked: ToBookWorker) => void;
  readonly close: () => void;
}

export type OpenBookPort = (listen: (said: FromBookWorker) => void) => BookPort;

type Question<K extends ToBookWorker['kind']> = Omit<Extract<ToBookWorker, { kind: K }>, 'run' | 'kind'>;

interface Waiting {
  readonly take: (answer: BookAnswer) => void;
  readonly fail: (fault: Error) => void;
}

/** Opens a worker of its own. A fault of the tool rejects the question it came up in. */
export function openBookMaker(
  job: Job,
  onProgress: (progress: BookProgress) => void,
  open: OpenBookPort = openWorker,
): BookMaker {
  const waiting = new Map<number, Waiting>();
  let lastRun = 0;
  let lists: Promise<readonly ListFile[]> | null = null;
  const port = open((said) => {
    if (said.kind === 'progress') {
      const { done, total, words } = said;
      return onProgress({ done, total, words });
    }
    const asker = waiting.get(said.run);
    waiting.delete(said.run);
    if (said.kind === 'fault') asker?.fail(new Error(said.sentence));
    else asker?.take(said);
  });

  function ask<K extends ToBookWorker['kind']>(
    kind: K,
    question: Question<K>,
  ): Promise<Extract<BookAnswer, { kind: K }>> {
    const run = ++lastRun;
    return new Promise((resolve, reject) => {
      waiting.set(run, {
        take: (answer) => resolve(answer as Extract<BookAnswer, { kind: K }>),
        fail: reject,
      });
      port.send({ kind, run, ...question } as unknown as ToBookWorker);
    });
  }

  return {
    pages: async (paper) => (await ask('pages', { job, paper })).pages,
    document: async (title, fontCss) => (await ask('document', { title, fontCss })).html,
    lists: () => {
      lists ??= ask('lists', { job }).then(({ files }) => files);
      return lists;
    },
    close: port.close,
  };
}

function openWorker(listen: (said: FromBookWorker) => void): BookPort {
  const worker = new Worker(new URL('../worker/book-worker.ts', import.meta.url), { type: 'module' });
  worker.onmessage = ({ data }: MessageEvent<FromBookWorker>) => listen(data);
  worker.onerror = () => listen({ kind: 'fault', run: 1, sentence: 'the worker could not be started' });
  return { send: (asked) => worker.postMessage(asked), close: () => worker.terminate() };
}
