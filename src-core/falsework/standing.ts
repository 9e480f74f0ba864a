/** What stands below a piece when it is poured, and what comes later. */
import type { CabinetSupport, Job, Piece, Support } from '../job';
import { bearingPatches } from '../job';
import type { Direction, Point } from '../outline';
import { directionAt, leftOf, moved } from '../outline';
import { EARLIEST_STRIP_DAYS } from '../verdict';

/** Whether a support of the piece goes again: it has a last day, or a step of the swap takes it out and none brings it back. */
export function goesAgain(job: Job, support: Support): boolean {
  const last = job.swap.steps.findLast(
    ({ supportsOut, supportsIn }) => supportsOut.includes(support.id) || supportsIn.includes(support.id),
  );
  return last === undefined ? support.lastDay !== null : !last.supportsIn.includes(support.id);
}

/** Cabinets that come after the pour. */
export function cabinetsToCome(job: Job, piece: Piece): CabinetSupport[] {
  return piece.supports.filter(
    (support): support is CabinetSupport =>
      support.kind === 'cabinet' &&
      !goesAgain(job, support) &&
      (comesOn(job, support) ?? support.firstDay) > piece.pourDay,
  );
}

/** Cabinets that stand already when the piece is poured. */
export function cabinetsInPlace(job: Job, piece: Piece): CabinetSupport[] {
  const later = new Set(cabinetsToCome(job, piece).map(({ id }) => id));
  return piece.supports.filter(
    (support): support is CabinetSupport => support.kind === 'cabinet' && !later.has(support.id),
  );
}

/** Supports other than cabinets and arms that stand at the pour and stay. */
export function lastingSupports(job: Job, piece: Piece): Support[] {
  return piece.supports.filter(
    (support) =>
      support.kind !== 'cabinet' &&
      support.kind !== 'bracket' &&
      support.firstDay <= piece.pourDay &&
      !goesAgain(job, support),
  );
}

/** Plan of a lasting support's bearing. */
export function supportPlan(support: Support, outline: readonly Point[]): Point[] {
  return bearingPatches(support, outline).flatMap(({ corners }) => [...corners]);
}

/** Corners of a cabinet, counter-clockwise from its front left. */
export function cabinetCorners(cabinet: CabinetSupport): Point[] {
  const along = directionAt((cabinet.angleDeg * Math.PI) / 180);
  const back = leftOf(along);
  const { corner, widthIn, depthIn } = cabinet;
  const right = moved(corner, along, widthIn);
  return [corner, right, moved(right, back, depthIn), moved(corner, back, depthIn)];
}

/** From the front of a cabinet to its back. */
export function cabinetBack(cabinet: CabinetSupport): Direction {
  return leftOf(directionAt((cabinet.angleDeg * Math.PI) / 180));
}

/** Day on which falsework under a piece is built: the day before the pour. */
export function buildDay(piece: Piece): number {
  return Math.max(0, piece.pourDay - 1);
}

/** Last day of a section: the day its cabinet comes, else the earliest strip. */
export function lastDayOf(job: Job, piece: Piece, cabinet: CabinetSupport | null): number {
  if (cabinet === null) return piece.pourDay + EARLIEST_STRIP_DAYS;
  return comesOn(job, cabinet) ?? cabinet.firstDay;
}

function comesOn(job: Job, { id }: Support): number | null {
  return job.swap.steps.find(({ supportsIn }) => supportsIn.includes(id))?.day ?? null;
}
