/** Short ways to write fields down. */
import type { QuantityName } from '../fields/quantity-names';
import type { Choice, ChoiceField, Field, KindsField, PointField, QuantityField, Thing } from './field';

type More = Partial<Omit<QuantityField, 'kind' | 'of' | 'at' | 'label'>>;

/** A figure. */
export function quantity(of: QuantityName, at: string, label: string, more: More = {}): QuantityField {
  return { kind: 'quantity', of, at, label, ...more };
}

/** A length. */
export function length(at: string, label: string, more: More = {}): QuantityField {
  return quantity('length', at, label, more);
}

/** A place in plan. */
export function place(at: string, label: string): PointField {
  return { kind: 'point', at, label };
}

/** Choices from pairs of stored value and words. */
export function choices(pairs: Readonly<Record<string, string>>): readonly Choice[] {
  return Object.entries(pairs).map(([value, words]) => ({ value, words }));
}

/** One of a few. */
export function choice(
  at: string,
  label: string,
  pairs: Readonly<Record<string, string>>,
  more: Partial<Omit<ChoiceField, 'kind' | 'choices' | 'at' | 'label'>> = {},
): ChoiceField {
  return { kind: 'choice', at, label, choices: choices(pairs), ...more };
}

/** Yes or no. */
export function yesNo(at: string, label: string, help?: string): Field {
  return { kind: 'yesNo', at, label, ...(help !== undefined && { help }) };
}

/** Kinds whose change is written for the type that the job stores, which the schema has assured. */
export function kindsOf<Stored, Kind extends string>(
  field: Omit<KindsField, 'kind' | 'change'>,
  change: (old: Stored, kind: Kind, around: Parameters<KindsField['change']>[2]) => unknown,
): KindsField {
  return {
    ...field,
    kind: 'kinds',
    change: (old, kind, around) => change(old as Stored, kind as Kind, around),
  };
}

/** A follow-up written for the type that the job stores. */
export function follows<Stored>(
  change: (thing: Stored, value: unknown) => unknown,
): NonNullable<QuantityField['follows']> {
  return (thing, value) => change(thing as Stored, value) as Thing;
}
