import { memo } from 'react';
import { useChange as useChangeCommand } from '../../src-core/edit';
import type { Change } from '../../src-core/remedies';
import type { UnitSystem } from '../../src-core/units';
import type { PieceResult } from '../../src-core/verdict';
import { Button } from '../look/Button';
import { Fold } from '../look/Fold';
import { Heading } from '../look/Heading';
import { Prose } from '../look/Prose';
import { VerdictMark } from '../look/VerdictMark';
import { useStore } from '../state/store-context';
import type { PieceVerdict } from '../state/verdict-store';
import styles from './ChangeList.module.css';
import { changeRows, vainWords } from './change-rows';

interface Props {
  readonly result: PieceResult;
  /** A change of an answer that is out of date may no longer fit the drawing, so it is not offered. */
  readonly isStale: boolean;
  readonly isSearching: PieceVerdict['isSearching'];
  readonly system: UnitSystem;
}

/** Changes that were tried on the whole piece and pass, each with its price; what was tried in vain is folded away. */
export const ChangeList = memo(function ChangeList({ result, isStale, isSearching, system }: Props) {
  const store = useStore();
  const rows = changeRows(result.changes, system);
  const vain = vainWords(result, isSearching);
  if (rows.length === 0 && result.triedInVain.length === 0) return null;

  const use = (change: Change) => {
    const [problem, ...more] = store.getState().run(useChangeCommand, { change });
    store.getState().say(
      problem === undefined
        ? { tone: 'plain', sentence: `Done: ${change.title}. Undo brings it back.` }
        : {
            tone: 'trouble',
            sentence: `The change does not fit the drawing any more: ${problem.sentence}`,
            details: more.map(({ sentence }) => sentence),
          },
    );
  };

  return (
    <section aria-labelledby="changes-heading" className={styles.changes}>
      <Heading id="changes-heading">Changes that were tried and pass</Heading>
      {vain !== null && <p>{vain}</p>}
      <ul className={styles.list}>
        {rows.map(({ change, title, level, worst, weight, parts }) => (
          <li key={change.id} className={styles.row}>
            <div className={styles.words}>
              <p className={styles.title}>
                <Prose text={title} />
              </p>
              <p className={styles.cost}>
                <VerdictMark level={level} size={12} /> <Prose text={[worst, weight].join(', ')} />
              </p>
              {parts.map((part) => (
                <p key={part} className={styles.cost}>
                  <Prose text={part} />
                </p>
              ))}
            </div>
            <Button isDisabled={isStale} onPress={() => use(change)} aria-label={`Use it: ${title}`}>
              Use it
            </Button>
          </li>
        ))}
      </ul>
      {result.triedInVain.length > 0 && (
        <Fold title={`Tried in vain (${result.triedInVain.length})`}>
          <ul className={styles.vain}>
            {result.triedInVain.map((words) => (
              <li key={words}>
                <Prose text={words} />
              </li>
            ))}
          </ul>
        </Fold>
      )}
    </section>
  );
});
