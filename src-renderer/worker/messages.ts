/** What the window and the worker that checks say to each other. */
import type { DeflectedShape, PieceMap } from '../../src-core/field-map';
import type { Job } from '../../src-core/job';
import type { Change } from '../../src-core/remedies';
import type { JobResult, PieceResult } from '../../src-core/verdict';

/** Coarse: a rough mesh while a drag goes on. Fine: the verdict, and the changes that pass. */
export type Quality = 'coarse' | 'fine';

export type ToWorker =
  /** A shared cell whose number is the newest run; a run that finds another number in it stops. */
  | { readonly kind: 'share'; readonly newestRun: Int32Array }
  | {
      readonly kind: 'check';
      readonly run: number;
      readonly quality: Quality;
      readonly job: Job;
      /** Pieces to check, the one that is looked at first. */
      readonly pieceIds: readonly string[];
    }
  /** Checks a piece a few times over without an answer, so that the first drag finds the engine compiled. */
  | { readonly kind: 'warm'; readonly run: number; readonly job: Job; readonly pieceId: string }
  | { readonly kind: 'deflect'; readonly run: number; readonly job: Job; readonly pieceId: string };

export type FromWorker =
  | { readonly kind: 'ready' }
  | {
      readonly kind: 'piece';
      readonly run: number;
      readonly quality: Quality;
      readonly result: PieceResult;
      readonly map: PieceMap | null;
      /** Whether changes that pass are still being looked for. */
      readonly isSearching: boolean;
    }
  | { readonly kind: 'change'; readonly run: number; readonly change: Change }
  | {
      readonly kind: 'progress';
      readonly run: number;
      readonly done: number;
      readonly total: number;
      readonly words: string;
    }
  | { readonly kind: 'job'; readonly run: number; readonly result: JobResult }
  | { readonly kind: 'deflected'; readonly run: number; readonly shape: DeflectedShape | null }
  | { readonly kind: 'end'; readonly run: number; readonly wasCancelled: boolean }
  /** A bug, with what is known of it. */
  | { readonly kind: 'fault'; readonly run: number; readonly sentence: string };
