/** Reference design values of the lumber that a builder finds. */

/** Spruce-pine-fir, or Douglas fir-larch, both No. 2. */
export type Species = 'spf' | 'df-l';

/** Reference design values before any factor, by the letters of NDS 2018 Supplement Table 4A. */
export interface ReferenceValues {
  readonly words: string;
  /** Fb */
  readonly bendingPsi: number;
  /** Fv, along the grain */
  readonly shearPsi: number;
  /** Fc-perp, across the grain */
  readonly bearingPsi: number;
  /** Fc, along the grain */
  readonly compressionPsi: number;
  /** E */
  readonly modulusPsi: number;
  /** Emin, for buckling */
  readonly modulusMinPsi: number;
  /** G, oven-dry specific gravity */
  readonly gravity: number;
}

/** No. 2 grade, 2 to 4 in thick, 2 in and wider. NDS 2018 Supplement Table 4A, from memory. */
export const SPECIES: { readonly [K in Species]: ReferenceValues } = {
  spf: {
    words: 'spruce-pine-fir No. 2',
    bendingPsi: 875,
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
    shearPsi: 180,
    bearingPsi: 625,
    compressionPsi: 1350,
    modulusPsi: 1_600_000,
    modulusMinPsi: 580_000,
    gravity: 0.5,
  },
};
