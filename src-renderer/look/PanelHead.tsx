import type { ReactNode } from 'react';
import styles from './PanelHead.module.css';

interface Props {
  /** The job or piece that the panel is about. */
  readonly about: string;
  /** Whether the answer is of the drawing as it is; empty where nothing is to be said. */
  readonly state: string;
  readonly title: string;
  readonly children?: ReactNode;
}

/** The head of a panel: what it is about, what goes on, and the answer in large letters. */
export function PanelHead({ about, state, title, children }: Props) {
  return (
    <header className={styles.head}>
      <div className={styles.top}>
        <p className={styles.of} title={about}>
          {about}
        </p>
        <p className={styles.state} role="status">
          {state}
        </p>
      </div>
      <h2 className={styles.title}>{title}</h2>
      {children}
    </header>
  );
}
