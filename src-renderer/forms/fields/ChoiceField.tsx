import { Check, ChevronDown } from 'lucide-react';
import {
  Button,
  Label,
  ListBox,
  ListBoxItem,
  Popover,
  Select,
  SelectValue,
  Text,
} from 'react-aria-components';
import type { Choice } from '../specs/field';
import styles from './ChoiceField.module.css';
import { FieldComplaint } from './FieldComplaint';
import row from './FieldRow.module.css';
import { useTaken } from './useTaken';

interface Props {
  readonly label: string;
  /** null where none is chosen. */
  readonly value: string | null;
  readonly choices: readonly Choice[];
  /** Takes the choice and answers null, or says in a sentence why not. */
  readonly onCommit: (value: string | null) => string | null;
  readonly help?: string | undefined;
  /** There may be none; says what that means and can be chosen. */
  readonly emptyWords?: string | undefined;
}

/** No id of a job and no choice of its schema has a space. */
const NONE = 'no choice';

/** One of a few things, with its label at the left. */
export function ChoiceField({ label, value, choices, onCommit, help, emptyWords }: Props) {
  const { sentence, take } = useTaken(value, onCommit);
  const offered = emptyWords === undefined ? choices : [{ value: NONE, words: emptyWords }, ...choices];
  return (
    <Select
      className={row.row!}
      value={value ?? (emptyWords === undefined ? null : NONE)}
      placeholder="choose"
      isInvalid={sentence !== null}
      onChange={(chosen) => take(chosen === NONE ? null : String(chosen))}
    >
      <Label className={row.label!}>{label}</Label>
      <Button className={styles.button!}>
        <SelectValue className={styles.value!} />
        <ChevronDown size={16} aria-hidden="true" />
      </Button>
      {help !== undefined && (
        <Text slot="description" className={`${row.help} ${row.below}`}>
          {help}
        </Text>
      )}
      <FieldComplaint sentence={sentence} />
      <Popover className={styles.popover!}>
        <ListBox className={styles.list!}>
          {offered.map(({ value: id, words }) => (
            <ListBoxItem key={id} id={id} textValue={words} className={styles.item!}>
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
