/** Marks of form strips, as they are written on them and on the cut lists: "2-F3" is the third strip of piece 2. */
import type { EdgeForm, EdgeForms, FormPart } from '../edge-forms';
import type { BookFacts } from './facts';
import { drawingNumber } from './names';

export interface MarkedPart {
  readonly mark: string;
  readonly form: EdgeForm;
  readonly part: FormPart;
}

/** Strips of a piece with their marks; those of every piece of one drawing are alike. */
export function markedParts(facts: Pick<BookFacts, 'pieces'>, { pieceId, forms }: EdgeForms): MarkedPart[] {
  const number = drawingNumber(facts, pieceId);
  return forms
    .flatMap((form) => form.parts.map((part) => ({ form, part })))
    .map((found, k) => ({ ...found, mark: `${number}-F${k + 1}` }));
}

/** The mark of every part of every piece by its id. */
export function marksByPart(facts: BookFacts): ReadonlyMap<string, string> {
  return new Map(
    facts.takeoff.pieces.flatMap(({ forms }) =>
      forms === null
        ? []
        : markedParts(facts, forms).map(({ part, mark }): [string, string] => [part.id, mark]),
    ),
  );
}
