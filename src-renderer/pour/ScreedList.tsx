import type { Pour } from '../../src-core/pour';
import type { UnitSystem } from '../../src-core/units';
import { Heading } from '../look/Heading';
import { Prose } from '../look/Prose';
import { PieceLink } from './PieceLink';
import styles from './ScreedList.module.css';
import { screedRows } from './screed-rows';

interface Props {
  readonly pour: Pour;
  readonly system: UnitSystem;
}

/** The straightedge of each piece: how long it is, what it rides on, and what is in its way. */
export function ScreedList({ pour, system }: Props) {
  return (
    <section aria-labelledby="pour-screed-heading">
      <Heading id="pour-screed-heading">What the straightedge rides on</Heading>
      <ul>
        {screedRows(pour, system).map(({ pieceId, name, straightedge, datum, lines }) => (
          <li key={pieceId} className={styles.item}>
            <p className={styles.title}>
              <PieceLink pieceId={pieceId} name={name} />
              <span>
                <span className={styles.length}>{straightedge}</span> straightedge
              </span>
            </p>
            <p className={styles.soft}>
              <Prose text={datum} />
            </p>
            <ul className={styles.lines}>
              {lines.map(({ id, words }) => (
                <li key={id}>
                  <Prose text={words} />
                </li>
              ))}
            </ul>
          </li>
        ))}
      </ul>
    </section>
  );
}
