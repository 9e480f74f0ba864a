/** Everything that the book tells, worked out once. Plain data. */
import type { JobFalsework } from '../falsework';
import type { Piece } from '../job';
import type { PourPlan } from '../pour';
import type { DayLine, EarliestDay, NoSwap, SwapResult } from '../sequence';
import type { SiteFinding } from '../site';
import type { JobTakeoff, PieceTakeoff } from '../takeoff';
import type { JobResult, PieceResult } from '../verdict';

/** One drawing, and every piece that is built by it. */
export interface PieceFacts {
  readonly piece: Piece;
  /** All pieces of this drawing, `piece` first. */
  readonly alike: readonly Piece[];
  readonly result: PieceResult;
  readonly takeoff: PieceTakeoff;
  readonly earliest: readonly EarliestDay[];
}

/** A swap, and every piece that is swapped just so. */
export interface SwapFacts {
  readonly result: SwapResult | NoSwap;
  readonly pieces: readonly Piece[];
}

export interface BookFacts {
  readonly verdict: JobResult['verdict'];
  readonly site: readonly SiteFinding[];
  /** In the job's order of their first piece. */
  readonly pieces: readonly PieceFacts[];
  readonly swaps: readonly SwapFacts[];
  readonly falsework: JobFalsework;
  readonly takeoff: JobTakeoff;
  readonly days: DayLine;
  readonly pours: PourPlan;
}
