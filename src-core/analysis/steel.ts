/** The steel that counts: layers of bars and wires with their direction and true depth. */
import { crackedDepth, crackedInertia, modularRatio, STEEL_MODULUS_PSI } from '../concrete';
import type { Piece, Reinforcement } from '../job';
import { steelSets } from '../job';
import type { Point } from '../outline';
import { isPointInPolygon } from '../outline';
import type { Face } from './types';

export interface SteelLayer {
  readonly reinforcementId: string;
  readonly words: string;
  /** Area per inch of width across the bars. */
  readonly areaIn2PerIn: number;
  readonly depthFromTopIn: number;
  readonly barIn: number;
  readonly spacingIn: number;
  readonly yieldPsi: number;
  /** Direction in which the bars run, from x towards y. */
  readonly barRad: number;
  /** Where the bars lie; null means everywhere. */
  readonly corners: readonly Point[] | null;
}

/** Below this share of a right direction a bar adds nothing worth counting. */
const NEGLIGIBLE_AREA_IN2_PER_IN = 1e-6;

/** Layers that count for strength, one a direction; fabric and fibre count zero. */
export function steelLayers(piece: Piece): SteelLayer[] {
  return piece.reinforcement.flatMap(layersOf);
}

function layersOf(steel: Reinforcement): SteelLayer[] {
  if (steel.kind !== 'bars' && steel.kind !== 'mesh') return [];
  return steelSets(steel).map(({ angleDeg, diameterIn, spacingIn, areaIn2, centreDepthIn }) => ({
    reinforcementId: steel.id,
    words: steel.label ?? steel.id,
    areaIn2PerIn: areaIn2 / spacingIn,
    depthFromTopIn: centreDepthIn,
    barIn: diameterIn,
    spacingIn,
    yieldPsi: steel.yieldPsi,
    barRad: radians(angleDeg),
    corners: steel.kind === 'bars' ? steel.corners : null,
  }));
}

/** A layer as a section bending along `bendingRad` at `at` feels it: area times cos^4 of the angle between; null where it is not there. */
export function layerAcross(layer: SteelLayer, bendingRad: number, at: Point | null): SteelLayer | null {
  if (at !== null && layer.corners !== null && !isPointInPolygon(at, layer.corners)) return null;
  const areaIn2PerIn = layer.areaIn2PerIn * Math.cos(layer.barRad - bendingRad) ** 4;
  return areaIn2PerIn < NEGLIGIBLE_AREA_IN2_PER_IN ? null : { ...layer, areaIn2PerIn };
}

/** Layers of a section on the tension side of its middle third and beyond, with their depth from the compressed face. */
export function tensionLayers(
  layers: readonly SteelLayer[],
  face: Face,
  thicknessIn: number,
  bendingRad: number,
  at: Point | null,
): (SteelLayer & { readonly depthIn: number })[] {
  return layers.flatMap((layer) => {
    const across = layerAcross(layer, bendingRad, at);
    if (across === null) return [];
    const depthIn = face === 'bottom' ? layer.depthFromTopIn : thicknessIn - layer.depthFromTopIn;
    return depthIn > thicknessIn / 3 ? [{ ...across, depthIn }] : [];
  });
}

/** Inertia of a cracked section an inch wide, in4/in: all tension layers at their common centre; 0 without steel. */
export function crackedInertiaIn4PerIn(
  layers: readonly { readonly areaIn2PerIn: number; readonly depthIn: number }[],
  modulusPsi: number,
): number {
  const As = layers.reduce((sum, layer) => sum + layer.areaIn2PerIn, 0);
  if (As === 0) return 0;
  const d = layers.reduce((sum, layer) => sum + layer.areaIn2PerIn * layer.depthIn, 0) / As;
  const n = modularRatio.compute({ Es: STEEL_MODULUS_PSI, Ec: modulusPsi });
  const kd = crackedDepth.compute({ n, As, d });
  return crackedInertia.compute({ kd, n, As, d });
}

function radians(deg: number): number {
  return (deg * Math.PI) / 180;
}
