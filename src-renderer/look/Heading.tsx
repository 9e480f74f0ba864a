import type { ReactNode } from 'react';
import styles from './Heading.module.css';

interface Props {
  readonly children: ReactNode;
  readonly id?: string;
}

/** Heading of a part of a panel. */
export function Heading({ children, id }: Props) {
  return (
    <h2 className={styles.heading} id={id}>
      {children}
    </h2>
  );
}
