import { FieldError } from 'react-aria-components';
import styles from './FieldRow.module.css';

interface Props {
  /** null where there is nothing to say. */
  readonly sentence: string | null;
}

/** What is wrong with an entry, under its field and read out when it appears. Stands inside an aria field. */
export function FieldComplaint({ sentence }: Props) {
  if (sentence === null) return null;
  return (
    <div role="alert" className={styles.below}>
      <FieldError elementType="div" className={styles.sentence!}>
        {sentence}
      </FieldError>
    </div>
  );
}
