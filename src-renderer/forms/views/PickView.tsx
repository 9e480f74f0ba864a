import { ChoiceField } from '../fields/ChoiceField';
import type { PickField, Thing } from '../specs/field';
import { pickedFrom } from '../specs/picked';
import type { Target } from '../target';
import { changeTitle } from '../target';

interface Props {
  readonly field: PickField;
  readonly target: Target;
}

/** A table of the trade to take several values from; shows which entry the values are. */
export function PickView({ field, target }: Props) {
  const thing = target.value as Thing;
  const picked = pickedFrom(field.picks, thing);
  const choices = field.picks.map(({ id, words }) => ({ value: id, words }));
  const commit = (id: string | null) => {
    const pick = field.picks.find((one) => one.id === id);
    return pick === undefined ? null : target.set([], { ...thing, ...pick.values }, changeTitle(field.label));
  };
  return (
    <ChoiceField
      label={field.label}
      help={field.help}
      value={picked?.id ?? null}
      choices={choices}
      onCommit={commit}
      emptyWords={picked === null ? field.ownWords : undefined}
    />
  );
}
