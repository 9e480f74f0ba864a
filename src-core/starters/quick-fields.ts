/** The eight questions of a quick check, and which answers go together. */

export type QuickKind = 'bar-ledge' | 'counter' | 'hearth' | 'bench' | 'cap';
export type QuickBearing = 'stud-wall' | 'block-wall' | 'cabinets' | 'piers';
export type QuickSteel = 'none' | 'light-mesh' | 'bars';
export type QuickHeld = 'loose' | 'tied';

export interface QuickFields {
  readonly kind: QuickKind;
  /** From left to right. */
  readonly lengthIn: number;
  /** From front to back. */
  readonly depthIn: number;
  readonly thicknessIn: number;
  /** Past what carries it: see `QUICK_OVERHANG`. */
  readonly overhangIn: number;
  readonly bearing: QuickBearing;
  readonly steel: QuickSteel;
  readonly held: QuickHeld;
}

/** What each kind of piece can be asked about on; the first is the usual one. */
export const QUICK_BEARINGS: { readonly [K in QuickKind]: readonly QuickBearing[] } = {
  'bar-ledge': ['stud-wall', 'block-wall'],
  counter: ['cabinets', 'block-wall', 'piers'],
  hearth: ['piers', 'block-wall'],
  bench: ['piers', 'block-wall'],
  cap: ['piers'],
};

/** How a slab can be held on each bearing: base cabinets are too light to tie a slab down to. */
export const QUICK_HELD: { readonly [B in QuickBearing]: readonly QuickHeld[] } = {
  'stud-wall': ['loose', 'tied'],
  'block-wall': ['loose', 'tied'],
  cabinets: ['loose'],
  piers: ['loose', 'tied'],
};

/** Where the overhang is measured, as words that follow "Overhang"; a cap passes its one pier all round. */
export const QUICK_OVERHANG: { readonly [B in QuickBearing]: string } = {
  'stud-wall': 'past the wall at the front',
  'block-wall': 'past the wall at the front',
  cabinets: 'past the cabinets at the front',
  piers: 'past the piers at either end',
};

/** A usual piece of each kind, to begin from. Sizes common practice, no source. */
export const QUICK_DEFAULTS: { readonly [K in QuickKind]: QuickFields } = {
  'bar-ledge': {
    kind: 'bar-ledge',
    lengthIn: 96,
    depthIn: 17.5,
    thicknessIn: 1.5,
    overhangIn: 11,
    bearing: 'stud-wall',
    steel: 'light-mesh',
    held: 'loose',
  },
  counter: {
    kind: 'counter',
    lengthIn: 96,
    depthIn: 25.5,
    thicknessIn: 1.5,
    overhangIn: 1.5,
    bearing: 'cabinets',
    steel: 'light-mesh',
    held: 'loose',
  },
  hearth: {
    kind: 'hearth',
    lengthIn: 46,
    depthIn: 20,
    thicknessIn: 2,
    overhangIn: 2,
    bearing: 'piers',
    steel: 'light-mesh',
    held: 'loose',
  },
  bench: {
    kind: 'bench',
    lengthIn: 54,
    depthIn: 16,
    thicknessIn: 2.5,
    overhangIn: 5,
    bearing: 'piers',
    steel: 'light-mesh',
    held: 'loose',
  },
  cap: {
    kind: 'cap',
    lengthIn: 20,
    depthIn: 20,
    thicknessIn: 2,
    overhangIn: 2,
    bearing: 'piers',
    steel: 'none',
    held: 'loose',
  },
};

/** The first question that a builder brings: a bar ledge 11 in out past a 5-1/2 in wall, 1-1/2 in thick, loose on light mesh. */
export const DEFAULT_QUICK_FIELDS: QuickFields = QUICK_DEFAULTS['bar-ledge'];
