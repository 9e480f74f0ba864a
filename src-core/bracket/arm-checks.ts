import type { ArmSection } from '../job';
import { formula, type Line } from '../workings';
import { armInfluence } from './arm-flexibility';
import { armProperties } from './arm-properties';
import { armAllowableMoment } from './arm-strength';
import { BRACE_TIMBER, sizeFactor, WET_FACTOR } from './brace-timber';
import { type BracketCheck, bracketCheck, type ServiceLoad } from './bracket-check';
import { fixingMoment } from './fixing-moment';
import {
  adjustedStress,
  bendingWithPull,
  columnStability,
  strutBucklingStress,
  strutCapacity,
  timberShearCapacity,
} from './knee-brace';
import { type KneeBrace, kneeBraceForces } from './knee-brace-forces';
import type { Symbols } from './symbols';

/** Largest slenderness of a timber column (le/d). NDS 2018 3.7.1.4. */
const STRUT_SLENDERNESS = 50;

/** Moment at the wall face, lbf-in. P: lbf; e: in. Statics. */
export const rootMoment = formula<Symbols<'P' | 'e'>>({
  symbol: 'M',
  label: 'moment of the arm at the wall face',
  formula: 'P * e',
  units: { P: 'lbf', e: 'in' },
  unit: 'lbf in',
  source: 'statics',
  compute: ({ P, e }) => P * e,
});

/** Sinking of the tip, in. f: sinking for each pound, in/lbf; D, L: dead and live load, lbf; Kcr: creep of the dead part (a ratio). */
export const tipSinking = formula<Symbols<'f' | 'Kcr' | 'D' | 'L'>>({
  symbol: 'delta',
  label: 'sinking of the tip of the arm',
  formula: 'f * (Kcr * D + L)',
  units: { f: 'in/lbf', Kcr: '', D: 'lbf', L: 'lbf' },
  unit: 'in',
  source: 'NDS 2018 3.5.2 for timber creep (1.5 dry, 2.0 wet); steel 1',
  fromMemory: true,
  compute: ({ f, Kcr, D, L }) => f * (Kcr * D + L),
});

/** Largest sinking at the tip of an overhang, in. a: reach, in. An overhang counts double its length; common practice after ACI 318-19 Table 24.2.2. */
export const tipLimit = formula<Symbols<'a'>>({
  symbol: 'limit',
  label: 'largest sinking at the tip',
  formula: '2 * a / 360',
  units: { a: 'in' },
  unit: 'in',
  source: 'common practice after ACI 318-19 Table 24.2.2 (span/360, an overhang counted double)',
  compute: ({ a }) => (2 * a) / 360,
});

/** Slenderness of a strut (a ratio). Ls: length; d: thinner side, in. NDS 2018 3.7.1.3. */
export const strutSlenderness = formula<Symbols<'Ls' | 'd'>>({
  symbol: 's',
  label: 'slenderness of the strut',
  formula: 'Ls / d',
  units: { Ls: 'in', d: 'in' },
  unit: '',
  source: 'NDS 2018 3.7.1.3',
  compute: ({ Ls, d }) => Ls / d,
});

/** Bending of a steel arm, or strut and arm of a timber brace. AISC 360-22 F; NDS 2018 3.4, 3.7, 3.9. */
export function armStrengthChecks(load: ServiceLoad): BracketCheck[] {
  const { arm, reachIn } = load.bracket;
  if (arm.kind === 'knee-brace') return braceChecks(load, arm);
  const allowable = armAllowableMoment(arm, reachIn);
  if (!allowable) throw new Error(`no allowable moment for a steel arm of kind ${arm.kind}`);
  const moment = rootMoment({ P: load.totalLbf, e: load.atIn });
  return [
    bracketCheck({
      id: 'arm-bending',
      label: 'Bending of the arm at the wall',
      demand: moment.value,
      capacity: allowable.allowableLbfIn,
      unit: 'lbf in',
      lines: [load.totalLine, moment.line, ...allowable.lines],
    }),
  ];
}

/** Sinking of the arm's tip under its own share of the load, with the softer of the two fixings; both are printed. */
export function armDeflectionCheck(load: ServiceLoad): BracketCheck {
  const { bracket } = load;
  const tip = (bound: 'low' | 'high'): { sinkingIn: number; lines: Line[] } => {
    const parts = armInfluence(bracket, bound)(bracket.reachIn, load.atIn).map((part) => part.work());
    const f = parts.reduce((sum, part) => sum + part.value, 0);
    const sinking = tipSinking({
      f,
      Kcr: armCreepFactor(bracket.arm, load.isWet),
      D: load.deadLbf,
      L: load.liveLbf,
    });
    return { sinkingIn: sinking.value, lines: [...parts.map((part) => part.line), sinking.line] };
  };
  const low = tip('low');
  const high = tip('high');
  const limit = tipLimit({ a: bracket.reachIn });
  return bracketCheck({
    id: 'arm-deflection',
    label: 'Sinking of the tip of the arm',
    demand: Math.max(low.sinkingIn, high.sinkingIn),
    capacity: limit.value,
    unit: 'in',
    lines: [...fixingMoment(bracket).lines, ...low.lines, ...high.lines, limit.line],
  });
}

/** Share by which an arm sinks further under what lies on it for years (a ratio): timber 1.5, wet 2.0; steel 1. NDS 2018 3.5.2, from memory. */
export function armCreepFactor({ kind }: ArmSection, isWet: boolean): number {
  if (kind !== 'knee-brace') return 1;
  return isWet ? 2 : 1.5;
}

function braceChecks(load: ServiceLoad, arm: KneeBrace): BracketCheck[] {
  const forces = kneeBraceForces({
    arm,
    reachIn: load.bracket.reachIn,
    loadLbf: load.totalLbf,
    atIn: load.atIn,
  });
  const thinnerIn = Math.min(arm.widthIn, arm.depthIn);
  const slenderness = strutSlenderness({ Ls: forces.strutLengthIn, d: thinnerIn });
  return [
    strutCheck(load, arm, forces),
    bracketCheck({
      id: 'brace-strut-slenderness',
      label: 'Slenderness of the strut',
      demand: slenderness.value,
      capacity: STRUT_SLENDERNESS,
      unit: '',
      lines: [slenderness.line],
    }),
    braceArmCheck(load, arm, forces),
    braceShearCheck(load, arm),
  ];
}

type Forces = ReturnType<typeof kneeBraceForces>;

function strutCheck(load: ServiceLoad, arm: KneeBrace, forces: Forces): BracketCheck {
  const timber = BRACE_TIMBER[arm.species];
  const section = armProperties(arm);
  const size = sizeFactor(Math.max(arm.widthIn, arm.depthIn));
  const wet = load.isWet ? WET_FACTOR : DRY_FACTOR;
  const crushing = adjustedStress({
    F: timber.compressionPsi,
    CD: 1,
    CM: wet.compression,
    CF: size.compression,
  });
  const stiff = adjustedStress({ F: timber.modulusMinPsi, CD: 1, CM: wet.modulus, CF: 1 });
  const buckling = strutBucklingStress({
    Emin: stiff.value,
    Ls: forces.strutLengthIn,
    d: Math.min(arm.widthIn, arm.depthIn),
  });
  const stability = columnStability({ FcE: buckling.value, Fcs: crushing.value });
  const capacity = strutCapacity({ Fcs: crushing.value, Cp: stability.value, A: section.areaIn2 });
  return bracketCheck({
    id: 'brace-strut',
    label: 'Push in the strut of the brace',
    demand: forces.strutPushLbf,
    capacity: capacity.value,
    unit: 'lbf',
    lines: [
      load.totalLine,
      ...forces.lines,
      crushing.line,
      stiff.line,
      buckling.line,
      stability.line,
      capacity.line,
    ],
  });
}

function braceArmCheck(load: ServiceLoad, arm: KneeBrace, forces: Forces): BracketCheck {
  const timber = BRACE_TIMBER[arm.species];
  const section = armProperties(arm);
  const size = sizeFactor(Math.max(arm.widthIn, arm.depthIn));
  const wet = load.isWet ? WET_FACTOR : DRY_FACTOR;
  const bending = adjustedStress({ F: timber.bendingPsi, CD: 1, CM: wet.bending, CF: size.bending });
  const tension = adjustedStress({ F: timber.tensionPsi, CD: 1, CM: wet.tension, CF: size.tension });
  const used = bendingWithPull({
    T: forces.armPullLbf,
    A: section.areaIn2,
    Ft: tension.value,
    M: forces.armMomentLbfIn,
    S: section.tensionModulusIn3,
    Fb: bending.value,
  });
  return bracketCheck({
    id: 'brace-arm',
    label: 'Pull and bending in the arm of the brace',
    demand: used.value,
    capacity: 1,
    unit: '',
    lines: [load.totalLine, ...forces.lines, bending.line, tension.line, used.line],
  });
}

/** The whole load counts as shear: it may stand close to either end of the arm. */
function braceShearCheck(load: ServiceLoad, arm: KneeBrace): BracketCheck {
  const wet = load.isWet ? WET_FACTOR : DRY_FACTOR;
  const stress = adjustedStress({ F: BRACE_TIMBER[arm.species].shearPsi, CD: 1, CM: wet.shear, CF: 1 });
  const capacity = timberShearCapacity({ Fv: stress.value, A: armProperties(arm).areaIn2 });
  return bracketCheck({
    id: 'brace-arm-shear',
    label: 'Shear in the arm of the brace',
    demand: load.totalLbf,
    capacity: capacity.value,
    unit: 'lbf',
    lines: [load.totalLine, stress.line, capacity.line],
  });
}

const DRY_FACTOR = { bending: 1, tension: 1, shear: 1, compression: 1, modulus: 1 } as const;
