/** Edges of a piece that look alike in section, and the steel that is cut there. */
import type { EdgeProfile, Job, Piece, PieceEdge, Reinforcement } from '../job';
import { steelSets } from '../job';
import type { Direction } from '../outline';
import { directionAt, outlineEdges } from '../outline';
import {
  CHAMFER_LEG_IN,
  COVE_RADIUS_IN,
  EASED_RADIUS_IN,
  OGEE_SIZE_IN,
  ROUND_OVER_RADIUS_IN,
  STEP_SIZE_IN,
} from '../profile';
import { printLength } from '../units';

/** Steel of one direction in a section: a line where it runs across the edge, dots where it runs along it. */
export interface SectionSteel {
  readonly layerId: string;
  readonly isLine: boolean;
  /** Centre over the soffit. */
  readonly upIn: number;
  readonly diameterIn: number;
  readonly spacingIn: number;
  readonly coverIn: number;
}

/** Edges that look alike, with the steel that is cut there. */
export interface EdgeKind {
  readonly edge: PieceEdge;
  /** From 0. */
  readonly edges: readonly number[];
  readonly steel: readonly SectionSteel[];
}

/** A bare square-cornered edge is what an edge is where the piece names none. */
const UNNAMED: PieceEdge = {
  kind: 'free',
  profile: { kind: 'eased', sizeIn: null, points: null },
  dripGroove: null,
};

/** The different edges of a piece, in the order in which they come. */
export function edgeKinds(piece: Piece): EdgeKind[] {
  const kinds = new Map<string, EdgeKind & { readonly edges: number[] }>();
  for (const { edge, inward } of outlineEdges(piece.corners)) {
    const own = piece.edges?.[edge] ?? UNNAMED;
    const steel = sectionSteel(piece, inward);
    const key = JSON.stringify([sized(own), steel.filter((each) => !isAlikeBothWays(steel, each))]);
    const kind = kinds.get(key) ?? { edge: own, edges: [], steel };
    kind.edges.push(edge);
    kinds.set(key, kind);
  }
  return [...kinds.values()];
}

/** The edge with the size that its profile takes where it names none. */
function sized(edge: PieceEdge): PieceEdge {
  if (edge.kind !== 'free') return edge;
  const { profile } = edge;
  return { ...edge, profile: { ...profile, sizeIn: profile.sizeIn ?? OWN_SIZES_IN[profile.kind] } };
}

/** Sizes of profiles that name none; null where the thickness sets it, or there is nothing to size. */
const OWN_SIZES_IN: { readonly [K in EdgeProfile['kind']]: number | null } = {
  square: null,
  eased: EASED_RADIUS_IN,
  chamfer: CHAMFER_LEG_IN,
  'round-over': ROUND_OVER_RADIUS_IN,
  bullnose: null,
  'half-bullnose': null,
  cove: COVE_RADIUS_IN,
  ogee: OGEE_SIZE_IN,
  stepped: STEP_SIZE_IN,
  own: null,
};

/** Wires of a mesh that is alike both ways: which of them is cut tells two sections from each other too little. */
function isAlikeBothWays(
  steel: readonly SectionSteel[],
  { isLine, layerId, diameterIn, spacingIn }: SectionSteel,
): boolean {
  return steel.some(
    (other) =>
      other.layerId === layerId &&
      other.isLine !== isLine &&
      other.diameterIn === diameterIn &&
      other.spacingIn === spacingIn,
  );
}

/** Mesh and bars as a section along a plan direction cuts them. */
export function sectionSteel(piece: Piece, along: Direction): SectionSteel[] {
  return piece.reinforcement.flatMap((layer) => sectionsOfLayer(layer, piece.thicknessIn, along));
}

function sectionsOfLayer(layer: Reinforcement, thicknessIn: number, along: Direction): SectionSteel[] {
  if (layer.kind !== 'mesh' && layer.kind !== 'bars') return [];
  const { id: layerId, edgeCoverIn: coverIn } = layer;
  return steelSets(layer).map(({ angleDeg, diameterIn, spacingIn, centreDepthIn }) => {
    const own = directionAt((angleDeg * Math.PI) / 180);
    const isLine = Math.abs(own.x * along.x + own.y * along.y) > Math.SQRT1_2;
    return { layerId, isLine, upIn: thicknessIn - centreDepthIn, diameterIn, spacingIn, coverIn };
  });
}

const PROFILE_WORDS: { readonly [K in EdgeProfile['kind']]: string } = {
  square: 'square',
  eased: 'eased',
  chamfer: 'chamfer',
  'round-over': 'round-over',
  bullnose: 'bullnose',
  'half-bullnose': 'half bullnose',
  cove: 'cove',
  ogee: 'ogee',
  stepped: 'stepped',
  own: 'own profile',
};

/** "eased edge, drip groove", "against a wall", "butted to Serving counter". */
export function edgeKindWords(job: Job, edge: PieceEdge): string {
  switch (edge.kind) {
    case 'free': {
      const { kind } = edge.profile;
      const sizeIn = edge.profile.sizeIn ?? OWN_SIZES_IN[kind];
      const size = sizeIn === null ? '' : ` ${printLength(sizeIn, { system: job.shownIn })}`;
      return `${PROFILE_WORDS[kind]}${size}${edge.dripGroove === null ? '' : ', drip groove'}`;
    }
    case 'wall':
      return 'against a wall';
    case 'butted':
      return `butted to ${job.pieces.find(({ id }) => id === edge.toPieceId)?.name ?? edge.toPieceId}`;
  }
}

/** "Edge 3", "Edges 1, 2 and 4". */
export function edgesWords(edges: readonly number[]): string {
  const numbers = edges.map((edge) => String(edge + 1));
  const last = numbers.at(-1)!;
  return numbers.length === 1 ? `Edge ${last}` : `Edges ${numbers.slice(0, -1).join(', ')} and ${last}`;
}
