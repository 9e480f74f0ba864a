import { ChevronDown } from 'lucide-react';
import { Button, Label, ListBox, ListBoxItem, Popover, Select, SelectValue } from 'react-aria-components';
import styles from './ChoiceField.module.css';

interface Props<Id extends string> {
  readonly label: string;
  readonly value: Id;
  readonly choices: readonly { readonly id: Id; readonly words: string }[];
  readonly onChoose: (id: Id) => void;
}

/** One of a few things, each in words. */
export function ChoiceField<Id extends string>({ label, value, choices, onChoose }: Props<Id>) {
  return (
    <Select
      className={styles.row!}
      value={value}
      onChange={(key) => {
        const choice = choices.find(({ id }) => id === key);
        if (choice !== undefined) onChoose(choice.id);
      }}
    >
      <Label className={styles.label!}>{label}</Label>
      <Button className={styles.button!}>
        <SelectValue className={styles.value!} />
        <ChevronDown size={16} aria-hidden />
      </Button>
      <Popover className={styles.popover!}>
        <ListBox className={styles.list!}>
          {choices.map(({ id, words }) => (
            <ListBoxItem key={id} id={id} textValue={words} className={styles.item!}>
              {words}
            </ListBoxItem>
          ))}
        </ListBox>
      </Popover>
    </Select>
  );
}
