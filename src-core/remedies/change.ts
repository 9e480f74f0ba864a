/** A change to a piece that was tried and makes the whole piece pass. A job patch: apply it, check it, undo it. */
import type { Level, Need } from '../checks';

/** One operation of a JSON Patch (RFC 6902) on the job file. */
export type PatchOperation =
  | { readonly op: 'add' | 'replace' | 'test'; readonly path: string; readonly value: unknown }
  | { readonly op: 'remove'; readonly path: string };

/** What is altered; finer than the word in the verdict. */
export type ChangeKind =
  | 'tie'
  | 'corbel'
  | 'extra-support'
  | 'wider-bearing'
  | 'shorter-overhang'
  | 'steel'
  | 'thickness';

export interface ChangeCost {
  /** Weight of slab and steel added, lb; negative where the piece gets lighter. */
  readonly weightLb: number;
  readonly concreteIn3: number;
  /** Number of parts to buy or make. */
  readonly parts: number;
  readonly partsWords: readonly string[];
}

export interface Change {
  /** Stable within a job: the piece and the kinds, e.g. "bar-ledge-tie-thickness". */
  readonly id: string;
  readonly pieceId: string;
  readonly kinds: readonly ChangeKind[];
  /** Words for the verdict, smallest change first. */
  readonly needs: readonly Need[];
  /** "Tie it: 4 ties at 24 in". */
  readonly title: string;
  readonly patch: readonly PatchOperation[];
  readonly cost: ChangeCost;
  /** Of the changed piece, checked again whole on the mesh that the verdict uses. */
  readonly worstRatio: number;
  readonly worstCheckId: string;
  readonly level: Level;
}

export interface ChangeSearch {
  /** Fewest kinds, then fewest parts first; those that give less than was drawn (a shorter overhang, posts where knees go) after the others of as many kinds. */
  readonly changes: readonly Change[];
  /** Kinds, alone or bundled, of which nothing that was tried passes, and the nearest miss. */
  readonly failed: readonly { readonly kinds: readonly ChangeKind[]; readonly words: string }[];
  readonly evaluations: number;
}
