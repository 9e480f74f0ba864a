/** The worker that looks at days and swaps: the same functions that the command line calls, off the main thread. */
import { designFalsework } from '../../src-core/falsework';
import { swapResult } from '../../src-core/sequence';
import { checkOnePiece } from '../../src-core/verdict';
import type { FromDayWorker, ToDayWorker } from './day-messages';

let newestRun = -1;

self.onmessage = ({ data }: MessageEvent<ToDayWorker>) => {
  newestRun = data.run;
  if (data.kind === 'stop') return;
  answer(data).catch((fault: unknown) => {
    tell({ kind: 'fault', run: data.run, sentence: fault instanceof Error ? fault.message : String(fault) });
  });
};

function tell(message: FromDayWorker): void {
  self.postMessage(message);
}

async function answer(asked: Exclude<ToDayWorker, { kind: 'stop' }>): Promise<void> {
  if (asked.kind === 'day') await lookAtDay(asked);
  else lookAtHolding(asked);
  tell({ kind: 'end', run: asked.run });
}

async function lookAtDay({ run, job, day, pieceIds }: Extract<ToDayWorker, { kind: 'day' }>): Promise<void> {
  for (const id of pieceIds) {
    // a newer question is heard between two pieces
    await new Promise((resume) => setTimeout(resume));
    if (run !== newestRun) return;
    const piece = job.pieces.find((one) => one.id === id);
    if (piece !== undefined) tell({ kind: 'piece', run, result: checkOnePiece(job, piece, { day }).result });
  }
}

function lookAtHolding({ run, job, pieceId }: Extract<ToDayWorker, { kind: 'hold' }>): void {
  const piece = job.pieces.find(({ id }) => id === pieceId);
  if (piece === undefined) return;
  const found = swapResult(job, piece);
  const falsework = designFalsework(job, pieceId);
  const isNone = 'sentence' in found;
  tell({
    kind: 'held',
    run,
    pieceId,
    falsework,
    swap: isNone ? null : found,
    swapWords: isNone ? found.sentence : '',
  });
}
