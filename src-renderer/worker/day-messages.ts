/** What the window and the worker that looks at days say to each other. */
import type { FalseworkDesign } from '../../src-core/falsework';
import type { Job } from '../../src-core/job';
import type { SwapResult } from '../../src-core/sequence';
import type { PieceResult } from '../../src-core/verdict';

export type ToDayWorker =
  | {
      readonly kind: 'day';
      readonly run: number;
      readonly job: Job;
      readonly day: number;
      /** Pieces to look at, the one that is shown first. */
      readonly pieceIds: readonly string[];
    }
  | { readonly kind: 'hold'; readonly run: number; readonly job: Job; readonly pieceId: string }
  /** Nothing is wanted any more. */
  | { readonly kind: 'stop'; readonly run: number };

export type FromDayWorker =
  | { readonly kind: 'piece'; readonly run: number; readonly result: PieceResult }
  | {
      readonly kind: 'held';
      readonly run: number;
      readonly pieceId: string;
      readonly falsework: FalseworkDesign;
      /** null where there is nothing to swap, or it cannot be looked at; `swapWords` says why. */
      readonly swap: SwapResult | null;
      readonly swapWords: string;
    }
  | { readonly kind: 'end'; readonly run: number }
  | { readonly kind: 'fault'; readonly run: number; readonly sentence: string };
