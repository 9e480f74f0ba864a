/** What the form of the quick check asks and how one answer follows from another. */
import type { QuickFields } from '../../src-core/starters';
import { QUICK_BEARINGS, QUICK_DEFAULTS, QUICK_HELD, quickCheckJob } from '../../src-core/starters';
import type { UnitSystem } from '../../src-core/units';

export type ChoiceName = 'kind' | 'bearing' | 'steel' | 'held';
export type SizeName = 'lengthIn' | 'depthIn' | 'thicknessIn' | 'overhangIn';

export interface Choice<Id extends string> {
  readonly value: Id;
  readonly words: string;
}

const WORDS: { readonly [N in ChoiceName]: { readonly [Id in QuickFields[N]]: string } } = {
  kind: {
    'bar-ledge': 'A bar ledge',
    counter: 'A counter',
    hearth: 'A hearth',
    bench: 'A bench',
    cap: 'A pier cap',
  },
  bearing: {
    'stud-wall': 'A stud wall',
    'block-wall': 'A block wall',
    cabinets: 'Base cabinets',
    piers: 'Block piers',
  },
  steel: { none: 'None', 'light-mesh': 'Light mesh', bars: '#3 bars both ways' },
  held: { loose: 'No, it lies loose', tied: 'Yes, tied down' },
};

/** Answers that a question leaves open beside the others, in words, the usual one first. */
export function choicesOf<N extends ChoiceName>(name: N, fields: QuickFields): Choice<QuickFields[N]>[] {
  const words: Readonly<Record<string, string>> = WORDS[name];
  return openAnswers(name, fields).map((id) => ({ value: id as QuickFields[N], words: words[id]! }));
}

function openAnswers(name: ChoiceName, { kind, bearing }: QuickFields): readonly string[] {
  if (name === 'bearing') return QUICK_BEARINGS[kind];
  if (name === 'held') return QUICK_HELD[bearing];
  return Object.keys(WORDS[name]);
}

/**
 * The answers with one choice made. Another kind of piece brings its usual sizes in place of those that were left at the usual;
 * what does not go with the choice falls back to the first answer that does.
 */
export function withChoice<N extends ChoiceName>(
  fields: QuickFields,
  name: N,
  chosen: QuickFields[N],
): QuickFields {
  const next =
    name === 'kind' ? ofKind(fields, chosen as QuickFields['kind']) : { ...fields, [name]: chosen };
  const bearing = keepOpen(next.bearing, QUICK_BEARINGS[next.kind]);
  return { ...next, bearing, held: keepOpen(next.held, QUICK_HELD[bearing]) };
}

function ofKind(fields: QuickFields, kind: QuickFields['kind']): QuickFields {
  const usual = QUICK_DEFAULTS[fields.kind];
  const names = Object.keys(usual) as (keyof QuickFields)[];
  const own = names.filter((name) => fields[name] !== usual[name]).map((name) => [name, fields[name]]);
  return { ...QUICK_DEFAULTS[kind], ...Object.fromEntries(own), kind };
}

function keepOpen<Id extends string>(chosen: Id, open: readonly Id[]): Id {
  return open.includes(chosen) ? chosen : open[0]!;
}

export type SizeTaken =
  | { readonly ok: true; readonly fields: QuickFields }
  | { readonly ok: false; readonly sentence: string };

/**
 * The answers with another size, or why that size cannot be. A size that is sound but leaves another field wrong is taken: the
 * other is then the one to mend.
 */
export function withSize(
  fields: QuickFields,
  name: SizeName,
  valueIn: number,
  system: UnitSystem,
): SizeTaken {
  const next = { ...fields, [name]: valueIn };
  const made = quickCheckJob(next, system);
  const own = made.ok ? undefined : made.problems.find(({ field }) => field === name);
  return own === undefined ? { ok: true, fields: next } : { ok: false, sentence: own.sentence };
}
