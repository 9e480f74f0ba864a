/** The first day on which each piece of work may be done to a slab, as rows. */
import type { Job } from '../../src-core/job';
import type { EarliestDay } from '../../src-core/sequence';
import { dayName } from '../days/day-words';

export interface EarliestRow {
  readonly id: string;
  readonly title: string;
  /** "day 9, Wed 5 May", or that it is not reached. */
  readonly when: string;
  /** "planned on day 40"; empty where the job does not tell. */
  readonly planned: string;
  readonly words: string;
  readonly source: string;
  /** Where the plan is sooner than it should be; empty otherwise. */
  readonly caution: string;
  /** null where it is not reached within a year. */
  readonly day: number | null;
}

/** One row each, in the order in which they are met. */
export function earliestRows({ site }: Job, earliest: readonly EarliestDay[]): EarliestRow[] {
  return earliest.map(({ id, title, day, plannedDay, words, source, caution }) => ({
    id,
    title,
    when: day === null ? 'not within a year' : dayName(site.calendar, day),
    planned: plannedDay === null ? '' : `planned on day ${plannedDay}`,
    words,
    source,
    caution: caution ?? '',
    day,
  }));
}
