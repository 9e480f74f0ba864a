import type { SwapFinding } from '../../src-core/sequence';
import { Prose } from '../look/Prose';
import { VerdictMark } from '../look/VerdictMark';
import styles from './Finding.module.css';

interface Props {
  readonly finding: SwapFinding;
}

/** One finding about the swap with the mark of its rung: heights, ways in and out, sinks, feet, days. */
export function Finding({ finding: { title, words, level, source } }: Props) {
  return (
    <li className={styles.finding}>
      <p className={styles.title}>
        <VerdictMark level={level} size={12} /> {title}
      </p>
      <p>
        <Prose text={words} />
      </p>
      <p className={styles.source}>{source}</p>
    </li>
  );
}
