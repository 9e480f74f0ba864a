/** Reference values of the timber in a knee brace and behind a bracket. */
import type { ArmSection } from '../job';
import { formula } from '../workings';
import type { Symbols } from './symbols';

export type BraceSpecies = Extract<ArmSection, { kind: 'knee-brace' }>['species'];

export interface BraceTimber {
  readonly words: string;
  readonly bendingPsi: number;
  readonly tensionPsi: number;
  readonly shearPsi: number;
  readonly bearingPsi: number;
  readonly compressionPsi: number;
  readonly modulusPsi: number;
  readonly modulusMinPsi: number;
  readonly gravity: number;
}

/** No. 2 grade, 2 to 4 in thick. NDS 2018 Supplement Table 4A, from memory. */
export const BRACE_TIMBER: { readonly [K in BraceSpecies]: BraceTimber } = {
  spf: {
    words: 'spruce-pine-fir No. 2',
    bendingPsi: 875,
    tensionPsi: 450,
    shearPsi: 135,
    bearingPsi: 425,
    compressionPsi: 1150,
    modulusPsi: 1_400_000,
    modulusMinPsi: 510_000,
    gravity: 0.42,
  },
  'df-l': {
    words: 'Douglas fir-larch No. 2',
    bendingPsi: 900,
    tensionPsi: 575,
    shearPsi: 180,
    bearingPsi: 625,
    compressionPsi: 1350,
    modulusPsi: 1_600_000,
    modulusMinPsi: 580_000,
    gravity: 0.5,
  },
};

/** Wet service factors, over 19 % moisture. NDS 2018 Supplement Table 4A and NDS 2018 Table 11.3.3, from memory. */
export const WET_FACTOR = {
  bending: 0.85,
  tension: 1,
  shear: 0.97,
  bearing: 0.67,
  compression: 0.8,
  modulus: 0.9,
  fastener: 0.7,
} as const;

export interface SizeFactor {
  readonly bending: number;
  readonly tension: number;
  readonly compression: number;
}

/** Size factor by the wider side of the section, in. NDS 2018 Supplement Table 4A, 2 to 4 in thick, from memory. */
export function sizeFactor(widerIn: number): SizeFactor {
  if (widerIn <= 3.5) return { bending: 1.5, tension: 1.5, compression: 1.15 };
  if (widerIn <= 5.5) return { bending: 1.3, tension: 1.3, compression: 1.1 };
  if (widerIn <= 7.25) return { bending: 1.2, tension: 1.2, compression: 1.05 };
  if (widerIn <= 9.25) return { bending: 1.1, tension: 1.1, compression: 1 };
  return { bending: 0.9, tension: 0.9, compression: 0.9 };
}

/**
 * Bearing value across the grain of a stud by its specific gravity, psi: that of the species at or below it.
 * NDS 2018 Supplement Table 4A, from memory.
 */
export function studBearingPsi(gravity: number): number {
  if (gravity >= BRACE_TIMBER['df-l'].gravity) return BRACE_TIMBER['df-l'].bearingPsi;
  if (gravity >= BRACE_TIMBER.spf.gravity) return BRACE_TIMBER.spf.bearingPsi;
  return 335;
}

/** Weight of a timber member, lb/ft. G: specific gravity; mc: moisture, %; A: area, in2. NDS 2018 Supplement 3.1.3. */
export const timberWeight = formula<Symbols<'G' | 'mc' | 'A'>>({
  symbol: 'w',
  label: 'weight of the timber, a foot',
  formula: '62.4 * G / (1 + 0.009 * G * mc) * (1 + mc / 100) * A / 144',
  units: { G: '', mc: '%', A: 'in2' },
  unit: 'lb/ft',
  source: 'NDS 2018 Supplement 3.1.3',
  fromMemory: true,
  compute: ({ G, mc, A }) => (((62.4 * G) / (1 + 0.009 * G * mc)) * (1 + mc / 100) * A) / 144,
});
