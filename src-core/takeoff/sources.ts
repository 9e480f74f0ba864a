/** Items of the take-off as sources of a line. */
import type { Job } from '../job';
import type { Trace } from '../trace';
import type { PieceTakeoff } from './piece-takeoff';
import type { ListSource } from './types';
import { copiesWords, placeWords } from './words';

interface Item {
  readonly id: string;
  readonly trace: Trace;
}

/**
 * What every copy of a piece takes of an item, `amountOfOne` for one copy; none where that is nothing. `what` says what the item is
 * where its place does not.
 */
export function sourceOf(
  job: Job,
  { pieceId, copies }: Pick<PieceTakeoff, 'pieceId' | 'copies'>,
  { id, trace }: Item,
  amountOfOne: number,
  what = '',
): ListSource[] {
  if (!(amountOfOne > 0)) return [];
  const isOwn = id === pieceId || id.startsWith(`${pieceId}/`);
  return [
    {
      id: isOwn ? id : `${pieceId}/${id}`,
      trace,
      amount: copies * amountOfOne,
      words: `${placeWords(job, trace)}${what === '' ? '' : `, ${what}`}${copiesWords(copies)}`,
    },
  ];
}

/** What sources come to together. */
export function sumOf(sources: readonly Pick<ListSource, 'amount'>[]): number {
  return sources.reduce((sum, { amount }) => sum + amount, 0);
}
