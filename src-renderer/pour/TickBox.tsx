import { Check } from 'lucide-react';
import type { ReactNode } from 'react';
import { CheckboxButton, CheckboxField } from 'react-aria-components';
import { setTick } from '../../src-core/edit';
import { useStore } from '../state/store-context';
import styles from './TickBox.module.css';

interface Props {
  readonly tickId: string;
  readonly isDone: boolean;
  /** Completes "Tick ..." of undo. */
  readonly words: string;
  readonly children: ReactNode;
}

/** A large box to tick with a wet glove; the tick is kept in the job. */
export function TickBox({ tickId, isDone, words, children }: Props) {
  const store = useStore();
  const tick = (done: boolean) => {
    const [problem] = store.getState().run(setTick, { id: tickId, done, words });
    if (problem !== undefined) store.getState().say({ tone: 'trouble', sentence: problem.sentence });
  };
  return (
    <CheckboxField isSelected={isDone} onChange={tick}>
      <CheckboxButton className={styles.button!}>
        <span className={styles.box} aria-hidden="true">
          {isDone && <Check size={20} strokeWidth={3} />}
        </span>
        {children}
      </CheckboxButton>
    </CheckboxField>
  );
}
