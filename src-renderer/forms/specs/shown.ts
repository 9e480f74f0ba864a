/** Which fields a thing has just now. */
import { valueAt } from '../target';
import type { Field, Kind, KindsField, Surroundings } from './field';
import { referenceChoices } from './references';

/** Whether a field applies to the thing as it stands. */
export function isShown(field: Field, thing: unknown): boolean {
  if (!('when' in field) || field.when === undefined) return true;
  return field.when.is.includes(valueAt(thing, field.when.at.split('.')));
}

/** The kinds that a thing may be made, and the one that it is. */
export function offeredKinds(field: KindsField, current: unknown, around: Surroundings): readonly Kind[] {
  return field.kinds.filter(
    ({ value, needs }) =>
      value === current || needs === undefined || referenceChoices(needs, around).length > 0,
  );
}
