/** Names one part of a piece. */

export type PartKind = 'cutout' | 'support' | 'load' | 'steel' | 'joint';

/** A part of a piece by its kind and id. */
export interface PartRef {
  readonly kind: PartKind;
  readonly id: string;
}
