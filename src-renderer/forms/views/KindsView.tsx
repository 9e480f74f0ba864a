import { ChoiceField } from '../fields/ChoiceField';
import type { KindsField } from '../specs/field';
import { offeredKinds } from '../specs/shown';
import type { Target } from '../target';
import { below, changeTitle, stepsOf, valueAt } from '../target';
import { FieldList } from './FieldList';
import styles from './GroupView.module.css';

interface Props {
  readonly field: KindsField;
  readonly target: Target;
}

/** One of several kinds, and the fields of the one that it is. */
export function KindsView({ field, target }: Props) {
  const steps = stepsOf(field.at);
  const thing = below(target, steps);
  const current = (valueAt(thing.value, [field.by]) ?? null) as string | null;
  const kind = field.kinds.find(({ value }) => value === current);
  const commit = (wanted: string | null) =>
    target.set(
      steps,
      wanted === null ? null : field.change(thing.value, wanted, target.around),
      changeTitle(field.label),
    );
  const fields = <FieldList key={current} fields={kind?.fields ?? []} target={thing} />;
  return (
    <>
      <ChoiceField
        label={field.label}
        value={current}
        choices={offeredKinds(field, current, target.around)}
        onCommit={commit}
        help={field.help}
        emptyWords={field.noneWords}
      />
      {field.at === '' || kind === undefined || kind.fields.length === 0 ? (
        fields
      ) : (
        // biome-ignore lint/a11y/useSemanticElements: a fieldset cannot be laid out as a row of the form
        <div role="group" aria-label={field.label} className={styles.inner}>
          {fields}
        </div>
      )}
    </>
  );
}
