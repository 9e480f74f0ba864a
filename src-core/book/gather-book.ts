/** Works out everything that a book tells, once for every drawing of the job. */
import { designJob } from '../falsework';
import type { Job, Piece } from '../job';
import { pourPlan } from '../pour';
import { dayLine, earliestDays, swapResult } from '../sequence';
import type { PieceTakeoff } from '../takeoff';
import { jobTakeoff } from '../takeoff';
import type { CheckedOne } from '../verdict';
import { checkOnePiece, jobResult } from '../verdict';
import type { AlikePieces } from './alike';
import { alikePieces, swapKey } from './alike';
import type { BookFacts, PieceFacts, SwapFacts } from './facts';

export interface GatherProgress {
  readonly done: number;
  readonly total: number;
  readonly words: string;
}

export interface GatherOptions {
  readonly onProgress?: (progress: GatherProgress) => void;
}

/**
 * The load check with the first change that passes, the falsework, the swap of each piece, days, take-off and pour of a job. Pieces of
 * one drawing are checked once: the verdicts are those that `checkJob` gives each of them.
 */
export function gatherBook(job: Job, { onProgress }: GatherOptions = {}): BookFacts {
  const groups = alikePieces(job);
  const swaps = swapGroups(job);
  const total = groups.length + swaps.length + LAST_STEPS;
  let done = 0;
  const step = <Value>(words: string, work: () => Value): Value => {
    onProgress?.({ done, total, words });
    const value = work();
    done += 1;
    return value;
  };
  const checked = groups.map(({ pieces }) =>
    step(pieces[0].name, () => checkOnePiece(job, pieces[0], { changes: 'first' })),
  );
  const falsework = step('the falsework', () => designJob(job));
  const swapFacts = swaps.map((pieces) =>
    step(`the swap of ${pieces[0].name}`, (): SwapFacts => ({ result: swapResult(job, pieces[0]), pieces })),
  );
  const days = step('the days', () => dayLine(job, falsework.reuse.uses));
  const pours = step('the pours', () => pourPlan(job));
  const { verdict, site } = jobResult(job, null, everyPiece(job, groups, checked));
  const takeoff = step('the lists', () => jobTakeoff(job, falsework));
  const pieces = groups.map((group, k) => pieceFacts(job, group, checked[k]!, takeoff.pieces));
  onProgress?.({ done: total, total, words: 'done' });
  return { verdict, site, pieces, swaps: swapFacts, falsework, takeoff, days, pours };
}

/** Falsework, days, pours and lists. */
const LAST_STEPS = 4;

/** The checked pieces in the job's order, each of one drawing with what was found for the first of them. */
function everyPiece(
  job: Job,
  groups: readonly AlikePieces[],
  checked: readonly CheckedOne[],
): readonly CheckedOne[] {
  return job.pieces.map((piece) => {
    const k = groups.findIndex(({ pieces }) => pieces.includes(piece));
    const { analysis, result } = checked[k]!;
    return { analysis, result: { ...result, id: piece.id, name: piece.name } };
  });
}

function swapGroups(job: Job): readonly [Piece, ...Piece[]][] {
  const groups = new Map<string, [Piece, ...Piece[]]>();
  for (const piece of job.pieces) {
    const key = swapKey(job, piece);
    const known = groups.get(key);
    if (known === undefined) groups.set(key, [piece]);
    else known.push(piece);
  }
  return [...groups.values()];
}

function pieceFacts(
  job: Job,
  { pieces }: AlikePieces,
  { result }: CheckedOne,
  takeoffs: readonly PieceTakeoff[],
): PieceFacts {
  const [piece] = pieces;
  const takeoff = takeoffs.find(({ pieceId }) => pieceId === piece.id);
  if (takeoff === undefined) throw new Error(`no take-off of piece "${piece.id}"`);
  return { piece, alike: pieces, result, takeoff, earliest: earliestDays(job, piece) };
}
