/** The chart's steel as it lies in a ledge: close under the top, the layer next to it running across the wall. */
import { BARS, MESHES } from '../concrete';
import type { Reinforcement } from '../job';
import type { ChartSteel } from './basis';

const ACROSS_WALL_DEG = 90;
const EDGE_COVER_IN = 1;
/** Least concrete below the steel, in. Common practice, no source. */
const LEAST_BELOW_IN = 0.25;

export type SteelFound =
  | { readonly ok: true; readonly words: string; readonly layers: readonly Reinforcement[] }
  | { readonly ok: false; readonly reason: 'unknown' | 'no-room'; readonly words: string };

/** Steel with `coverIn` of concrete over it in a slab `thicknessIn` thick. A name that is not in the tables is a value too. */
export function chartSteel(steel: ChartSteel, thicknessIn: number, coverIn: number): SteelFound {
  const found = steel.kind === 'mesh' ? meshLayers(steel.id, coverIn) : barLayers(steel, coverIn);
  if (found === null) {
    return { ok: false, reason: 'unknown', words: `There is no ${steel.kind} "${steel.id}" in the tables.` };
  }
  if (found.bottomIn > thicknessIn - LEAST_BELOW_IN + 1e-9) {
    return { ok: false, reason: 'no-room', words: `${found.words} does not fit with its cover.` };
  }
  return { ok: true, words: found.words, layers: found.layers };
}

interface Layers {
  readonly words: string;
  readonly layers: readonly Reinforcement[];
  /** Depth of the lowest steel. */
  readonly bottomIn: number;
}

/** The wires along a mesh's own direction are its upper ones. */
function meshLayers(id: string, coverIn: number): Layers | null {
  const mesh = MESHES.find((one) => one.id === id);
  if (mesh === undefined) return null;
  const wireIn = mesh.wireDiameterIn;
  const layer: Reinforcement = {
    kind: 'mesh',
    id: 'mesh',
    label: `${id} welded mesh`,
    wireIn,
    spacingIn: mesh.spacingIn,
    crossWireIn: wireIn,
    crossSpacingIn: mesh.spacingIn,
    angleDeg: ACROSS_WALL_DEG,
    depthIn: coverIn + wireIn,
    yieldPsi: mesh.yieldPsi,
    edgeCoverIn: EDGE_COVER_IN,
  };
  return { words: `${id} mesh`, layers: [layer], bottomIn: coverIn + 2 * wireIn };
}

function barLayers({ id, spacingIn }: { readonly id: string; readonly spacingIn: number }, coverIn: number) {
  const bar = BARS.find((one) => one.id === id);
  if (bar === undefined) return null;
  const layer = (row: number, angleDeg: number): Reinforcement => ({
    kind: 'bars',
    id: `bars-${row + 1}`,
    label: `${id} bars`,
    barIn: bar.diameterIn,
    areaIn2: bar.areaIn2,
    spacingIn,
    angleDeg,
    depthIn: coverIn + (row + 0.5) * bar.diameterIn,
    yieldPsi: bar.yieldPsi,
    edgeCoverIn: EDGE_COVER_IN,
    hooked: true,
    corners: null,
  });
  return {
    words: `${id} bars at ${spacingIn} in`,
    layers: [layer(0, ACROSS_WALL_DEG), layer(1, 0)],
    bottomIn: coverIn + 2 * bar.diameterIn,
  };
}
