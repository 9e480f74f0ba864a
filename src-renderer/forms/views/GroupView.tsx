import { useId } from 'react';
import type { GroupField } from '../specs/field';
import type { Target } from '../target';
import { FieldList } from './FieldList';
import styles from './GroupView.module.css';

interface Props {
  readonly field: GroupField;
  readonly target: Target;
}

/** Fields under a heading of their own. */
export function GroupView({ field, target }: Props) {
  const id = useId();
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset cannot be laid out as a row of the form
    <div role="group" aria-labelledby={id} className={styles.group}>
      <h3 id={id} className={styles.heading}>
        {field.label}
      </h3>
      <FieldList fields={field.fields} target={target} />
    </div>
  );
}
