/** Span-rated panels: plywood or oriented strand board by the two numbers stamped on it, a foot of width at a time. */
import { formula, type Line } from '../workings';
import type { Symbols } from './symbols';
import type { Service } from './timber-member';

export type PanelId = 'span-24-16' | 'span-32-16' | 'span-40-20';

export interface PanelStock {
  /** "32/16 panel, 15/32 in". */
  readonly words: string;
  readonly thicknessIn: number;
  /** FbS, strength axis across the supports. */
  readonly bendingLbfInPerFt: number;
  /** EI, strength axis across the supports. */
  readonly stiffnessLbfIn2PerFt: number;
  /** Fs(Ib/Q), rolling shear; the least of the common make-ups. */
  readonly shearLbfPerFt: number;
}

/**
 * Rated panels with the strength axis across the supports; usual least thickness. Panel design specification of the rated-panel
 * standard (PS 2), base values, from memory: many plywoods and boards have a fifth more bending strength.
 */
export const PANELS: { readonly [K in PanelId]: PanelStock } = {
  'span-24-16': {
    words: '24/16 panel, 7/16 in',
    thicknessIn: 0.4375,
    bendingLbfInPerFt: 320,
    stiffnessLbfIn2PerFt: 78_000,
    shearLbfPerFt: 150,
  },
  'span-32-16': {
    words: '32/16 panel, 15/32 in',
    thicknessIn: 0.46875,
    bendingLbfInPerFt: 370,
    stiffnessLbfIn2PerFt: 115_000,
    shearLbfPerFt: 165,
  },
  'span-40-20': {
    words: '40/20 panel, 19/32 in',
    thicknessIn: 0.59375,
    bendingLbfInPerFt: 625,
    stiffnessLbfIn2PerFt: 225_000,
    shearLbfPerFt: 205,
  },
};

/** Wet service factors of a panel at 16 % moisture and more. Panel design specification, from memory. */
const WET_STRENGTH = 0.75;
const WET_STIFFNESS = 0.85;

/** Wet service factor CM on a panel's strength (a ratio). Panel design specification, from memory. */
export function wetPanelStrengthFactor(isWet: boolean): number {
  return isWet ? WET_STRENGTH : 1;
}

/** Wet service factor CM on a panel's stiffness (a ratio). Panel design specification, from memory. */
export function wetPanelStiffnessFactor(isWet: boolean): number {
  return isWet ? WET_STIFFNESS : 1;
}

const SPECIFICATION = 'panel design specification of the rated-panel standard';

/**
 * Factor Cs on the bending strength of a narrow strip of panel (a ratio): 1 from 24 in, 0.5 to 8 in, straight between.
 * x: width of the strip across the strength axis, in. Panel design specification, from memory.
 */
export const panelWidthFactor = formula<Symbols<'x'>>({
  symbol: 'Cs',
  label: 'factor for the width of the panel strip',
  formula: 'min(1, max(0.5, (8 + x) / 32))',
  units: { x: 'in' },
  unit: '',
  source: SPECIFICATION,
  fromMemory: true,
  compute: ({ x }) => Math.min(1, Math.max(0.5, (8 + x) / 32)),
});

/** Bending strength of a foot of panel, lbf-in/ft. FbS: base, lbf-in/ft; CD, CM, Cs (ratios). Panel design specification. */
export const adjustedPanelBending = formula<Symbols<'FbS' | 'CD' | 'CM' | 'Cs'>>({
  symbol: 'FbSa',
  label: 'moment that a foot of the panel may take',
  formula: 'FbS * CD * CM * Cs',
  units: { FbS: 'lbf in/ft', CD: '', CM: '', Cs: '' },
  unit: 'lbf in/ft',
  source: SPECIFICATION,
  fromMemory: true,
  compute: ({ FbS, CD, CM, Cs }) => FbS * CD * CM * Cs,
});

/** Rolling shear of a foot of panel, lbf/ft. FsIbQ: base, lbf/ft; CD, CM (ratios). Panel design specification. */
export const adjustedPanelShear = formula<Symbols<'FsIbQ' | 'CD' | 'CM'>>({
  symbol: 'FsIbQa',
  label: 'shear that a foot of the panel may take',
  formula: 'FsIbQ * CD * CM',
  units: { FsIbQ: 'lbf/ft', CD: '', CM: '' },
  unit: 'lbf/ft',
  source: SPECIFICATION,
  fromMemory: true,
  compute: ({ FsIbQ, CD, CM }) => FsIbQ * CD * CM,
});

/** Stiffness of a foot of panel, lbf-in2/ft. EI: base, lbf-in2/ft; CM (a ratio). Panel design specification. */
export const adjustedPanelStiffness = formula<Symbols<'EI' | 'CM'>>({
  symbol: 'EIa',
  label: 'stiffness of a foot of the panel',
  formula: 'EI * CM',
  units: { EI: 'lbf in2/ft', CM: '' },
  unit: 'lbf in2/ft',
  source: SPECIFICATION,
  fromMemory: true,
  compute: ({ EI, CM }) => EI * CM,
});

export interface PanelInput {
  readonly panel: PanelId;
  readonly service: Service;
  /** Width of the strip along the joists, in. */
  readonly stripWidthIn: number;
}

/** A panel with its factors on, a foot of width. */
export interface PanelValues {
  readonly words: string;
  readonly bendingLbfInPerFt: number;
  readonly shearLbfPerFt: number;
  readonly stiffnessLbfIn2PerFt: number;
  readonly lines: {
    readonly bending: readonly Line[];
    readonly shear: readonly Line[];
    readonly stiffness: readonly Line[];
  };
}

/** What a foot of panel may take, strength axis across the joists: bending lbf-in/ft, shear lbf/ft, stiffness lbf-in2/ft. */
export function panelValues({ panel, service, stripWidthIn }: PanelInput): PanelValues {
  const stock = PANELS[panel];
  const CD = service.durationFactor;
  const CM = wetPanelStrengthFactor(service.isWet);
  const width = panelWidthFactor({ x: stripWidthIn });
  const bending = adjustedPanelBending({ FbS: stock.bendingLbfInPerFt, CD, CM, Cs: width.value });
  const shear = adjustedPanelShear({ FsIbQ: stock.shearLbfPerFt, CD, CM });
  const stiffness = adjustedPanelStiffness({
    EI: stock.stiffnessLbfIn2PerFt,
    CM: wetPanelStiffnessFactor(service.isWet),
  });
  return {
    words: stock.words,
    bendingLbfInPerFt: bending.value,
    shearLbfPerFt: shear.value,
    stiffnessLbfIn2PerFt: stiffness.value,
    lines: { bending: [width.line, bending.line], shear: [shear.line], stiffness: [stiffness.line] },
  };
}
