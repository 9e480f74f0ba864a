/** What the worker has answered about the day of the playhead, and about holding a piece up. Filled by the day loop; views read it. */
import { create } from 'zustand';
import type { FalseworkDesign } from '../../src-core/falsework';
import type { SwapResult } from '../../src-core/sequence';
import type { PieceResult } from '../../src-core/verdict';

/** How one piece is held up until it is swapped onto what stays. */
export interface HeldUp {
  readonly pieceId: string;
  readonly falsework: FalseworkDesign;
  /** null where there is nothing to swap; `swapWords` then says why. */
  readonly swap: SwapResult | null;
  readonly swapWords: string;
}

export interface DayState {
  /** Day of the answers below; null while no day is asked for. */
  readonly day: number | null;
  /** Verdicts on that day, by piece; a piece that is not yet hard has none. */
  readonly pieces: Readonly<Record<string, PieceResult>>;
  readonly isWorking: boolean;
  /** By piece, for the job as it is now. */
  readonly held: Readonly<Record<string, HeldUp>>;
  readonly fault: string | null;
}

export const useDays = create<DayState>()(() => ({
  day: null,
  pieces: {},
  isWorking: false,
  held: {},
  fault: null,
}));
