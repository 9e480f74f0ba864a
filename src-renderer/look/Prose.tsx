import styles from './Prose.module.css';
import { unbroken } from './unbroken';

interface Props {
  readonly text: string;
}

/** A sentence in which no line ends between a figure, its fraction and its unit. Its letters stay as they are, also when copied. */
export function Prose({ text }: Props) {
  return unbroken(text).map(({ at, text: run, isWhole }) =>
    isWhole ? (
      <span key={at} className={styles.whole}>
        {run}
      </span>
    ) : (
      run
    ),
  );
}
