import { Check, ChevronDown } from 'lucide-react';
import { Button, Label, ListBox, ListBoxItem, Popover, Select, SelectValue } from 'react-aria-components';
import styles from './ChoiceField.module.css';

interface Props<Value extends string> {
  readonly label: string;
  /** null where none of the choices is what is drawn. */
  readonly value: Value | null;
  readonly choices: readonly { readonly value: Value; readonly words: string }[];
  /** What the field shows while nothing of the list is chosen. */
  readonly noneWords: string;
  readonly onChoose: (value: Value) => void;
}

/** One of a few things, with its label at the left. */
export function ChoiceField<Value extends string>({
  label,
  value,
  choices,
  noneWords,
  onChoose,
}: Props<Value>) {
  return (
    <Select
      className={styles.field!}
      value={value}
      placeholder={noneWords}
      onChange={(chosen) => {
        const choice = choices.find((one) => one.value === chosen);
        if (choice !== undefined) onChoose(choice.value);
      }}
    >
      <Label className={styles.label!}>{label}</Label>
      <Button className={styles.button!}>
        <SelectValue className={styles.value!} />
        <ChevronDown size={16} aria-hidden="true" />
      </Button>
      <Popover className={styles.popover!}>
        <ListBox className={styles.list!}>
          {choices.map(({ value: id, words }) => (
            <ListBoxItem key={id} id={id} textValue={words} className={styles.choice!}>
              {({ isSelected }) => (
                <>
                  {words}
                  {isSelected && <Check size={14} aria-hidden="true" />}
                </>
              )}
            </ListBoxItem>
          ))}
        </ListBox>
      </Popover>
    </Select>
  );
}
