/** Steel from the tables of the trade, laid where a slab is weak: near its underside with cover, or at mid-depth if thin. */
import { BARS, MESHES } from '../../../src-core/concrete';
import type { Piece, Reinforcement } from '../../../src-core/job';

/** Cover under the lowest steel. Common practice for worktops, no source. */
const COVER_IN = 0.75;
const BAR_SPACING_IN = 6;
const EDGE_COVER_IN = 1;

/** A mesh of the table by its id. */
export function newMesh(meshId: string, piece: Piece, id: string): Reinforcement {
  const mesh = MESHES.find((one) => one.id === meshId)!;
  return {
    kind: 'mesh',
    id,
    label: `${mesh.id} mesh`,
    ...meshValues(meshId),
    angleDeg: 0,
    depthIn: steelDepthIn(piece.thicknessIn, mesh.wireDiameterIn),
    edgeCoverIn: EDGE_COVER_IN,
  };
}

/** What the table says of a mesh, as a job stores it. */
export function meshValues(meshId: string) {
  const { wireDiameterIn, spacingIn, yieldPsi } = MESHES.find(({ id }) => id === meshId)!;
  return {
    wireIn: wireDiameterIn,
    spacingIn,
    crossWireIn: wireDiameterIn,
    crossSpacingIn: spacingIn,
    yieldPsi,
  };
}

/** Bars of the table by their id, all over the piece. */
export function newBars(barId: string, piece: Piece, id: string): Reinforcement {
  const bar = BARS.find((one) => one.id === barId)!;
  return {
    kind: 'bars',
    id,
    label: `${bar.id} at ${BAR_SPACING_IN} in`,
    ...barValues(barId),
    spacingIn: BAR_SPACING_IN,
    angleDeg: 0,
    depthIn: steelDepthIn(piece.thicknessIn, bar.diameterIn / 2),
    edgeCoverIn: EDGE_COVER_IN,
    hooked: false,
    corners: null,
  };
}

/** What the table says of a bar, as a job stores it. */
export function barValues(barId: string) {
  const { diameterIn, areaIn2, yieldPsi } = BARS.find(({ id }) => id === barId)!;
  return { barIn: diameterIn, areaIn2, yieldPsi };
}

/** Glass fabric or fibre, for the shopping list. */
export function newFibre(kind: 'fabric' | 'fibre', id: string): Reinforcement {
  return { kind, id, material: 'glass', dosePcy: null };
}

/** Steel of another kind in the same place, with the label dropped since it named the old. */
export function changeSteel(old: Reinforcement, kind: Reinforcement['kind'], piece: Piece): Reinforcement {
  switch (kind) {
    case 'mesh':
      return { ...newMesh(MESHES[0]!.id, piece, old.id), ...kept(old) };
    case 'bars':
      return { ...newBars(BARS[0]!.id, piece, old.id), ...kept(old) };
    case 'fabric':
    case 'fibre':
      return old.kind === 'fabric' || old.kind === 'fibre' ? { ...old, kind } : newFibre(kind, old.id);
  }
}

function kept(old: Reinforcement) {
  if (old.kind !== 'mesh' && old.kind !== 'bars') return {};
  return { angleDeg: old.angleDeg, edgeCoverIn: old.edgeCoverIn };
}

/** To the centre of steel that needs `halfIn` of concrete on either side; to the sixteenth. */
function steelDepthIn(thicknessIn: number, halfIn: number): number {
  const low = thicknessIn - COVER_IN - halfIn;
  const depthIn = Math.max(thicknessIn / 2, low);
  return Math.floor(depthIn * 16) / 16;
}
