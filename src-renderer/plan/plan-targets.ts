/** What the pointer is over, read from the marks that shapes and handles carry in the document. */
import type { Piece } from '../../src-core/job';
import type { Selection } from '../state/selection';
import { isSameSelection } from '../state/selection';
import type { Pixel } from './frame';
import type { Handle } from './handles';
import { handleOf } from './handles';

export interface PlanTarget {
  readonly selection: Selection;
  /** Handle that a drag from here takes hold of; null where it pans. */
  readonly handle: Handle | null;
}

/**
 * The part under the pointer. Handles belong to the selected piece. Its own slab takes hold of the piece as a whole; that of another
 * piece is only selected.
 */
export function targetAt(target: EventTarget | null, selected: Piece | null): PlanTarget | null {
  if (!(target instanceof Element)) return null;
  const key = target.closest('[data-handle]')?.getAttribute('data-handle') ?? null;
  const handle = key === null || selected === null ? undefined : handleOf(selected, key);
  if (handle !== undefined && selected !== null) {
    return { selection: { pieceId: selected.id, part: handle.part }, handle };
  }
  const pieceId = target.closest('[data-piece]')?.getAttribute('data-piece') ?? null;
  if (pieceId === null) return null;
  const whole = pieceId === selected?.id ? handleOf(selected, 'piece') : undefined;
  return { selection: { pieceId, part: { kind: 'piece' } }, handle: whole ?? null };
}

/** The selection under a pointer that hovers; the old one where it is the same, so that nothing is drawn again. */
export function hoverAt(
  target: EventTarget | null,
  selected: Piece | null,
  hover: Selection | null,
): Selection | null {
  const found = targetAt(target, selected)?.selection ?? null;
  return isSameSelection(found, hover) ? hover : found;
}

/** Whether the pointer is on something that sees to itself: a figure, a button of the toolbar. */
export function isOwn(target: EventTarget | null): boolean {
  return target instanceof Element && target.closest('[data-own]') !== null;
}

/** Place of the pointer in the plan. */
export function placeIn(
  element: HTMLElement,
  { clientX, clientY }: { readonly clientX: number; readonly clientY: number },
): Pixel {
  const { left, top } = element.getBoundingClientRect();
  return { xPx: clientX - left, yPx: clientY - top };
}
