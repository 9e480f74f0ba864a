import { useJob } from '../../state/store-context';
import { EntryField } from '../fields/EntryField';
import { quantityWriting } from '../fields/quantity-writing';
import { YesNoField } from '../fields/YesNoField';
import type { BoundsField } from '../specs/field';
import type { Target } from '../target';
import { changeTitle, stepsOf, valueAt } from '../target';
import styles from './GroupView.module.css';

interface Props {
  readonly field: BoundsField;
  readonly target: Target;
}

interface Bounds {
  readonly low: number;
  readonly high: number;
}

/** A lower and an upper stiffness, or the tool's own range where the field may stay empty. */
export function BoundsView({ field, target }: Props) {
  const system = useJob().shownIn;
  const steps = stepsOf(field.at);
  const bounds = valueAt(target.value, steps) as Bounds | null;
  const writing = quantityWriting(field.of, system);
  const title = changeTitle(field.label);
  const end = (key: keyof Bounds, words: string) =>
    bounds !== null && (
      <EntryField
        key={system}
        label={`${field.label}, ${words}`}
        value={bounds[key]}
        writing={writing}
        onCommit={(value) => target.set([...steps, key], value, title)}
      />
    );
  return (
    <>
      {field.emptyWords !== undefined && (
        <YesNoField
          label={`${field.label} of my own`}
          help={bounds === null ? `Now ${field.emptyWords}.` : field.help}
          value={bounds !== null}
          onCommit={(wanted) => target.set(steps, wanted ? field.start : null, title)}
        />
      )}
      <div className={field.emptyWords === undefined ? '' : styles.inner}>
        {end('low', 'at its softest')}
        {end('high', 'at its stiffest')}
      </div>
    </>
  );
}
