/** Layers of the plan, in trade words, with the line each is drawn in. */
import type { Pen } from '../figure';

export type PlanLayer =
  | 'slab-outline'
  | 'openings'
  | 'supports'
  | 'temporary-supports'
  | 'joints'
  | 'edge-dims'
  | 'overhang-dims'
  | 'opening-dims'
  | 'support-dims'
  | 'names';

export interface PlanLayerLook {
  readonly layer: PlanLayer;
  /** As the layer is called in a drawing program. */
  readonly name: string;
  readonly pen: Pen;
}

/** In the order in which they are drawn. The outline and the openings hold closed loops alone, ready to be cut. */
export const PLAN_LAYERS: readonly PlanLayerLook[] = [
  { layer: 'supports', name: 'Supports', pen: 'visible' },
  { layer: 'temporary-supports', name: 'Supports that come out', pen: 'hidden' },
  { layer: 'slab-outline', name: 'Slab outline', pen: 'cut' },
  { layer: 'openings', name: 'Openings', pen: 'cut' },
  { layer: 'joints', name: 'Joints', pen: 'centre' },
  { layer: 'edge-dims', name: 'Edge dims', pen: 'dimension' },
  { layer: 'overhang-dims', name: 'Overhang dims', pen: 'dimension' },
  { layer: 'opening-dims', name: 'Opening dims', pen: 'dimension' },
  { layer: 'support-dims', name: 'Support dims', pen: 'dimension' },
  { layer: 'names', name: 'Names', pen: 'thin' },
];
