import { ToggleButton, ToggleButtonGroup } from 'react-aria-components';
import styles from './Choice.module.css';

interface Props<Id extends string> {
  /** What is chosen, for a screen reader. */
  readonly label: string;
  readonly choices: readonly { readonly id: Id; readonly label: string }[];
  readonly chosen: Id;
  readonly onChoose: (id: Id) => void;
}

/** A few ways side by side, one of which is taken. */
export function Choice<Id extends string>({ label, choices, chosen, onChoose }: Props<Id>) {
  return (
    <ToggleButtonGroup
      className={styles.group!}
      aria-label={label}
      selectionMode="single"
      disallowEmptySelection
      selectedKeys={[chosen]}
      onSelectionChange={(keys) => {
        const choice = choices.find(({ id }) => keys.has(id));
        if (choice !== undefined) onChoose(choice.id);
      }}
    >
      {choices.map(({ id, label: words }) => (
        <ToggleButton key={id} id={id} className={styles.button!}>
          {words}
        </ToggleButton>
      ))}
    </ToggleButtonGroup>
  );
}
