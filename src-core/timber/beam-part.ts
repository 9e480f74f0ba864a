/**
 * One part of a beam, worked from the state at its left edge by integrating four times (Macaulay). Letters: x from the part's
 * left edge; EI y'' = -M, with y down.
 */
import type { BeamInput, BeamPart, PartLoads } from './beam';

/** The loads between two places, measured from the first. A point load on a support goes to the part on its left. */
export function partLoads(input: BeamInput, fromIn: number, toIn: number, lengthIn: number): PartLoads {
  if (!(toIn > fromIn)) return { uniform: [], points: [] };
  const uniform = input.uniform
    .map((u) => ({
      fromIn: Math.max(u.fromIn, fromIn) - fromIn,
      toIn: Math.min(u.toIn, toIn) - fromIn,
      loadLbfPerIn: u.loadLbfPerIn,
    }))
    .filter((u) => u.toIn > u.fromIn);
  const points = input.points
    .map(({ atIn, loadLbf }) => ({ atIn: Math.min(lengthIn, Math.max(0, atIn)), loadLbf }))
    .filter(({ atIn }) => (atIn > fromIn || fromIn === 0) && atIn <= toIn)
    .map(({ atIn, loadLbf }) => ({ atIn: atIn - fromIn, loadLbf }));
  return { uniform, points };
}

/** What the loads left of x add to an integral of the given order: 0 shear, 1 moment, 2 and 3 its integrals. */
function loadIntegral(loads: PartLoads, x: number, order: 0 | 1 | 2 | 3): number {
  let sum = 0;
  for (const { atIn, loadLbf } of loads.points) {
    if (x >= atIn) sum -= (loadLbf * (x - atIn) ** order) / FACTORIAL[order];
  }
  for (const { fromIn, toIn, loadLbfPerIn } of loads.uniform) {
    const power = order + 1;
    const begun = Math.max(0, x - fromIn) ** power;
    const ended = Math.max(0, x - toIn) ** power;
    sum -= (loadLbfPerIn * (begun - ended)) / FACTORIAL[power]!;
  }
  return sum;
}

const FACTORIAL = [1, 1, 2, 6, 24] as const;

/** Point loads that stand at x itself, lbf: the step of the shear there. */
function stepAtLbf(loads: PartLoads, x: number): number {
  return loads.points.reduce((sum, { atIn, loadLbf }) => (atIn === x ? sum + loadLbf : sum), 0);
}

/** State of a part at one place. */
export interface PartState {
  readonly momentLbfIn: number;
  /** Just left of the place, and just right of it. */
  readonly shearBeforeLbf: number;
  readonly shearAfterLbf: number;
  readonly slopeRatio: number;
  readonly deflectionIn: number;
}

/** Moment lbf-in, shear lbf, slope and deflection in of a part, x inches from its left edge. */
export function partState(part: BeamPart, x: number): PartState {
  const { loads, momentLbfIn: M, shearLbf: V, stiffnessLbfIn2: EI } = part;
  const shearAfterLbf = V + loadIntegral(loads, x, 0);
  const bent = M * x + (V * x ** 2) / 2 + loadIntegral(loads, x, 2);
  const sagged = (M * x ** 2) / 2 + (V * x ** 3) / 6 + loadIntegral(loads, x, 3);
  return {
    momentLbfIn: M + V * x + loadIntegral(loads, x, 1),
    shearBeforeLbf: shearAfterLbf + stepAtLbf(loads, x),
    shearAfterLbf,
    slopeRatio: part.slopeRatio - bent / EI,
    deflectionIn: part.deflectionIn + part.slopeRatio * x - sagged / EI,
  };
}

type Stretch = Pick<BeamPart, 'fromIn' | 'lengthIn' | 'stiffnessLbfIn2' | 'loads'>;

/** A span between two supports with the moments over them, lbf-in. */
export function spanPart(stretch: Stretch, leftLbfIn: number, rightLbfIn: number): BeamPart {
  const { lengthIn: L, loads } = stretch;
  const shearLbf = (rightLbfIn - leftLbfIn - loadIntegral(loads, L, 1)) / L;
  const level: BeamPart = {
    ...stretch,
    kind: 'span',
    momentLbfIn: leftLbfIn,
    shearLbf,
    slopeRatio: 0,
    deflectionIn: 0,
  };
  // Turned so that its right end, too, rests on its support.
  return { ...level, slopeRatio: -partState(level, L).deflectionIn / L };
}

/** Slopes at the ends of a span that rests freely, as positive numbers where it sags. */
export function freeEndSlopes(stretch: Stretch): { readonly left: number; readonly right: number } {
  const free = spanPart(stretch, 0, 0);
  return { left: free.slopeRatio, right: -partState(free, stretch.lengthIn).slopeRatio };
}

/** The end past the first support: free at its tip, and as steep at the support as the span there. */
export function leftEndPart(stretch: Stretch, slopeAtSupportRatio: number): BeamPart {
  const level: BeamPart = {
    ...stretch,
    kind: 'left-end',
    momentLbfIn: 0,
    shearLbf: 0,
    slopeRatio: 0,
    deflectionIn: 0,
  };
  const turned = {
    ...level,
    slopeRatio: slopeAtSupportRatio - partState(level, stretch.lengthIn).slopeRatio,
  };
  return { ...turned, deflectionIn: -partState(turned, stretch.lengthIn).deflectionIn };
}

/** The end past the last support, as steep there as the span. */
export function rightEndPart(stretch: Stretch, slopeAtSupportRatio: number): BeamPart {
  const { lengthIn: L, loads } = stretch;
  const shearLbf = -loadIntegral(loads, L, 0);
  return {
    ...stretch,
    kind: 'right-end',
    momentLbfIn: -shearLbf * L - loadIntegral(loads, L, 1),
    shearLbf,
    slopeRatio: slopeAtSupportRatio,
    deflectionIn: 0,
  };
}
