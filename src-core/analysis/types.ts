/**
 * What the engine found about one piece on one day. Checks read this and compute no mechanics of their own.
 * Plan positions in inches in the drawing's coordinates; w and reactions: down and up positive respectively;
 * moments per unit width in lbf-in/in, sagging (tension at the soffit) positive.
 */

import type { Mix, Piece, Support } from '../job';
import type { Point } from '../outline';
import type { PlateMesh } from '../plate';
import type { Line } from '../workings';

export type Bound = 'low' | 'high';
export type Face = 'top' | 'bottom';

/** Strength and stiffness of the concrete at the age looked at. */
export interface ConcreteState {
  readonly ageDays: number;
  /** Strength at 28 days that was used, and whether it was stated or assumed. */
  readonly strength28Psi: number;
  readonly strengthAssumed: boolean;
  readonly strengthPsi: number;
  readonly modulusPsi: number;
  readonly poisson: number;
  readonly lambda: number;
  readonly densityPcf: number;
  /** (2/3)Mcr of a strip one inch wide, lbf-in/in: the cracking check's capacity. */
  readonly crackingLimitLbfInPerIn: number;
  readonly crackingMomentLbfInPerIn: number;
  /** Lines that lead to the figures above. */
  readonly workings: readonly Line[];
}

export interface PieceWeight {
  readonly areaIn2: number;
  readonly volumeIn3: number;
  readonly slabLb: number;
  /** Sinks with contents, appliances and fixed equipment that the slab carries. */
  readonly carriedLb: number;
  readonly totalLb: number;
  /** Centre of gravity of all that rests on the supports. */
  readonly centre: Point;
}

/** Longest overhang of one outline edge. */
export interface EdgeOverhang {
  readonly edge: number;
  readonly overhangIn: number;
  readonly at: Point;
}

export interface FreeSpan {
  readonly spanIn: number;
  readonly at: Point;
  readonly directionRad: number;
}

export interface PieceShape {
  /** Outline with its corner radii, counter-clockwise, and the openings. */
  readonly outer: readonly Point[];
  readonly holes: readonly (readonly Point[])[];
  readonly overhangs: readonly EdgeOverhang[];
  readonly longestOverhang: EdgeOverhang | null;
  /** The same as if the brackets were not there. */
  readonly longestOverhangWithoutBrackets: EdgeOverhang | null;
  readonly freeSpan: FreeSpan | null;
  /** Extent along the longest edge and across it. */
  readonly lengthIn: number;
  readonly depthIn: number;
  /** Direction of the longest edge. */
  readonly axisRad: number;
  readonly insideCorners: readonly Point[];
}

/** A support as the slab meets it. */
export interface Bearing {
  readonly support: Support;
  /** Part of a cabinet (side, rail, sub-top) or null. */
  readonly part: 'left-side' | 'right-side' | 'front-rail' | 'back-rail' | 'sub-top' | 'arm' | null;
  /** Words such as "stud wall", "left side of cabinet B2". */
  readonly words: string;
  readonly form: 'line' | 'area' | 'patch';
  /** Bearing area that the slab covers. */
  readonly areaIn2: number;
  /** Polygon of the contact area (a line bearing has its true width here). */
  readonly corners: readonly Point[];
  readonly centre: Point;
  /** Indices into `contacts`. */
  readonly contacts: readonly number[];
  /** Bearing width across its line; 0 for a patch. */
  readonly widthIn: number;
}

/** One contact point: a spring under one node that pushes, or a tie that pulls. */
export interface Contact {
  readonly node: number;
  readonly at: Point;
  readonly bearing: number;
  readonly acts: 'push' | 'pull';
  readonly lowLbfPerIn: number;
  readonly highLbfPerIn: number;
  /** Space before it touches; negative where it is raised beyond touching. */
  readonly gapIn: number;
  /** Plan area that this point stands for, where the bearing is an area or a strip. */
  readonly tributaryIn2: number;
}

/** A live load somewhere on the top. */
export type LiveLoad =
  | { readonly kind: 'none' }
  | { readonly kind: 'spread'; readonly psf: number }
  | {
      readonly kind: 'roving';
      readonly forceLbf: number;
      readonly centre: Point;
      readonly widthIn: number;
      readonly depthIn: number;
    };

export interface BearingReaction {
  readonly bearing: number;
  /** Total push, and total pull of its ties, both positive. */
  readonly pushLbf: number;
  readonly tieLbf: number;
  readonly worstTieLbf: number;
  /** Largest pressure at a contact point of a strip or an area, 0 for a patch. */
  readonly peakPressurePsi: number;
  /** Share of its contact points that have come off. */
  readonly liftedShare: number;
}

export interface LoadCase {
  readonly id: string;
  /** "self weight", "250 lb sitting at 12 in from the left end, front edge". */
  readonly words: string;
  readonly live: LiveLoad;
  readonly totalLbf: number;
  /** True where the piece would turn over under this case and is looked at as if it were held down. */
  readonly asIfHeld: boolean;
  readonly reactions: readonly BearingReaction[];
  /** Reaction of each contact point, up positive (a tie's is negative). */
  readonly contactLbf: Float64Array;
  /** Sum of reactions less weight and load, as a share of the load. */
  readonly imbalance: number;
  readonly deflection: Deflection;
}

/**
 * The slab's own deflection with the give of bracket arms: measured from the plane in which the slab lies over its other
 * supports, whose settlement and tilt are told apart in `giveIn`. On brackets alone it is measured from the wall.
 */
export interface Deflection {
  /** Largest settlement at a support that bears, brackets apart. */
  readonly giveIn: number;
  readonly downIn: number;
  readonly downAt: Point;
  readonly upIn: number;
  readonly upAt: Point;
}

/** The moment that governs one face, averaged over a stated width along the crack that it would open. */
export interface GoverningMoment {
  readonly momentLbfInPerIn: number;
  readonly peakLbfInPerIn: number;
  readonly averagedOverIn: number;
  /** Part of the moment that self weight and what the slab carries always give. */
  readonly deadLbfInPerIn: number;
  readonly at: Point;
  readonly node: number;
  /** Direction in which the slab bends; the crack runs across it. */
  readonly bendingRad: number;
  readonly caseId: string;
}

/** Shear that governs, averaged along a line across it: a wide beam, because punching looks at what is local. */
export interface GoverningShear {
  readonly shearLbfPerIn: number;
  readonly deadLbfPerIn: number;
  readonly averagedOverIn: number;
  readonly at: Point;
  readonly caseId: string;
}

/** Everything found with one stiffness bound. */
export interface BoundState {
  readonly bound: Bound;
  /** The first case is self weight with what the slab carries. */
  readonly cases: readonly LoadCase[];
  /** Soffit in tension and top in tension; magnitudes, so both are >= 0. */
  readonly sagging: GoverningMoment;
  readonly hogging: GoverningMoment;
  readonly shear: GoverningShear | null;
  /** Worst principal moment at each node over all cases, magnitudes. */
  readonly saggingEnvelope: Float64Array;
  readonly hoggingEnvelope: Float64Array;
  /** Worst deflection over all cases, and the self-weight part at that point. */
  readonly worstDown: {
    readonly downIn: number;
    readonly deadIn: number;
    readonly at: Point;
    readonly caseId: string;
  };
  readonly worstUp: { readonly upIn: number; readonly at: Point; readonly caseId: string };
}

/** Factored moment that the steel of one face must take in one of its two directions (Wood-Armer). */
export interface SteelDemand {
  readonly face: Face;
  /** Direction of the bars that take it. */
  readonly barRad: number;
  readonly factoredLbfInPerIn: number;
  readonly serviceLbfInPerIn: number;
  readonly averagedOverIn: number;
  readonly at: Point;
  readonly caseId: string;
}

/** The piece solved again with its cracked zones softened. */
export interface CrackedState {
  readonly low: BoundState;
  readonly high: BoundState;
  readonly demands: readonly SteelDemand[];
  /** Share of the slab's area that cracks, top and bottom. */
  readonly crackedShare: number;
  readonly factorisations: number;
  /** Whether the last pass added no cracked zone. */
  readonly settled: boolean;
}

/** How a loose slab would turn over. */
export interface Stability {
  readonly kind: 'stands' | 'tips-under-load' | 'tips-alone' | 'no-support';
  /** Pivot line that governs, outer face of the bearings; null without supports or where tied all round. */
  readonly pivot: { readonly from: Point; readonly to: Point } | null;
  /** Righting moment of the weight about the pivot; negative where the centre of gravity lies beyond it. */
  readonly rightingLbfIn: number;
  /** Largest overturning moment of the live load about the same pivot. */
  readonly overturningLbfIn: number;
  readonly weightArmIn: number;
  readonly loadLbf: number;
  readonly loadArmIn: number;
  readonly tied: boolean;
}

export interface PieceAnalysis {
  readonly piece: Piece;
  readonly mix: Mix;
  readonly concrete: ConcreteState;
  readonly weight: PieceWeight;
  readonly shape: PieceShape;
  readonly bearings: readonly Bearing[];
  readonly contacts: readonly Contact[];
  readonly mesh: PlateMesh;
  readonly stability: Stability;
  readonly elastic: { readonly low: BoundState; readonly high: BoundState };
  /** null where no service moment passes the cracking limit. */
  readonly cracked: CrackedState | null;
  readonly roving: { readonly setting: string; readonly forceLbf: number; readonly source: string };
  /** Sentences on what was simplified, e.g. a patch shrunk to fit a narrow slab. */
  readonly remarks: readonly string[];
}

/** A piece that the engine cannot look at, and why. */
export interface CannotAnalyse {
  readonly reason: 'no-support' | 'mesh' | 'not-cast' | 'shape';
  readonly sentence: string;
}
