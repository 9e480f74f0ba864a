import type { ArmSection } from '../job';
import { formula, type Line } from '../workings';
import { type ArmProperties, armProperties, STEEL_MODULUS_PSI } from './arm-properties';
import type { Symbols } from './symbols';

/** Nominal moment of a bar where it cannot twist, lbf-in. Fy: psi; Z, S: in3. AISC 360-22 F11.1. */
export const barYieldMoment = formula<Symbols<'Fy' | 'Z' | 'S'>>({
  symbol: 'Mn',
  label: 'moment at which the bar yields through',
  formula: 'min(Fy * Z, 1.6 * Fy * S)',
  units: { Fy: 'psi', Z: 'in3', S: 'in3' },
  unit: 'lbf in',
  source: 'AISC 360-22 F11.1',
  fromMemory: true,
  compute: ({ Fy, Z, S }) => Math.min(Fy * Z, 1.6 * Fy * S),
});

/** How readily a bar on edge twists out of line (a ratio). Lb: free length; d: depth; t: width, in. AISC 360-22 F11.2. */
export const barTwistRatio = formula<Symbols<'Lb' | 'd' | 't'>>({
  symbol: 'r',
  label: 'free length times depth over width squared',
  formula: 'Lb * d / t^2',
  units: { Lb: 'in', d: 'in', t: 'in' },
  unit: '',
  source: 'AISC 360-22 F11.2',
  fromMemory: true,
  compute: ({ Lb, d, t }) => (Lb * d) / t ** 2,
});

/** Nominal moment of a bar on edge that yields while it twists, lbf-in. r between 0.08 E/Fy and 1.9 E/Fy. AISC 360-22 F11.2(b), Cb 1. */
export const barInelasticMoment = formula<Symbols<'r' | 'Fy' | 'E' | 'S' | 'Z'>>({
  symbol: 'Mn',
  label: 'moment at which the bar on edge yields and twists',
  formula: 'min(Fy * Z, (1.52 - 0.274 * r * Fy / E) * Fy * S)',
  units: { r: '', Fy: 'psi', E: 'psi', S: 'in3', Z: 'in3' },
  unit: 'lbf in',
  source: 'AISC 360-22 F11.2(b), Cb 1 (free end)',
  fromMemory: true,
  compute: ({ r, Fy, E, S, Z }) => Math.min(Fy * Z, (1.52 - (0.274 * r * Fy) / E) * Fy * S),
});

/** Nominal moment of a bar on edge that twists before it yields, lbf-in. r over 1.9 E/Fy. AISC 360-22 F11.2(c), Cb 1. */
export const barElasticMoment = formula<Symbols<'r' | 'Fy' | 'E' | 'S' | 'Z'>>({
  symbol: 'Mn',
  label: 'moment at which the bar on edge twists',
  formula: 'min(Fy * Z, 1.9 * E * S / r)',
  units: { r: '', Fy: 'psi', E: 'psi', S: 'in3', Z: 'in3' },
  unit: 'lbf in',
  source: 'AISC 360-22 F11.2(c), Cb 1 (free end)',
  fromMemory: true,
  compute: ({ r, Fy, E, S, Z }) => Math.min(Fy * Z, (1.9 * E * S) / r),
});

/**
 * First-yield moment, lbf-in, taken as the nominal moment of tubes, angles and tees. Fy: psi; S: in3.
 * Tube: the shape factor left out (about 1.2) pays for the corner radii that the section values leave out. Tee with its
 * stem in compression: AISC 360-22 F9.1. Angle: F10 allows 1.5 times this where nothing buckles.
 */
export const firstYieldMoment = formula<Symbols<'Fy' | 'S'>>({
  symbol: 'Mn',
  label: 'moment at first yield',
  formula: 'Fy * S',
  units: { Fy: 'psi', S: 'in3' },
  unit: 'lbf in',
  source: 'AISC 360-22 F7.1, F9.1, F10.1, on the safe side',
  fromMemory: true,
  compute: ({ Fy, S }) => Fy * S,
});

/** Allowable moment, lbf-in. Mn: nominal, lbf-in. Omega 1.67, AISC 360-22 F1. */
export const allowableMoment = formula<Symbols<'Mn'>>({
  symbol: 'Ma',
  label: 'moment the arm may carry',
  formula: 'Mn / 1.67',
  units: { Mn: 'lbf in' },
  unit: 'lbf in',
  source: 'AISC 360-22 F1 (ASD, omega 1.67)',
  fromMemory: true,
  compute: ({ Mn }) => Mn / 1.67,
});

export interface ArmMoment {
  readonly allowableLbfIn: number;
  readonly lines: readonly Line[];
}

/**
 * Moment that a steel arm may carry at the wall face, lbf-in; null for a timber brace, which is a truss. `reachIn` is
 * the length over which a bar on edge is free to twist. Valid for walls that `hasThinWall` does not refuse.
 * AISC 360-22 F7, F9, F10, F11, ASD.
 */
export function armAllowableMoment(arm: ArmSection, reachIn: number): ArmMoment | null {
  if (arm.kind === 'knee-brace') return null;
  const section = armProperties(arm);
  const nominal = nominalMoment(arm, section, reachIn);
  const allowable = allowableMoment({ Mn: nominal.momentLbfIn });
  return {
    allowableLbfIn: allowable.value,
    lines: [...section.lines, ...nominal.lines, allowable.line],
  };
}

function nominalMoment(
  arm: Exclude<ArmSection, { kind: 'knee-brace' }>,
  section: ArmProperties,
  reachIn: number,
): { momentLbfIn: number; lines: Line[] } {
  const Fy = arm.yieldPsi;
  if (arm.kind !== 'flat-bar') {
    const first = firstYieldMoment({ Fy, S: section.freeModulusIn3 });
    return { momentLbfIn: first.value, lines: [first.line] };
  }
  const Z = section.plasticModulusIn3;
  const S = section.tensionModulusIn3;
  const twist = barTwistRatio({ Lb: reachIn, d: arm.depthIn, t: arm.widthIn });
  const E = STEEL_MODULUS_PSI;
  if (arm.depthIn <= arm.widthIn || twist.value <= (0.08 * E) / Fy) {
    const yielding = barYieldMoment({ Fy, Z, S });
    return { momentLbfIn: yielding.value, lines: [yielding.line] };
  }
  const inputs = { r: twist.value, Fy, E, S, Z };
  const worked = twist.value <= (1.9 * E) / Fy ? barInelasticMoment(inputs) : barElasticMoment(inputs);
  return { momentLbfIn: worked.value, lines: [twist.line, worked.line] };
}

/**
 * Whether the wall of an arm is so thin that it may buckle below first yield. Open legs: width over thickness up to
 * 0.83 sqrt(E/Fy), where F10 (twisting, leg buckling) and F9 (stem) still leave the first-yield moment, derived from
 * those clauses. Tubes: 1.40 sqrt(E/Fy), the noncompact limit of AISC 360-22 Table B4.1b, from memory.
 */
export function hasThinWall(arm: ArmSection): boolean {
  if (arm.kind === 'flat-bar' || arm.kind === 'knee-brace') return false;
  const root = Math.sqrt(STEEL_MODULUS_PSI / arm.yieldPsi);
  if (arm.kind === 'tube') return (arm.widthIn - 2 * arm.wallIn) / arm.wallIn > 1.4 * root;
  const widestIn = Math.max(arm.kind === 'angle' ? arm.legWidthIn : arm.flangeWidthIn / 2, depthOf(arm));
  return widestIn / arm.wallIn > 0.83 * root;
}

function depthOf(arm: Extract<ArmSection, { kind: 'angle' | 'tee' }>): number {
  return arm.kind === 'angle' ? arm.legDepthIn : arm.depthIn;
}
