/** Walks the job's schema and the field descriptions alike, so that the two can be compared place by place. */
import type { z } from 'zod';
import type { Choice, Field } from '../../../src-renderer/forms/specs/field';

type Schema = z.core.$ZodType;
type Def = {
  readonly type: string;
  readonly innerType?: Schema;
  readonly shape?: Readonly<Record<string, Schema>>;
  readonly element?: Schema;
  readonly options?: readonly Schema[];
  readonly discriminator?: string;
  readonly entries?: Readonly<Record<string, string>>;
  readonly values?: readonly unknown[];
};

/** A leaf of the job file. Lists are written `[]`, the kinds of a union `<kind>`. */
export interface Leaf {
  readonly place: string;
  readonly type: string;
  readonly options: readonly string[];
  readonly mayBeEmpty: boolean;
}

/** Every leaf of a schema. */
export function schemaLeaves(schema: Schema, place = '', mayBeEmpty = false): Leaf[] {
  const def = schema._zod.def as unknown as Def;
  switch (def.type) {
    case 'default':
    case 'prefault':
      return schemaLeaves(def.innerType!, place, mayBeEmpty);
    case 'nullable':
    case 'optional':
      return schemaLeaves(def.innerType!, place, true);
    case 'object':
      return Object.entries(def.shape!).flatMap(([key, inner]) => schemaLeaves(inner, join(place, key)));
    case 'array': {
      const items = schemaLeaves(def.element!, `${place}[]`);
      return items.length === 1 && items[0]!.place === `${place}[]` && isChosen(def.element!)
        ? [{ ...items[0]!, place }]
        : items;
    }
    case 'union': {
      const by = def.discriminator!;
      const kinds = def.options!.flatMap((option) => {
        const { shape } = option._zod.def as unknown as Def;
        return literals(shape![by]!).map((kind) => ({ kind, shape: shape! }));
      });
      return [
        {
          place: join(place, by),
          type: 'enum',
          options: kinds.map(({ kind }) => kind).sort(),
          mayBeEmpty,
        },
        ...kinds.flatMap(({ kind, shape }) =>
          Object.entries(shape)
            .filter(([key]) => key !== by)
            .flatMap(([key, inner]) => schemaLeaves(inner, join(`${place}<${kind}>`, key))),
        ),
      ];
    }
    case 'enum':
    case 'literal':
      return [{ place, type: 'enum', options: literals(schema).sort(), mayBeEmpty }];
    default:
      return [{ place, type: def.type, options: [], mayBeEmpty }];
  }
}

/** Lists of choices or of ids are one field, ticked; other lists are edited entry by entry. */
function isChosen(element: Schema): boolean {
  const { type } = element._zod.def as unknown as Def;
  return type === 'enum' || type === 'string';
}

function literals(schema: Schema): string[] {
  const def = schema._zod.def as unknown as Def;
  return def.type === 'enum' ? Object.values(def.entries!) : def.values!.map(String);
}

/** Every leaf that a form reaches, with what the form makes of it. */
export function fieldLeaves(fields: readonly Field[], place = ''): (Leaf & { readonly field: Field })[] {
  return fields.flatMap((field) => leavesOf(field, place));
}

function leavesOf(field: Field, place: string): (Leaf & { readonly field: Field })[] {
  if (field.kind === 'pick') return [];
  if (field.kind === 'group') return fieldLeaves(field.fields, place);
  const at = field.at === '' ? place : join(place, field.at);
  const leaf = (type: string, more: Partial<Leaf> = {}) => ({
    place: at,
    type,
    options: [],
    mayBeEmpty: 'emptyWords' in field && field.emptyWords !== undefined,
    field,
    ...more,
  });
  switch (field.kind) {
    case 'quantity':
      return [leaf('number')];
    case 'choice':
      return [leaf('enum', { options: valuesOf(field.choices) })];
    case 'yesNo':
      return [leaf('boolean')];
    case 'name':
    case 'note':
    case 'date':
    case 'reference':
      return [leaf('string')];
    case 'many':
      return [
        typeof field.choices === 'string'
          ? leaf('string')
          : leaf('enum', { options: valuesOf(field.choices) }),
      ];
    case 'point':
      return [leaf('number', { place: join(at, 'xIn') }), leaf('number', { place: join(at, 'yIn') })];
    case 'bounds':
      return ['low', 'high'].map((end) => leaf('number', { place: join(at, end), mayBeEmpty: false }));
    case 'part':
      return fieldLeaves(field.fields, at);
    case 'list':
      return fieldLeaves(field.item, `${at}[]`);
    case 'parts':
      return fieldLeaves(field.fields, `${at}[]`);
    case 'kinds':
      return [
        leaf('enum', {
          place: join(at, field.by),
          options: valuesOf(field.kinds),
          mayBeEmpty: field.noneWords !== undefined,
        }),
        ...field.kinds.flatMap(({ value, fields }) => fieldLeaves(fields, `${at}<${value}>`)),
      ];
  }
}

function valuesOf(choices: readonly Choice[]): string[] {
  return choices.map(({ value }) => value).sort();
}

function join(place: string, key: string): string {
  return place === '' ? key : `${place}.${key}`;
}
