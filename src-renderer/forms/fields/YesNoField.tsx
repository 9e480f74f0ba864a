import { SwitchButton, SwitchField, Text } from 'react-aria-components';
import { FieldComplaint } from './FieldComplaint';
import row from './FieldRow.module.css';
import { useTaken } from './useTaken';
import styles from './YesNoField.module.css';

interface Props {
  readonly label: string;
  readonly value: boolean;
  readonly onCommit: (value: boolean) => string | null;
  readonly help?: string | undefined;
}

/** Yes or no, with its label at the left. */
export function YesNoField({ label, value, onCommit, help }: Props) {
  const { sentence, take } = useTaken(value, onCommit);
  return (
    <SwitchField className={styles.field!} isSelected={value} isInvalid={sentence !== null} onChange={take}>
      <SwitchButton className={styles.switch!}>
        <span className={row.label}>{label}</span>
        <span className={styles.track} aria-hidden="true">
          <span className={styles.knob} />
        </span>
      </SwitchButton>
      {help !== undefined && (
        <Text slot="description" className={row.help!}>
          {help}
        </Text>
      )}
      <FieldComplaint sentence={sentence} />
    </SwitchField>
  );
}
