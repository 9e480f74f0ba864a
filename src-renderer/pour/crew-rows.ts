/** Who does what on the day, and what there is to lift. */
import type { Job } from '../../src-core/job';
import type { Pour, PourPlan } from '../../src-core/pour';
import type { UnitSystem } from '../../src-core/units';
import { countWords, massWords } from './amount-words';

export interface CrewRow {
  readonly term: string;
  readonly words: string;
}

/** Crew, least crew, buckets and bags; nothing of the clock where the bag is not known. */
export function crewRows(
  { crew }: Pick<Job, 'crew'>,
  plan: PourPlan,
  { clock, bags }: Pour,
  system: UnitSystem,
): CrewRow[] {
  const rows: CrewRow[] = [];
  if (clock !== null) {
    const { pace, leastCrew, buckets } = clock;
    rows.push({
      term: 'Crew',
      words: pace.isAlone
        ? 'One person, who mixes and places in turn.'
        : `${countWords(crew.people, 'person', 'people')}: ${countWords(pace.mixers, 'mixes', 'mix')}, ${countWords(pace.placers, 'carries and places', 'carry and place')}.`,
    });
    rows.push({
      term: 'Least crew',
      words:
        leastCrew === null
          ? 'None of ten people with four mixers is fast enough.'
          : `${leastCrew.people} people, ${countWords(leastCrew.mixers, 'mixer', 'mixers')}: ${Math.floor(leastCrew.slackMinutes)} min to spare.`,
    });
    const heaviestLb = Math.max(0, ...buckets.map(({ weightLb }) => weightLb));
    rows.push({
      term: 'Buckets',
      words: `${buckets.length}, the heaviest ${massWords(heaviestLb, system)}.`,
    });
  }
  const { weightLb, mostFillRatio } = plan.bucket;
  rows.push({
    term: 'One bucket',
    words: `${massWords(weightLb, system)} as filled. One pair of hands lifts it at ${Math.floor(100 * mostFillRatio)} % full or less.`,
  });
  if (bags !== null) rows.push({ term: 'One bag', words: massWords(bags.bagLb, system) });
  return rows;
}
