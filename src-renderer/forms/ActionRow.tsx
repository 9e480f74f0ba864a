import { useState } from 'react';
import type { JobProblem } from '../../src-core/job';
import { Button } from '../look/Button';
import styles from './DrawPanel.module.css';
import { firstSentence } from './target';
import { Refusal } from './views/Refusal';

export interface Action {
  readonly words: string;
  readonly act: () => readonly JobProblem[];
}

interface Props {
  readonly actions: readonly Action[];
}

/** What can be done with the whole of a thing, side by side, and why not where it was refused. */
export function ActionRow({ actions }: Props) {
  const [sentence, setSentence] = useState<string | null>(null);
  return (
    <div className={styles.actions}>
      {actions.map(({ words, act }) => (
        <Button key={words} onPress={() => setSentence(firstSentence(act()))}>
          {words}
        </Button>
      ))}
      <Refusal sentence={sentence} />
    </div>
  );
}
