/** What is picked out in the drawing; plan, model, list and forms share it. */

export type Part =
  | { readonly kind: 'piece' }
  /** Corner i of the outline, and edge i from corner i to corner i + 1. */
  | { readonly kind: 'corner'; readonly index: number }
  | { readonly kind: 'edge'; readonly index: number }
  | { readonly kind: 'cutout'; readonly id: string }
  | { readonly kind: 'support'; readonly id: string }
  | { readonly kind: 'load'; readonly id: string }
  | { readonly kind: 'steel'; readonly id: string }
  | { readonly kind: 'joint'; readonly id: string };

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
