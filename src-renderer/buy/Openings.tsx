import type { OpeningForm } from '../../src-core/openings';
import type { UnitSystem } from '../../src-core/units';
import { Prose } from '../look/Prose';
import { FindingList } from './FindingList';
import styles from './Openings.module.css';
import { openingRows } from './opening-rows';
import { Source } from './Source';

interface Props {
  readonly openings: readonly OpeningForm[];
  readonly system: UnitSystem;
}

/** Every opening of a piece: its form, the sink that fits, and what was found. */
export function Openings({ openings, system }: Props) {
  return (
    <ul className={styles.openings}>
      {openingRows(openings, system).map(({ id, title, trace, facts, findings }) => (
        <li key={id} className={styles.opening}>
          <h4 className={styles.title}>
            <Source trace={trace}>{title}</Source>
          </h4>
          <dl className={styles.facts}>
            {facts.map(({ term, words }) => (
              <div key={term} className={styles.fact}>
                <dt>{term}</dt>
                <dd>
                  <Prose text={words} />
                </dd>
              </div>
            ))}
          </dl>
          <FindingList findings={findings} />
        </li>
      ))}
    </ul>
  );
}
