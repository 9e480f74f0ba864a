/** The roving load in another setting. */
import type { Piece, RovingLoad } from '../../../src-core/job';
import { ROVING, rovingOf } from '../../../src-core/job';

/** A load of one's own begins with the figures that stood before, so that only one of them has to be written. */
export function changeRoving(
  old: RovingLoad | null,
  setting: RovingLoad['setting'],
  around: { readonly piece: Piece | null },
): RovingLoad {
  if (setting !== 'own') return { setting };
  if (old?.setting === 'own') return old;
  const before = (around.piece === null ? null : rovingOf(around.piece)) ?? ROVING.leaning;
  const { forceLbf, widthIn, depthIn } = before;
  return { setting, forceLbf, widthIn, depthIn, source: '' };
}
