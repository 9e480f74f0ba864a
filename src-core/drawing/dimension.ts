/** One dimension of a plan: what is measured, where its line goes, and what typing another length would move. */
import type { Direction, Point } from '../outline';

/** What a typed length changes. `along` is the unit vector in which the moved thing goes as the length grows. */
export type DimensionSets =
  | { readonly kind: 'edge-length'; readonly index: number }
  /** The edge goes outward as its overhang grows. */
  | { readonly kind: 'edge-place'; readonly index: number }
  | { readonly kind: 'cutout-place'; readonly id: string; readonly along: Direction; readonly centre: Point }
  | {
      readonly kind: 'cutout-size';
      readonly id: string;
      readonly side: 'width' | 'depth' | 'diameter';
      readonly widthIn: number;
      readonly depthIn: number;
    }
  | { readonly kind: 'support-place'; readonly id: string; readonly along: Direction }
  /** A cabinet's width, its left side staying. */
  | { readonly kind: 'support-width'; readonly id: string; readonly depthIn: number };

/**
 * By drafting convention lengths of the outline stand outside it, details in the row nearest to it and whole edges
 * beyond; what lies inside the outline is measured on the spot.
 */
export type DimensionPlace =
  | { readonly kind: 'beside'; readonly outward: Direction; readonly row: number }
  | { readonly kind: 'on' };

export interface Dimension {
  /** Stable while the thing it measures is there. */
  readonly key: string;
  readonly of: 'edge' | 'overhang' | 'support' | 'cutout';
  /** "Edge 3", "Overhang of edge 1", "Sink from edge 1". */
  readonly words: string;
  readonly from: Point;
  readonly to: Point;
  readonly lengthIn: number;
  readonly place: DimensionPlace;
  /** null where it only informs. */
  readonly sets: DimensionSets | null;
}
