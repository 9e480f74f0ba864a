/** What a worker answers about forming, buying and pouring; it keeps the take-off of every piece that has not changed. */
import { designJob } from '../../src-core/falsework';
import type { Job, Piece } from '../../src-core/job';
import { pourPlan } from '../../src-core/pour';
import type { PieceTakeoff } from '../../src-core/takeoff';
import { jobTakeoff, pieceTakeoff } from '../../src-core/takeoff';
import type { FromWorksWorker, ToWorksWorker } from './works-messages';

/** Take-offs that are kept, so that a drag takes off the changed piece alone and undo costs nothing. */
const MOST_KEPT = 60;

/** Gives a function that answers one question after another. A fault of the tool's own is an answer too. */
export function worksAnswers(): (asked: ToWorksWorker) => FromWorksWorker {
  const takeoffOf = keptTakeoffs();
  return ({ kind, run, job }) => {
    try {
      switch (kind) {
        case 'takeoff':
          return { kind, run, takeoff: jobTakeoff(job, null, { takeoffOf }) };
        case 'whole':
          return { kind: 'takeoff', run, takeoff: jobTakeoff(job, designJob(job), { takeoffOf }) };
        case 'pour':
          return { kind, run, pour: pourPlan(job) };
      }
    } catch (fault) {
      return { kind: 'fault', run, sentence: fault instanceof Error ? fault.message : String(fault) };
    }
  };
}

/** The take-off of a piece, worked out once for each drawing of it. What was not asked for longest is forgotten first. */
export function keptTakeoffs(): (job: Job, piece: Piece) => PieceTakeoff {
  const kept = new Map<string, PieceTakeoff>();
  return (job, piece) => {
    const key = takeoffKey(job, piece);
    const takeoff = kept.get(key) ?? pieceTakeoff(job, piece);
    kept.delete(key);
    kept.set(key, takeoff);
    const [oldest] = kept.keys();
    if (kept.size > MOST_KEPT && oldest !== undefined) kept.delete(oldest);
    return takeoff;
  };
}

/** All that the take-off of a piece depends on: its drawing, pieces that it butts against, and what the job builds with. */
export function takeoffKey(job: Job, piece: Piece): string {
  const { pieces, mixes, forms, falsework, stock, shownIn } = job;
  const beside = pieces.filter(
    (other) => other.id === piece.id || buttsAgainst(piece, other) || buttsAgainst(other, piece),
  );
  return JSON.stringify([piece.id, beside, mixes, forms, falsework, stock, shownIn]);
}

function buttsAgainst({ edges }: Piece, { id }: Piece): boolean {
  return (edges ?? []).some((edge) => edge.kind === 'butted' && edge.toPieceId === id);
}
