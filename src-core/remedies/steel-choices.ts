/** Steel as it is sold: welded meshes and bars, weakest first, laid close under one face. */
import type { Face } from '../analysis';
import type { Mesh } from '../concrete';
import { BARS, MESHES } from '../concrete';
import type { Job, Reinforcement } from '../job';

export interface Bed {
  readonly face: Face;
  readonly coverIn: number;
  readonly thicknessIn: number;
  /** Direction of the layer next to the face, degrees. */
  readonly mainDeg: number;
  readonly id: (stem: string) => string;
}

export interface SteelChoice {
  /** "#3 at 6 in both ways". */
  readonly title: string;
  /** "#3", "4x4-W2.1". */
  readonly name: string;
  readonly isBars: boolean;
  readonly spacingIn: number;
  readonly layers: (bed: Bed) => readonly Reinforcement[];
}

const MM_PER_IN = 25.4;
const EDGE_COVER_IN = 1;

const MESH_IDS: { readonly [S in Job['shownIn']]: readonly string[] } = {
  imperial: ['4x4-W1.4', '4x4-W2.1', '4x4-W2.9', '4x4-D4'],
  metric: ['A98', 'A142', 'A193'],
};

interface BarSet {
  readonly id: string;
  readonly spacings: readonly { readonly spacingIn: number; readonly words: string }[];
}

const BAR_SETS: { readonly [S in Job['shownIn']]: BarSet } = {
  imperial: {
    id: '#3',
    spacings: [12, 8, 6, 4].map((inches) => ({ spacingIn: inches, words: `${inches} in` })),
  },
  metric: {
    id: '8 mm',
    spacings: [300, 200, 150, 100].map((mm) => ({ spacingIn: mm / MM_PER_IN, words: `${mm} mm` })),
  },
};

/** Square welded meshes that the code knows as reinforcement, in the sizes of the job's own system, lightest first. */
export function meshChoices(system: Job['shownIn']): SteelChoice[] {
  return MESH_IDS[system].map((id) => {
    const mesh = MESHES.find((one) => one.id === id);
    if (mesh === undefined) throw new Error(`no mesh ${id} in the table`);
    return {
      title: `${id} welded mesh`,
      name: `${id} mesh`,
      isBars: false,
      spacingIn: mesh.spacingIn,
      layers: (bed) => [meshLayer(mesh, bed)],
    };
  });
}

/** Bars both ways, widest spacing first; hooked bars take hold in a shorter length. */
export function barChoices(system: Job['shownIn'], hooked: boolean): SteelChoice[] {
  const { id, spacings } = BAR_SETS[system];
  return spacings.map(({ spacingIn, words }) => ({
    title: `${id} at ${words} both ways${hooked ? ', ends hooked' : ''}`,
    name: `${id}${hooked ? ', hooked at both ends' : ''}`,
    isBars: true,
    spacingIn,
    layers: (bed) => barLayers(id, spacingIn, hooked, bed),
  }));
}

/** The wires next to the face run in the main direction; the wires along a mesh's own direction are its upper ones. */
function meshLayer(mesh: Mesh, bed: Bed): Reinforcement {
  const isTop = bed.face === 'top';
  const fromFaceIn = bed.coverIn + mesh.wireDiameterIn;
  return {
    kind: 'mesh',
    id: bed.id(`${bed.face}-mesh`),
    label: `${mesh.id} welded mesh`,
    wireIn: mesh.wireDiameterIn,
    spacingIn: mesh.spacingIn,
    crossWireIn: mesh.wireDiameterIn,
    crossSpacingIn: mesh.spacingIn,
    angleDeg: isTop ? bed.mainDeg : across(bed.mainDeg),
    depthIn: isTop ? fromFaceIn : bed.thicknessIn - fromFaceIn,
    yieldPsi: mesh.yieldPsi,
    edgeCoverIn: EDGE_COVER_IN,
  };
}

function barLayers(barId: string, spacingIn: number, hooked: boolean, bed: Bed): Reinforcement[] {
  const bar = BARS.find(({ id }) => id === barId);
  if (bar === undefined) throw new Error(`no bar ${barId} in the table`);
  const layer = (row: number, stem: string, angleDeg: number): Reinforcement => {
    const fromFaceIn = bed.coverIn + (row + 0.5) * bar.diameterIn;
    return {
      kind: 'bars',
      id: bed.id(`${bed.face}-${stem}`),
      label: `${bar.id} bars, ${bed.face}, ${stem}`,
      barIn: bar.diameterIn,
      areaIn2: bar.areaIn2,
      spacingIn,
      angleDeg,
      depthIn: bed.face === 'top' ? fromFaceIn : bed.thicknessIn - fromFaceIn,
      yieldPsi: bar.yieldPsi,
      edgeCoverIn: EDGE_COVER_IN,
      hooked,
      corners: null,
    };
  };
  return [layer(0, 'bars-1', bed.mainDeg), layer(1, 'bars-2', across(bed.mainDeg))];
}

function across(deg: number): number {
  return deg + 90;
}
