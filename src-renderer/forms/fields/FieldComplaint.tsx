import { FieldError } from 'react-aria-components';
import { Prose } from '../../look/Prose';
import styles from './FieldRow.module.css';

interface Props {
  /** null where there is nothing to say. */
  readonly sentence: string | null;
}

/** Under a field at the foot of a panel the sentence would appear out of sight. */
function bringIntoSight(place: HTMLElement | null): void {
  place?.scrollIntoView({ block: 'nearest' });
}

/** What is wrong with an entry, under its field and read out when it appears. Stands inside an aria field. */
export function FieldComplaint({ sentence }: Props) {
  if (sentence === null) return null;
  return (
    <div role="alert" className={styles.below} ref={bringIntoSight}>
      <FieldError elementType="div" className={styles.sentence!}>
        <Prose text={sentence} />
      </FieldError>
    </div>
  );
}
