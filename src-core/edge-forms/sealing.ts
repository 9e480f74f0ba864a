/** Tape and sealant. */
import { IN3_PER_GAL } from '../units';
import type { Line } from '../workings';
import { formula } from '../workings';
import { BEAD_RADIUS_IN, TUBE_FL_OZ } from './practice';
import type { EdgeForm, FormJunction, Plug, Sealing } from './types';

/** Fluid ounces in a US gallon. Exact. Source: NIST SP 811 B.8, fluid ounce (US). */
const FL_OZ_PER_GAL = 128;

/** Sealant in a bead, in3. r: radius of its quarter round, in; Ls: length, in. Plane geometry: a quarter of a circle. */
export const beadVolume = formula<{ r: number; Ls: number }>({
  symbol: 'Vs',
  label: 'sealant in the bead',
  formula: '3.14159265 / 4 * r^2 * Ls',
  units: { r: 'in', Ls: 'in' },
  unit: 'in3',
  source: 'plane geometry: quarter round; its radius common practice, no source',
  compute: ({ r, Ls }) => (Math.PI / 4) * r ** 2 * Ls,
});

/** Whole tubes. Vs: sealant, in3; Vt: a tube, in3. */
export const tubeCount = formula<{ Vs: number; Vt: number }>({
  symbol: 'nt',
  label: 'tubes of sealant',
  formula: 'ceil(Vs / Vt)',
  units: { Vs: 'in3', Vt: 'in3' },
  unit: '',
  source: 'tube of 10.1 US fl oz, 300 mL: common size',
  compute: ({ Vs, Vt }) => Math.ceil(Vs / Vt),
});

/** A tube of sealant, in3. */
export const TUBE_IN3 = (TUBE_FL_OZ / FL_OZ_PER_GAL) * IN3_PER_GAL;

/** Tape and bead of one set of forms: a bead along the foot of every form and plug and up every corner. */
export function sealingOf(
  forms: readonly EdgeForm[],
  plugs: readonly Plug[],
  junctions: readonly FormJunction[],
): Sealing {
  const sum = (lengthsIn: readonly number[]) => lengthsIn.reduce((a, b) => a + b, 0);
  const corners = junctions.filter(({ kind }) => kind !== 'joint');
  const joints = junctions.filter(({ kind }) => kind === 'joint');
  return {
    cornerTapeIn: sum(corners.map(({ tapeIn }) => tapeIn)),
    jointTapeIn: sum(joints.map(({ tapeIn }) => tapeIn)),
    beadIn: sum([
      ...forms.map(({ slabFaceIn }) => slabFaceIn),
      ...plugs.map(({ perimeterIn }) => perimeterIn),
      ...junctions.map(({ sealantIn }) => sealantIn),
    ]),
  };
}

export interface Sealant {
  readonly beadIn: number;
  readonly volumeIn3: number;
  readonly tubes: number;
  readonly lines: readonly Line[];
}

/** Sealant for a length of bead, in, nothing added for waste. */
export function sealantFor(beadIn: number): Sealant {
  const volume = beadVolume({ r: BEAD_RADIUS_IN, Ls: beadIn });
  const tubes = tubeCount({ Vs: volume.value, Vt: TUBE_IN3 });
  return { beadIn, volumeIn3: volume.value, tubes: tubes.value, lines: [volume.line, tubes.line] };
}
