import { useMemo } from 'react';
import type { Job, Piece } from '../../src-core/job';
import { Heading } from '../look/Heading';
import styles from './Standing.module.css';
import { standingRows } from './standing-rows';

interface Props {
  readonly job: Job;
  readonly piece: Piece;
  readonly day: number | null;
}

/** What stands under the piece on the day that is shown. */
export function Standing({ job, piece, day }: Props) {
  const rows = useMemo(() => standingRows(job, piece, day), [job, piece, day]);
  return (
    <section aria-labelledby="standing-heading">
      <Heading id="standing-heading">What stands under it</Heading>
      {rows.length === 0 ? (
        <p className={styles.none}>Nothing.</p>
      ) : (
        <ul className={styles.list}>
          {rows.map(({ key, title, until, names }) => (
            <li key={key}>
              <p className={styles.line}>
                <span className={styles.title}>{title}</span>
                <span className={styles.until}>{until}</span>
              </p>
              <p className={styles.names}>{names}</p>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}
