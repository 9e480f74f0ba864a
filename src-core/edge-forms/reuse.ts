/** Strips that come off one piece in time to stand round a later one. */
import { SAME_CUT_RAD, SAME_LENGTH_IN } from './practice';
import type { Strip } from './strips';
import { stripsOf } from './strips';
import type { EdgeForms } from './types';

/** A strip that is used again: not cut for `toId`. */
export interface Reuse {
  readonly id: string;
  /** Strip that comes off, and the one whose place it takes. */
  readonly fromId: string;
  readonly toId: string;
  /** Day on which it comes off, and day of the pour that it stands for next. */
  readonly strippedDay: number;
  readonly pourDay: number;
}

interface Used {
  /** As it was cut, so that a strip used three times does not creep. */
  readonly cut: Strip;
  readonly holder: Strip;
  readonly freeDay: number;
}

/**
 * Which strips serve twice or more. A strip takes another's place where both are of one kind and shape, their end cuts agree
 * and their lengths too, within 1/16 in, and it comes off before the day of the later pour. Pieces poured on one day, copies among
 * them, never share. `strippedOnDay` gives the day on which a piece's edge forms come off, or null where none is known.
 */
export function reusable(
  all: readonly EdgeForms[],
  strippedOnDay: (pieceId: string) => number | null,
): Reuse[] {
  const free: Used[] = [];
  const reuses: Reuse[] = [];
  for (const forms of [...all].sort((a, b) => a.pourDay - b.pourDay)) {
    const freeDay = strippedOnDay(forms.pieceId);
    const taken: Used[] = [];
    for (const strip of stripsOf(forms)) {
      if (strip.of.material !== 'form-strip') continue;
      const found = free.findIndex((used) => used.freeDay < forms.pourDay && isAlike(used.cut, strip));
      const used = found < 0 ? null : free.splice(found, 1)[0]!;
      if (used !== null) {
        reuses.push({
          id: `${strip.id}/reuse`,
          fromId: used.holder.id,
          toId: strip.id,
          strippedDay: used.freeDay,
          pourDay: forms.pourDay,
        });
      }
      if (freeDay !== null) taken.push({ cut: used?.cut ?? strip, holder: strip, freeDay });
    }
    free.push(...taken);
  }
  return reuses;
}

/** Strips keep their way up and their slab face, so the ends do not change places. */
function isAlike(a: Strip, b: Strip): boolean {
  return (
    a.of.id === b.of.id &&
    a.made === b.made &&
    isNear(a.longIn, b.longIn, SAME_LENGTH_IN) &&
    isNear(a.startRad, b.startRad, SAME_CUT_RAD) &&
    isNear(a.endRad, b.endRad, SAME_CUT_RAD) &&
    isNear(a.bendRadiusIn ?? 0, b.bendRadiusIn ?? 0, SAME_LENGTH_IN)
  );
}

function isNear(a: number, b: number, within: number): boolean {
  return Math.abs(a - b) <= within + 1e-9;
}
