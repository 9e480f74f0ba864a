import type { FalseworkDesign } from '../../../src-core/falsework';
import { designFalsework } from '../../../src-core/falsework';
import type { Job, Piece } from '../../../src-core/job';
import { cabinet, formJob, sink, WALL_BEHIND } from '../../core/falsework/form-jobs';
import { EXAMPLE_PIECES } from '../forms/example-jobs';

export interface Designed {
  readonly called: string;
  readonly job: Job;
  readonly piece: Piece;
  readonly design: FalseworkDesign;
}

/** A counter 72 in wide before a wall, over two cabinets that come on days 30 and 33; the second under a sink. */
export function wallCounter(job: Record<string, unknown> = {}): Designed {
  const supports = [cabinet('b1', 0, 36, 30), cabinet('b2', 36, 36, 33)];
  return designed(
    formJob(72, 25.5, { edges: WALL_BEHIND, supports, cutouts: [sink(54, 13)] }, job),
    'counter',
  );
}

/** A piece of a job with its design. */
export function designed(job: Job, pieceId: string): Designed {
  const piece = job.pieces.find(({ id }) => id === pieceId)!;
  return { called: `${pieceId} of ${job.id}`, job, piece, design: designFalsework(job, pieceId) };
}

/** Every piece of the example jobs with its design. */
export const EXAMPLE_DESIGNS: readonly Designed[] = EXAMPLE_PIECES.map(({ job, piece }) =>
  designed(job, piece.id),
);
