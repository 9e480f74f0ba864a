/**
 * What bars and cracks feel of a moment tensor (Mx, My, Mxy): turned axes, principal moments, Wood-Armer moments, averages.
 * Signs as in dkt: sagging positive, lbf-in per inch of width.
 */

import { formula } from '../workings';
import type { TriangleMesh } from './dkt';
import type { MomentField } from './moments';
import type { Locate } from './plate-loads';

/** Moments at one point, lbf-in per inch of width. */
export interface MomentTensor {
  readonly mx: number;
  readonly my: number;
  readonly mxy: number;
}

/** Moments in axes turned by `angleRad` from x towards y. Source: T&WK, article on moments in inclined sections. */
export function turnMoments(moments: MomentTensor, angleRad: number): MomentTensor {
  const { mx, my, mxy } = moments;
  const c = Math.cos(angleRad);
  const s = Math.sin(angleRad);
  return {
    mx: mx * c * c + my * s * s + 2 * mxy * c * s,
    my: mx * s * s + my * c * c - 2 * mxy * c * s,
    mxy: (my - mx) * c * s + mxy * (c * c - s * s),
  };
}

export interface PrincipalMoments {
  /** Largest sagging, or least hogging. */
  readonly majorLbfInPerIn: number;
  /** Largest hogging, or least sagging. */
  readonly minorLbfInPerIn: number;
  /** Direction that the major moment bends the slab along; a bottom crack runs square to it. From x towards y. */
  readonly angleRad: number;
}

/** Principal moments. Source: Mohr's circle, any textbook of strength of materials. */
export function principalMoments({ mx, my, mxy }: MomentTensor): PrincipalMoments {
  const middle = (mx + my) / 2;
  const radius = Math.hypot((mx - my) / 2, mxy);
  return {
    majorLbfInPerIn: middle + radius,
    minorLbfInPerIn: middle - radius,
    angleRad: Math.atan2(2 * mxy, mx - my) / 2,
  };
}

const WOOD_ARMER_SOURCE =
  'Wood 1968 and Armer 1968, rules for orthogonal reinforcement, as given in textbooks on concrete slabs';

/** Moment for bars along one direction: `Mb` along the bars, `Mbt` the twist in the bars' axes, all by size (tension positive). */
export const woodArmerMoment = formula<{ Mb: number; Mbt: number }>({
  symbol: 'Mb_design',
  label: 'Moment for the bars, twist counted in',
  formula: 'Mb + abs(Mbt)',
  units: { Mb: 'lbf-in/in', Mbt: 'lbf-in/in' },
  unit: 'lbf-in/in',
  source: WOOD_ARMER_SOURCE,
  fromMemory: true,
  compute: ({ Mb, Mbt }) => Mb + Math.abs(Mbt),
});

/** The same where the bars across it, whose own moment is `Mt` (below zero), need no steel. */
export const woodArmerOneWayMoment = formula<{ Mb: number; Mbt: number; Mt: number }>({
  symbol: 'Mb_design',
  label: 'Moment for the bars, none needed across them',
  formula: 'Mb + abs(Mbt ^ 2 / Mt)',
  units: { Mb: 'lbf-in/in', Mbt: 'lbf-in/in', Mt: 'lbf-in/in' },
  unit: 'lbf-in/in',
  source: WOOD_ARMER_SOURCE,
  fromMemory: true,
  compute: ({ Mb, Mbt, Mt }) => Mb + Math.abs((Mbt * Mbt) / Mt),
});

/** Design moments for bars along a direction and square to it. Bottom ones are 0 or more, top ones 0 or less. */
export interface WoodArmerMoments {
  readonly bottomAlongLbfInPerIn: number;
  readonly bottomAcrossLbfInPerIn: number;
  readonly topAlongLbfInPerIn: number;
  readonly topAcrossLbfInPerIn: number;
}

/** Wood-Armer moments for bars at `angleRad` (from x towards y) and square to it. Source: see WOOD_ARMER_SOURCE. */
export function woodArmer(moments: MomentTensor, angleRad: number): WoodArmerMoments {
  const { mx, my, mxy } = turnMoments(moments, angleRad);
  const bottom = tensionPair(mx, my, mxy);
  const top = tensionPair(-mx, -my, mxy);
  return {
    bottomAlongLbfInPerIn: bottom.along,
    bottomAcrossLbfInPerIn: bottom.across,
    topAlongLbfInPerIn: 0 - top.along,
    topAcrossLbfInPerIn: 0 - top.across,
  };
}

/** Both moments of one face, tension positive. */
function tensionPair(along: number, across: number, twist: number): { along: number; across: number } {
  const both = {
    along: woodArmerMoment.compute({ Mb: along, Mbt: twist }),
    across: woodArmerMoment.compute({ Mb: across, Mbt: twist }),
  };
  if (both.along >= 0 && both.across >= 0) return both;
  // One direction wants no steel: the other takes the twist alone, or wants none either.
  if (both.along < 0) {
    const one = woodArmerOneWayMoment.compute({ Mb: across, Mbt: twist, Mt: along });
    return { along: 0, across: Math.max(0, one) };
  }
  const one = woodArmerOneWayMoment.compute({ Mb: along, Mbt: twist, Mt: across });
  return { along: Math.max(0, one), across: 0 };
}

/** Where to average: on a line through a point, square to `acrossRad` (the direction that the moment bends along). */
export interface AveragingLine {
  readonly xIn: number;
  readonly yIn: number;
  /** From x towards y. */
  readonly acrossRad: number;
  readonly widthIn: number;
}

/** Averaging as weights on nodal values, so that one line serves many solutions. */
export interface AveragingWeights {
  readonly node: Int32Array;
  /** Sum 1. */
  readonly weight: Float64Array;
  /** Width that lies on the slab in one piece with the point. */
  readonly widthIn: number;
}

const SAMPLES_PER_HALF = 8;

/**
 * Weights of the mean along a line, clipped where it leaves the slab on either side of its point; null where the point itself is
 * off the slab. Midpoint rule with eight samples each side. Common practice, no source.
 */
export function averagingWeights(
  mesh: TriangleMesh,
  locate: Locate,
  line: AveragingLine,
): AveragingWeights | null {
  const share = new Float64Array(3);
  if (locate(line.xIn, line.yIn, share) < 0) return null;
  const stepIn = line.widthIn / (2 * SAMPLES_PER_HALF);
  const weightAt = new Map<number, number>();
  let count = 0;
  for (const side of [-1, 1]) {
    for (let sample = 0; sample < SAMPLES_PER_HALF; sample++) {
      const along = side * stepIn * (sample + 0.5);
      const x = line.xIn - Math.sin(line.acrossRad) * along;
      const y = line.yIn + Math.cos(line.acrossRad) * along;
      const triangle = locate(x, y, share);
      if (triangle < 0) break;
      count++;
      for (let corner = 0; corner < 3; corner++) {
        const node = mesh.triangles[3 * triangle + corner]!;
        weightAt.set(node, (weightAt.get(node) ?? 0) + share[corner]!);
      }
    }
  }
  if (count === 0) return null;
  return {
    node: Int32Array.from(weightAt.keys()),
    weight: Float64Array.from(weightAt.values(), (sum) => sum / count),
    widthIn: count * stepIn,
  };
}

/** Moments averaged with the weights of a line. */
export function applyAveragingWeights(weights: AveragingWeights, moments: MomentField): MomentTensor {
  let mx = 0;
  let my = 0;
  let mxy = 0;
  for (let i = 0; i < weights.node.length; i++) {
    const node = weights.node[i]!;
    mx += weights.weight[i]! * moments.mx[node]!;
    my += weights.weight[i]! * moments.my[node]!;
    mxy += weights.weight[i]! * moments.mxy[node]!;
  }
  return { mx, my, mxy };
}

export interface AveragedMoments {
  readonly moments: MomentTensor;
  /** Moment that bends the slab along the line's `acrossRad`, lbf-in per inch. */
  readonly acrossLbfInPerIn: number;
  readonly widthIn: number;
}

/** Nodal moments averaged along one line; null off the slab. For many solutions keep `averagingWeights`. */
export function averageMomentAcross(
  mesh: TriangleMesh,
  locate: Locate,
  line: AveragingLine,
  field: MomentField,
): AveragedMoments | null {
  const weights = averagingWeights(mesh, locate, line);
  if (weights === null) return null;
  const moments = applyAveragingWeights(weights, field);
  return { moments, acrossLbfInPerIn: turnMoments(moments, line.acrossRad).mx, widthIn: weights.widthIn };
}
