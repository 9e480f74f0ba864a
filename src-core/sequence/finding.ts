/** A finding about the swap stands beside its checks and changes none of them. */
import type { Level } from '../checks';

export type SwapFindingId =
  | 'cabinet-height'
  | 'feet-rating'
  | 'leg-column'
  | 'sink-passage'
  | 'way-in'
  | 'section-way-out'
  | 'prop-left-behind'
  | 'days-disagree'
  | 'too-early'
  | 'protection';

export interface SwapFinding {
  readonly id: SwapFindingId;
  readonly pieceId: string;
  readonly stepId: string | null;
  /** Support or section that it is about. */
  readonly aboutId: string | null;
  readonly level: Level;
  readonly title: string;
  /** One or two sentences in a builder's words. */
  readonly words: string;
  readonly source: string;
}
