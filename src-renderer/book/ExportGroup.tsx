import type { ReactNode } from 'react';
import { useId } from 'react';
import { Button } from '../look/Button';
import { Heading } from '../look/Heading';
import styles from './ExportGroup.module.css';

export interface ExportRow {
  readonly id: string;
  readonly title: string;
  readonly words?: string;
  readonly onSave: () => void;
}

interface Props {
  readonly title: string;
  readonly rows: readonly ExportRow[];
  /** What is on its way; its button says so, and the others wait. */
  readonly busy: string | null;
  readonly children?: ReactNode;
}

/** Files of one kind, with a button each. */
export function ExportGroup({ title, rows, busy, children }: Props) {
  const headingId = useId();
  return (
    <section className={styles.group} aria-labelledby={headingId}>
      <Heading id={headingId}>{title}</Heading>
      {children}
      <ul className={styles.rows}>
        {rows.map(({ id, title: name, words, onSave }) => (
          <li key={id} className={styles.row}>
            <div className={styles.what}>
              <p className={styles.name}>{name}</p>
              {words !== undefined && <p className={styles.words}>{words}</p>}
            </div>
            <Button
              aria-label={`Save: ${name}`}
              // the button that was pressed keeps the focus
              isDisabled={busy !== null && busy !== id}
              isPending={busy === id}
              onPress={onSave}
            >
              {busy === id ? 'Making it...' : 'Save'}
            </Button>
          </li>
        ))}
      </ul>
    </section>
  );
}
