/** The worst moment between the pour and the hand-over: every day on which what stands under a piece changes. */
import type { Limits } from '../checks';
import { checkPiece, governingCheck, rank, worstLevel } from '../checks';
import type { Job, Piece } from '../job';
import type { OnTheWay } from './results';

/** No soffit support is taken away before this age. Common practice beside ACI 347. */
export const EARLIEST_STRIP_DAYS = 7;
/** Mesh of the days on the way; a day that comes near a limit is looked at again on the piece's own mesh. */
const WAY_MESH_IN = 3;
const NEAR_A_LIMIT = 0.08;

/** Days that matter: the earliest strip and each change of supports after the pour. */
export function daysOnTheWay(piece: Piece): number[] {
  const strip = piece.pourDay + EARLIEST_STRIP_DAYS;
  const days = new Set<number>([strip]);
  for (const { firstDay, lastDay } of piece.supports) {
    if (firstDay > piece.pourDay) days.add(firstDay);
    if (lastDay !== null && lastDay + 1 > piece.pourDay) days.add(lastDay + 1);
  }
  return [...days].filter((day) => day > piece.pourDay).sort((a, b) => a - b);
}

/** The worst day for a piece, by rung and then by ratio, at that day's strength under self weight and the working load. */
export function worstOnTheWay(job: Job, piece: Piece, limits: Limits): OnTheWay | null {
  let worst: OnTheWay | null = null;
  for (const day of daysOnTheWay(piece)) {
    let found = lookAt(job, piece, day, WAY_MESH_IN, limits);
    if (Math.abs(found.ratio - 1) < NEAR_A_LIMIT) found = lookAt(job, piece, day, null, limits);
    if (
      worst === null ||
      rank(found.level) > rank(worst.level) ||
      (found.level === worst.level && found.ratio > worst.ratio)
    ) {
      worst = found;
    }
  }
  return worst;
}

function lookAt(job: Job, piece: Piece, day: number, meshSizeIn: number | null, limits: Limits): OnTheWay {
  const { checks } = checkPiece(job, piece, { day, meshSizeIn }, limits);
  const worst = governingCheck(checks);
  return { day, level: worstLevel(checks), ratio: worst?.ratio ?? 0, words: worst?.words ?? '' };
}
