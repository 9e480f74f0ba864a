import { useJob } from '../../state/store-context';
import { ChoiceField } from '../fields/ChoiceField';
import { EntryField } from '../fields/EntryField';
import { ManyField } from '../fields/ManyField';
import { NoteField } from '../fields/NoteField';
import { orNone } from '../fields/optional-writing';
import { quantityWriting } from '../fields/quantity-writing';
import { DATE_WRITING, NAME_WRITING, OPTIONAL_NAME_WRITING } from '../fields/text-writing';
import { YesNoField } from '../fields/YesNoField';
import type {
  ChoiceField as Choice,
  ManyField as Many,
  QuantityField,
  ReferenceField,
  TextField,
  Thing,
  YesNoField as YesNo,
} from '../specs/field';
import { referenceChoices } from '../specs/references';
import type { Target } from '../target';
import { changeTitle, stepsOf, valueAt } from '../target';

interface Props {
  readonly field: QuantityField | Choice | YesNo | TextField | ReferenceField | Many;
  readonly target: Target;
  /** Its label, where it says more than the field's own. */
  readonly label?: string;
  /** How it stands: with its label at the left, or in a table. Row where left out. */
  readonly layout?: 'row' | 'cell';
}

/** A single value: a figure, a choice, a text or a tick. */
export function ValueView({ field, target, label = field.label, layout = 'row' }: Props) {
  const system = useJob().shownIn;
  const steps = stepsOf(field.at);
  const value = valueAt(target.value, steps);
  const follows = 'follows' in field ? field.follows : undefined;
  const commit = (next: unknown) =>
    follows === undefined
      ? target.set(steps, next, changeTitle(field.label))
      : target.set([], follows(target.value as Thing, next, target.around), changeTitle(field.label));
  const common = { label, help: field.help, onCommit: commit };

  switch (field.kind) {
    case 'quantity': {
      // in other units it is another field: what was half typed in inches is not to be read as millimetres
      const writing = quantityWriting(field.of, system);
      const { emptyWords } = field;
      if (emptyWords === undefined) {
        return (
          <EntryField key={system} {...common} layout={layout} value={value as number} writing={writing} />
        );
      }
      const optional = { emptyWords, value: value as number | null, writing: orNone(writing) };
      return <EntryField key={system} {...common} layout={layout} {...optional} />;
    }
    case 'choice':
      return (
        <ChoiceField
          {...common}
          value={value as string | null}
          choices={field.choices}
          emptyWords={field.emptyWords}
        />
      );
    case 'yesNo':
      return <YesNoField {...common} value={value as boolean} />;
    case 'name': {
      if (field.emptyWords === undefined) {
        return <EntryField {...common} value={value as string} writing={NAME_WRITING} />;
      }
      const optional = { emptyWords: field.emptyWords, value: value as string | undefined };
      return <EntryField {...common} {...optional} writing={OPTIONAL_NAME_WRITING} />;
    }
    case 'date': {
      const optional = { emptyWords: field.emptyWords, value: value as string | null };
      return <EntryField {...common} {...optional} writing={orNone(DATE_WRITING)} />;
    }
    case 'note':
      return <NoteField label={label} value={value as string} onCommit={commit} />;
    case 'reference':
      return (
        <ChoiceField
          {...common}
          value={value as string}
          choices={referenceChoices(field.to, target.around)}
        />
      );
    case 'many': {
      const offered =
        typeof field.choices === 'string' ? referenceChoices(field.choices, target.around) : field.choices;
      return (
        <ManyField label={label} value={value as readonly string[]} choices={offered} onCommit={commit} />
      );
    }
  }
}
