/** How long to cut a leg, so that soffit, joists and plate come out at their height on the floor as it is. */
import { type Point, patchOutline } from '../outline';
import { printLength, type UnitSystem } from '../units';
import { formula, type Line } from '../workings';
import { floorAt } from './floor-at';
import type { FloorSurface } from './floor-surface';
import type { Symbols } from './symbols';

/**
 * Length of a leg, in: from the floor under it to the underside of the top plate, less the shim. hs: soffit, hf: floor, heights
 * above one datum; tp: panel; dj: joist; tt: top plate; g: shim allowance, in. Camber is for the caller to add to hs, a sole or pad
 * to tt. Source: arithmetic of the stack.
 */
export const legLength = formula<Symbols<'hs' | 'tp' | 'dj' | 'tt' | 'g' | 'hf'>>({
  symbol: 'Ll',
  label: 'length of the leg',
  formula: 'hs - tp - dj - tt - g - hf',
  units: { hs: 'in', tp: 'in', dj: 'in', tt: 'in', g: 'in', hf: 'in' },
  unit: 'in',
  source: 'arithmetic of the stack from floor to soffit',
  compute: ({ hs, tp, dj, tt, g, hf }) => hs - tp - dj - tt - g - hf,
});

/** What is left for the shim, in. Ll: length worked out, Lc: length cut, g: shim allowance, in. */
export const shimThickness = formula<Symbols<'g' | 'Ll' | 'Lc'>>({
  symbol: 'gs',
  label: 'thickness of the shim',
  formula: 'g + Ll - Lc',
  units: { g: 'in', Ll: 'in', Lc: 'in' },
  unit: 'in',
  source: 'arithmetic of the stack from floor to soffit',
  compute: ({ g, Ll, Lc }) => g + Ll - Lc,
});

/** What the shims at hand can do. */
export interface ShimRange {
  /** Thinnest pair of wedges that still bears. */
  readonly leastIn: number;
  readonly mostIn: number;
  /** Largest fall across a foot that wedges take up with full bearing. */
  readonly mostFallIn: number;
}

/** A pair of wedge shims: 1/16 to 3/4 in thick, 1/8 in of fall across the foot. Common practice, no source. */
export const WEDGE_SHIMS: ShimRange = { leastIn: 1 / 16, mostIn: 0.75, mostFallIn: 0.125 };

export interface LegInput {
  /** Middle of the foot in plan. */
  readonly at: Point;
  /** The foot in plan, 0 by 0 for a point; its width runs along the angle, its depth across. */
  readonly footWidthIn: number;
  readonly footDepthIn: number;
  readonly footAngleRad: number;
  readonly soffitIn: number;
  readonly panelIn: number;
  readonly joistIn: number;
  readonly plateIn: number;
  readonly shimIn: number;
  readonly shims: ShimRange;
  /** Legs are cut to whole steps, the shorter: 1/16 in, or a millimetre. */
  readonly cutStepIn: number;
  /** Length the leg has already been cut to, or that many legs share; null to cut this one to the floor. */
  readonly cutLengthIn: number | null;
  /** Units in which sentences are written. */
  readonly shownIn: UnitSystem;
}

export type LegWarningCode =
  | 'no-room'
  | 'foot-on-slope'
  | 'shim-too-thin'
  | 'shim-too-thick'
  | 'floor-not-read';

export interface LegWarning {
  readonly code: LegWarningCode;
  readonly sentence: string;
}

export interface Leg {
  /** As worked out, before cutting to a step. */
  readonly lengthIn: number;
  /** As cut; 0 where there is no room for a leg. */
  readonly cutIn: number;
  readonly shimIn: number;
  /** Under the foot: the highest of its corners and its middle. */
  readonly floorIn: number;
  /** Across the foot, between its highest and lowest corner. */
  readonly footFallIn: number;
  /** "28 in, shim 9/32 in". */
  readonly words: string;
  readonly warnings: readonly LegWarning[];
  readonly lines: readonly Line[];
}

/** A length this little short of a step is that step: rounding. */
const STEP_SLACK = 1e-6;

/**
 * A leg on the floor at its place: length worked out, cut to the shorter step, the rest in the shim, all in. A foot cut square on a
 * slope stands on its highest corner, so the leg is measured from there. Warns where wedges cannot serve.
 */
export function legAt(floor: FloorSurface, input: LegInput): Leg {
  const { shownIn: system } = input;
  const foot = footPlaces(input).map((place) => floorAt(floor, place));
  const heights = foot.map(({ heightIn }) => heightIn);
  const floorIn = Math.max(...heights);
  const footFallIn = floorIn - Math.min(...heights);
  const length = legLength({
    hs: input.soffitIn,
    tp: input.panelIn,
    dj: input.joistIn,
    tt: input.plateIn,
    g: input.shimIn,
    hf: floorIn,
  });
  const wholeStepsIn = Math.floor(length.value / input.cutStepIn + STEP_SLACK) * input.cutStepIn;
  const cutIn = input.cutLengthIn ?? Math.max(0, wholeStepsIn);
  const shim = shimThickness({ g: input.shimIn, Ll: length.value, Lc: cutIn });
  return {
    lengthIn: length.value,
    cutIn,
    shimIn: shim.value,
    floorIn,
    footFallIn,
    words: `${printLength(cutIn, { system })}, shim ${printFine(shim.value, system)}`,
    warnings: [
      ...(wholeStepsIn > 0 ? shimWarnings(shim.value, input) : [NO_ROOM]),
      ...footWarnings(footFallIn, input),
      ...(foot[0]!.isBeyond ? [FLOOR_NOT_READ] : []),
    ],
    lines: [length.line, shim.line],
  };
}

const NO_ROOM: LegWarning = {
  code: 'no-room',
  sentence: 'There is no room for a leg between the floor and the top plate here.',
};

const FLOOR_NOT_READ: LegWarning = {
  code: 'floor-not-read',
  sentence: 'The readings do not reach this leg; its floor is carried on from them. Read it here.',
};

/** Shims to a thirty-second, or a millimetre. */
function printFine(valueIn: number, system: UnitSystem): string {
  return printLength(valueIn, { system, roundToIn: 1 / 32 });
}

function shimWarnings(shimIn: number, { shims, shownIn }: LegInput): LegWarning[] {
  const comes = `The shim comes to ${printFine(shimIn, shownIn)}`;
  if (shimIn < shims.leastIn - STEP_SLACK) {
    const least = printFine(shims.leastIn, shownIn);
    return [
      {
        code: 'shim-too-thin',
        sentence: `${comes}, under the ${least} that wedges need. Cut this leg shorter.`,
      },
    ];
  }
  if (shimIn > shims.mostIn + STEP_SLACK) {
    const most = printFine(shims.mostIn, shownIn);
    return [
      {
        code: 'shim-too-thick',
        sentence: `${comes}, over the ${most} that wedges reach. Cut a longer leg or add a block.`,
      },
    ];
  }
  return [];
}

function footWarnings(footFallIn: number, { shims, shownIn }: LegInput): LegWarning[] {
  if (footFallIn <= shims.mostFallIn + STEP_SLACK) return [];
  const [fall, most] = [printFine(footFallIn, shownIn), printFine(shims.mostFallIn, shownIn)];
  return [
    {
      code: 'foot-on-slope',
      sentence: `The floor falls ${fall} across the foot, more than the ${most} that wedges take up. Cut the foot to the slope or bed it.`,
    },
  ];
}

/** Middle of a foot, then its corners. */
function footPlaces({ at, footWidthIn, footDepthIn, footAngleRad }: LegInput): readonly Point[] {
  if (!(footWidthIn > 0 && footDepthIn > 0)) return [at];
  return [at, ...patchOutline(at, footWidthIn, footDepthIn, footAngleRad)];
}
