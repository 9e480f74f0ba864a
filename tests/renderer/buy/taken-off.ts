import type { Job } from '../../../src-core/job';
import type { JobTakeoff, PieceTakeoff } from '../../../src-core/takeoff';
import { jobTakeoff } from '../../../src-core/takeoff';
import { exampleJob } from '../../core/edit/editing';
import { jobOf, rectangle } from '../../support/pieces';

/** The galley, with everything that a list can have but the falsework. */
export const GALLEY = exampleJob('boathouse-galley');
export const GALLEY_TAKEOFF = jobTakeoff(GALLEY, null);

/** A slab of 60 x 24 x 2 in with eased edges all round, as it is cut in the tests of the edge forms. */
export const SLAB: Job = jobOf({ corners: rectangle(60, 24), thicknessIn: 2 });

/** What was taken off one piece of the galley. */
export function ofPiece(pieceId: string, { pieces }: JobTakeoff = GALLEY_TAKEOFF): PieceTakeoff {
  return pieces.find((piece) => piece.pieceId === pieceId)!;
}
