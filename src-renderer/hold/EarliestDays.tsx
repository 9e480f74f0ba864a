import type { Job } from '../../src-core/job';
import type { EarliestDay } from '../../src-core/sequence';
import { Fold } from '../look/Fold';
import { Heading } from '../look/Heading';
import { Prose } from '../look/Prose';
import styles from './EarliestDays.module.css';
import { earliestRows } from './earliest-rows';

interface Props {
  readonly job: Job;
  readonly earliest: readonly EarliestDay[];
}

/** The first day for each piece of work on the slab; what each asks for and by which clause is folded away. */
export function EarliestDays({ job, earliest }: Props) {
  const rows = earliestRows(job, earliest);
  return (
    <section aria-labelledby="earliest-heading">
      <Heading id="earliest-heading">Not before</Heading>
      <ul className={styles.list}>
        {rows.map(({ id, title, when, planned, caution }) => (
          <li key={id}>
            <p className={styles.line}>
              <span>{title}</span>
              <span className={styles.when}>{when}</span>
            </p>
            {planned !== '' && <p className={styles.planned}>{planned}</p>}
            {caution !== '' && (
              <p className={styles.caution}>
                <Prose text={caution} />
              </p>
            )}
          </li>
        ))}
      </ul>
      <Fold title="What each day asks for, and by which rule">
        <dl className={styles.rules}>
          {rows.map(({ id, title, words, source }) => (
            <div key={id}>
              <dt>{title}</dt>
              <dd>
                <Prose text={words} />
              </dd>
              <dd className={styles.source}>{source}</dd>
            </div>
          ))}
        </dl>
      </Fold>
    </section>
  );
}
