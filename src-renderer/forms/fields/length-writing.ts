/** How lengths stand in a field: as a tape shows them where a tape can, else in figures that lose nothing. */
import type { UnitSystem } from '../../../src-core/units';
import { MM_PER_IN, parseLength, printLength } from '../../../src-core/units';
import type { Read, Writing } from './typed-entry';

export interface LengthLimits {
  readonly system: UnitSystem;
  readonly minIn?: number | undefined;
  readonly maxIn?: number | undefined;
}

/** Finest mark that is still written as a fraction. */
const TAPE_PARTS = 64;
const ROUNDING = 1e-6;
const STEP_IN = { imperial: 1 / 8, metric: 1 / MM_PER_IN } as const;

/** Prints a length for editing: 25-1/2 in, .08 in where no mark of the tape fits, 647.7 mm. */
export function printFieldLength(valueIn: number, system: UnitSystem): string {
  if (system === 'metric') return `${trimmed(valueIn * MM_PER_IN, 2)} mm`;
  const marks = valueIn * TAPE_PARTS;
  if (Math.abs(marks - Math.round(marks)) < ROUNDING * TAPE_PARTS) {
    return printLength(valueIn, { system, roundToIn: 1 / TAPE_PARTS });
  }
  return `${trimmed(valueIn, 4)} in`;
}

/** Lengths that must be there. */
export function lengthWriting(limits: LengthLimits): Writing<number> {
  return {
    print: (valueIn) => printFieldLength(valueIn, limits.system),
    read: (text) => readLength(text, limits),
    step: (valueIn, direction) => {
      const nextIn = tidy(valueIn + direction * STEP_IN[limits.system]);
      return limitSentence(nextIn, limits) === null ? nextIn : null;
    },
  };
}

function readLength(text: string, limits: LengthLimits): Read<number> {
  const read = parseLength(text, limits.system);
  if (!read.ok) return { ok: false, sentence: read.problem.sentence };
  const sentence = limitSentence(read.valueIn, limits);
  return sentence === null ? { ok: true, value: read.valueIn } : { ok: false, sentence };
}

function limitSentence(valueIn: number, { system, minIn, maxIn }: LengthLimits): string | null {
  if (minIn !== undefined && valueIn < minIn) return `At least ${printFieldLength(minIn, system)}.`;
  if (maxIn !== undefined && valueIn > maxIn) return `At most ${printFieldLength(maxIn, system)}.`;
  return null;
}

/** Keeps a run of steps from gathering the dust of binary fractions. */
function tidy(valueIn: number): number {
  return Math.round(valueIn * 1e9) / 1e9;
}

function trimmed(value: number, decimals: number): string {
  const text = value.toFixed(decimals).replace(/\.?0+$/, '');
  return text === '-0' ? '0' : text;
}
