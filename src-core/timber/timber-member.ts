/** One stick of lumber with all that it may take, worked once for every check that asks. */
import { formula, type Line } from '../workings';
import {
  adjustedBearing,
  adjustedBending,
  adjustedModulus,
  adjustedModulusMin,
  adjustedShear,
  crushingStress,
} from './adjusted-strength';
import {
  bendingSizeFactor,
  compressionSizeFactor,
  flatUseFactor,
  type Repetition,
  repetitiveFactor,
  wetBearingFactor,
  wetBendingFactor,
  wetCompressionFactor,
  wetModulusFactor,
  wetShearFactor,
} from './adjustment-factors';
import { type LumberSize, type LumberUse, lumberSection, type TimberSection } from './lumber';
import { SPECIES, type Species } from './species';
import type { Symbols } from './symbols';

/** How long the load stands, and whether the lumber is over 19 % moisture. */
export interface Service {
  /** CD, a ratio; `durationFactor` gives it by days. */
  readonly durationFactor: number;
  readonly isWet: boolean;
}

export interface MemberInput {
  readonly species: Species;
  readonly size: LumberSize;
  readonly use: LumberUse;
  readonly service: Service;
  /** Null for a member by itself, such as a plate or a leg. */
  readonly repetition: Repetition | null;
}

export interface TimberMember {
  readonly species: Species;
  readonly section: TimberSection;
  /** "2x4 on edge, spruce-pine-fir No. 2". */
  readonly words: string;
  readonly bendingPsi: number;
  readonly shearPsi: number;
  readonly bearingPsi: number;
  /** Along the grain, before buckling. */
  readonly crushingPsi: number;
  readonly modulusPsi: number;
  readonly modulusMinPsi: number;
  readonly momentLbfIn: number;
  readonly shearLbf: number;
  /** E I. */
  readonly stiffnessLbfIn2: number;
  /** The lines behind each number. */
  readonly lines: {
    readonly bending: readonly Line[];
    readonly shear: readonly Line[];
    readonly bearing: readonly Line[];
    readonly crushing: readonly Line[];
    readonly stiffness: readonly Line[];
    readonly buckling: readonly Line[];
  };
}

/** Moment that a section may take, lbf-in. Fba: adjusted bending value, psi; S: in3. NDS 2018 3.3.2. */
export const momentCapacity = formula<Symbols<'Fba' | 'S'>>({
  symbol: 'Ma',
  label: 'moment that the member may take',
  formula: 'Fba * S',
  units: { Fba: 'psi', S: 'in3' },
  unit: 'lbf in',
  source: 'NDS 2018 3.3.2',
  compute: ({ Fba, S }) => Fba * S,
});

/** Shear that a rectangular section may take, lbf. Fva: adjusted shear value, psi; A: in2. NDS 2018 3.4.2. */
export const shearCapacity = formula<Symbols<'Fva' | 'A'>>({
  symbol: 'Va',
  label: 'shear that the member may take',
  formula: '2 * Fva * A / 3',
  units: { Fva: 'psi', A: 'in2' },
  unit: 'lbf',
  source: 'NDS 2018 3.4.2',
  compute: ({ Fva, A }) => (2 * Fva * A) / 3,
});

/** Bending stiffness of a section, lbf-in2. Ea: psi; I: in4. Mechanics of materials. */
export const bendingStiffness = formula<Symbols<'Ea' | 'I'>>({
  symbol: 'EI',
  label: 'bending stiffness of the member',
  formula: 'Ea * I',
  units: { Ea: 'psi', I: 'in4' },
  unit: 'lbf in2',
  source: 'any mechanics text',
  compute: ({ Ea, I }) => Ea * I,
});

/**
 * Everything that one member may take: adjusted stresses psi, moment lbf-in, shear lbf, stiffness lbf-in2, with their lines.
 * NDS 2018 chapters 3 and 4.
 */
export function timberMember({ species, size, use, service, repetition }: MemberInput): TimberMember {
  const reference = SPECIES[species];
  const section = lumberSection(size, use);
  const { durationFactor: CD, isWet } = service;
  const bending = adjustedBending({
    Fb: reference.bendingPsi,
    CD,
    CM: wetBendingFactor(isWet, reference.bendingPsi, size),
    CF: bendingSizeFactor(size),
    Cfu: flatUseFactor(size, use),
    Cr: repetitiveFactor(repetition),
  });
  const shear = adjustedShear({ Fv: reference.shearPsi, CD, CM: wetShearFactor(isWet) });
  const bearing = adjustedBearing({ Fcp: reference.bearingPsi, CM: wetBearingFactor(isWet) });
  const crushing = crushingStress({
    Fc: reference.compressionPsi,
    CD,
    CM: wetCompressionFactor(isWet, reference.compressionPsi, size),
    CF: compressionSizeFactor(size),
  });
  const modulus = adjustedModulus({ E: reference.modulusPsi, CM: wetModulusFactor(isWet) });
  const buckling = adjustedModulusMin({ Emin: reference.modulusMinPsi, CM: wetModulusFactor(isWet) });
  const moment = momentCapacity({ Fba: bending.value, S: section.modulusIn3 });
  const force = shearCapacity({ Fva: shear.value, A: section.areaIn2 });
  const stiffness = bendingStiffness({ Ea: modulus.value, I: section.inertiaIn4 });
  const [areaLine, modulusLine, inertiaLine] = section.lines;
  return {
    species,
    section,
    words: `${section.words}, ${reference.words}`,
    bendingPsi: bending.value,
    shearPsi: shear.value,
    bearingPsi: bearing.value,
    crushingPsi: crushing.value,
    modulusPsi: modulus.value,
    modulusMinPsi: buckling.value,
    momentLbfIn: moment.value,
    shearLbf: force.value,
    stiffnessLbfIn2: stiffness.value,
    lines: {
      bending: [bending.line, modulusLine, moment.line],
      shear: [shear.line, areaLine, force.line],
      bearing: [bearing.line],
      crushing: [crushing.line],
      stiffness: [modulus.line, inertiaLine, stiffness.line],
      buckling: [buckling.line],
    },
  };
}
