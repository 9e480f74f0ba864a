import type { StarterId } from '../../src-core/starters';
import { STARTERS } from '../../src-core/starters';
import type { UnitSystem } from '../../src-core/units';
import { StarterCard } from './StarterCard';
import styles from './StarterCards.module.css';

interface Props {
  readonly system: UnitSystem;
  readonly onChoose: (id: StarterId) => void;
}

/** Every starter as a card. */
export function StarterCards({ system, onChoose }: Props) {
  return (
    <ul className={styles.cards}>
      {STARTERS.map((starter) => (
        <li key={starter.id}>
          <StarterCard starter={starter} system={system} onChoose={() => onChoose(starter.id)} />
        </li>
      ))}
    </ul>
  );
}
