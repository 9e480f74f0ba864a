/**
 * The six ways in which a fastener in single shear yields. NDS 2018 Table 12.3.1A.
 * Letters: D diameter, in; lm, ls bearing length in the main and side member, in; Fem, Fes their bearing strengths, psi;
 * Fyb bending yield strength of the fastener, psi; Re = Fem/Fes; Rt = lm/ls; Rd reduction term.
 */
import { formula, type Line, type Worked } from '../workings';
import type { Symbols } from './symbols';

const SOURCE = 'NDS 2018 Table 12.3.1A';

/** Reduction for the direction to the grain (a ratio). theta: angle between load and grain, degrees. NDS 2018 Table 12.3.1B. */
export const grainReduction = formula<Symbols<'theta'>>({
  symbol: 'Kt',
  label: 'reduction for the angle to the grain',
  formula: '1 + 0.25 * theta / 90',
  units: { theta: 'deg' },
  unit: '',
  source: 'NDS 2018 Table 12.3.1B',
  compute: ({ theta }) => 1 + (0.25 * theta) / 90,
});

/** Reduction term of a thin fastener (a ratio). D: diameter, root diameter where threaded, in, under 1/4. NDS 2018 Table 12.3.1B. */
export const thinDowelReduction = formula<Symbols<'D'>>({
  symbol: 'KD',
  label: 'reduction term of a thin fastener',
  formula: 'max(2.2, 10 * D + 0.5)',
  units: { D: 'in' },
  unit: '',
  source: 'NDS 2018 Table 12.3.1B',
  compute: ({ D }) => Math.max(2.2, 10 * D + 0.5),
});

/** Crushing of the main member, lbf. Mode Im. */
export const modeMainCrush = formula<Symbols<'D' | 'lm' | 'Fem' | 'Rd'>>({
  symbol: 'Z_Im',
  label: 'shear at which the timber crushes (mode Im)',
  formula: 'D * lm * Fem / Rd',
  units: { D: 'in', lm: 'in', Fem: 'psi', Rd: '' },
  unit: 'lbf',
  source: `${SOURCE}, mode Im`,
  compute: ({ D, lm, Fem, Rd }) => (D * lm * Fem) / Rd,
});

/** Crushing of the side member, lbf. Mode Is. */
export const modeSideCrush = formula<Symbols<'D' | 'ls' | 'Fes' | 'Rd'>>({
  symbol: 'Z_Is',
  label: 'shear at which the side plate crushes (mode Is)',
  formula: 'D * ls * Fes / Rd',
  units: { D: 'in', ls: 'in', Fes: 'psi', Rd: '' },
  unit: 'lbf',
  source: `${SOURCE}, mode Is`,
  compute: ({ D, ls, Fes, Rd }) => (D * ls * Fes) / Rd,
});

/** Tilting of the fastener as a stiff rod, lbf. Mode II. */
export const modeTilt = formula<Symbols<'D' | 'ls' | 'Fes' | 'Re' | 'Rt' | 'Rd'>>({
  symbol: 'Z_II',
  label: 'shear at which the fastener tilts (mode II)',
  formula:
    '(sqrt(Re + 2 * Re^2 * (1 + Rt + Rt^2) + Rt^2 * Re^3) - Re * (1 + Rt)) / (1 + Re) * D * ls * Fes / Rd',
  units: { D: 'in', ls: 'in', Fes: 'psi', Re: '', Rt: '', Rd: '' },
  unit: 'lbf',
  source: `${SOURCE}, mode II`,
  compute: ({ D, ls, Fes, Re, Rt, Rd }) => {
    const root = Math.sqrt(Re + 2 * Re ** 2 * (1 + Rt + Rt ** 2) + Rt ** 2 * Re ** 3);
    return (((root - Re * (1 + Rt)) / (1 + Re)) * D * ls * Fes) / Rd;
  },
});

/** One bend in the fastener, inside the main member, lbf. Mode IIIm. */
export const modeMainHinge = formula<Symbols<'D' | 'lm' | 'Fem' | 'Fyb' | 'Re' | 'Rd'>>({
  symbol: 'Z_IIIm',
  label: 'shear at which the fastener bends in the main member (mode IIIm)',
  formula:
    '(sqrt(2 * (1 + Re) + 2 * Fyb * (1 + 2 * Re) * D^2 / (3 * Fem * lm^2)) - 1) * D * lm * Fem / ((1 + 2 * Re) * Rd)',
  units: { D: 'in', lm: 'in', Fem: 'psi', Fyb: 'psi', Re: '', Rd: '' },
  unit: 'lbf',
  source: `${SOURCE}, mode IIIm`,
  compute: ({ D, lm, Fem, Fyb, Re, Rd }) => {
    const root = Math.sqrt(2 * (1 + Re) + (2 * Fyb * (1 + 2 * Re) * D ** 2) / (3 * Fem * lm ** 2));
    return ((root - 1) * D * lm * Fem) / ((1 + 2 * Re) * Rd);
  },
});

/** One bend in the fastener, at the side member, lbf. Mode IIIs. */
export const modeSideHinge = formula<Symbols<'D' | 'ls' | 'Fem' | 'Fyb' | 'Re' | 'Rd'>>({
  symbol: 'Z_IIIs',
  label: 'shear at which the fastener bends at the side plate (mode IIIs)',
  formula:
    '(sqrt(2 * (1 + Re) / Re + 2 * Fyb * (2 + Re) * D^2 / (3 * Fem * ls^2)) - 1) * D * ls * Fem / ((2 + Re) * Rd)',
  units: { D: 'in', ls: 'in', Fem: 'psi', Fyb: 'psi', Re: '', Rd: '' },
  unit: 'lbf',
  source: `${SOURCE}, mode IIIs`,
  compute: ({ D, ls, Fem, Fyb, Re, Rd }) => {
    const root = Math.sqrt((2 * (1 + Re)) / Re + (2 * Fyb * (2 + Re) * D ** 2) / (3 * Fem * ls ** 2));
    return ((root - 1) * D * ls * Fem) / ((2 + Re) * Rd);
  },
});

/** Two bends in the fastener, lbf. Mode IV. */
export const modeTwoHinges = formula<Symbols<'D' | 'Fem' | 'Fyb' | 'Re' | 'Rd'>>({
  symbol: 'Z_IV',
  label: 'shear at which the fastener bends twice (mode IV)',
  formula: 'D^2 / Rd * sqrt(2 * Fem * Fyb / (3 * (1 + Re)))',
  units: { D: 'in', Fem: 'psi', Fyb: 'psi', Re: '', Rd: '' },
  unit: 'lbf',
  source: `${SOURCE}, mode IV`,
  compute: ({ D, Fem, Fyb, Re, Rd }) => (D ** 2 / Rd) * Math.sqrt((2 * Fem * Fyb) / (3 * (1 + Re))),
});

export type YieldMode = 'Im' | 'Is' | 'II' | 'IIIm' | 'IIIs' | 'IV';

export interface SingleShearInput {
  /** Diameter in the formulas: the root diameter of a threaded fastener, the full one of a bolt or nail. */
  readonly diameterIn: number;
  /** Nominal diameter, which says whether the fastener counts as a thin one. */
  readonly nominalIn: number;
  readonly mainIn: number;
  readonly sideIn: number;
  readonly mainPsi: number;
  readonly sidePsi: number;
  readonly yieldPsi: number;
  /** Largest angle between the load and the grain of either member. */
  readonly angleDeg: number;
}

export interface SingleShear {
  /** Reference lateral value of one fastener, the least of the six modes. */
  readonly referenceLbf: number;
  readonly mode: YieldMode;
  readonly byMode: { readonly [K in YieldMode]: number };
  /** Lines of the governing mode. */
  readonly lines: readonly Line[];
}

/** Reference lateral value of one fastener in single shear, lbf. D up to 1 in. NDS 2018 12.3.1, Tables 12.3.1A and B. */
export function singleShear(input: SingleShearInput): SingleShear {
  const D = input.diameterIn;
  const lm = input.mainIn;
  const ls = input.sideIn;
  const Fem = input.mainPsi;
  const Fes = input.sidePsi;
  const Fyb = input.yieldPsi;
  const Re = Fem / Fes;
  const Rt = lm / ls;
  const term = reductionTerms(input);
  const worked: { readonly [K in YieldMode]: Worked } = {
    Im: modeMainCrush({ D, lm, Fem, Rd: term.crush }),
    Is: modeSideCrush({ D, ls, Fes, Rd: term.crush }),
    II: modeTilt({ D, ls, Fes, Re, Rt, Rd: term.tilt }),
    IIIm: modeMainHinge({ D, lm, Fem, Fyb, Re, Rd: term.hinge }),
    IIIs: modeSideHinge({ D, ls, Fem, Fyb, Re, Rd: term.hinge }),
    IV: modeTwoHinges({ D, Fem, Fyb, Re, Rd: term.hinge }),
  };
  const byMode = {
    Im: worked.Im.value,
    Is: worked.Is.value,
    II: worked.II.value,
    IIIm: worked.IIIm.value,
    IIIs: worked.IIIs.value,
    IV: worked.IV.value,
  };
  const order: readonly YieldMode[] = ['Im', 'Is', 'II', 'IIIm', 'IIIs', 'IV'];
  const mode = order.reduce((least, each) => (byMode[each] < byMode[least] ? each : least));
  return { referenceLbf: byMode[mode], mode, byMode, lines: [...term.lines, worked[mode].line] };
}

/** Rd of the three groups of modes. A screw whose root is under 1/4 in counts as thin. NDS 2018 Table 12.3.1B and its note. */
function reductionTerms(input: SingleShearInput): {
  crush: number;
  tilt: number;
  hinge: number;
  lines: Line[];
} {
  const grain = grainReduction({ theta: input.angleDeg });
  if (input.diameterIn >= 0.25) {
    return { crush: 4 * grain.value, tilt: 3.6 * grain.value, hinge: 3.2 * grain.value, lines: [grain.line] };
  }
  const thin = thinDowelReduction({ D: input.diameterIn });
  if (input.nominalIn < 0.25) {
    return { crush: thin.value, tilt: thin.value, hinge: thin.value, lines: [thin.line] };
  }
  const both = thin.value * grain.value;
  return { crush: both, tilt: both, hinge: both, lines: [thin.line, grain.line] };
}
