import type { ArmSection } from '../job';
import type { Line, Worked } from '../workings';
import { BRACE_TIMBER, timberWeight } from './brace-timber';
import {
  angleFreeInertia,
  angleFreeModulus,
  angleProduct,
  openArea,
  openCentroid,
  openInertia,
  openPlasticAxis,
  openPlasticModulus,
} from './open-sections';
import {
  barArea,
  barInertia,
  barPlasticModulus,
  fibreModulus,
  steelWeight,
  tubeArea,
  tubeInertia,
  tubePlasticModulus,
} from './solid-sections';

/** Modulus of elasticity of steel, psi. AISC 360-22 symbols (E). */
export const STEEL_MODULUS_PSI = 29_000_000;
/** Moisture at which the weight of a brace is reckoned, %: framing timber as bought. Common practice, no source. */
const BRACE_MOISTURE_PERCENT = 19;

export interface ArmProperties {
  readonly areaIn2: number;
  /** Centroid below the top of the arm. */
  readonly centroidIn: number;
  readonly inertiaIn4: number;
  /** Second moment where nothing holds the arm sideways; less than `inertiaIn4` for an angle only. */
  readonly freeInertiaIn4: number;
  /** Section moduli of an arm that carries a load at its tip: top in tension, bottom in compression. */
  readonly tensionModulusIn3: number;
  readonly compressionModulusIn3: number;
  /** Least section modulus where nothing holds the arm sideways. */
  readonly freeModulusIn3: number;
  readonly plasticModulusIn3: number;
  readonly modulusPsi: number;
  /** null for timber, which does not yield. */
  readonly yieldPsi: number | null;
  /** One member: the arm alone, without heel leg or strut. */
  readonly weightLbPerFt: number;
  readonly topWidthIn: number;
  readonly depthIn: number;
  /** Thickness of the steel that the fasteners pass through; the depth of the wall post of a timber brace. */
  readonly sidePlateIn: number;
  readonly lines: readonly Line[];
}

interface SectionValues {
  readonly topWidthIn: number;
  readonly depthIn: number;
  readonly sidePlateIn: number;
  readonly area: Worked;
  readonly inertia: Worked;
  readonly plastic: Worked;
  /** null where the section is alike above and below. */
  readonly centroid: Worked | null;
  readonly free: { readonly inertia: Worked; readonly modulus: Worked; readonly product: Worked } | null;
}

/**
 * Section values of an arm about its horizontal axis; in, in2, in3, in4, psi, lb/ft. Corner radii of tubes and fillets
 * of angles and tees are left out. A wall thicker than the section makes a solid bar of it. Section geometry; timber
 * values by NDS 2018 Supplement Table 4A, from memory.
 */
export function armProperties(arm: ArmSection): ArmProperties {
  const section = sectionValues(arm);
  const centroidIn = section.centroid?.value ?? section.depthIn / 2;
  const tension = fibreModulus({ I: section.inertia.value, c: centroidIn });
  const compression = fibreModulus({ I: section.inertia.value, c: section.depthIn - centroidIn });
  const timber = arm.kind === 'knee-brace' ? BRACE_TIMBER[arm.species] : null;
  const weight = timber
    ? timberWeight({ G: timber.gravity, mc: BRACE_MOISTURE_PERCENT, A: section.area.value })
    : steelWeight({ A: section.area.value });
  const worked = [
    section.area,
    section.centroid,
    section.inertia,
    tension,
    section.centroid ? compression : null,
    section.plastic,
    section.free?.product ?? null,
    section.free?.inertia ?? null,
    section.free?.modulus ?? null,
    weight,
  ];
  return {
    areaIn2: section.area.value,
    centroidIn,
    inertiaIn4: section.inertia.value,
    freeInertiaIn4: section.free?.inertia.value ?? section.inertia.value,
    tensionModulusIn3: tension.value,
    compressionModulusIn3: compression.value,
    freeModulusIn3: section.free?.modulus.value ?? Math.min(tension.value, compression.value),
    plasticModulusIn3: section.plastic.value,
    modulusPsi: timber?.modulusPsi ?? STEEL_MODULUS_PSI,
    yieldPsi: arm.kind === 'knee-brace' ? null : arm.yieldPsi,
    weightLbPerFt: weight.value,
    topWidthIn: section.topWidthIn,
    depthIn: section.depthIn,
    sidePlateIn: section.sidePlateIn,
    lines: worked.flatMap((item) => (item ? [item.line] : [])),
  };
}

function sectionValues(arm: ArmSection): SectionValues {
  switch (arm.kind) {
    case 'flat-bar':
      return barValues(arm.widthIn, arm.depthIn, Math.min(arm.widthIn, arm.depthIn));
    case 'knee-brace':
      return barValues(arm.widthIn, arm.depthIn, arm.depthIn);
    case 'tube': {
      const sides = { b: arm.widthIn, d: arm.depthIn, t: arm.wallIn };
      return {
        topWidthIn: arm.widthIn,
        depthIn: arm.depthIn,
        sidePlateIn: arm.wallIn,
        area: tubeArea(sides),
        inertia: tubeInertia(sides),
        plastic: tubePlasticModulus(sides),
        centroid: null,
        free: null,
      };
    }
    case 'angle':
      return openValues(arm.legWidthIn, arm.legDepthIn, arm.wallIn, true);
    case 'tee':
      return openValues(arm.flangeWidthIn, arm.depthIn, arm.wallIn, false);
  }
}

function barValues(b: number, d: number, sidePlateIn: number): SectionValues {
  return {
    topWidthIn: b,
    depthIn: d,
    sidePlateIn,
    area: barArea({ b, d }),
    inertia: barInertia({ b, d }),
    plastic: barPlasticModulus({ b, d }),
    centroid: null,
    free: null,
  };
}

function openValues(b: number, d: number, wallIn: number, isAngle: boolean): SectionValues {
  const t = Math.min(wallIn, b, d);
  const centroid = openCentroid({ b, d, t });
  const y = centroid.value;
  const inertia = openInertia({ b, d, t, y });
  const yp = openPlasticAxis.compute({ b, d, t });
  return {
    topWidthIn: b,
    depthIn: d,
    sidePlateIn: wallIn,
    area: openArea({ b, d, t }),
    inertia,
    plastic: openPlasticModulus({ b, d, t, yp }),
    centroid,
    free: isAngle ? freeValues(b, d, t, { y, Ix: inertia.value }) : null,
  };
}

function freeValues(
  b: number,
  d: number,
  t: number,
  known: { y: number; Ix: number },
): NonNullable<SectionValues['free']> {
  const x = openCentroid.compute({ b: d, d: b, t });
  const Iy = openInertia.compute({ b: d, d: b, t, y: x });
  const product = angleProduct({ b, d, t, x, y: known.y });
  const moments = { Ix: known.Ix, Iy, Ixy: product.value };
  return {
    product,
    inertia: angleFreeInertia(moments),
    modulus: angleFreeModulus({ b, d, t, x, y: known.y, ...moments }),
  };
}
