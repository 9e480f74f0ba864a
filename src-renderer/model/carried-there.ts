import type { PieceOnDay } from '../../src-core/sequence';

/**
 * Whether bowls, hobs and equipment are on a slab: on one that is hard, once no falsework stands under it. Before that a bowl would
 * hang through the deck, and nobody loads what still rests on legs. Null is the finished job.
 */
export function isCarriedThere(
  onDay: { readonly state: PieceOnDay['state']; readonly sections: readonly unknown[] } | null,
) {
  return onDay === null || (onDay.state === 'hard' && onDay.sections.length === 0);
}
