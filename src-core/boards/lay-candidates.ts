/** The ways to lay boards that are tried: directions, straight or staggered seams, and where the first board begins. */
import type { Direction, Region } from '../outline';
import { boundingBox, insideCorners } from '../outline';
import type { BoardStock } from './board-stock';
import { layAxes, regionInFrame } from './lay-frame';
import type { LayCandidate } from './layout';
import { INSIDE_TURN_RAD, SAME_IN, SEAM_CLEAR_IN } from './practice';
import type { SeamRules } from './seam-rules';
import { rulesInFrame } from './seam-rules';

/** Besides the places that matter, seams are tried at this many even steps of a board. */
const EVEN_STEPS = 4;
/** A strip's edge counts as lying along an axis within this sine. */
const ALONG_SINE = 0.2;

/**
 * Every way that is tried, in order. A seam of the first course may fall: at the slab's ends or a whole number of boards from them, an even
 * share of the slab, even steps of a board, and as near as is allowed to either side of an opening, an inside corner or a
 * strip along an edge. Where one course or one board holds the whole slab, only that one is tried.
 */
export function layCandidates(region: Region, rules: SeamRules, board: BoardStock): LayCandidate[] {
  return layAxes(region.outer).flatMap((axis) => {
    const local = regionInFrame(region, axis);
    const seams = seamPlaces(local, rulesInFrame(rules, axis));
    return (['x', 'y'] as const).flatMap((lengthAlong) => {
      const [along, across] = lengthAlong === 'x' ? [seams.x, seams.y] : [seams.y, seams.x];
      const starts = beginnings(along, board.lengthIn);
      const rows = beginnings(across, board.widthIn);
      const isOneRow = across.maxIn - across.minIn <= board.widthIn + SAME_IN;
      const ways = isOneRow ? [false] : [false, true];
      return ways.flatMap((isStaggered) =>
        rows.flatMap((acrossIn) =>
          starts.map((alongIn): LayCandidate => ({ axis, lengthAlong, isStaggered, alongIn, acrossIn })),
        ),
      );
    });
  });
}

/** Extent of the slab one way, and where across it a seam may want to be, in. */
interface Places {
  readonly minIn: number;
  readonly maxIn: number;
  readonly wantedIn: readonly number[];
}

function seamPlaces(region: Region, rules: SeamRules): { readonly x: Places; readonly y: Places } {
  const box = boundingBox(region.outer);
  const besideBoxes = [
    ...region.holes.map((hole) => boundingBox(hole)),
    ...insideCorners(region.outer, INSIDE_TURN_RAD).map(({ at }) => boundingBox([at])),
  ];
  const beside = (atIn: number) => [atIn - SEAM_CLEAR_IN, atIn + SEAM_CLEAR_IN];
  const offStrips = (axis: Direction) =>
    rules.strips.flatMap(({ a, b, inward, depthIn }) => {
      const isAcross = Math.abs(inward.x * axis.y - inward.y * axis.x) < ALONG_SINE;
      const at = (p: { readonly xIn: number; readonly yIn: number }) =>
        p.xIn * axis.x + p.yIn * axis.y + depthIn * (inward.x * axis.x + inward.y * axis.y);
      return isAcross ? [at(a), at(b)] : [];
    });
  return {
    x: {
      minIn: box.minXIn,
      maxIn: box.maxXIn,
      wantedIn: [
        ...besideBoxes.flatMap(({ minXIn, maxXIn }) => [...beside(minXIn), ...beside(maxXIn)]),
        ...offStrips({ x: 1, y: 0 }),
      ],
    },
    y: {
      minIn: box.minYIn,
      maxIn: box.maxYIn,
      wantedIn: [
        ...besideBoxes.flatMap(({ minYIn, maxYIn }) => [...beside(minYIn), ...beside(maxYIn)]),
        ...offStrips({ x: 0, y: 1 }),
      ],
    },
  };
}

/** Where a first board may begin so that its end, or a later one, falls on a wanted place: within a board before the slab. */
function beginnings({ minIn, maxIn, wantedIn }: Places, stepIn: number): number[] {
  const widthIn = maxIn - minIn;
  if (widthIn <= stepIn + SAME_IN) return [minIn];
  const boards = Math.ceil(widthIn / stepIn - SAME_IN);
  const seamsIn = [
    minIn,
    maxIn,
    minIn + widthIn / boards,
    ...Array.from({ length: EVEN_STEPS }, (_, k) => minIn + (stepIn * k) / EVEN_STEPS),
    ...wantedIn.filter((atIn) => atIn > minIn && atIn < maxIn),
  ];
  const begins = seamsIn.map((atIn) => {
    const pastIn = (atIn - minIn) % stepIn;
    return pastIn < SAME_IN || stepIn - pastIn < SAME_IN ? minIn : minIn + pastIn - stepIn;
  });
  return begins.filter((atIn, i) => begins.findIndex((other) => Math.abs(other - atIn) < SAME_IN) === i);
}
