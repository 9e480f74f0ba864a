/** Figures that the units of src-core do not read: a number, with or without the unit's own name behind it. */
import type { UnitSystem } from '../../../src-core/units';
import { parseLength } from '../../../src-core/units';
import type { Read, Writing } from './typed-entry';

export interface PlainUnit {
  /** As printed behind the number, or ''. */
  readonly name: string;
  /** Number in this unit for one of the core's. */
  readonly perCore: number;
}

export interface PlainQuantity {
  readonly units: { readonly [S in UnitSystem]: PlainUnit };
  /** Completes "Write ...". */
  readonly example: { readonly [S in UnitSystem]: string };
  /** An arrow key, in the unit shown; none where left out. */
  readonly step?: number;
  readonly isWhole?: boolean;
}

/** Digits shown, and the most of them behind the point. */
const DIGITS = 5;
const DECIMALS = 4;
/** Finer than any figure of a job; keeps a run of steps from gathering binary fractions. */
const DUST = 1e9;

/** How such a figure is written in a system. */
export function plainWriting(quantity: PlainQuantity, system: UnitSystem): Writing<number> {
  const unit = quantity.units[system];
  const { step } = quantity;
  return {
    print: (value) => printPlain(value * unit.perCore, unit.name),
    read: (text) => readPlain(text, quantity, system),
    ...(step !== undefined && {
      step: (value: number, direction: 1 | -1) =>
        Math.round(((value * unit.perCore + direction * step) / unit.perCore) * DUST) / DUST,
    }),
  };
}

/** A unit that is the same in both systems. */
export function sameInBoth<T>(value: T): { readonly [S in UnitSystem]: T } {
  return { imperial: value, metric: value };
}

function printPlain(value: number, name: string): string {
  const size = value === 0 ? 0 : Math.floor(Math.log10(Math.abs(value)));
  const fixed = value.toFixed(Math.min(DECIMALS, Math.max(0, DIGITS - 1 - size)));
  const text = fixed.includes('.') ? fixed.replace(/\.?0+$/, '') : fixed;
  const figure = text === '-0' ? '0' : text;
  if (name === '') return figure;
  return name === '%' || name === '°' ? `${figure}${name === '%' ? ' ' : ''}${name}` : `${figure} ${name}`;
}

function readPlain(text: string, quantity: PlainQuantity, system: UnitSystem): Read<number> {
  const refused = { ok: false as const, sentence: `Write ${quantity.example[system]}.` };
  // a unit is recognised in either system; a bare number is in the one that is shown
  const units = [quantity.units[system], quantity.units.imperial, quantity.units.metric];
  const unit = units.find(({ name }) => name !== '' && endsIn(text, name)) ?? quantity.units[system];
  const figure = endsIn(text, unit.name) ? text.trimEnd().slice(0, -unit.name.length || undefined) : text;
  if (/[^\d\s.,+\-*/()=]/.test(figure)) return refused;
  // The figure alone is read by the rules of any other field, so that =3*80, 1/2 and 1,500 mean the same everywhere.
  const read = parseLength(figure, 'imperial');
  if (!read.ok) return { ok: false, sentence: `Not understood. ${refused.sentence}` };
  if (quantity.isWhole === true && !Number.isInteger(read.valueIn)) {
    return { ok: false, sentence: `Only whole numbers. ${refused.sentence}` };
  }
  return { ok: true, value: read.valueIn / unit.perCore };
}

function endsIn(text: string, name: string): boolean {
  return text.trimEnd().toLowerCase().endsWith(name.toLowerCase());
}
