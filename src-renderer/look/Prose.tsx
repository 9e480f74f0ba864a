import { wholeFigures } from '../../src-core/units';
import styles from './Prose.module.css';

interface Props {
  readonly text: string;
}

/** A sentence in which no line ends between a figure, its fraction and its unit. Its letters stay as they are, also when copied. */
export function Prose({ text }: Props) {
  return wholeFigures(text).map(({ at, text: run, isWhole }) =>
    isWhole ? (
      <span key={at} className={styles.whole}>
        {run}
      </span>
    ) : (
      run
    ),
  );
}
