/** Where the bars and wires of a layer lie in the thickness of a slab. Whatever needs their heights asks here. */
import type { Reinforcement } from './piece';

/** Bars or wires of a layer that run one way. */
export interface SteelSet {
  readonly kind: 'bars' | 'wires' | 'cross-wires';
  /** Direction in which they run, from x towards y. */
  readonly angleDeg: number;
  readonly diameterIn: number;
  readonly spacingIn: number;
  /** Of one bar or wire. */
  readonly areaIn2: number;
  /** From the top of the slab to their centre. */
  readonly centreDepthIn: number;
}

/**
 * The sets of a layer, the upper first. A layer of bars is one set with its centre at `depthIn`. The `depthIn` of a
 * mesh is that of the plane in which its wires touch: those that run along `angleDeg` lie on it, half their own
 * diameter above, and the cross wires hang half of theirs below. So each way has a depth of its own, which bending
 * that way counts with (d of ACI 318-19 2.2: to the centroid of the tension steel), and the crew must lay the mesh
 * that side up. Fabric and fibre have none.
 */
export function steelSets(layer: Reinforcement): SteelSet[] {
  switch (layer.kind) {
    case 'bars': {
      const { angleDeg, barIn: diameterIn, spacingIn, areaIn2, depthIn: centreDepthIn } = layer;
      return [{ kind: 'bars', angleDeg, diameterIn, spacingIn, areaIn2, centreDepthIn }];
    }
    case 'mesh': {
      const { angleDeg, wireIn, spacingIn, crossWireIn, crossSpacingIn, depthIn } = layer;
      return [
        {
          kind: 'wires',
          angleDeg,
          diameterIn: wireIn,
          spacingIn,
          areaIn2: (Math.PI * wireIn ** 2) / 4,
          centreDepthIn: depthIn - wireIn / 2,
        },
        {
          kind: 'cross-wires',
          angleDeg: angleDeg + 90,
          diameterIn: crossWireIn,
          spacingIn: crossSpacingIn,
          areaIn2: (Math.PI * crossWireIn ** 2) / 4,
          centreDepthIn: depthIn + crossWireIn / 2,
        },
      ];
    }
    case 'fabric':
    case 'fibre':
      return [];
  }
}

/** Depths below the top of a slab. */
export interface DepthRange {
  readonly fromIn: number;
  readonly toIn: number;
}

/** Depths that a layer fills, from the uppermost steel to the lowest; null for fabric and fibre. */
export function steelRange(layer: Reinforcement): DepthRange | null {
  const sets = steelSets(layer);
  if (sets.length === 0) return null;
  return {
    fromIn: Math.min(...sets.map(({ centreDepthIn, diameterIn }) => centreDepthIn - diameterIn / 2)),
    toIn: Math.max(...sets.map(({ centreDepthIn, diameterIn }) => centreDepthIn + diameterIn / 2)),
  };
}
