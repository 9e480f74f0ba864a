import { Prose } from '../look/Prose';
import styles from './BuyHead.module.css';

interface Props {
  readonly jobName: string;
  /** "47 things to buy, 3 ticked". */
  readonly title: string;
  /** What the list comes to; empty before the first answer. */
  readonly total: string;
  readonly state: string;
}

/** How much there is to buy, what it comes to as far as prices are known, and whether it is of the drawing as it is. */
export function BuyHead({ jobName, title, total, state }: Props) {
  return (
    <header className={styles.head}>
      <div className={styles.top}>
        <p className={styles.job} title={jobName}>
          {jobName}
        </p>
        <p className={styles.state} role="status">
          {state}
        </p>
      </div>
      <h2 className={styles.title}>{title}</h2>
      {total !== '' && (
        <p>
          <Prose text={total} />
        </p>
      )}
    </header>
  );
}
