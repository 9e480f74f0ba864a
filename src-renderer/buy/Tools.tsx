import type { Tool } from '../../src-core/takeoff';
import { Prose } from '../look/Prose';
import styles from './Tools.module.css';

interface Props {
  readonly tools: readonly Tool[];
}

const KINDS = [
  { kind: 'protection', title: 'Protection' },
  { kind: 'tool', title: 'Tools' },
] as const;

/** What protects people and what the work is done with: why, how many, and what to mind. */
export function Tools({ tools }: Props) {
  return (
    <div className={styles.tools}>
      {KINDS.map(({ kind, title }) => (
        <div key={kind}>
          <h4 className={styles.title}>{title}</h4>
          <ul className={styles.list}>
            {tools
              .filter((tool) => tool.kind === kind)
              .map(({ id, name, why, countWords, caution, source }) => (
                <li key={id}>
                  <p>
                    <strong className={styles.name}>
                      <Prose text={name} />
                    </strong>
                    , {countWords}
                  </p>
                  <p className={styles.soft}>
                    <Prose text={why} />
                  </p>
                  {caution !== null && (
                    <p className={styles.caution}>
                      <Prose text={caution} />
                    </p>
                  )}
                  <p className={styles.soft}>{source}</p>
                </li>
              ))}
          </ul>
        </div>
      ))}
    </div>
  );
}
