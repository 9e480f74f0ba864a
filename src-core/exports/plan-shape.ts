import type { Point } from '../outline';
import type { ArcVertex } from './arc-loops';
import type { PlanLayer } from './plan-layers';

/** One mark of a plan, inches in the drawing's coordinates. */
export type PlanShape =
  /** A closed outline. */
  | { readonly kind: 'loop'; readonly layer: PlanLayer; readonly vertices: readonly ArcVertex[] }
  | { readonly kind: 'circle'; readonly layer: PlanLayer; readonly centre: Point; readonly radiusIn: number }
  | { readonly kind: 'line'; readonly layer: PlanLayer; readonly from: Point; readonly to: Point }
  | {
      readonly kind: 'words';
      readonly layer: PlanLayer;
      readonly words: string;
      /** Middle of the words. */
      readonly at: Point;
      readonly heightIn: number;
      /** Counter-clockwise in plan. */
      readonly turnDeg: number;
    };
