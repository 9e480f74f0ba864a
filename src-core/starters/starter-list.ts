/** Pieces to begin with: each sound as it stands, to be altered from there. */
import type { Job } from '../job';
import type { Point } from '../outline';
import { cornerCounter, straightCounter } from './counters';
import type { Design, PieceDraft } from './drafts';
import { idMaker } from './fresh-ids';
import { barLedge, footLedge } from './ledges';
import { newJob, newSetting } from './new-job';
import { bench, hearth, pierCap } from './on-piers';

export type StarterId =
  | 'bar-ledge'
  | 'straight-counter'
  | 'corner-counter'
  | 'hearth'
  | 'bench'
  | 'pier-cap'
  | 'foot-ledge';

export interface Starter {
  readonly id: StarterId;
  readonly name: string;
  /** What it is and what it sits on, in a line that is true in any units. */
  readonly words: string;
}

/** The starters in the order in which they are offered. */
export const STARTERS: readonly Starter[] = [
  {
    id: 'bar-ledge',
    name: 'Bar ledge on a wall',
    words: 'Out past a stud wall, on steel arms at every second stud.',
  },
  {
    id: 'straight-counter',
    name: 'Straight counter',
    words: 'Along a wall on three base cabinets.',
  },
  {
    id: 'corner-counter',
    name: 'Corner counter with a sink',
    words: 'Two walls, five cabinets, a sink hung under its rim and a tap hole.',
  },
  { id: 'hearth', name: 'Hearth', words: 'Low down, on two block piers.' },
  { id: 'bench', name: 'Bench on piers', words: 'Outdoors, past two block piers at either end.' },
  { id: 'pier-cap', name: 'Pier cap', words: 'Out past its pier all round, with a drip under every edge.' },
  {
    id: 'foot-ledge',
    name: 'Foot ledge',
    words: 'Along a wall, on a ledger at the back and steel arms at every stud.',
  },
];

const DESIGNS: { readonly [Id in StarterId]: Design } = {
  'bar-ledge': barLedge,
  'straight-counter': straightCounter,
  'corner-counter': cornerCounter,
  hearth,
  bench,
  'pier-cap': pierCap,
  'foot-ledge': footLedge,
};

/** A starter as a draft for a job: cast from the job's first mix, with ids that the job does not have; `at` is its front left corner. */
export function starterPiece(
  starterId: StarterId,
  { at, job }: { readonly at: Point; readonly job: Job },
): PieceDraft {
  return DESIGNS[starterId]({ at, mixId: job.mixes[0]!.id, makeId: idMaker(job) });
}

/** A new job of one starter. */
export function starterJob(starterId: StarterId): Job {
  const piece = DESIGNS[starterId](newSetting());
  return newJob(starterId, piece.name, piece);
}
