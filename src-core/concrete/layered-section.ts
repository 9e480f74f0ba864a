import type { Worked } from '../workings';
import { formula } from '../workings';

/** Steel at one depth, counted from the compressed face. */
export interface DeepLayer {
  readonly areaIn2PerIn: number;
  readonly depthIn: number;
  readonly yieldPsi: number;
}

export interface StressedLayer extends DeepLayer {
  readonly stressPsi: number;
}

type Numbers = Readonly<Record<string, number>>;

const MAX_HALVINGS = 200;

/**
 * Neutral axis at which the block balances the steel of several layers, in. Steel in the compression zone counts
 * nothing: a thin top has no ties to hold it. Bisection on the imbalance, which only grows with c.
 * `stressAt` gives the stress of a layer for a neutral axis. ACI 318-19 22.2.1, 22.2.2.
 */
export function balanceNeutralAxis(
  layers: readonly DeepLayer[],
  blockPsi: number,
  stressAt: (layer: DeepLayer, neutralAxisIn: number) => number,
): number {
  let low = 0;
  let high = Math.max(...layers.map((layer) => layer.depthIn));
  for (let halving = 0; halving < MAX_HALVINGS; halving++) {
    const c = (low + high) / 2;
    if (c <= low || c >= high) return c;
    const pull = layers.reduce((sum, layer) => sum + layer.areaIn2PerIn * stressAt(layer, c), 0);
    if (blockPsi * c < pull) low = c;
    else high = c;
  }
  throw new Error(`neutral axis not found in ${MAX_HALVINGS} halvings, between ${low} and ${high} in`);
}

/** The balance of several layers as a line: neutral axis, in, from the stress of every layer, psi. ACI 318-19 22.2.2. */
export function layeredNeutralAxis(layers: readonly StressedLayer[], fc: number, beta1: number): Worked {
  const pull = layers.reduce((sum, layer) => sum + layer.areaIn2PerIn * layer.stressPsi, 0);
  const inputs = numberLayers(layers, (layer) => ({ As: layer.areaIn2PerIn, fs: layer.stressPsi }));
  return formula<Numbers>({
    symbol: 'c',
    label: 'neutral axis below the compressed face, all layers in balance',
    formula: `(${sumOver(layers, (i) => `As${i} * fs${i}`)}) / (0.85 * fc * beta1)`,
    units: { ...layerUnits(inputs), fc: 'psi', beta1: '' },
    unit: 'in',
    source: 'ACI 318-19 22.2.1, 22.2.2 (strain compatibility)',
    compute: () => pull / (0.85 * fc * beta1),
  })({ ...inputs, fc, beta1 });
}

/** Nominal moment of several layers, lbf in an inch of width. a: depth of the block, in. ACI 318-19 22.3.1.1. */
export function layeredNominalMoment(layers: readonly StressedLayer[], a: number): Worked {
  const inputs = numberLayers(layers, (layer) => ({
    As: layer.areaIn2PerIn,
    fs: layer.stressPsi,
    d: layer.depthIn,
  }));
  return formula<Numbers>({
    symbol: 'Mn',
    label: 'nominal moment, an inch of width',
    formula: sumOver(layers, (i) => `As${i} * fs${i} * (d${i} - a / 2)`),
    units: { ...layerUnits(inputs), a: 'in' },
    unit: 'lbf in/in',
    source: 'ACI 318-19 22.3.1.1',
    compute: () =>
      layers.reduce((sum, { areaIn2PerIn, stressPsi, depthIn }) => {
        return sum + areaIn2PerIn * stressPsi * (depthIn - a / 2);
      }, 0),
  })({ ...inputs, a });
}

/** Neutral axis of the cracked elastic section with several layers in tension, in. n: ratio. Transformed section. */
export function layeredCrackedDepth(layers: readonly DeepLayer[], n: number): Worked {
  const inputs = numberLayers(layers, (layer) => ({ As: layer.areaIn2PerIn, d: layer.depthIn }));
  const area = `(${sumOver(layers, (i) => `As${i}`)})`;
  const moment = `(${sumOver(layers, (i) => `As${i} * d${i}`)})`;
  return formula<Numbers>({
    symbol: 'kd',
    label: 'neutral axis of the cracked section in service',
    formula: `sqrt((n * ${area})^2 + 2 * n * ${moment}) - n * ${area}`,
    units: { ...layerUnits(inputs), n: '' },
    unit: 'in',
    source: 'transformed section, mechanics of materials',
    compute: () => crackedDepthOf(layers, n),
  })({ n, ...inputs });
}

/** Second moment of the cracked section with several layers, in4 an inch of width. kd: in; n: ratio. */
export function layeredCrackedInertia(layers: readonly DeepLayer[], n: number, kd: number): Worked {
  const inputs = numberLayers(layers, (layer) => ({ As: layer.areaIn2PerIn, d: layer.depthIn }));
  return formula<Numbers>({
    symbol: 'Icr',
    label: 'second moment of area of the cracked section, an inch of width',
    formula: `kd^3 / 3 + n * (${sumOver(layers, (i) => `As${i} * (d${i} - kd)^2`)})`,
    units: { ...layerUnits(inputs), kd: 'in', n: '' },
    unit: 'in4/in',
    source: 'transformed section, mechanics of materials',
    compute: () =>
      layers.reduce((sum, layer) => sum + n * layer.areaIn2PerIn * (layer.depthIn - kd) ** 2, kd ** 3 / 3),
  })({ kd, n, ...inputs });
}

/**
 * The layers that lie below the elastic neutral axis of the cracked section. Leaving out a layer above the axis only
 * moves the axis deeper, so the list shrinks until it agrees with itself. n: ratio of stiffness.
 */
export function layersBelowCrackedAxis(layers: readonly DeepLayer[], n: number): readonly DeepLayer[] {
  let kept = layers;
  for (let pass = 0; pass <= layers.length; pass++) {
    const kd = crackedDepthOf(kept, n);
    const below = kept.filter((layer) => layer.depthIn > kd);
    if (below.length === kept.length) return kept;
    kept = below;
  }
  throw new Error(`cracked axis does not settle for ${layers.length} layers, n ${n}`);
}

function crackedDepthOf(layers: readonly DeepLayer[], n: number): number {
  const area = layers.reduce((sum, layer) => sum + n * layer.areaIn2PerIn, 0);
  const moment = layers.reduce((sum, layer) => sum + n * layer.areaIn2PerIn * layer.depthIn, 0);
  return Math.sqrt(area ** 2 + 2 * moment) - area;
}

function sumOver(layers: readonly DeepLayer[], term: (layerNumber: number) => string): string {
  return layers.map((_, i) => term(i + 1)).join(' + ');
}

/** Gives the numbers of every layer the number of the layer: As1, d1, As2, d2 ... */
function numberLayers<Layer>(layers: readonly Layer[], pick: (layer: Layer) => Numbers): Numbers {
  return Object.fromEntries(
    layers.flatMap((layer, i) =>
      Object.entries(pick(layer)).map(([symbol, value]): [string, number] => [`${symbol}${i + 1}`, value]),
    ),
  );
}

const UNIT_OF_SYMBOL: Readonly<Record<string, string>> = { As: 'in2/in', fs: 'psi', d: 'in' };

function layerUnits(inputs: Numbers): Readonly<Record<string, string>> {
  return Object.fromEntries(
    Object.keys(inputs).map((symbol) => [symbol, UNIT_OF_SYMBOL[symbol.replace(/\d+$/, '')] ?? '']),
  );
}
