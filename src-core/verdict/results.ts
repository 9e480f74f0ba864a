/** What a check of a job gives back. Plain data, ready for JSON. */
import type { Check, Level } from '../checks';
import type { Point } from '../outline';
import type { Change } from '../remedies';
import type { SiteFinding } from '../site';
import type { Verdict } from './ladder';

export interface SupportReaction {
  readonly supportId: string;
  readonly words: string;
  readonly bound: 'low' | 'high';
  readonly deadLbf: number;
  readonly mostLbf: number;
  readonly leastLbf: number;
  readonly tieLbf: number;
}

export interface MeshFacts {
  readonly nodes: number;
  readonly triangles: number;
  readonly sizeIn: number;
  readonly contacts: number;
  readonly loadCases: number;
  readonly factorisations: number;
  /** Largest difference between reactions and load over all cases, as a share of the load. */
  readonly imbalance: number;
}

/** A moment on the way (falsework, strip, swap) that is worse than, or beside, the finished state. */
export interface OnTheWay {
  readonly day: number;
  readonly level: Level;
  readonly ratio: number;
  readonly words: string;
}

/** Where the uncracked slab bends most, and the load under which the larger of the two comes about. */
export interface Governing {
  readonly sagging: Point;
  readonly hogging: Point;
  /** Middle of the roving load; null where self weight or the spread load governs. */
  readonly loadAt: Point | null;
}

export interface PieceResult {
  readonly id: string;
  readonly name: string;
  readonly copies: number;
  readonly areaFt2: number;
  readonly weightLb: number;
  readonly centroid: Point;
  readonly thicknessIn: number;
  readonly verdict: Verdict;
  /** Worst first. */
  readonly checks: readonly Check[];
  readonly reactions: readonly SupportReaction[];
  readonly governing: Governing | null;
  readonly mesh: MeshFacts | null;
  readonly worstOnTheWay: OnTheWay | null;
  /** Changes that were tried and pass, smallest first. */
  readonly changes: readonly Change[];
  /** Kinds of change that were tried and do not pass, in words. */
  readonly triedInVain: readonly string[];
  readonly remarks: readonly string[];
}

export interface JobResult {
  readonly jobId: string;
  readonly name: string;
  readonly day: number | null;
  readonly verdict: { readonly level: Level; readonly words: string };
  readonly pieces: readonly PieceResult[];
  readonly site: readonly SiteFinding[];
  /** True where a piece, a step on the way or a site finding needs attention. */
  readonly needsAttention: boolean;
}
