/** Defaults that a job file may override: support stiffness bounds and the roving load. */
import type { Piece, PieceUse } from './piece';
import type { StiffnessBounds, Support } from './support';

/**
 * Stiffness bounds by support, low and high. Lines in lbf/in per inch of line, points in lbf/in, areas in lbf/in
 * per in2. Derived from E A / L of the usual sections, rounded; no source beyond that.
 */
export const STIFFNESS = {
  studWall: { low: 2_000, high: 20_000 },
  masonryWall: { low: 20_000, high: 200_000 },
  cabinetSide: { low: 1_000, high: 20_000 },
  cabinetRail: { low: 200, high: 1_000 },
  ledger: { low: 2_000, high: 20_000 },
  leg: { low: 5_000, high: 100_000 },
  bed: { low: 5_000, high: 100_000 },
} as const satisfies Record<string, StiffnessBounds>;

/**
 * Stiffness bounds of a support: its own where the job states them, else the default of its kind.
 * Returns null for a bracket, whose stiffness follows from its own arm and fixing.
 */
export function stiffnessOf(support: Support): StiffnessBounds | null {
  if (support.stiffness !== null) return support.stiffness;
  switch (support.kind) {
    case 'cabinet':
      return STIFFNESS.cabinetSide;
    case 'wall':
      return support.build === 'stud' ? STIFFNESS.studWall : STIFFNESS.masonryWall;
    case 'ledger':
      return STIFFNESS.ledger;
    case 'pier':
    case 'full-bed':
      return STIFFNESS.bed;
    case 'leg':
      return STIFFNESS.leg;
    case 'bracket':
      return null;
  }
}

export interface RovingPatch {
  readonly setting: 'leaning' | 'sitting' | 'climbing' | 'own';
  readonly forceLbf: number;
  readonly widthIn: number;
  readonly depthIn: number;
  readonly source: string;
}

/** The roving load's settings: one person at the worst place. */
export const ROVING: { readonly [K in 'leaning' | 'sitting' | 'climbing']: RovingPatch } = {
  leaning: {
    setting: 'leaning',
    forceLbf: 200,
    widthIn: 4,
    depthIn: 4,
    source: 'ASCE 7 4.5 (magnitude of a guard load); footprint common practice, no source',
  },
  sitting: {
    setting: 'sitting',
    forceLbf: 250,
    widthIn: 8,
    depthIn: 8,
    source: 'ADA 2010 Standards 903.6 (magnitude); footprint common practice, no source',
  },
  climbing: {
    setting: 'climbing',
    forceLbf: 300,
    widthIn: 2,
    depthIn: 2,
    source: 'IRC Table R301.5 (stair tread)',
  },
};

const DEFAULT_ROVING: { readonly [K in PieceUse]: 'leaning' | 'sitting' } = {
  counter: 'leaning',
  'bar-ledge': 'sitting',
  'foot-ledge': 'leaning',
  bench: 'sitting',
  hearth: 'sitting',
  cap: 'leaning',
  other: 'leaning',
};

/** The roving load of a piece: as stated, else the default of its use; null where it is set to none. */
export function rovingOf(piece: Piece): RovingPatch | null {
  const stated = piece.loads.roving;
  if (stated === null) return ROVING[DEFAULT_ROVING[piece.use]];
  switch (stated.setting) {
    case 'none':
      return null;
    case 'own':
      return {
        setting: 'own',
        forceLbf: stated.forceLbf,
        widthIn: stated.widthIn,
        depthIn: stated.depthIn,
        source: stated.source === '' ? 'as entered' : stated.source,
      };
    case 'leaning':
    case 'sitting':
    case 'climbing':
      return ROVING[stated.setting];
  }
}

/** Strength of hand-mixed concrete that nobody has tested, psi. Common practice, no source. */
export const UNTESTED_STRENGTH_PSI = 3000;
