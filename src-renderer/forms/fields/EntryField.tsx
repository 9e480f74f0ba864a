import type { KeyboardEvent } from 'react';
import { Input, Label, Text, TextField } from 'react-aria-components';
import styles from './EntryField.module.css';
import { FieldComplaint } from './FieldComplaint';
import row from './FieldRow.module.css';
import type { Writing } from './typed-entry';
import { useTypedEntry } from './useTypedEntry';

interface Props<Value> {
  readonly label: string;
  readonly value: Value;
  readonly writing: Writing<Value>;
  /** Takes the value and answers null, or says in a sentence why not; then the old value stays. */
  readonly onCommit: (value: Value) => string | null;
  readonly help?: string | undefined;
  /** What an empty field means. */
  readonly emptyWords?: string | undefined;
  /** `row` has its label at the left; `cell` stands in a table and carries its label for screen readers alone. Row where left out. */
  readonly layout?: 'row' | 'cell';
}

/** A field for a value that people write: Enter or leaving it takes the entry, Escape brings the value back, arrows step. */
export function EntryField<Value>({
  label,
  value,
  writing,
  onCommit,
  help,
  emptyWords,
  layout = 'row',
}: Props<Value>) {
  const entry = useTypedEntry(value, writing, onCommit);
  const isCell = layout === 'cell';

  const onKeyDown = (event: KeyboardEvent<HTMLInputElement>) => {
    if (event.key === 'Enter') {
      event.preventDefault();
      entry.take();
    } else if (event.key === 'Escape') {
      // with nothing to restore, Escape is for what stands around the field
      if (entry.restore()) event.stopPropagation();
    } else if (writing.step !== undefined && (event.key === 'ArrowUp' || event.key === 'ArrowDown')) {
      event.preventDefault();
      entry.step(event.key === 'ArrowUp' ? 1 : -1);
    }
  };

  return (
    <TextField
      className={(isCell ? row.cell : row.row)!}
      value={entry.text}
      onChange={entry.type}
      onBlur={entry.take}
      isInvalid={entry.sentence !== null}
      {...(isCell && { 'aria-label': label })}
    >
      {!isCell && <Label className={row.label!}>{label}</Label>}
      <Input
        className={`${row.box} ${styles.input}`}
        placeholder={emptyWords ?? ''}
        onKeyDown={onKeyDown}
        autoComplete="off"
        spellCheck={false}
      />
      {help !== undefined && !isCell && (
        <Text slot="description" className={`${row.help} ${row.below}`}>
          {help}
        </Text>
      )}
      <FieldComplaint sentence={entry.sentence} />
    </TextField>
  );
}
