/** What is picked out in the drawing; plan, model, list and forms share it. */
import type { TracePart } from '../../src-core/trace';

/** What a number may come from, but for a section of falsework, and loads. */
export type Part =
  | Exclude<TracePart, { readonly kind: 'section' }>
  | { readonly kind: 'load'; readonly id: string };

export interface Selection {
  readonly pieceId: string;
  readonly part: Part;
}

/** Whether two selections name the same thing. */
export function isSameSelection(a: Selection | null, b: Selection | null): boolean {
  if (a === null || b === null) return a === b;
  if (a.pieceId !== b.pieceId || a.part.kind !== b.part.kind) return false;
  if ('id' in a.part && 'id' in b.part) return a.part.id === b.part.id;
  if ('index' in a.part && 'index' in b.part) return a.part.index === b.part.index;
  return true;
}
