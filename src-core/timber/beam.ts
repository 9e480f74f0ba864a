/**
 * Words of a continuous beam: what goes in and what comes out of `solveBeam`.
 *
 * Signs: loads, reactions up and deflections down are positive; a sagging moment is positive; shear is the rise of the moment
 * along the beam. x runs from the left tip, in.
 */

export interface BeamSpan {
  readonly lengthIn: number;
  /** E I. */
  readonly stiffnessLbfIn2: number;
}

export interface UniformLoad {
  readonly fromIn: number;
  readonly toIn: number;
  readonly loadLbfPerIn: number;
}

export interface PointLoad {
  readonly atIn: number;
  readonly loadLbf: number;
}

export interface BeamInput {
  /** Length of the end past the first support, 0 for none; as stiff as the first span. */
  readonly leftEndIn: number;
  readonly spans: readonly BeamSpan[];
  /** Length of the end past the last support, 0 for none; as stiff as the last span. */
  readonly rightEndIn: number;
  readonly uniform: readonly UniformLoad[];
  readonly points: readonly PointLoad[];
}

/** Loads of one part, measured from its left edge. */
export interface PartLoads {
  readonly uniform: readonly UniformLoad[];
  readonly points: readonly PointLoad[];
}

export type BeamPartKind = 'left-end' | 'span' | 'right-end';

/** A stretch of beam without a support inside it, with the state at its left edge from which all else follows. */
export interface BeamPart {
  readonly kind: BeamPartKind;
  readonly fromIn: number;
  readonly lengthIn: number;
  readonly stiffnessLbfIn2: number;
  readonly loads: PartLoads;
  readonly momentLbfIn: number;
  readonly shearLbf: number;
  readonly slopeRatio: number;
  readonly deflectionIn: number;
}

export interface BeamSupport {
  readonly atIn: number;
  /** Negative where the beam lifts: timber that only rests there is not held by it. */
  readonly reactionLbf: number;
  /** Negative where it hogs. */
  readonly momentLbfIn: number;
}

export interface SolvedBeam {
  readonly input: BeamInput;
  readonly lengthIn: number;
  /** From left to right. */
  readonly parts: readonly BeamPart[];
  readonly supports: readonly BeamSupport[];
}
