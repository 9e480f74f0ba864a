/** A leg under load: how slender it is, when it buckles, and what it may carry. */
import { formula, type Line } from '../workings';
import type { Symbols } from './symbols';
import type { TimberMember } from './timber-member';

/** Largest le / d of a finished column, and while work is under way. NDS 2018 3.7.1.4. */
export const SLENDERNESS_LIMIT = 50;
export const CONSTRUCTION_SLENDERNESS_LIMIT = 75;

/** Slenderness of a leg about one axis (a ratio). le: length between braces, d: side of the section in the direction it would bow, in. NDS 2018 3.7.1.3. */
export const slenderness = formula<Symbols<'le' | 'd'>>({
  symbol: 'sl',
  label: 'slenderness of the leg',
  formula: 'le / d',
  units: { le: 'in', d: 'in' },
  unit: '',
  source: 'NDS 2018 3.7.1.3, ends pinned (Ke 1)',
  compute: ({ le, d }) => le / d,
});

/** Stress at which a leg buckles, psi. Emina: adjusted Emin, psi; le, d: in. NDS 2018 3.7.1.5. */
export const bucklingStress = formula<Symbols<'Emina' | 'le' | 'd'>>({
  symbol: 'FcE',
  label: 'stress at which the leg buckles',
  formula: '0.822 * Emina / (le / d)^2',
  units: { Emina: 'psi', le: 'in', d: 'in' },
  unit: 'psi',
  source: 'NDS 2018 3.7.1.5',
  compute: ({ Emina, le, d }) => (0.822 * Emina) / (le / d) ** 2,
});

/** Column stability factor (a ratio). FcE: buckling, Fcs: crushing stress, psi; c: 0.8 for sawn lumber. NDS 2018 3.7.1.5. */
export const columnStability = formula<Symbols<'FcE' | 'Fcs' | 'c'>>({
  symbol: 'Cp',
  label: 'column stability factor',
  formula: '(1 + FcE / Fcs) / (2 * c) - sqrt(((1 + FcE / Fcs) / (2 * c))^2 - FcE / Fcs / c)',
  units: { FcE: 'psi', Fcs: 'psi', c: '' },
  unit: '',
  source: 'NDS 2018 3.7.1.5',
  compute: ({ FcE, Fcs, c }) => {
    const half = (1 + FcE / Fcs) / (2 * c);
    return half - Math.sqrt(half ** 2 - FcE / Fcs / c);
  },
});

/** Load that a leg may carry, lbf. Fcs: psi; Cp: ratio; A: in2. NDS 2018 3.6.3. */
export const columnLoad = formula<Symbols<'Fcs' | 'Cp' | 'A'>>({
  symbol: 'Pa',
  label: 'load that the leg may carry',
  formula: 'Fcs * Cp * A',
  units: { Fcs: 'psi', Cp: '', A: 'in2' },
  unit: 'lbf',
  source: 'NDS 2018 3.6.3, 3.7.1',
  compute: ({ Fcs, Cp, A }) => Fcs * Cp * A,
});

/** c of sawn lumber in the column formula. NDS 2018 3.7.1.5. */
const SAWN_LUMBER_C = 0.8;

export interface ColumnInput {
  readonly member: TimberMember;
  /** Length between braces that stop it bowing the thin way, in. */
  readonly thinWayIn: number;
  /** Length between braces that stop it bowing the wide way, in. */
  readonly wideWayIn: number;
  readonly isDuringConstruction: boolean;
}

/** What a leg may carry, or why it may carry nothing. */
export type ColumnCapacity =
  | {
      readonly ok: true;
      readonly capacityLbf: number;
      /** The larger le / d. */
      readonly slendernessRatio: number;
      readonly bowsThinWay: boolean;
      readonly lines: readonly Line[];
    }
  | {
      readonly ok: false;
      readonly code: 'too-slender';
      readonly slendernessRatio: number;
      readonly limitRatio: number;
      readonly lines: readonly Line[];
    };

/**
 * Load that a leg with pinned ends may carry along its length, lbf, or that it is too slender: le / d over 50, or over 75 while
 * work is under way. Buckling is looked at both ways. The plate or sole it bears on is a matter for `bearingCapacity`.
 * NDS 2018 3.6.3, 3.7.1.
 */
export function columnCapacity(input: ColumnInput): ColumnCapacity {
  const { member, thinWayIn, wideWayIn } = input;
  const thinIn = Math.min(member.section.breadthIn, member.section.depthIn);
  const wideIn = Math.max(member.section.breadthIn, member.section.depthIn);
  const bowsThinWay = thinWayIn / thinIn >= wideWayIn / wideIn;
  const [le, d] = bowsThinWay ? [thinWayIn, thinIn] : [wideWayIn, wideIn];
  const slender = slenderness({ le, d });
  const limitRatio = input.isDuringConstruction ? CONSTRUCTION_SLENDERNESS_LIMIT : SLENDERNESS_LIMIT;
  if (slender.value > limitRatio) {
    return {
      ok: false,
      code: 'too-slender',
      slendernessRatio: slender.value,
      limitRatio,
      lines: [slender.line],
    };
  }
  const buckling = bucklingStress({ Emina: member.modulusMinPsi, le, d });
  const stability = columnStability({ FcE: buckling.value, Fcs: member.crushingPsi, c: SAWN_LUMBER_C });
  const load = columnLoad({ Fcs: member.crushingPsi, Cp: stability.value, A: member.section.areaIn2 });
  return {
    ok: true,
    capacityLbf: load.value,
    slendernessRatio: slender.value,
    bowsThinWay,
    lines: [
      ...member.lines.crushing,
      ...member.lines.buckling,
      slender.line,
      buckling.line,
      stability.line,
      load.line,
    ],
  };
}
