/** How lengths stand in a field: as a tape shows them where a tape can, else in figures that lose nothing. */
import type { UnitSystem } from '../../../src-core/units';
import { MM_PER_IN, parseLength, printExactLength } from '../../../src-core/units';
import type { Read, Writing } from './typed-entry';

export interface LengthLimits {
  readonly system: UnitSystem;
  readonly minIn?: number | undefined;
  readonly maxIn?: number | undefined;
}

const STEP_IN = { imperial: 1 / 8, metric: 1 / MM_PER_IN } as const;

/** Lengths that must be there. */
export function lengthWriting(limits: LengthLimits): Writing<number> {
  return {
    print: (valueIn) => printExactLength(valueIn, limits),
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
  if (minIn !== undefined && valueIn < minIn) return `At least ${printExactLength(minIn, { system })}.`;
  if (maxIn !== undefined && valueIn > maxIn) return `At most ${printExactLength(maxIn, { system })}.`;
  return null;
}

/** Keeps a run of steps from gathering the dust of binary fractions. */
function tidy(valueIn: number): number {
  return Math.round(valueIn * 1e9) / 1e9;
}
