/** Events as knots of the string: one a day, those of the selected piece with words. */
import type { DayEvent, DayEventKind, DayLine } from '../../src-core/sequence';

export interface Knot {
  readonly day: number;
  /** Whether the selected piece, or the job as a whole, has an event that day. */
  readonly isOwn: boolean;
  /** Words beside the knot, the fullest first; none for a day of other pieces alone. */
  readonly labels: readonly string[];
  /** Own events, as they are counted when knots share their words. */
  readonly count: number;
  /** Every event of the day in whole words, own first. */
  readonly details: readonly string[];
}

/** Words of an event beside its knot; null for what goes without saying with another of the same day. */
const SHORT_WORDS: { readonly [K in DayEventKind]: string | null } = {
  build: 'falsework',
  form: 'forms',
  reinforce: 'steel',
  pour: 'pour',
  float: null,
  trowel: null,
  strip: 'strip',
  'cure-end': 'cured',
  'strength-75': '75 %',
  'age-28': '28 days',
  swap: 'swap',
  seal: 'seal',
  'hand-over': 'hand over',
};

/** One knot a day, in order. */
export function knotsOf({ events }: Pick<DayLine, 'events'>, pieceId: string): Knot[] {
  const swaps = events.filter((event) => event.kind === 'swap' && event.pieceId === pieceId);
  const days = [...new Set(events.map(({ day }) => day))].sort((a, b) => a - b);
  return days.map((day) => {
    const onDay = events.filter((event) => event.day === day);
    const own = onDay.filter((event) => isOwn(event, pieceId));
    const others = onDay.filter((event) => !isOwn(event, pieceId));
    const words = own.flatMap((event) => {
      const short = event.kind === 'swap' ? null : SHORT_WORDS[event.kind];
      return short === null ? [] : [short];
    });
    const steps = own.filter(({ kind }) => kind === 'swap');
    if (steps.length > 0) words.push(swapWords(swaps.indexOf(steps[0]!) + 1, steps.length));
    const count = words.length === 0 ? 0 : words.length - Math.min(1, steps.length) + steps.length;
    return {
      day,
      isOwn: own.length > 0,
      labels: labelsOf(words, count),
      count,
      details: [...own, ...others].map(detailOf),
    };
  });
}

/** Days on which the selected piece, or the job as a whole, has an event, in order. */
export function ownDays({ events }: Pick<DayLine, 'events'>, pieceId: string): number[] {
  const days = events.filter((event) => isOwn(event, pieceId)).map(({ day }) => day);
  return [...new Set(days)].sort((a, b) => a - b);
}

/** What a knot of several events is called. */
export function eventsWords(count: number): string {
  return `${count} events`;
}

function isOwn({ pieceId }: DayEvent, selectedId: string): boolean {
  return pieceId === null || pieceId === selectedId;
}

function labelsOf(words: readonly string[], count: number): string[] {
  if (words.length === 0) return [];
  return words.length === 1 ? [words[0]!] : [words.join(', '), eventsWords(count)];
}

function swapWords(first: number, count: number): string {
  return count === 1 ? `swap ${first}` : `swap ${first}-${first + count - 1}`;
}

function detailOf({ words, isOnRestDay }: DayEvent): string {
  return isOnRestDay ? `${words} (a day off)` : words;
}
