/** The job day by day. */
import type { DayEvent, DayEventKind } from '../sequence';
import type { Chapter, Words } from '../sheet';
import { columns, paragraph, table } from './blocks';
import type { BookContext } from './context';
import { namesWords } from './names';

/** A row for each day and kind of work. */
export function dayChapter(context: BookContext): Chapter {
  const { facts, print } = context;
  const isDated = facts.days.events.some(({ date }) => date !== null);
  const rows = rowsOf(facts.days.events);
  return {
    id: 'days',
    title: 'Day by day',
    startsPage: false,
    blocks: [
      ...(isDated ? [] : [paragraph('Day 0 is the first day of the job; its date is not stated.')]),
      ...table(
        'days-table',
        'What is done or reached on which day',
        columns(['Day', 1.6], ['Work', 1.9], ['Of', 3]),
        rows.map(({ day, work, events }, k): Words[] => [
          rows[k - 1]?.day === day ? '' : print.day(day),
          events.some(({ isOnRestDay }) => isOnRestDay) ? `${work} (a day of rest)` : work,
          ofWords(context, events),
        ]),
      ),
    ],
  };
}

/** Screeding, floating and trowelling belong to the pour. */
const WORK: { readonly [K in DayEventKind]: string } = {
  build: 'Build the falsework',
  form: 'Set the edge forms',
  reinforce: 'Lay the steel',
  pour: 'Pour, screed, float, trowel',
  float: 'Pour, screed, float, trowel',
  trowel: 'Pour, screed, float, trowel',
  strip: 'Take the edge forms off',
  'cure-end': 'End of moist curing',
  'strength-75': '75 % of the strength, and a week old',
  'age-28': '28-day strength',
  swap: 'Swap',
  seal: 'Seal',
  'hand-over': 'Hand over',
};

interface DayRow {
  readonly day: number;
  readonly work: string;
  readonly events: readonly DayEvent[];
}

/** Events in their order, those of one day and work together. */
function rowsOf(events: readonly DayEvent[]): DayRow[] {
  const rows = new Map<string, { day: number; work: string; events: DayEvent[] }>();
  for (const event of events) {
    const work = WORK[event.kind];
    const key = `${event.day} ${work}`;
    const row = rows.get(key) ?? { day: event.day, work, events: [] };
    row.events.push(event);
    rows.set(key, row);
  }
  return [...rows.values()];
}

/** What is swapped, and from where falsework comes, is told in full; of all else the pieces. */
function ofWords({ job }: BookContext, events: readonly DayEvent[]): string {
  const [first] = events;
  if (first?.kind === 'build' || first?.kind === 'swap') return events.map(({ words }) => words).join('; ');
  const names = events.flatMap(({ pieceId }) => job.pieces.find(({ id }) => id === pieceId)?.name ?? []);
  return namesWords([...new Set(names)]);
}
