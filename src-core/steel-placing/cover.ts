/** Cover that the steel has as drawn, by face, against the cover that is wanted. */
import type { Job, Piece, PieceEdge } from '../job';
import type { Point, Region, Segment } from '../outline';
import { segmentDistanceIn } from '../outline';
import type { EdgeSection, ProfilePoint } from '../profile';
import { edgeSection } from '../profile';
import { printExactLength, printLength } from '../units';
import { COVER_IN, WET_COVER_IN } from './practice';
import type { Stacked } from './stacking';
import { edgeTrace, steelTrace } from './traces';
import type { CoverFace, CoverLeft } from './types';

/** Steel is drawn this far inward of its end in section, beyond the reach of any profile or groove, in. */
const INWARD_IN = 24;
const SAME_IN = 1e-6;
/** A shortfall that no tape shows is none, in. */
const TAPE_IN = 1 / 64;

const FREE: PieceEdge = {
  kind: 'free',
  profile: { kind: 'eased', sizeIn: null, points: null },
  dripGroove: null,
};

/**
 * Cover wanted on a face, in: half an inch, three quarters outdoors on faces that get wet. The soffit stays dry
 * behind drip grooves on all free edges. Common practice, no source; below ACI 318-19 20.5.1.3.1.
 */
export function wantedCoverIn(piece: Piece, face: 'top' | 'bottom' | 'edge'): number {
  if (piece.exposure === 'indoors') return COVER_IN;
  const free = edgesOfPiece(piece).filter((edge) => edge.kind === 'free');
  const isDry = face === 'bottom' && free.every(({ dripGroove }) => dripGroove !== null);
  return isDry ? COVER_IN : WET_COVER_IN;
}

function edgesOfPiece(piece: Piece): readonly PieceEdge[] {
  return piece.corners.map((_, k) => piece.edges?.[k] ?? FREE);
}

/** Cover left over, under and beside a layer; also over its laps, where mesh lies double. */
export function coverLeft(
  job: Job,
  piece: Piece,
  region: Region,
  { layer, undersideIn, topIn }: Stacked,
  hasLaps: boolean,
): CoverLeft[] {
  const topCoverIn = piece.thicknessIn - topIn;
  const lappedIn = layer.kind === 'mesh' ? layer.wireIn + layer.crossWireIn : 0;
  const near = leastAtEdges(piece, { undersideIn, topIn, edgeCoverIn: layer.edgeCoverIn });
  const bottomIn = Math.min(undersideIn, near.grooveIn);
  const row = (face: CoverFace, leftIn: number, wantedIn: number, edge: number | null): CoverLeft => ({
    id: `${layer.id}-cover-${face}`,
    trace: edge === null ? steelTrace(piece, layer.id) : edgeTrace(piece, edge),
    layerId: layer.id,
    face,
    leftIn,
    wantedIn,
    level: levelOf(leftIn, wantedIn),
    words: wordsOf(job, `"${layer.label ?? layer.id}"`, { face, leftIn, wantedIn, edge }),
  });
  const isLapped = hasLaps && lappedIn > 0;
  return [
    row('top', topCoverIn, wantedCoverIn(piece, 'top'), null),
    ...(isLapped ? [row('top-at-laps', topCoverIn - lappedIn, wantedCoverIn(piece, 'top'), null)] : []),
    row(
      'bottom',
      bottomIn,
      wantedCoverIn(piece, 'bottom'),
      near.grooveIn < undersideIn ? near.grooveEdge : null,
    ),
    row('edge', near.faceIn, wantedCoverIn(piece, 'edge'), near.faceEdge),
    ...(region.holes.length > 0
      ? [row('opening', layer.edgeCoverIn, wantedCoverIn(piece, 'edge'), null)]
      : []),
  ];
}

function levelOf(leftIn: number, wantedIn: number): CoverLeft['level'] {
  if (leftIn <= SAME_IN) return 'out';
  return leftIn < wantedIn - TAPE_IN ? 'short' : 'enough';
}

const PLACES: { readonly [F in CoverFace]: (name: string) => string } = {
  top: (name) => `over ${name}`,
  'top-at-laps': (name) => `over the laps of ${name}, where mesh lies on mesh`,
  bottom: (name) => `under ${name}`,
  edge: (name) => `from the end of ${name} to the face of the edge`,
  opening: (name) => `from ${name} to the lip of an opening`,
};

function wordsOf(
  job: Job,
  name: string,
  cover: Pick<CoverLeft, 'face' | 'leftIn' | 'wantedIn'> & { readonly edge: number | null },
): string {
  const { face, leftIn, wantedIn, edge } = cover;
  const { shownIn: system } = job;
  const groove = face === 'bottom' && edge !== null ? `, to the drip groove of edge ${edge + 1}` : '';
  const place = `${PLACES[face](name)}${groove}`;
  const wanted = printExactLength(wantedIn, { system });
  const level = levelOf(leftIn, wantedIn);
  if (level === 'out') return `No cover ${place}: the steel shows. ${wanted} is wanted.`;
  const left = printLength(leftIn, { system, roundToIn: 1 / 32, roundToMm: 0.5 });
  return level === 'short'
    ? `${left} of cover ${place}, less than the ${wanted} wanted.`
    : `${left} of cover ${place}; ${wanted} is wanted.`;
}

interface LeastAtEdges {
  readonly faceIn: number;
  readonly faceEdge: number;
  readonly grooveIn: number;
  readonly grooveEdge: number;
}

/** Least distance in section, over all edges, from the end of the steel to the face and to the drip groove. */
function leastAtEdges(
  piece: Piece,
  steel: { readonly undersideIn: number; readonly topIn: number; readonly edgeCoverIn: number },
): LeastAtEdges {
  const endIn = -steel.edgeCoverIn;
  const block = [
    { xIn: endIn - INWARD_IN, yIn: steel.undersideIn },
    { xIn: endIn, yIn: steel.undersideIn },
    { xIn: endIn, yIn: steel.topIn },
    { xIn: endIn - INWARD_IN, yIn: steel.topIn },
  ];
  const least = {
    faceIn: Number.POSITIVE_INFINITY,
    faceEdge: 0,
    grooveIn: Number.POSITIVE_INFINITY,
    grooveEdge: 0,
  };
  edgesOfPiece(piece).forEach((edge, k) => {
    const section = edgeSection(edge, piece.thicknessIn);
    const faceIn = distanceToBlock(section.face, block);
    if (faceIn < least.faceIn) Object.assign(least, { faceIn, faceEdge: k });
    const grooveIn = distanceToBlock(grooveLine(section), block);
    if (grooveIn < least.grooveIn) Object.assign(least, { grooveIn, grooveEdge: k });
  });
  return least;
}

function grooveLine({ groove }: EdgeSection): readonly ProfilePoint[] {
  if (groove === null) return [];
  const { setbackIn, widthIn, depthIn } = groove;
  return [
    { outIn: -setbackIn - widthIn, upIn: 0 },
    { outIn: -setbackIn - widthIn, upIn: depthIn },
    { outIn: -setbackIn, upIn: depthIn },
    { outIn: -setbackIn, upIn: 0 },
  ];
}

function distanceToBlock(line: readonly ProfilePoint[], block: readonly Point[]): number {
  const points = line.map(({ outIn, upIn }): Point => ({ xIn: outIn, yIn: upIn }));
  const sides = block.map((a, k): Segment => ({ a, b: block[(k + 1) % block.length]! }));
  const [low, , high] = block;
  const isThrough = points.some(
    ({ xIn, yIn }) => xIn > low!.xIn && xIn < high!.xIn && yIn > low!.yIn && yIn < high!.yIn,
  );
  if (isThrough) return 0;
  const distances = points
    .slice(1)
    .flatMap((b, k) => sides.map((side) => segmentDistanceIn({ a: points[k]!, b }, side)));
  return Math.min(Number.POSITIVE_INFINITY, ...distances);
}
