/** Steps of the plan in either system: what the grid shows, what a drag keeps to, what an arrow key moves by. */
import type { UnitSystem } from '../../src-core/units';
import { MM_PER_IN } from '../../src-core/units';

/** Grid that drags and drawn corners keep to: an eighth of an inch, or five millimetres. */
export function gridIn(system: UnitSystem): number {
  return system === 'imperial' ? 1 / 8 : 5 / MM_PER_IN;
}

/** The smallest step: a sixteenth of an inch, or a millimetre. */
export function smallestIn(system: UnitSystem): number {
  return system === 'imperial' ? 1 / 16 : 1 / MM_PER_IN;
}

const GRID_STEPS: { readonly [S in UnitSystem]: readonly number[] } = {
  imperial: [1 / 8, 1, 6, 12, 60, 120, 600],
  metric: [5, 10, 100, 500, 1000, 5000, 20_000].map((mm) => mm / MM_PER_IN),
};
/** Lines closer together than this are a grey wash. */
const CLOSEST_LINES_PX = 10;

export interface GridSteps {
  readonly fineIn: number;
  readonly coarseIn: number;
}

/** Spacing of the lines of the grid: the closest that can be told apart, and the next round step above. */
export function gridSteps(pxPerIn: number, system: UnitSystem): GridSteps {
  const steps = GRID_STEPS[system];
  const found = steps.findIndex((stepIn) => stepIn * pxPerIn >= CLOSEST_LINES_PX);
  const index = Math.min(found < 0 ? steps.length : found, steps.length - 2);
  return { fineIn: steps[index]!, coarseIn: steps[index + 1]! };
}

export interface KeyPress {
  readonly key: string;
  readonly shiftKey: boolean;
  readonly altKey: boolean;
}

const ARROWS: { readonly [key: string]: readonly [number, number] } = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

/** How far an arrow key moves a thing: a step of the grid, ten with Shift, the smallest with Alt. null for any other key. */
export function arrowStep({ key, shiftKey, altKey }: KeyPress, system: UnitSystem) {
  const arrow = ARROWS[key];
  if (arrow === undefined) return null;
  const stepIn = altKey ? smallestIn(system) : gridIn(system) * (shiftKey ? 10 : 1);
  return { dxIn: arrow[0] * stepIn, dyIn: arrow[1] * stepIn };
}
