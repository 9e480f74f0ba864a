import type { KeyboardEvent } from 'react';
import { Label, TextArea, TextField } from 'react-aria-components';
import { FieldComplaint } from './FieldComplaint';
import row from './FieldRow.module.css';
import styles from './NoteField.module.css';
import type { Writing } from './typed-entry';
import { useTypedEntry } from './useTypedEntry';

interface Props {
  readonly label: string;
  readonly value: string;
  readonly onCommit: (value: string) => string | null;
}

const WRITING: Writing<string> = {
  print: (note) => note,
  read: (text) => ({ ok: true, value: text.trim() }),
};

/** A few lines of text; leaving it takes them, Escape brings the old ones back. */
export function NoteField({ label, value, onCommit }: Props) {
  const entry = useTypedEntry(value, WRITING, onCommit);
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Escape' && entry.restore()) event.stopPropagation();
  };
  return (
    <TextField
      className={styles.field!}
      value={entry.text}
      onChange={entry.type}
      onBlur={entry.take}
      isInvalid={entry.sentence !== null}
    >
      <Label className={row.label!}>{label}</Label>
      <TextArea className={`${row.box} ${styles.area}`} rows={2} onKeyDown={onKeyDown} />
      <FieldComplaint sentence={entry.sentence} />
    </TextField>
  );
}
