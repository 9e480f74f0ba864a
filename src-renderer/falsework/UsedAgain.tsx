import type { FalseworkDesign } from '../../src-core/falsework';
import type { Job } from '../../src-core/job';
import { Prose } from '../look/Prose';
import { boughtWords, reuseRows } from './reuse-rows';
import styles from './UsedAgain.module.css';

interface Props {
  readonly design: FalseworkDesign;
  readonly job: Job;
}

/** What of earlier pours stands again under this piece, and what of this falsework goes on to later ones; nothing where neither does. */
export function UsedAgain({ design, job }: Props) {
  const rows = reuseRows(job, design);
  if (rows.length === 0) return null;
  return (
    <div>
      <h3 className={styles.title}>Used again</h3>
      <ul className={styles.list}>
        {rows.map(({ id, where, words }) => (
          <li key={id}>
            <span className={styles.where}>{where}</span> <Prose text={words} />
          </li>
        ))}
      </ul>
      <p className={styles.bought}>{boughtWords(design)}</p>
    </div>
  );
}
