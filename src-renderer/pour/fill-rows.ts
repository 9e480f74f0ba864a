/** The order in which the forms are filled, and where in each to begin. */
import type { Job, Piece } from '../../src-core/job';
import { pieceRegion } from '../../src-core/job';
import type { Point } from '../../src-core/outline';
import { boundingBox } from '../../src-core/outline';
import type { Bucket, Pour } from '../../src-core/pour';

export interface FillRow {
  readonly piece: Piece;
  /** "Begin at the left, and fill on to the right." */
  readonly words: string;
  /** Buckets of its first casting, in order. */
  readonly buckets: readonly Bucket[];
}

/** What lies within this share of half the slab from its middle is at neither side. */
const MIDDLE_RATIO = 0.5;

/** One row a piece, in the order of pouring; copies of a piece follow one another. */
export function fillRows({ pieces }: Pick<Job, 'pieces'>, pour: Pour): FillRow[] {
  const order = [...new Set((pour.clock?.order ?? []).map(({ pieceId }) => pieceId))];
  return order.flatMap((pieceId) => {
    const piece = pieces.find(({ id }) => id === pieceId);
    if (piece === undefined) return [];
    const buckets = pour.clock!.buckets.filter((bucket) => bucket.pieceId === pieceId && bucket.copy === 1);
    const alike = piece.copies > 1 ? ` All ${piece.copies} alike, one after another.` : '';
    return [{ piece, words: `${wayWords(piece, buckets)}${alike}`, buckets }];
  });
}

function wayWords(piece: Piece, buckets: readonly Bucket[]): string {
  const [first, last] = [buckets[0], buckets.at(-1)];
  if (first === undefined || last === undefined) return 'Nothing is poured into it.';
  if (first === last) return 'One bucket fills it.';
  const [from, to] = [sideOf(piece, first.at), sideOf(piece, last.at)];
  if (from === '')
    return to === '' ? 'Begin in the middle.' : `Begin in the middle, and fill on to the ${to}.`;
  return to === '' || to === from
    ? `Begin at the ${from}, and fill on from there.`
    : `Begin at the ${from}, and fill on to the ${to}.`;
}

/** "front left", "right"; empty for the middle of a slab. */
function sideOf(piece: Piece, { xIn, yIn }: Point): string {
  const region = pieceRegion(piece);
  const box = boundingBox(region.ok ? region.outer : piece.corners);
  const share = (at: number, from: number, to: number) =>
    to > from ? (2 * at - from - to) / (to - from) : 0;
  const deep = share(yIn, box.minYIn, box.maxYIn);
  const wide = share(xIn, box.minXIn, box.maxXIn);
  return [
    deep < -MIDDLE_RATIO ? 'front' : deep > MIDDLE_RATIO ? 'back' : '',
    wide < -MIDDLE_RATIO ? 'left' : wide > MIDDLE_RATIO ? 'right' : '',
  ]
    .filter((word) => word !== '')
    .join(' ');
}
