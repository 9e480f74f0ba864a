/** The verdict of the day that is shown, or why there is none. */
import type { Check } from '../../src-core/checks';
import { governingCheck } from '../../src-core/checks';
import { printRatio } from '../../src-core/report';
import type { PieceResult } from '../../src-core/verdict';
import type { DayState } from '../state/day-store';
import type { PieceVerdict } from '../state/verdict-store';
import type { SlabOnDay } from './slab-words';

export type DayAnswer =
  | {
      readonly kind: 'verdict';
      readonly result: PieceResult;
      /** The check that governs; null where none was made. */
      readonly worst: Check | null;
      /** Its ratio to two decimals; empty where it compares nothing. */
      readonly ratio: string;
    }
  | { readonly kind: 'none'; readonly words: string };

/** Answers of the day on which the playhead stands, or of the finished job; an answer for another day is not shown. */
export function dayAnswer(
  day: number | null,
  pieceId: string,
  slab: SlabOnDay,
  days: Pick<DayState, 'day' | 'pieces'>,
  finished: Pick<PieceVerdict, 'result' | 'isStale'> | undefined,
): DayAnswer {
  if (day === null) {
    if (finished === undefined || finished.isStale) return none('Working out whether it stands.');
    return verdictOf(finished.result);
  }
  if (slab.state === 'nothing' || slab.state === 'formed')
    return none('No verdict before the pour: there is no slab to hold up yet.');
  if (slab.state === 'wet')
    return none('No verdict on the day of the pour: what counts then is the falsework.');
  const result = days.day === day ? days.pieces[pieceId] : undefined;
  return result === undefined ? none('Working out whether it stands on that day.') : verdictOf(result);
}

function none(words: string): DayAnswer {
  return { kind: 'none', words };
}

function verdictOf(result: PieceResult): DayAnswer {
  const worst = governingCheck(result.checks) ?? null;
  return {
    kind: 'verdict',
    result,
    worst,
    ratio: worst === null || worst.ratio <= 0 ? '' : printRatio(worst.ratio),
  };
}
