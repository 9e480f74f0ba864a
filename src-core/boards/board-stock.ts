/** The board that a job lays under its slabs. */
import type { Job } from '../job';
import { DEFAULT_BOARD, SAME_IN } from './practice';

export interface BoardStock {
  /** Item of the job's stock, or null for the common size. */
  readonly stockId: string | null;
  readonly lengthIn: number;
  readonly widthIn: number;
  readonly thicknessIn: number;
}

/**
 * The first board in the job's stock that has a size and is as thick as the falsework's backing board (or names no
 * thickness); the common size where there is none. The longer side counts as its length.
 */
export function boardStock(job: Job): BoardStock {
  const thicknessIn = job.falsework.backingBoardIn;
  for (const item of job.stock) {
    if (item.kind !== 'board' || item.lengthIn === null || item.widthIn === null) continue;
    if (item.thicknessIn !== null && Math.abs(item.thicknessIn - thicknessIn) > SAME_IN) continue;
    return {
      stockId: item.id,
      lengthIn: Math.max(item.lengthIn, item.widthIn),
      widthIn: Math.min(item.lengthIn, item.widthIn),
      thicknessIn,
    };
  }
  return { stockId: null, ...DEFAULT_BOARD, thicknessIn };
}
