/**
 * Structural concrete corbel, as information for the engineer who designs it: never a verdict.
 * Letters: Vu, Nuc factored load and pull, lbf; av distance of the load from the face, h depth, d effective depth, b width, in;
 * fc, fy psi; mu friction (1.4 cast as one); areas in in2.
 */
import { formula, type Line } from '../workings';
import type { Symbols } from './symbols';

const SOURCE = 'ACI 318-19 16.5';

/** Largest shear of the section, lbf. fc: psi; b, d: in. ACI 318-19 16.5.2.4(a), normalweight concrete. */
export const corbelShearLimit = formula<Symbols<'fc' | 'b' | 'd'>>({
  symbol: 'Vnmax',
  label: 'largest shear of the corbel section',
  formula: 'min(0.2 * fc, 480 + 0.08 * fc, 1600) * b * d',
  units: { fc: 'psi', b: 'in', d: 'in' },
  unit: 'lbf',
  source: `${SOURCE}.2.4`,
  compute: ({ fc, b, d }) => Math.min(0.2 * fc, 480 + 0.08 * fc, 1600) * b * d,
});

/** Least pull to design for, lbf. Vu: lbf. ACI 318-19 16.5.3.5. */
export const corbelPull = formula<Symbols<'Vu'>>({
  symbol: 'Nuc',
  label: 'least pull to design for',
  formula: '0.2 * Vu',
  units: { Vu: 'lbf' },
  unit: 'lbf',
  source: `${SOURCE}.3.5`,
  compute: ({ Vu }) => 0.2 * Vu,
});

/** Factored moment at the face, lbf-in. Vu, Nuc: lbf; av, h, d: in. ACI 318-19 16.5.3.1. */
export const corbelMoment = formula<Symbols<'Vu' | 'av' | 'Nuc' | 'h' | 'd'>>({
  symbol: 'Mu',
  label: 'factored moment at the face',
  formula: 'Vu * av + Nuc * (h - d)',
  units: { Vu: 'lbf', av: 'in', Nuc: 'lbf', h: 'in', d: 'in' },
  unit: 'lbf in',
  source: `${SOURCE}.3.1`,
  compute: ({ Vu, av, Nuc, h, d }) => Vu * av + Nuc * (h - d),
});

/** Shear-friction steel, in2. Vu: lbf; fy: psi; mu: ratio. ACI 318-19 16.5.4.4, 22.9.4.2, phi 0.75. */
export const corbelFrictionSteel = formula<Symbols<'Vu' | 'fy' | 'mu'>>({
  symbol: 'Avf',
  label: 'shear-friction steel',
  formula: 'Vu / (0.75 * fy * mu)',
  units: { Vu: 'lbf', fy: 'psi', mu: '' },
  unit: 'in2',
  source: `${SOURCE}.4.4, 22.9.4.2`,
  compute: ({ Vu, fy, mu }) => Vu / (0.75 * fy * mu),
});

/** Steel for the pull, in2. Nuc: lbf; fy: psi. ACI 318-19 16.5.4.3, phi 0.75. */
export const corbelPullSteel = formula<Symbols<'Nuc' | 'fy'>>({
  symbol: 'An',
  label: 'steel for the pull',
  formula: 'Nuc / (0.75 * fy)',
  units: { Nuc: 'lbf', fy: 'psi' },
  unit: 'in2',
  source: `${SOURCE}.4.3`,
  compute: ({ Nuc, fy }) => Nuc / (0.75 * fy),
});

/** Steel for the moment, in2, positive root of Mu = 0.75 Af fy (d - Af fy/(1.7 fc b)). Mu: lbf-in; fc, fy: psi; b, d: in. ACI 318-19 16.5.4.5. */
export const corbelBendingSteel = formula<Symbols<'Mu' | 'fc' | 'fy' | 'b' | 'd'>>({
  symbol: 'Af',
  label: 'steel for the moment',
  formula: '0.85 * fc * b / fy * (d - sqrt(d^2 - 2 * Mu / (0.75 * 0.85 * fc * b)))',
  units: { Mu: 'lbf in', fc: 'psi', fy: 'psi', b: 'in', d: 'in' },
  unit: 'in2',
  source: `${SOURCE}.4.5, 22.3`,
  compute: ({ Mu, fc, fy, b, d }) =>
    ((0.85 * fc * b) / fy) * (d - Math.sqrt(d ** 2 - (2 * Mu) / (0.75 * 0.85 * fc * b))),
});

/** Main top steel, in2. Af, An, Avf: in2; fc, fy: psi; b, d: in. ACI 318-19 16.5.5.1. */
export const corbelMainSteel = formula<Symbols<'Af' | 'An' | 'Avf' | 'fc' | 'fy' | 'b' | 'd'>>({
  symbol: 'Asc',
  label: 'main top steel',
  formula: 'max(Af + An, 2 * Avf / 3 + An, 0.04 * fc / fy * b * d)',
  units: { Af: 'in2', An: 'in2', Avf: 'in2', fc: 'psi', fy: 'psi', b: 'in', d: 'in' },
  unit: 'in2',
  source: `${SOURCE}.5.1`,
  compute: ({ Af, An, Avf, fc, fy, b, d }) =>
    Math.max(Af + An, (2 * Avf) / 3 + An, ((0.04 * fc) / fy) * b * d),
});

/** Closed ties within two thirds of d, in2. Asc, An: in2. ACI 318-19 16.5.5.2. */
export const corbelTies = formula<Symbols<'Asc' | 'An'>>({
  symbol: 'Ah',
  label: 'closed ties below the main steel',
  formula: '0.5 * (Asc - An)',
  units: { Asc: 'in2', An: 'in2' },
  unit: 'in2',
  source: `${SOURCE}.5.2`,
  compute: ({ Asc, An }) => 0.5 * (Asc - An),
});

export interface CorbelInput {
  readonly shearLbf: number;
  readonly atIn: number;
  readonly depthIn: number;
  readonly effectiveDepthIn: number;
  readonly widthIn: number;
  readonly strengthPsi: number;
  readonly yieldPsi: number;
  readonly friction: number;
}

export interface CorbelSteel {
  readonly shearLimitLbf: number;
  readonly momentLbfIn: number;
  readonly frictionIn2: number;
  readonly pullIn2: number;
  /** null where no steel can carry the moment in this depth. */
  readonly bendingIn2: number | null;
  readonly mainIn2: number | null;
  readonly tiesIn2: number | null;
  readonly lines: readonly Line[];
}

/** Steel of a structural corbel with load over depth up to 1, for the engineer's eye; lbf, lbf-in, in2. ACI 318-19 16.5, from memory. */
export function corbelSteel(input: CorbelInput): CorbelSteel {
  const { shearLbf: Vu, atIn: av, depthIn: h, effectiveDepthIn: d, widthIn: b, friction: mu } = input;
  const { strengthPsi: fc, yieldPsi: fy } = input;
  const limit = corbelShearLimit({ fc, b, d });
  const pull = corbelPull({ Vu });
  const moment = corbelMoment({ Vu, av, Nuc: pull.value, h, d });
  const friction = corbelFrictionSteel({ Vu, fy, mu });
  const pullSteel = corbelPullSteel({ Nuc: pull.value, fy });
  const found = {
    shearLimitLbf: limit.value,
    momentLbfIn: moment.value,
    frictionIn2: friction.value,
    pullIn2: pullSteel.value,
  };
  const lines = [limit.line, pull.line, moment.line, friction.line, pullSteel.line];
  const bending = corbelBendingSteel({ Mu: moment.value, fc, fy, b, d });
  if (!Number.isFinite(bending.value))
    return { ...found, bendingIn2: null, mainIn2: null, tiesIn2: null, lines };
  const main = corbelMainSteel({
    Af: bending.value,
    An: pullSteel.value,
    Avf: friction.value,
    fc,
    fy,
    b,
    d,
  });
  const ties = corbelTies({ Asc: main.value, An: pullSteel.value });
  return {
    ...found,
    bendingIn2: bending.value,
    mainIn2: main.value,
    tiesIn2: ties.value,
    lines: [...lines, bending.line, main.line, ties.line],
  };
}
