/** One change of one kind, ready to be tried, and the ladders on which such changes stand, smallest first. */
import type { PieceAnalysis, Printers } from '../analysis';
import type { Limits } from '../checks';
import type { Job, Piece } from '../job';
import type { Region } from '../outline';
import type { ChangeKind } from './change';

/** What a ladder is built from: the piece with the changes made so far, and what the engine found about it. */
export interface LadderContext {
  readonly job: Job;
  readonly piece: Piece;
  readonly region: Region;
  /** null where the piece could not be analysed, for lack of supports, say. */
  readonly analysis: PieceAnalysis | null;
  readonly limits: Limits;
  readonly print: Printers;
}

/** A piece at the end of its trial: ties have their rating, contacts are counted. */
export interface Finished {
  readonly piece: Piece;
  readonly analysis: PieceAnalysis;
}

export interface StepWords {
  /** "Tie it: 4 ties at 32 in, each rated 250 lbf". */
  readonly title: string;
  readonly parts: number;
  readonly partsWords: readonly string[];
}

export interface Step {
  readonly kind: ChangeKind;
  /** The whole piece with this change made. */
  readonly piece: Piece;
  /** Supports whose ties take their rating from the pull that the trial finds. */
  readonly ratedSupportIds: readonly string[];
  readonly words: (finished: Finished) => StepWords;
  /** True where it takes something from what was drawn: a shorter slab, posts where knees go. Offered after what does not. */
  readonly givesLess: boolean;
  /** Title for the report of a miss, before ties are rated or counted. */
  readonly shortTitle: string;
}

/** Steps from smallest to largest; a larger one is no weaker, as a rule. */
export type Run = readonly Step[];

export interface Ladder {
  readonly kind: ChangeKind;
  /**
   * Alternatives, tried in turn until one passes. Each is a list of runs that grow stronger: the first run that passes is
   * offered, and where the last one fails the others are not tried.
   */
  readonly groups: readonly (readonly Run[])[];
  /** Number of parts of the smallest step; the search visits ladders in this order. */
  readonly leastParts: number;
  /** True where every step gives less than was drawn. */
  readonly givesLess: boolean;
  /** Why nothing of this kind can be tried here; null where something can. */
  readonly excuse: string | null;
}

export function ladder(
  kind: ChangeKind,
  groups: readonly (readonly Run[])[],
  leastParts: number,
  excuse: string,
): Ladder {
  const kept = groups.map((runs) => runs.filter((run) => run.length > 0)).filter((runs) => runs.length > 0);
  const givesLess = kept.flat(2).every((step) => step.givesLess);
  return { kind, groups: kept, leastParts, givesLess, excuse: kept.length > 0 ? null : excuse };
}

/** "1 tie", "4 ties". */
export function counted(count: number, thing: string): string {
  return `${count} ${thing}${count === 1 ? '' : 's'}`;
}

/** An id of that stem that nothing in the job bears yet. */
export function freshId(job: Job, piece: Piece, stem: string): string {
  const taken = new Set(
    [...job.pieces, piece].flatMap(({ id, supports, reinforcement }) => [
      id,
      ...supports.map((support) => support.id),
      ...reinforcement.map((steel) => steel.id),
    ]),
  );
  if (!taken.has(stem)) return stem;
  for (let n = 2; ; n++) if (!taken.has(`${stem}-${n}`)) return `${stem}-${n}`;
}
