/** How far mesh sinks between what carries it, under its own weight and under a shovelful of concrete. */
import { STEEL_MODULUS_PSI } from '../concrete';
import type { Job, Piece } from '../job';
import { printLength } from '../units';
import { formula } from '../workings';
import { meshMass } from './formulas';
import type { MeshLayer } from './lap-lengths';
import {
  PLACING_LOAD_LBF,
  PLACING_WIDTH_IN,
  SAG_LIMIT_IN,
  STANDOFF_STEP_IN,
  STANDOFFS_APART_IN,
  STANDOFFS_CLOSEST_IN,
  STEEL_LB_PER_IN3,
} from './practice';
import type { Stacked, SteelLayer } from './stacking';
import { steelTrace } from './traces';
import type { MeshSag } from './types';

/** Second moment of area of a round wire, in4. d: diameter, in. Any mechanics text. */
export const wireInertia = formula<{ d: number }>({
  symbol: 'I',
  label: 'second moment of area of a wire',
  formula: '3.14159265 * d^4 / 64',
  units: { d: 'in' },
  unit: 'in4',
  source: 'circle, mechanics of materials',
  compute: ({ d }) => (Math.PI * d ** 4) / 64,
});

/** Load on a wire from the mesh within its spacing, lbf/in. wm: mass of mesh, lb/in2; s: spacing, in. */
export const wireLoad = formula<{ wm: number; s: number }>({
  symbol: 'w',
  label: 'own weight of the mesh on one wire',
  formula: 'wm * s',
  units: { wm: 'lb/in2', s: 'in' },
  unit: 'lbf/in',
  source: 'geometry',
  compute: ({ wm, s }) => wm * s,
});

/**
 * Sag of an inner span of a wire that runs on over many equal spans, each with its own weight: as with fixed ends, in.
 * w: lbf/in; L: span, in; E: psi; I: in4. AISC Manual Table 3-23 (fixed at both ends), from memory.
 */
export const ownSag = formula<{ w: number; L: number; E: number; I: number }>({
  symbol: 'da',
  label: 'sag under its own weight, a wire over many equal spans',
  formula: 'w * L^4 / (384 * E * I)',
  units: { w: 'lbf/in', L: 'in', E: 'psi', I: 'in4' },
  unit: 'in',
  source: 'beam fixed at both ends, AISC Manual Table 3-23',
  fromMemory: true,
  compute: ({ w, L, E, I }) => (w * L ** 4) / (384 * E * I),
});

/**
 * Sag in the middle of the one loaded span of wires that run on over many equal spans, in. P: load, lbf; L: span, in;
 * E: psi; n1, n2: wires below the load each way, which share it by stiffness; I1, I2: in4. By the three-moment
 * equation the end moments are PL/8 * sqrt(3) / (1 + sqrt(3)); PL^3/48 less what they take off.
 */
export const placingSag = formula<{
  P: number;
  L: number;
  E: number;
  n1: number;
  I1: number;
  n2: number;
  I2: number;
}>({
  symbol: 'dp',
  label: 'sag under a shovelful of concrete between two standoffs',
  formula: '(1 / 48 - sqrt(3) / (64 * (1 + sqrt(3)))) * P * L^3 / (E * (n1 * I1 + n2 * I2))',
  units: { P: 'lbf', L: 'in', E: 'psi', n1: '', I1: 'in4', n2: '', I2: 'in4' },
  unit: 'in',
  source: 'three-moment equation, one span of many loaded; the load is common practice, no source',
  compute: ({ P, L, E, n1, I1, n2, I2 }) =>
    ((1 / 48 - Math.sqrt(3) / (64 * (1 + Math.sqrt(3)))) * P * L ** 3) / (E * (n1 * I1 + n2 * I2)),
});

/** Stress in a wire below that load, psi. d: its diameter, in; other symbols as in `placingSag`. */
export const placingStress = formula<{
  P: number;
  L: number;
  d: number;
  n1: number;
  I1: number;
  n2: number;
  I2: number;
}>({
  symbol: 'fw',
  label: 'stress in the wire below a shovelful',
  formula: '(1 / 4 - sqrt(3) / (8 * (1 + sqrt(3)))) * P * L * d / (2 * (n1 * I1 + n2 * I2))',
  units: { P: 'lbf', L: 'in', d: 'in', n1: '', I1: 'in4', n2: '', I2: 'in4' },
  unit: 'psi',
  source: 'three-moment equation, one span of many loaded',
  compute: ({ P, L, d, n1, I1, n2, I2 }) =>
    ((1 / 4 - Math.sqrt(3) / (8 * (1 + Math.sqrt(3)))) * P * L * d) / (2 * (n1 * I1 + n2 * I2)),
});

/** Span that holds a sag to a limit, in: the sag goes with the third power of the span, or faster. */
export const spanForSag = formula<{ L: number; lim: number; ds: number }>({
  symbol: 'Ls',
  label: 'span that holds the sag to the limit',
  formula: 'L * cbrt(lim / ds)',
  units: { L: 'in', lim: 'in', ds: 'in' },
  unit: 'in',
  source: 'sag of a beam goes with the third power of its span',
  compute: ({ L, lim, ds }) => L * Math.cbrt(lim / ds),
});

/** Moment at which a round bar gives way over that at which it begins to yield: its shape factor. Mechanics of materials. */
const ROUND_SHAPE_RATIO = 16 / (3 * Math.PI);

/** Span over which no wire gives way, in: its stress goes with the span. fy: yield, psi; fw: elastic stress over L, psi. */
export const spanForWire = formula<{ L: number; fy: number; fw: number }>({
  symbol: 'Lw',
  label: 'span over which the wire does not give way',
  formula: 'L * 16 / (3 * 3.14159265) * fy / fw',
  units: { L: 'in', fy: 'psi', fw: 'psi' },
  unit: 'in',
  source: 'shape factor of a round bar, 16 / (3 pi), mechanics of materials',
  compute: ({ L, fy, fw }) => (L * ROUND_SHAPE_RATIO * fy) / fw,
});

/** Everything that the sag over a span is worked from. */
function worked(layer: MeshLayer, L: number) {
  const E = STEEL_MODULUS_PSI;
  const [I1, I2] = [wireInertia({ d: layer.wireIn }), wireInertia({ d: layer.crossWireIn })];
  const n1 = Math.max(1, PLACING_WIDTH_IN / layer.spacingIn);
  const n2 = Math.max(1, PLACING_WIDTH_IN / layer.crossSpacingIn);
  const weight = meshMass({
    rho: STEEL_LB_PER_IN3,
    d1: layer.wireIn,
    s1: layer.spacingIn,
    d2: layer.crossWireIn,
    s2: layer.crossSpacingIn,
  });
  const load = wireLoad({ wm: weight.value, s: layer.spacingIn });
  const own = ownSag({ w: load.value, L, E, I: I1.value });
  const shared = { P: PLACING_LOAD_LBF, L, n1, I1: I1.value, n2, I2: I2.value };
  const placing = placingSag({ ...shared, E });
  const stress = placingStress({ ...shared, d: Math.max(layer.wireIn, layer.crossWireIn) });
  const sagIn = own.value + placing.value;
  const forSag = spanForSag({ L, lim: SAG_LIMIT_IN, ds: sagIn });
  const forWire = spanForWire({ L, fy: layer.yieldPsi, fw: stress.value });
  return {
    lines: {
      sections: wiresAlike(layer) ? [I1.line] : [I1.line, I2.line],
      weight,
      load,
      own,
      placing,
      stress,
    },
    spans: [forSag.line, forWire.line],
    ownSagIn: own.value,
    placingSagIn: placing.value,
    sagIn,
    stressPsi: stress.value,
    mostSpanIn: Math.min(forSag.value, forWire.value),
    isHeld: sagIn <= SAG_LIMIT_IN && forWire.value >= L,
  };
}

/**
 * Standoffs apart under a layer, in: as the job sets them; else about 10 in, and under mesh that would sink too far or
 * give way between those as close as holds it. Where that is closer than a hand reaches, standoffs are no cure, and they
 * stay at 10 in.
 */
export function standoffsApartIn(layer: SteelLayer, setIn: number | null): number {
  if (setIn !== null) return setIn;
  if (layer.kind !== 'mesh') return STANDOFFS_APART_IN;
  const { isHeld, mostSpanIn } = worked(layer, STANDOFFS_APART_IN);
  const closerIn = wholeStepsIn(mostSpanIn);
  return isHeld || closerIn < STANDOFFS_CLOSEST_IN ? STANDOFFS_APART_IN : closerIn;
}

function wholeStepsIn(spanIn: number): number {
  return Math.floor(spanIn / STANDOFF_STEP_IN) * STANDOFF_STEP_IN;
}

/** The sag of a mesh layer, by workings. Concrete below the mesh would carry it, and is not counted. */
export function meshSag(
  job: Job,
  piece: Piece,
  { undersideIn, restsOn }: Stacked,
  layer: MeshLayer,
): MeshSag {
  const setIn = job.forms.standoffSpacingIn;
  const spacingIn = standoffsApartIn(restsOn ?? layer, setIn);
  const L = restsOn === null ? spacingIn : Math.min(spacingIn, restsOn.spacingIn);
  const sag = worked(layer, L);
  const usual = worked(layer, STANDOFFS_APART_IN);
  const isCloser = setIn === null && restsOn === null && L < STANDOFFS_APART_IN;
  const staysBent = sag.stressPsi > layer.yieldPsi;
  const { sections, weight, load, own, placing, stress } = sag.lines;
  return {
    id: `${layer.id}-sag`,
    trace: steelTrace(piece, layer.id),
    layerId: layer.id,
    spanIn: L,
    ownSagIn: sag.ownSagIn,
    placingSagIn: sag.placingSagIn,
    sagIn: sag.sagIn,
    coverLeftIn: Math.max(0, undersideIn - sag.sagIn),
    staysBent,
    spanForLimitIn: sag.mostSpanIn,
    level: sag.isHeld ? 'enough' : 'caution',
    words: sagWords(job, layer.label ?? layer.id, {
      sagIn: sag.sagIn,
      spanIn: L,
      undersideIn,
      isHeld: sag.isHeld,
      staysBent,
      mostSpanIn: sag.mostSpanIn,
      usualSagIn: isCloser ? usual.sagIn : null,
    }),
    workings: [
      ...sections,
      weight.line,
      load.line,
      ...(isCloser
        ? [usual.lines.own.line, usual.lines.placing.line, usual.lines.stress.line, ...usual.spans]
        : []),
      own.line,
      placing.line,
      stress.line,
      ...(sag.isHeld ? [] : sag.spans),
    ],
  };
}

function wiresAlike({ wireIn, crossWireIn }: MeshLayer): boolean {
  return wireIn === crossWireIn;
}

function sagWords(
  job: Job,
  name: string,
  sag: {
    readonly sagIn: number;
    readonly spanIn: number;
    readonly undersideIn: number;
    readonly isHeld: boolean;
    readonly staysBent: boolean;
    readonly mostSpanIn: number;
    /** Sag at the usual spacing where a closer one was picked. */
    readonly usualSagIn: number | null;
  },
): string {
  const length = (valueIn: number) =>
    printLength(valueIn, { system: job.shownIn, roundToIn: 1 / 32, roundToMm: 0.5 });
  // Beyond yield a wire gives way further than it springs, so the figure is only the least.
  const figure = sag.staysBent ? `at least ${length(sag.sagIn)} and stays bent` : length(sag.sagIn);
  const onForm = sag.sagIn >= sag.undersideIn ? ' It then lies on the form.' : '';
  const first = `Between standoffs ${length(sag.spanIn)} apart "${name}" sinks ${figure} under a shovelful of concrete.${onForm}`;
  if (sag.isHeld) {
    return sag.usualSagIn === null
      ? first
      : `${first} At ${length(STANDOFFS_APART_IN)} it would sink ${length(sag.usualSagIn)}.`;
  }
  const spanIn = wholeStepsIn(sag.mostSpanIn);
  const cure =
    spanIn >= STANDOFFS_CLOSEST_IN
      ? `Set standoffs ${length(spanIn)} apart, or place concrete under the mesh first and never step on it.`
      : 'Place concrete under the mesh first and never step on it.';
  return `${first} ${cure}`;
}
