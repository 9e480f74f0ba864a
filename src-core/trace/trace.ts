/** Where a number of the take-off comes from: the part of the drawing that a person can point at. */

export type TracePart =
  | { readonly kind: 'piece' }
  /** Corner i of the outline, and edge i from corner i to corner i + 1. */
  | { readonly kind: 'corner'; readonly index: number }
  | { readonly kind: 'edge'; readonly index: number }
  | { readonly kind: 'cutout'; readonly id: string }
  | { readonly kind: 'support'; readonly id: string }
  | { readonly kind: 'steel'; readonly id: string }
  | { readonly kind: 'joint'; readonly id: string }
  /** A section of the falsework. */
  | { readonly kind: 'section'; readonly id: string };

export interface Trace {
  readonly pieceId: string;
  readonly part: TracePart;
}

/** A trace as one word, alike for the same part only: "serving-counter/edge/3", "serving-counter/cutout/sink". */
export function traceWord({ pieceId, part }: Trace): string {
  switch (part.kind) {
    case 'piece':
      return pieceId;
    case 'corner':
    case 'edge':
      return `${pieceId}/${part.kind}/${part.index + 1}`;
    case 'cutout':
    case 'support':
    case 'steel':
    case 'joint':
    case 'section':
      return `${pieceId}/${part.kind}/${part.id}`;
  }
}
