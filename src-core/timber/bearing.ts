/** Where one stick of lumber crosses another and presses into its side. */
import { formula, type Line } from '../workings';
import type { Symbols } from './symbols';

/** Bearings this long or longer gain nothing, and none this near an end does, in. NDS 2018 3.10.4. */
const LONG_BEARING_IN = 6;
const NEAR_END_IN = 3;

/** Bearing area factor (a ratio). lb: length of the bearing along the grain, in, under 6. NDS 2018 3.10.4. */
export const bearingAreaFactor = formula<Symbols<'lb'>>({
  symbol: 'Cb',
  label: 'bearing area factor',
  formula: '(lb + 0.375) / lb',
  units: { lb: 'in' },
  unit: '',
  source: 'NDS 2018 3.10.4',
  compute: ({ lb }) => (lb + 0.375) / lb,
});

/** Load that a bearing across the grain may take, lbf. Fcpa: psi; Cb: ratio; b: across the grain, lb: along it, in. NDS 2018 3.10.2. */
export const bearingLoad = formula<Symbols<'Fcpa' | 'Cb' | 'b' | 'lb'>>({
  symbol: 'Na',
  label: 'load that the side of the lumber may take there',
  formula: 'Fcpa * Cb * b * lb',
  units: { Fcpa: 'psi', Cb: '', b: 'in', lb: 'in' },
  unit: 'lbf',
  source: 'NDS 2018 3.10.2, 3.10.4',
  compute: ({ Fcpa, Cb, b, lb }) => Fcpa * Cb * b * lb,
});

export interface BearingInput {
  /** Adjusted value of the lumber that is pressed across its grain: `member.bearingPsi`. */
  readonly bearingPsi: number;
  /** Of the contact, across the grain of the pressed lumber. */
  readonly widthIn: number;
  /** Of the contact, along the grain of the pressed lumber. */
  readonly lengthIn: number;
  /** From the contact's nearer edge to the end of the pressed lumber. */
  readonly fromEndIn: number;
}

export interface BearingCapacity {
  readonly capacityLbf: number;
  readonly lines: readonly Line[];
}

/**
 * Load that may press into the side of a stick, lbf. The factor Cb counts for contacts under 6 in long that are at least 3 in from
 * an end. The duration of the load does not count. NDS 2018 3.10.2, 3.10.4.
 */
export function bearingCapacity(input: BearingInput): BearingCapacity {
  const { bearingPsi, widthIn, lengthIn, fromEndIn } = input;
  const gains = lengthIn < LONG_BEARING_IN && fromEndIn >= NEAR_END_IN;
  const factor = gains ? bearingAreaFactor({ lb: lengthIn }) : null;
  const load = bearingLoad({ Fcpa: bearingPsi, Cb: factor?.value ?? 1, b: widthIn, lb: lengthIn });
  return {
    capacityLbf: load.value,
    lines: factor === null ? [load.line] : [factor.line, load.line],
  };
}
