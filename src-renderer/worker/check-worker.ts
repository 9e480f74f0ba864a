/** The worker that checks: the same functions that the command line calls, off the main thread. */
import { deflectedShape, pieceMap } from '../../src-core/field-map';
import type { Job, Piece } from '../../src-core/job';
import type { CheckedOne } from '../../src-core/verdict';
import { jobResult, lookAtPiece, seekChanges } from '../../src-core/verdict';
import type { FromWorker, Quality, ToWorker } from './messages';
import { QUICK_LOOK } from './quick-look';

/** Quick looks after which the engine runs at its full speed. */
const WARMING_LOOKS = 40;
/** Every other of them is at a slab this much thinner, which cracks, so that the way through cracking is warm too. */
const THINNER = 0.6;
/** Answers that are kept, so that undo and a look at another piece cost nothing. */
const MOST_KEPT = 40;

interface Kept {
  readonly looked: CheckedOne;
  /** With changes and the way there; null while they have not been looked for. */
  readonly whole: CheckedOne | null;
}

const kept = new Map<string, Kept>();
let newestRun: Int32Array | null = null;

self.onmessage = ({ data }: MessageEvent<ToWorker>) => {
  switch (data.kind) {
    case 'share':
      newestRun = data.newestRun;
      return;
    case 'check':
      guarded(data.run, () => check(data));
      tell({ kind: 'end', run: data.run, wasCancelled: isOvertaken(data.run) });
      return;
    case 'warm':
      guarded(data.run, () => warm(data));
      return;
    case 'deflect':
      guarded(data.run, () => deflect(data.job, data.pieceId, data.run));
      return;
  }
};

function tell(message: FromWorker): void {
  self.postMessage(message);
}

function guarded(run: number, work: () => void): void {
  try {
    work();
  } catch (fault) {
    tell({ kind: 'fault', run, sentence: fault instanceof Error ? fault.message : String(fault) });
  }
}

function check({ run, quality, job, pieceIds }: Extract<ToWorker, { kind: 'check' }>): void {
  const isCancelled = () => isOvertaken(run);
  const pieces = pieceIds.flatMap((id) => job.pieces.find((piece) => piece.id === id) ?? []);
  const steps = quality === 'fine' ? 2 * pieces.length : pieces.length;
  let done = 0;
  const next = (words: string) => tell({ kind: 'progress', run, done: done++, total: steps, words });
  for (const piece of pieces) {
    if (isCancelled()) break;
    next(piece.name);
    lookAt(job, piece, run, quality);
  }
  if (quality === 'fine') {
    for (const piece of pieces) {
      if (isCancelled()) break;
      next(`changes to ${piece.name}`);
      seek(job, piece, run, isCancelled);
    }
    if (!isCancelled()) tellJob(job, run);
  }
}

/** Gives way as soon as there is something to answer; where that cannot be known it does nothing. */
function warm({ run, job, pieceId }: Extract<ToWorker, { kind: 'warm' }>): void {
  const piece = job.pieces.find(({ id }) => id === pieceId);
  if (piece === undefined || newestRun === null) return;
  const thin = { ...piece, thicknessIn: piece.thicknessIn * THINNER };
  for (let look = 0; look < WARMING_LOOKS && !isOvertaken(run); look++) {
    lookAtPiece(job, look % 2 === 0 ? thin : piece, QUICK_LOOK);
  }
}

function isOvertaken(run: number): boolean {
  return newestRun !== null && Atomics.load(newestRun, 0) !== run;
}

function lookAt(job: Job, piece: Piece, run: number, quality: Quality): void {
  if (quality === 'coarse') {
    tellPiece(lookAtPiece(job, piece, QUICK_LOOK), run, quality, false);
    return;
  }
  const key = keyOf(job, piece);
  const known = recall(key);
  const looked = known?.looked ?? lookAtPiece(job, piece);
  if (known === undefined) keep(key, { looked, whole: null });
  const isSearching = known?.whole == null;
  tellPiece(known?.whole ?? looked, run, quality, isSearching);
}

function seek(job: Job, piece: Piece, run: number, isCancelled: () => boolean): void {
  const key = keyOf(job, piece);
  const known = recall(key);
  if (known === undefined || known.whole !== null) return;
  const whole = seekChanges(job, piece, known.looked, {
    changes: 'all',
    onChange: (change) => {
      if (!isCancelled()) tell({ kind: 'change', run, change });
    },
    isCancelled,
  });
  if (isCancelled()) return;
  keep(key, { looked: known.looked, whole });
  tellPiece(whole, run, 'fine', false);
}

/** The verdict of the job, once every piece of it has been checked whole. */
function tellJob(job: Job, run: number): void {
  const checked = job.pieces.flatMap((piece) => recall(keyOf(job, piece))?.whole ?? []);
  if (checked.length === job.pieces.length) {
    tell({ kind: 'job', run, result: jobResult(job, null, checked) });
  }
}

function tellPiece(
  { result, analysis }: CheckedOne,
  run: number,
  quality: Quality,
  isSearching: boolean,
): void {
  const map = analysis === null ? null : pieceMap(analysis);
  tell({ kind: 'piece', run, quality, result, map, isSearching });
}

function deflect(job: Job, pieceId: string, run: number): void {
  const piece = job.pieces.find(({ id }) => id === pieceId);
  if (piece === undefined) return;
  const key = keyOf(job, piece);
  const looked = recall(key)?.looked ?? lookAtPiece(job, piece);
  const shape =
    looked.analysis === null
      ? null
      : deflectedShape(job, piece, { day: null, meshSizeIn: null }, looked.analysis);
  tell({ kind: 'deflected', run, shape });
}

/** All that a piece's checks depend on. */
function keyOf({ mixes, swap, shownIn, site }: Job, piece: Piece): string {
  return JSON.stringify([piece, mixes, swap, shownIn, site]);
}

function recall(key: string): Kept | undefined {
  const known = kept.get(key);
  if (known !== undefined) {
    kept.delete(key);
    kept.set(key, known);
  }
  return known;
}

function keep(key: string, value: Kept): void {
  kept.delete(key);
  kept.set(key, value);
  const [oldest] = kept.keys();
  if (kept.size > MOST_KEPT && oldest !== undefined) kept.delete(oldest);
}

tell({ kind: 'ready' });
