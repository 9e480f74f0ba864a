import type { Job } from '../../src-core/job';
import type { Pour, PourPlan } from '../../src-core/pour';
import { Heading } from '../look/Heading';
import { Prose } from '../look/Prose';
import styles from './CrewFacts.module.css';
import { crewRows } from './crew-rows';
import { FindingList } from './FindingList';
import type { FindingRow } from './finding-rows';

interface Props {
  readonly job: Job;
  readonly plan: PourPlan;
  readonly pour: Pour;
  readonly notes: readonly FindingRow[];
}

/** Who mixes and who carries, the least crew that would do, and what they lift. */
export function CrewFacts({ job, plan, pour, notes }: Props) {
  return (
    <section aria-labelledby="pour-crew-heading">
      <Heading id="pour-crew-heading">Crew and lifting</Heading>
      <dl className={styles.facts}>
        {crewRows(job, plan, pour, job.shownIn).map(({ term, words }) => (
          <div key={term} className={styles.fact}>
            <dt>{term}</dt>
            <dd>
              <Prose text={words} />
            </dd>
          </div>
        ))}
      </dl>
      <FindingList rows={notes} label="Notes on lifting" />
    </section>
  );
}
