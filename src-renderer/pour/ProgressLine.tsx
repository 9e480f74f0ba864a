import styles from './ProgressLine.module.css';

interface Props {
  readonly done: number;
  readonly all: number;
  /** "mixed", "done". */
  readonly word: string;
}

/** "3 of 7 mixed", read out when it changes. */
export function ProgressLine({ done, all, word }: Props) {
  return (
    <p className={styles.line} role="status">
      {done} of {all} {word}
    </p>
  );
}
