/** The first day on which each piece of work may be done to a slab, as rows. */
import type { Job } from '../../src-core/job';
import type { EarliestDay, SlabWork } from '../../src-core/sequence';
import { dayName } from '../days/day-words';

export interface EarliestRow {
  readonly id: string;
  readonly title: string;
  /** "day 9, Wed 5 May", or that it is not reached. */
  readonly when: string;
  /** "planned on day 40", or by when it must be so; empty where the job does not tell. */
  readonly planned: string;
  readonly words: string;
  readonly source: string;
  /** Where the plan is sooner than it should be; empty otherwise. */
  readonly caution: string;
  /** null where it is not reached within a year. */
  readonly day: number | null;
}

/** Nobody plans a day for these: the job only tells when the slab is handed over. */
const PLANNED: { readonly [W in SlabWork]?: string } = {
  'full-strength': 'handed over on',
  seal: 'handed over on',
};

/** One row each, in the order in which they are met. */
export function earliestRows({ site }: Job, earliest: readonly EarliestDay[]): EarliestRow[] {
  return earliest.map(({ id, title, day, plannedDay, words, source, caution }) => ({
    id,
    title,
    when: day === null ? 'not within a year' : dayName(site.calendar, day),
    planned: plannedDay === null ? '' : `${PLANNED[id] ?? 'planned on'} day ${plannedDay}`,
    words,
    source,
    caution: caution ?? '',
    day,
  }));
}
