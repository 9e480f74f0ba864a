import { Check } from 'lucide-react';
import { Checkbox, CheckboxGroup, Label } from 'react-aria-components';
import type { Choice } from '../specs/field';
import { FieldComplaint } from './FieldComplaint';
import row from './FieldRow.module.css';
import styles from './ManyField.module.css';
import { useTaken } from './useTaken';

interface Props {
  readonly label: string;
  readonly value: readonly string[];
  readonly choices: readonly Choice[];
  readonly onCommit: (value: readonly string[]) => string | null;
}

/** Several of a set, each ticked or not; they are kept in the order of the set. */
export function ManyField({ label, value, choices, onCommit }: Props) {
  const { sentence, take } = useTaken<readonly string[]>(value, onCommit);
  return (
    <CheckboxGroup
      className={styles.group!}
      value={[...value]}
      isInvalid={sentence !== null}
      onChange={(ticked) => take(choices.map((choice) => choice.value).filter((one) => ticked.includes(one)))}
    >
      <Label className={row.label!}>{label}</Label>
      <div className={styles.choices}>
        {choices.map(({ value: id, words }) => (
          <Checkbox key={id} value={id} className={styles.choice!}>
            {({ isSelected }) => (
              <>
                <span className={styles.box}>
                  {isSelected && <Check size={14} strokeWidth={3} aria-hidden="true" />}
                </span>
                {words}
              </>
            )}
          </Checkbox>
        ))}
      </div>
      {choices.length === 0 && <p className={row.help}>There are none in this job.</p>}
      <FieldComplaint sentence={sentence} />
    </CheckboxGroup>
  );
}
