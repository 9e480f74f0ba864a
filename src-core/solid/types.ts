/**
 * Solids of the drawing as plain triangles, for the model view and for what leaves the tool. Inches; x and y as in the plan, z up from
 * the floor, a piece's top at its `topElevationIn`.
 */
export interface Solid {
  /** x, y, z of each vertex. Vertices are not shared across creases, so that normals stay sharp. */
  readonly positions: Float32Array;
  /** Outward unit normal of each vertex. */
  readonly normals: Float32Array;
  /** Counter-clockwise triangles seen from outside. */
  readonly triangles: Uint32Array;
  /** Ends of the sharp edges worth an ink line: x, y, z pairs. */
  readonly inkLines: Float32Array;
}

export type SolidMaterial =
  | 'concrete'
  | 'timber'
  | 'painted-panel'
  | 'block'
  | 'brick'
  | 'steel'
  | 'stone'
  | 'mortar'
  | 'sink'
  | 'equipment';

/** One part of what stands round or under a slab. */
export interface SupportSolid {
  readonly pieceId: string;
  /** null for what belongs to the piece itself, such as a sink bowl or fixed equipment. */
  readonly supportId: string | null;
  readonly material: SolidMaterial;
  readonly solid: Solid;
}

/** A wire or bar, drawn as a thin cylinder. */
export interface SteelRun {
  readonly layerId: string;
  readonly from: readonly [number, number, number];
  readonly to: readonly [number, number, number];
  readonly diameterIn: number;
}
