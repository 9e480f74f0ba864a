/** One trial: a changed piece analysed and checked whole, its new ties rated for the pull they turn out to take. */
import type { PieceAnalysis } from '../analysis';
import { analysePiece } from '../analysis';
import type { Check, Limits } from '../checks';
import { cannotCheck, checkAnalysis, sortChecks, stands } from '../checks';
import type { Job, Piece } from '../job';

export interface Trial {
  /** The piece as tried, with its ties rated. */
  readonly piece: Piece;
  readonly analysis: PieceAnalysis | null;
  /** Worst first. */
  readonly checks: readonly Check[];
  /** Those at change or engineer. */
  readonly failing: readonly Check[];
}

/** Ratings come in these steps, lbf. */
const RATING_STEP_LBF = 50;
/** Rating that a tie is tried with before its pull is known: no tie comes near. */
const UNTRIED_RATING_LBF = 50_000;
/** A tie that must take more is no screw or strap that a builder sets. Common practice, no source. */
const MOST_RATING_LBF = 1_500;

/** Finished state, 28 days or older, on a mesh of that size (null: the piece's own). */
export function tryPiece(
  job: Job,
  piece: Piece,
  ratedSupportIds: readonly string[],
  meshSizeIn: number | null,
  limits: Limits,
): Trial {
  const held = withRatings(piece, ratedSupportIds, () => UNTRIED_RATING_LBF);
  const result = analysePiece(withPiece(job, held), held, { day: null, meshSizeIn });
  if (!result.ok) {
    const check = cannotCheck(piece.id, result.cannot.reason, result.cannot.sentence);
    return trialOf(held, null, [check]);
  }
  const { analysis } = result;
  const first = checkAnalysis(withPiece(job, held), analysis, limits);
  if (ratedSupportIds.length === 0) return trialOf(held, analysis, first);
  const rated = withRatings(piece, ratedSupportIds, (supportId) => ratingFor(first, supportId));
  const again = withRated(analysis, rated);
  return trialOf(rated, again, checkAnalysis(withPiece(job, rated), again, limits));
}

/** Largest ratio of a check that fails; 0 where none does. */
export function missRatio({ failing }: Trial): number {
  return failing.reduce((most, { ratio }) => Math.max(most, ratio), 0);
}

/** The job with one of its pieces replaced by its changed self. */
export function withPiece(job: Job, piece: Piece): Job {
  return { ...job, pieces: job.pieces.map((one) => (one.id === piece.id ? piece : one)) };
}

function trialOf(piece: Piece, analysis: PieceAnalysis | null, checks: readonly Check[]): Trial {
  const sorted = sortChecks(checks);
  return { piece, analysis, checks: sorted, failing: sorted.filter(({ level }) => !stands(level)) };
}

/** What the check of the ties asks for at this support, rounded up; the most that is set where it asks for more. */
function ratingFor(checks: readonly Check[], supportId: string): number {
  const wantedLbf = checks.reduce((most, { id, where, demand }) => {
    const isOwn = id === 'tie-force' && where.kind === 'support' && where.supportId === supportId;
    return isOwn ? Math.max(most, demand.value) : most;
  }, 0);
  const roundedLbf = RATING_STEP_LBF * Math.max(1, Math.ceil(wantedLbf / RATING_STEP_LBF - 1e-9));
  return Math.min(MOST_RATING_LBF, roundedLbf);
}

/** New or better ratings; a better one that the job states already is kept. */
function withRatings(piece: Piece, ids: readonly string[], ratingLbf: (supportId: string) => number): Piece {
  if (ids.length === 0) return piece;
  return {
    ...piece,
    supports: piece.supports.map((support) =>
      ids.includes(support.id) && support.hold.kind === 'tied'
        ? {
            ...support,
            hold: {
              ...support.hold,
              ratingLbf: Math.max(support.hold.ratingLbf ?? 0, ratingLbf(support.id)),
            },
          }
        : support,
    ),
  };
}

/** The same analysis of a piece that differs only in the ratings of its ties, which no stiffness depends on. */
function withRated(analysis: PieceAnalysis, piece: Piece): PieceAnalysis {
  return {
    ...analysis,
    piece,
    bearings: analysis.bearings.map((bearing) => ({
      ...bearing,
      support: piece.supports.find(({ id }) => id === bearing.support.id) ?? bearing.support,
    })),
  };
}
