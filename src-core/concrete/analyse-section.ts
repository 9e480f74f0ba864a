import type { Line, Worked } from '../workings';
import { crackedDepth, crackedInertia, modularRatio } from './cracked-stiffness';
import { STEEL_MODULUS_PSI } from './factors';
import {
  beta1,
  blockAboveAxis,
  cautiousMoment,
  designMoment,
  neutralAxis,
  neutralAxisUnyielded,
  nominalMoment,
  phiFlexure,
  steelStrain,
  steelStress,
  stressBlockDepth,
  yieldStrain,
} from './flexure';
import type { DeepLayer, StressedLayer } from './layered-section';
import {
  balanceNeutralAxis,
  layeredCrackedDepth,
  layeredCrackedInertia,
  layeredNeutralAxis,
  layeredNominalMoment,
  layersBelowCrackedAxis,
} from './layered-section';
import { elasticModulus } from './material';

export interface SteelLayer {
  readonly areaIn2PerIn: number;
  /** Centre of the steel below the top face. */
  readonly depthFromTopIn: number;
  readonly yieldPsi: number;
}

export interface SectionInput {
  readonly thicknessIn: number;
  readonly strengthPsi: number;
  readonly layers: readonly SteelLayer[];
  readonly tensionFace: 'top' | 'bottom';
  /** Stiffness of the concrete; 57000 sqrt(f'c) where not given. */
  readonly elasticModulusPsi?: number;
}

export interface LayerState {
  readonly areaIn2PerIn: number;
  /** Depth from the compressed face. */
  readonly depthIn: number;
  /** Stress when the concrete crushes; 0 in the compression zone. */
  readonly stressPsi: number;
}

/** A reinforced strip one inch wide. */
export interface SectionAnalysis {
  readonly neutralAxisIn: number;
  /** Strain of the steel farthest from the compressed face when the concrete crushes. */
  readonly extremeStrainRatio: number;
  /** In the order given. */
  readonly layers: readonly LayerState[];
  /** Steel in tension and the depth of its pull, for shear and steel ratio. */
  readonly tensionSteelIn2PerIn: number;
  readonly effectiveDepthIn: number;
  readonly nominalMomentLbfInPerIn: number;
  readonly phiRatio: number;
  readonly designMomentLbfInPerIn: number;
  readonly isTensionControlled: boolean;
  /** What a thin top may count with a caution, if it is at least 4/3 of the factored moment; null where not needed. */
  readonly cautiousMomentLbfInPerIn: number | null;
  readonly modularRatio: number;
  readonly crackedDepthIn: number;
  readonly crackedInertiaIn4PerIn: number;
  readonly lines: readonly Line[];
}

/**
 * Strength and cracked stiffness of a slab strip one inch wide; null where it holds no steel. One layer follows the
 * closed form, several are balanced by strain compatibility. Steel in the compression zone counts nothing, in strength
 * and in stiffness, which is on the safe side: a thin top has no ties to hold it.
 * ACI 318-19 22.2 (strength), Table 21.2.2 (phi), transformed section (stiffness).
 */
export function analyseSection(input: SectionInput): SectionAnalysis | null {
  requireSound(input);
  const depthOf = (layer: SteelLayer) =>
    input.tensionFace === 'bottom' ? layer.depthFromTopIn : input.thicknessIn - layer.depthFromTopIn;
  const all = input.layers.map(
    (layer): DeepLayer => ({
      areaIn2PerIn: layer.areaIn2PerIn,
      depthIn: depthOf(layer),
      yieldPsi: layer.yieldPsi,
    }),
  );
  const layers = all.filter((layer) => layer.areaIn2PerIn > 0);
  const deepest = layers.reduce<DeepLayer | null>(
    (found, layer) => (found === null || layer.depthIn > found.depthIn ? layer : found),
    null,
  );
  if (deepest === null) return null;

  const single = layers.length === 1;
  const strength = single ? oneLayerStrength(deepest, input) : severalLayerStrength(layers, input);
  const { c, moment } = strength;

  const et = steelStrain({ d: deepest.depthIn, c: c.value });
  const ety = yieldStrain({ fy: deepest.yieldPsi, Es: STEEL_MODULUS_PSI });
  const phi = phiFlexure({ et: et.value, ety: ety.value });
  const design = designMoment({ phi: phi.value, Mn: moment.value });
  const isTensionControlled = et.value >= ety.value + 0.003;
  const cautious = isTensionControlled ? null : cautiousMoment({ Mn: moment.value });
  const stiffness = crackedStiffness(layers, input);

  const states = all.map((layer) => ({
    areaIn2PerIn: layer.areaIn2PerIn,
    depthIn: layer.depthIn,
    stressPsi: stressAt(layer, c.value),
  }));
  const pull = states.reduce((sum, { areaIn2PerIn, stressPsi }) => sum + areaIn2PerIn * stressPsi, 0);
  const pullMoment = states.reduce(
    (sum, state) => sum + state.areaIn2PerIn * state.stressPsi * state.depthIn,
    0,
  );
  return {
    neutralAxisIn: c.value,
    extremeStrainRatio: et.value,
    layers: states,
    tensionSteelIn2PerIn: states.reduce((sum, s) => (s.stressPsi > 0 ? sum + s.areaIn2PerIn : sum), 0),
    effectiveDepthIn: pullMoment / pull,
    nominalMomentLbfInPerIn: moment.value,
    phiRatio: phi.value,
    designMomentLbfInPerIn: design.value,
    isTensionControlled,
    cautiousMomentLbfInPerIn: cautious?.value ?? null,
    modularRatio: stiffness.n.value,
    crackedDepthIn: stiffness.kd.value,
    crackedInertiaIn4PerIn: stiffness.inertia.value,
    lines: [
      ...strength.steps,
      ...[et, ety, phi, design, ...(cautious ? [cautious] : [])],
      ...[stiffness.n, stiffness.kd, stiffness.inertia],
    ].map((step) => step.line),
  };
}

interface Strength {
  readonly c: Worked;
  readonly moment: Worked;
  readonly steps: readonly Worked[];
}

/** Closed form: the steel at yield if the strain says so, else the root of the quadratic. */
function oneLayerStrength(layer: DeepLayer, { strengthPsi: fc }: SectionInput): Strength {
  const { areaIn2PerIn: As, depthIn: d, yieldPsi: fy } = layer;
  const Es = STEEL_MODULUS_PSI;
  const ratio = beta1({ fc });
  const yielded = stressBlockDepth({ As, fy, fc });
  const trial = neutralAxis({ a: yielded.value, beta1: ratio.value });
  const yields = steelStrain.compute({ d, c: trial.value }) >= fy / Es;
  const c = yields ? trial : neutralAxisUnyielded({ As, Es, d, fc, beta1: ratio.value });
  const block = yields ? yielded : blockAboveAxis({ beta1: ratio.value, c: c.value });
  const stress = steelStress({ fy, Es, d, c: c.value });
  const moment = nominalMoment({ As, fs: stress.value, d, a: block.value });
  return { c, moment, steps: [ratio, ...(yields ? [block, c] : [c, block]), stress, moment] };
}

function severalLayerStrength(layers: readonly DeepLayer[], { strengthPsi: fc }: SectionInput): Strength {
  const ratio = beta1({ fc });
  const axis = balanceNeutralAxis(layers, 0.85 * fc * ratio.value, stressAt);
  const pulling = layers.filter((layer) => layer.depthIn > axis);
  const stresses = pulling.map(({ yieldPsi, depthIn }) =>
    steelStress({ fy: yieldPsi, Es: STEEL_MODULUS_PSI, d: depthIn, c: axis }),
  );
  const stressed = pulling.map(
    (layer, i): StressedLayer => ({ ...layer, stressPsi: stresses[i]?.value ?? 0 }),
  );
  const c = layeredNeutralAxis(stressed, fc, ratio.value);
  const block = blockAboveAxis({ beta1: ratio.value, c: c.value });
  const moment = layeredNominalMoment(stressed, block.value);
  return { c, moment, steps: [ratio, ...stresses, c, block, moment] };
}

function stressAt(layer: DeepLayer, neutralAxisIn: number): number {
  return steelStress.compute({
    fy: layer.yieldPsi,
    Es: STEEL_MODULUS_PSI,
    d: layer.depthIn,
    c: neutralAxisIn,
  });
}

function crackedStiffness(layers: readonly DeepLayer[], input: SectionInput) {
  const Ec = input.elasticModulusPsi ?? elasticModulus.compute({ fc: input.strengthPsi });
  const n = modularRatio({ Es: STEEL_MODULUS_PSI, Ec });
  const below = layersBelowCrackedAxis(layers, n.value);
  const [only, second] = below;
  if (only && !second) {
    const section = { n: n.value, As: only.areaIn2PerIn, d: only.depthIn };
    const kd = crackedDepth(section);
    return { n, kd, inertia: crackedInertia({ ...section, kd: kd.value }) };
  }
  const kd = layeredCrackedDepth(below, n.value);
  return { n, kd, inertia: layeredCrackedInertia(below, n.value, kd.value) };
}

function requireSound({ thicknessIn, strengthPsi, layers }: SectionInput): void {
  if (!(thicknessIn > 0) || !(strengthPsi > 0)) {
    throw new Error(`section of ${thicknessIn} in at ${strengthPsi} psi: both must be above zero`);
  }
  for (const { areaIn2PerIn, depthFromTopIn, yieldPsi } of layers) {
    const isInside = depthFromTopIn > 0 && depthFromTopIn < thicknessIn;
    if (!isInside || !(areaIn2PerIn >= 0) || !(yieldPsi > 0)) {
      throw new Error(
        `steel of ${areaIn2PerIn} in2/in, ${yieldPsi} psi, ${depthFromTopIn} in deep does not fit a ${thicknessIn} in slab`,
      );
    }
  }
}
