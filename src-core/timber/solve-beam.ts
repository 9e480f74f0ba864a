/** Solves a continuous beam by the three-moment equation (Clapeyron; any structures text). Supports are level and do not sink. */
import type { BeamInput, BeamPart, BeamSupport, SolvedBeam } from './beam';
import { freeEndSlopes, leftEndPart, partLoads, partState, rightEndPart, spanPart } from './beam-part';

/** Loads may miss a tip by rounding, in. */
const REACH_IN = 1e-6;

/**
 * Reactions lbf, moments over the supports lbf-in, and the state of every part of a beam on level supports. A support holds
 * both ways: look for negative reactions, since timber that only rests there lifts instead. Throws on a beam without a span or
 * with a load off it. Exact for beams without shear deformation (any structures text).
 */
export function solveBeam(input: BeamInput): SolvedBeam {
  const borders = supportPlaces(input);
  const lastIn = borders.at(-1)!;
  const lengthIn = lastIn + input.rightEndIn;
  checkLoads(input, lengthIn);
  const stretch = (fromIn: number, toIn: number, stiffnessLbfIn2: number) => ({
    fromIn,
    lengthIn: toIn - fromIn,
    stiffnessLbfIn2,
    loads: partLoads(input, fromIn, toIn, lengthIn),
  });
  const stretches = input.spans.map(({ stiffnessLbfIn2 }, i) =>
    stretch(borders[i]!, borders[i + 1]!, stiffnessLbfIn2),
  );
  const left = stretch(0, input.leftEndIn, input.spans[0]!.stiffnessLbfIn2);
  const right = stretch(lastIn, lengthIn, input.spans.at(-1)!.stiffnessLbfIn2);

  const leftLbfIn = partState(leftEndPart(left, 0), left.lengthIn).momentLbfIn;
  const rightLbfIn = rightEndPart(right, 0).momentLbfIn;
  const moments = supportMoments(stretches, leftLbfIn, rightLbfIn);

  const spans = stretches.map((each, i) => spanPart(each, moments[i]!, moments[i + 1]!));
  const lastSpan = spans.at(-1)!;
  const leftEnd = leftEndPart(left, spans[0]!.slopeRatio);
  const rightEnd = rightEndPart(right, partState(lastSpan, lastSpan.lengthIn).slopeRatio);
  return {
    input,
    lengthIn,
    parts: [leftEnd, ...spans, rightEnd].filter((part) => part.lengthIn > 0),
    supports: supportsOf(borders, moments, [leftEnd, ...spans, rightEnd]),
  };
}

function supportPlaces({ leftEndIn, rightEndIn, spans }: BeamInput): number[] {
  if (spans.length === 0) throw new Error('A beam needs at least one span between two supports');
  if (!(leftEndIn >= 0 && rightEndIn >= 0)) {
    throw new Error(`Ends of a beam cannot be ${leftEndIn} and ${rightEndIn} in long`);
  }
  const borders = [leftEndIn];
  for (const { lengthIn, stiffnessLbfIn2 } of spans) {
    if (!(lengthIn > 0 && stiffnessLbfIn2 > 0)) {
      throw new Error(`A span cannot be ${lengthIn} in long and ${stiffnessLbfIn2} lbf in2 stiff`);
    }
    borders.push(borders.at(-1)! + lengthIn);
  }
  return borders;
}

function checkLoads({ uniform, points }: BeamInput, lengthIn: number): void {
  const places = [...points.map(({ atIn }) => atIn), ...uniform.flatMap((u) => [u.fromIn, u.toIn])];
  const astray = places.find((atIn) => !(atIn >= -REACH_IN && atIn <= lengthIn + REACH_IN));
  if (astray !== undefined) throw new Error(`A load at ${astray} in is off a beam ${lengthIn} in long`);
}

/** Moments over all supports, lbf-in. Those at the ends are known; those between solve a tridiagonal set (Thomas). */
function supportMoments(
  stretches: readonly Parameters<typeof spanPart>[0][],
  leftLbfIn: number,
  rightLbfIn: number,
): number[] {
  const n = stretches.length;
  const flex = stretches.map(({ lengthIn, stiffnessLbfIn2 }) => lengthIn / stiffnessLbfIn2);
  const slopes = stretches.map(freeEndSlopes);
  const above = new Array<number>(n).fill(0);
  const moments = new Array<number>(n + 1).fill(0);
  moments[0] = leftLbfIn;
  moments[n] = rightLbfIn;

  // forward: row i ties the supports i - 1, i and i + 1 together
  for (let i = 1; i < n; i++) {
    const [before, after] = [flex[i - 1]!, flex[i]!];
    const pivot = 2 * (before + after) - before * above[i - 1]!;
    const free = -6 * (slopes[i - 1]!.right + slopes[i]!.left);
    moments[i] = (free - before * moments[i - 1]!) / pivot;
    above[i] = after / pivot;
  }

  // back
  for (let i = n - 1; i >= 1; i--) moments[i] = moments[i]! - above[i]! * moments[i + 1]!;
  return moments;
}

/** Reactions from the steps of the shear. `parts` holds both ends, of no length where there is none. */
function supportsOf(
  borders: readonly number[],
  moments: readonly number[],
  parts: readonly BeamPart[],
): BeamSupport[] {
  return borders.map((atIn, i) => {
    const [before, after] = [parts[i]!, parts[i + 1]!];
    const arriving = partState(before, before.lengthIn).shearAfterLbf;
    return { atIn, momentLbfIn: moments[i]!, reactionLbf: after.shearLbf - arriving };
  });
}
