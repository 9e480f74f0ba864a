import { Check, ChevronDown } from 'lucide-react';
import {
  Button,
  type Key,
  Label,
  ListBox,
  ListBoxItem,
  Popover,
  Select,
  SelectValue,
  Text,
} from 'react-aria-components';
import list from '../../look/PopoverList.module.css';
import styles from './ChoiceField.module.css';
import { FieldComplaint } from './FieldComplaint';
import row from './FieldRow.module.css';
import { useTaken } from './useTaken';

interface Common<Value extends string> {
  readonly label: string;
  /** null where none is chosen. */
  readonly value: Value | null;
  readonly choices: readonly { readonly value: Value; readonly words: string }[];
  readonly help?: string | undefined;
  /** What the field shows while none is chosen; `choose` where left out. */
  readonly noneWords?: string;
}

interface Needed<Value extends string> extends Common<Value> {
  readonly emptyWords?: undefined;
  /** Takes the choice and answers null, or says in a sentence why not. */
  readonly onCommit: (value: Value) => string | null;
}

interface Optional<Value extends string> extends Common<Value> {
  /** There may be none; says what that means and can be chosen. */
  readonly emptyWords: string | undefined;
  readonly onCommit: (value: Value | null) => string | null;
}

/** No id of a job and no choice of its schema has a space. */
const NONE = 'no choice';

/** One of a few things, with its label at the left. */
export function ChoiceField<Value extends string>(props: Needed<Value> | Optional<Value>) {
  const { label, value, choices, help, emptyWords, noneWords = 'choose' } = props;
  const { sentence, take } = useTaken(value, (key: Key | null) => {
    const choice = choices.find((one) => one.value === key);
    if (choice !== undefined) return props.onCommit(choice.value);
    return props.emptyWords === undefined ? null : props.onCommit(null);
  });
  const offered = emptyWords === undefined ? choices : [{ value: NONE, words: emptyWords }, ...choices];
  return (
    <Select
      className={row.row!}
      value={value ?? (emptyWords === undefined ? null : NONE)}
      placeholder={noneWords}
      isInvalid={sentence !== null}
      onChange={take}
    >
      <Label className={row.label!}>{label}</Label>
      <Button className={`${row.box} ${styles.button}`}>
        <SelectValue className={styles.value!} />
        <ChevronDown size={16} aria-hidden="true" />
      </Button>
      {help !== undefined && (
        <Text slot="description" className={`${row.help} ${row.below}`}>
          {help}
        </Text>
      )}
      <FieldComplaint sentence={sentence} />
      <Popover className={`${list.popover} ${styles.popover}`}>
        <ListBox className={list.list!}>
          {offered.map(({ value: id, words }) => (
            <ListBoxItem key={id} id={id} textValue={words} className={list.item!}>
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
