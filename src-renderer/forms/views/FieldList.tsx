import type { Field } from '../specs/field';
import { isShown } from '../specs/shown';
import type { Target } from '../target';
import { FieldView } from './FieldView';

interface Props {
  readonly fields: readonly Field[];
  readonly target: Target;
}

/** The fields of a thing, as far as they apply to it just now. */
export function FieldList({ fields, target }: Props) {
  return fields
    .filter((field) => isShown(field, target.value))
    .map((field) => <FieldView key={keyOf(field)} field={field} target={target} />);
}

function keyOf(field: Field): string {
  return 'at' in field ? `${field.kind} ${field.at} ${field.label}` : `${field.kind} ${field.label}`;
}
