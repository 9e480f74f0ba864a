import type { Pour } from '../../src-core/pour';
import type { UnitSystem } from '../../src-core/units';
import { Heading } from '../look/Heading';
import { Prose } from '../look/Prose';
import styles from './BagFigures.module.css';
import { bagFigures } from './bag-figures';

interface Props {
  readonly pour: Pour;
  readonly system: UnitSystem;
}

/** Water and pigment to each bag, large enough to read from the mixer. */
export function BagFigures({ pour, system }: Props) {
  return (
    <section aria-labelledby="pour-bag-heading">
      <Heading id="pour-bag-heading">To each bag</Heading>
      <dl className={styles.figures}>
        {bagFigures(pour, system).map(({ term, value, words, isRefused }) => (
          <div key={term} className={styles.figure}>
            <dt>{term}</dt>
            <dd className={`${styles.value} ${isRefused ? styles.refused : ''}`}>{value}</dd>
            <dd className={styles.words}>
              <Prose text={words} />
            </dd>
          </div>
        ))}
      </dl>
      <p className={styles.words}>
        Weigh what goes in, the same in every batch. Never add water to concrete that stiffens.
      </p>
    </section>
  );
}
