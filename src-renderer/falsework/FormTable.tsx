import type { ReactNode } from 'react';
import styles from './FormTable.module.css';

interface Props {
  readonly caption: ReactNode;
  readonly children: ReactNode;
}

/** A table of lists: words to the left, figures to the right, a hairline above each group. */
export function FormTable({ caption, children }: Props) {
  return (
    <table className={styles.table}>
      <caption>{caption}</caption>
      {children}
    </table>
  );
}
