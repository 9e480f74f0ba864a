/** What the section carries in shear at a point: as plain concrete while whole, by its steel once cracked. */
import type { BoundState, Face, PieceAnalysis, SteelLayer } from '../analysis';
import { steelLayers, tensionLayers } from '../analysis';
import type { Point } from '../outline';

/** Steel that one direction offers: area an inch of width and the depth of its centre from the compressed face. */
export interface ShearSteel {
  readonly barRad: number;
  readonly areaIn2PerIn: number;
  readonly depthIn: number;
}

export interface ShearSection {
  /** Whether a service moment there passes the cracking limit. */
  readonly isCracked: boolean;
  /** Side that stretches most there. */
  readonly face: Face;
  /** Steel on the stretched side, by direction; none, one or two. */
  readonly steel: readonly ShearSteel[];
}

const QUARTER_TURN_RAD = Math.PI / 2;

/** State of the slab nearest a point, over all cases and both stiffness bounds, whole and cracked. */
export function shearSection(analysis: PieceAnalysis, at: Point): ShearSection {
  const { elastic, cracked, concrete, piece } = analysis;
  const states = [elastic.low, elastic.high, ...(cracked === null ? [] : [cracked.low, cracked.high])];
  const node = nearestNode(analysis, at);
  const most = (pick: (state: BoundState) => Float64Array) =>
    Math.max(...states.map((state) => pick(state)[node]!));
  const sagging = most((state) => state.saggingEnvelope);
  const hogging = most((state) => state.hoggingEnvelope);
  const face = hogging > sagging ? 'top' : 'bottom';
  const layers = steelLayers(piece);
  const firstRad = layers[0]?.barRad ?? 0;
  const steel = [firstRad, firstRad + QUARTER_TURN_RAD].flatMap((barRad) => {
    const found = tensionLayers(layers, face, piece.thicknessIn, barRad, at);
    return found.length === 0 ? [] : [gathered(barRad, found)];
  });
  return { isCracked: Math.max(sagging, hogging) > concrete.crackingLimitLbfInPerIn, face, steel };
}

function gathered(
  barRad: number,
  layers: readonly (SteelLayer & { readonly depthIn: number })[],
): ShearSteel {
  const areaIn2PerIn = layers.reduce((sum, layer) => sum + layer.areaIn2PerIn, 0);
  const moment = layers.reduce((sum, layer) => sum + layer.areaIn2PerIn * layer.depthIn, 0);
  return { barRad, areaIn2PerIn, depthIn: moment / areaIn2PerIn };
}

function nearestNode({ mesh }: PieceAnalysis, at: Point): number {
  let best = 0;
  let bestIn2 = Infinity;
  for (let node = 0; node < mesh.xIn.length; node++) {
    const dx = mesh.xIn[node]! - at.xIn;
    const dy = mesh.yIn[node]! - at.yIn;
    const awayIn2 = dx * dx + dy * dy;
    if (awayIn2 >= bestIn2) continue;
    best = node;
    bestIn2 = awayIn2;
  }
  return best;
}
