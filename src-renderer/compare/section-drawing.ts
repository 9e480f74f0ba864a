/** The section through a free edge of two versions, both at one scale with their soffits level. */
import type { Piece, PieceEdge } from '../../src-core/job';
import { distanceIn } from '../../src-core/outline';
import type { EdgeSection } from '../../src-core/profile';
import { edgeSection } from '../../src-core/profile';

export interface SectionDrawing {
  /** The concrete, closed where the slab runs on. px, y down. */
  readonly fill: string;
  /** Its skin: open where the slab runs on. */
  readonly ink: string;
}

export interface SectionBox {
  readonly widthPx: number;
  readonly heightPx: number;
}

/** Slab shown behind the face at the least, in thicknesses, and behind a drip groove, in. */
const BEHIND_THICKNESSES = 2;
const BEHIND_GROOVE_IN = 0.75;

const PLAIN_EDGE: PieceEdge = {
  kind: 'free',
  profile: { kind: 'eased', sizeIn: null, points: null },
  dripGroove: null,
};

/** The piece's longest free edge; null where it has none. */
export function shownEdge({ edges, corners }: Piece): PieceEdge | null {
  if (edges === null) return PLAIN_EDGE;
  let longest: { edge: PieceEdge; lengthIn: number } | null = null;
  for (const [index, edge] of edges.entries()) {
    const from = corners[index];
    const to = corners[(index + 1) % corners.length];
    if (edge.kind !== 'free' || from === undefined || to === undefined) continue;
    const lengthIn = distanceIn(from, to);
    if (longest === null || lengthIn > longest.lengthIn) longest = { edge, lengthIn };
  }
  return longest?.edge ?? null;
}

/** Sections of both versions, the face at the right; null for a piece without a free edge. */
export function sectionDrawings(pieces: readonly Piece[], box: SectionBox): (SectionDrawing | null)[] {
  const sections = pieces.map((piece) => {
    const edge = shownEdge(piece);
    return edge === null ? null : edgeSection(edge, piece.thicknessIn);
  });
  const tallestIn = Math.max(...pieces.map(({ thicknessIn }) => thicknessIn));
  const longestIn = Math.max(
    BEHIND_THICKNESSES * tallestIn,
    ...sections.map((section) => (section === null ? 0 : reachIn(section))),
  );
  const pxPerIn = Math.min(box.widthPx / longestIn, box.heightPx / tallestIn);
  return sections.map((section, index) =>
    section === null ? null : drawingOf(section, pieces[index]!.thicknessIn, box, pxPerIn),
  );
}

function reachIn({ groove, face }: EdgeSection): number {
  const behindGroove = groove === null ? 0 : groove.setbackIn + groove.widthIn + BEHIND_GROOVE_IN;
  return Math.max(behindGroove, ...face.map(({ outIn }) => BEHIND_GROOVE_IN - outIn));
}

function drawingOf(
  { line }: EdgeSection,
  thicknessIn: number,
  { widthPx, heightPx }: SectionBox,
  pxPerIn: number,
): SectionDrawing {
  const y = (upIn: number) => rounded(heightPx - upIn * pxPerIn);
  const skin = line.map(({ outIn, upIn }) => `${rounded(widthPx + outIn * pxPerIn)} ${y(upIn)}`);
  const ink = `M0 ${y(0)}L${skin.join('L')}L0 ${y(thicknessIn)}`;
  return { ink, fill: `${ink}Z` };
}

function rounded(px: number): number {
  return Math.round(px * 100) / 100;
}
