import type { UnitSystem } from '../../../src-core/units';
import { EntryField } from './EntryField';
import { lengthWriting } from './length-writing';
import { orNone } from './optional-writing';

interface Common {
  readonly label: string;
  /** System in which the length is shown and a bare number is read. */
  readonly system: UnitSystem;
  readonly help?: string;
  readonly minIn?: number;
  readonly maxIn?: number;
  readonly layout?: 'row' | 'cell';
}

interface Needed extends Common {
  readonly isOptional?: false;
  readonly valueIn: number;
  /** Takes the length and answers null, or says in a sentence why not. */
  readonly onCommit: (valueIn: number) => string | null;
}

interface Optional extends Common {
  readonly isOptional: true;
  readonly valueIn: number | null;
  readonly onCommit: (valueIn: number | null) => string | null;
  /** What an empty field means. */
  readonly emptyWords?: string;
}

/** A length as people write it: `25-1/2`, `2' 1 1/2"`, `648 mm`, `=24+1.5`. */
export function LengthField(props: Needed | Optional) {
  const { label, system, help, minIn, maxIn, layout = 'row' } = props;
  const writing = lengthWriting({ system, minIn, maxIn });
  if (props.isOptional === true) {
    const { valueIn, onCommit, emptyWords } = props;
    return (
      <EntryField
        {...{ label, help, layout, emptyWords, onCommit }}
        value={valueIn}
        writing={orNone(writing)}
      />
    );
  }
  return <EntryField {...{ label, help, layout, writing }} value={props.valueIn} onCommit={props.onCommit} />;
}
