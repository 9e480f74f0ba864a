/** Shear that counts near a support. */
import type { BeamPart, PointLoad, SolvedBeam } from './beam';
import { partState } from './beam-part';
import { loadBreaks } from './beam-state';
import { solveBeam } from './solve-beam';

/**
 * Largest shear of a beam, lbf, with the uniform load within a depth of a support left out and a point load there reduced to its
 * distance over the depth. d: depth of the member, in. Holds where the load lies on one face and the bearing on the other; the depth
 * is measured from the middle of the bearing, which is on the safe side. In a span under two depths long the shear halfway counts.
 * NDS 2018 3.4.3.1(a).
 */
export function designShearLbf(beam: SolvedBeam, depthIn: number): number {
  const supports = beam.supports.map(({ atIn }) => atIn);
  const points = beam.input.points.map((point) => reduced(point, supports, depthIn));
  const reducedBeam = points.length === 0 ? beam : solveBeam({ ...beam.input, points });
  return Math.max(...reducedBeam.parts.map((part) => partDesignShearLbf(part, depthIn)));
}

function reduced(point: PointLoad, supports: readonly number[], depthIn: number): PointLoad {
  const offIn = Math.min(...supports.map((atIn) => Math.abs(point.atIn - atIn)));
  return { ...point, loadLbf: point.loadLbf * Math.min(1, offIn / depthIn) };
}

function partDesignShearLbf(part: BeamPart, depthIn: number): number {
  const { lengthIn, kind } = part;
  const reachIn = Math.min(depthIn, kind === 'span' ? lengthIn / 2 : lengthIn);
  const fromIn = kind === 'left-end' ? 0 : reachIn;
  const toIn = kind === 'right-end' ? lengthIn : lengthIn - reachIn;
  const between = loadBreaks(part).filter((x) => x > fromIn && x < toIn);
  const shears = between.flatMap((x) => {
    const { shearBeforeLbf, shearAfterLbf } = partState(part, x);
    return [shearBeforeLbf, shearAfterLbf];
  });
  const atFrom = partState(part, fromIn).shearAfterLbf;
  const atTo = partState(part, toIn).shearBeforeLbf;
  shears.push(atFrom, atTo);
  // Only the uniform load near a support is left out; what is left of the point loads there still counts.
  if (kind !== 'left-end') shears.push(atFrom + pointsLbf(part, 0, fromIn));
  if (kind !== 'right-end') shears.push(atTo - pointsLbf(part, toIn, lengthIn));
  return Math.max(...shears.map(Math.abs));
}

function pointsLbf({ loads }: BeamPart, fromIn: number, toIn: number): number {
  return loads.points.reduce(
    (sum, { atIn, loadLbf }) => (atIn >= fromIn && atIn <= toIn ? sum + loadLbf : sum),
    0,
  );
}
