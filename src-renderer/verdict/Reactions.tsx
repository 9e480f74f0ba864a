import { memo } from 'react';
import type { UnitSystem } from '../../src-core/units';
import type { SupportReaction } from '../../src-core/verdict';
import { Fold } from '../look/Fold';
import styles from './Reactions.module.css';
import { reactionRows } from './reaction-rows';

interface Props {
  readonly reactions: readonly SupportReaction[];
  readonly system: UnitSystem;
}

/** What each support carries, with soft and with stiff supports, folded away until asked for. */
export const Reactions = memo(function Reactions({ reactions, system }: Props) {
  if (reactions.length === 0) return null;
  return (
    <Fold title="What each support carries">
      <table className={styles.table}>
        <caption className={styles.caption}>
          Worked twice, with soft and with stiff supports, because nobody knows how stiff they are.
        </caption>
        <thead>
          <tr>
            <th scope="col">If they are</th>
            <th scope="col">Self weight</th>
            <th scope="col">Most</th>
            <th scope="col">Least</th>
            <th scope="col">Tie</th>
          </tr>
        </thead>
        {reactionRows(reactions, system).map(({ supportId, words, rows }) => (
          <tbody key={supportId}>
            <tr>
              <th scope="rowgroup" colSpan={5} className={styles.support}>
                {words}
              </th>
            </tr>
            {rows.map(({ bound, dead, most, least, tie }) => (
              <tr key={bound}>
                <th scope="row" className={styles.bound}>
                  {bound}
                </th>
                <td>{dead}</td>
                <td>{most}</td>
                <td>{least}</td>
                <td>{tie}</td>
              </tr>
            ))}
          </tbody>
        ))}
      </table>
    </Fold>
  );
});
