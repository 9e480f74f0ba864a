import { ToggleButton, ToggleButtonGroup } from 'react-aria-components';
import type { Paper } from '../../src-core/figure';
import styles from './EitherChoice.module.css';

interface Choice<Value extends string> {
  readonly id: Value;
  readonly words: string;
}

interface Props<Value extends string> {
  readonly label: string;
  readonly value: Value;
  readonly choices: readonly Choice<Value>[];
  readonly onChange: (value: Value) => void;
}

export const PAPER_CHOICES: readonly Choice<Paper>[] = [
  { id: 'letter', words: 'Letter' },
  { id: 'a4', words: 'A4' },
];

/** One of a few short words, all of them in view. */
export function EitherChoice<Value extends string>({ label, value, choices, onChange }: Props<Value>) {
  return (
    <ToggleButtonGroup
      className={styles.group!}
      aria-label={label}
      selectionMode="single"
      disallowEmptySelection
      selectedKeys={[value]}
      onSelectionChange={(keys) => {
        const chosen = choices.find(({ id }) => keys.has(id));
        if (chosen !== undefined) onChange(chosen.id);
      }}
    >
      {choices.map(({ id, words }) => (
        <ToggleButton key={id} id={id} className={styles.choice!}>
          {words}
        </ToggleButton>
      ))}
    </ToggleButtonGroup>
  );
}
