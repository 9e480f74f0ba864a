import { Button } from '../look/Button';
import { Prose } from '../look/Prose';
import { VerdictMark } from '../look/VerdictMark';
import { useStore } from '../state/store-context';
import styles from './SiteList.module.css';
import type { SiteRow } from './site-rows';

interface Props {
  readonly rows: readonly SiteRow[];
}

/** What was found about floor, walls, fire, guards and permits; it stands beside the pieces and changes none of their verdicts. */
export function SiteList({ rows }: Props) {
  const store = useStore();
  return (
    <ul>
      {rows.map(({ id, title, level, words, numbers, source, cautions, manualId }) => (
        <li key={id} className={styles.finding}>
          <h3 className={styles.title}>
            <VerdictMark level={level} size={14} /> {title}
          </h3>
          <p>
            <Prose text={words} />
          </p>
          {numbers !== '' && (
            <p className={styles.numbers}>
              <Prose text={numbers} />
            </p>
          )}
          {cautions.length > 0 && (
            <ul className={styles.cautions} aria-label="Cautions">
              {cautions.map((caution) => (
                <li key={caution}>
                  <Prose text={caution} />
                </li>
              ))}
            </ul>
          )}
          <p className={styles.source}>{source}</p>
          <Button
            weight="quiet"
            onPress={() => store.getState().openSheet({ kind: 'manual', id: manualId })}
            aria-label={`What this means: ${title}`}
          >
            What this means
          </Button>
        </li>
      ))}
    </ul>
  );
}
