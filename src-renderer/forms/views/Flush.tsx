import type { ReactNode } from 'react';
import styles from './Flush.module.css';

interface Props {
  readonly children: ReactNode;
}

/** A quiet button in the column of the text, not of its own padding. */
export function Flush({ children }: Props) {
  return <div className={styles.flush}>{children}</div>;
}
