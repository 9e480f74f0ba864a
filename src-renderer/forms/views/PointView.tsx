import { useJob } from '../../state/store-context';
import row from '../fields/FieldRow.module.css';
import { LengthField } from '../fields/LengthField';
import type { PointField } from '../specs/field';
import type { Target } from '../target';
import { changeTitle, stepsOf, valueAt } from '../target';
import styles from './PointView.module.css';

interface Props {
  readonly field: PointField;
  readonly target: Target;
}

const AXES = [
  { key: 'xIn', words: 'from the left' },
  { key: 'yIn', words: 'from the front' },
] as const;

/** A place in plan: from the left, then from the front. */
export function PointView({ field, target }: Props) {
  const system = useJob().shownIn;
  const steps = stepsOf(field.at);
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset cannot be laid out as a row of the form
    <div role="group" aria-label={field.label} className={styles.point}>
      <span className={row.label}>
        {field.label}
        <span className={styles.order} aria-hidden="true">
          left, front
        </span>
      </span>
      {AXES.map(({ key, words }) => (
        <LengthField
          key={`${key} ${system}`}
          layout="cell"
          system={system}
          label={`${field.label}, ${words}`}
          valueIn={valueAt(target.value, [...steps, key]) as number}
          onCommit={(valueIn) => target.set([...steps, key], valueIn, changeTitle(field.label))}
        />
      ))}
    </div>
  );
}
