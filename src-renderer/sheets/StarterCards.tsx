import type { StarterId } from '../../src-core/starters';
import { STARTERS } from '../../src-core/starters';
import { StarterCard } from './StarterCard';
import styles from './StarterCards.module.css';

interface Props {
  readonly onChoose: (id: StarterId) => void;
}

/** Every starter as a card. */
export function StarterCards({ onChoose }: Props) {
  return (
    <ul className={styles.cards}>
      {STARTERS.map((starter) => (
        <li key={starter.id}>
          <StarterCard starter={starter} onChoose={() => onChoose(starter.id)} />
        </li>
      ))}
    </ul>
  );
}
