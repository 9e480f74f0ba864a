import type { Piece } from '../../src-core/job';
import { EntryField } from '../forms/fields/EntryField';
import { quantityWriting } from '../forms/fields/quantity-writing';
import { OPTIONAL_NAME_WRITING } from '../forms/fields/text-writing';

interface Props {
  readonly colour: Piece['colour'];
  /** Takes the colour and answers null, or says in a sentence why not. */
  readonly onCommit: (colour: Piece['colour']) => string | null;
}

/** A usual dose where a pigment is first named. Common practice, no source. */
const USUAL_RATIO = 0.03;
/** A share is written alike in both systems. */
const SHARE_WRITING = quantityWriting('percent', 'imperial');

/** Name of the pigment, empty for none, and its share of the cement by weight. */
export function PigmentField({ colour, onCommit }: Props) {
  return (
    <>
      <EntryField
        label="Pigment"
        value={colour?.pigment}
        writing={OPTIONAL_NAME_WRITING}
        emptyWords="none"
        onCommit={(pigment) =>
          onCommit(
            pigment === undefined ? null : { pigment, pigmentRatio: colour?.pigmentRatio ?? USUAL_RATIO },
          )
        }
      />
      {colour !== null && (
        <EntryField
          label="Share of the cement"
          value={colour.pigmentRatio}
          writing={SHARE_WRITING}
          onCommit={(pigmentRatio) => onCommit({ ...colour, pigmentRatio })}
        />
      )}
    </>
  );
}
