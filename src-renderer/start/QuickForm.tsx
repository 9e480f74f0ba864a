import type { QuickFields } from '../../src-core/starters';
import { QUICK_OVERHANG } from '../../src-core/starters';
import type { UnitSystem } from '../../src-core/units';
import { ChoiceField } from '../forms/fields/ChoiceField';
import { LengthField } from '../forms/fields/LengthField';
import styles from './QuickForm.module.css';
import type { ChoiceName, SizeName } from './quick-form';
import { choicesOf, withChoice, withSize } from './quick-form';

interface Props {
  readonly fields: QuickFields;
  readonly system: UnitSystem;
  readonly onChange: (fields: QuickFields) => void;
}

/** The eight questions, in the order in which a builder measures. */
export function QuickForm({ fields, system, onChange }: Props) {
  const choice = <N extends ChoiceName>(name: N) => ({
    value: fields[name],
    choices: choicesOf(name, fields),
    onCommit: (chosen: QuickFields[N]) => {
      onChange(withChoice(fields, name, chosen));
      return null;
    },
  });
  const size = (name: SizeName) => ({
    valueIn: fields[name],
    system,
    onCommit: (valueIn: number) => {
      const taken = withSize(fields, name, valueIn, system);
      if (!taken.ok) return taken.sentence;
      onChange(taken.fields);
      return null;
    },
  });
  return (
    <section aria-label="The piece" className={styles.form}>
      <ChoiceField label="What is it?" {...choice('kind')} />
      <LengthField label="Length, left to right" {...size('lengthIn')} />
      <LengthField label="Depth, front to back" {...size('depthIn')} />
      <LengthField label="Thickness" {...size('thicknessIn')} />
      <ChoiceField label="What does it sit on?" {...choice('bearing')} />
      <LengthField label={`Overhang ${QUICK_OVERHANG[fields.bearing]}`} {...size('overhangIn')} />
      <ChoiceField label="What steel is in it?" {...choice('steel')} />
      <ChoiceField label="Is it held down?" {...choice('held')} />
    </section>
  );
}
