import { YesNoField } from '../fields/YesNoField';
import type { PartField, Thing } from '../specs/field';
import type { Target } from '../target';
import { below, changeTitle, stepsOf } from '../target';
import { FieldList } from './FieldList';
import styles from './GroupView.module.css';

interface Props {
  readonly field: PartField;
  readonly target: Target;
}

/** Something that the thing has or has not; its fields stand below while it is there. */
export function PartView({ field, target }: Props) {
  const steps = stepsOf(field.at);
  const part = below(target, steps);
  if (field.isAlways === true) return <FieldList fields={field.fields} target={part} />;
  const isThere = part.value !== null;
  const commit = (wanted: boolean) =>
    target.set(
      steps,
      wanted ? field.start(target.value as Thing, target.around) : null,
      changeTitle(field.label),
    );
  return (
    <>
      <YesNoField label={field.label} help={field.help} value={isThere} onCommit={commit} />
      {isThere && (
        // biome-ignore lint/a11y/useSemanticElements: a fieldset cannot be laid out as a row of the form
        <div role="group" aria-label={field.label} className={styles.inner}>
          <FieldList fields={field.fields} target={part} />
        </div>
      )}
    </>
  );
}
