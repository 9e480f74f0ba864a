/** Straight pieces cut from sticks: the fewest sticks, or the cheapest, with a proof or with how near it came. */
import { leastFills } from './least-fills';
import { type CutAim, type Proof, proofOf } from './proof';
import { leastBins } from './shares';
import type { Fill, StickProblem } from './stick-problem';
import { aimOf, STICK_WORDS, type StickStock, totalOf, wholeCost } from './stock';
import { pieceTicks, stockTicks } from './ticks';

export interface StickPiece {
  readonly id: string;
  readonly lengthIn: number;
}

/** One piece on its stick. */
export interface StickCut extends StickPiece {
  /** Where the piece begins, from the end of the stick that is cut first, in. */
  readonly atIn: number;
}

export interface CutStick {
  readonly stockId: string;
  readonly stockLengthIn: number;
  /** Price of the stick; null where it is not known. */
  readonly price: number | null;
  /** Longest first, a kerf between each and the next. */
  readonly cuts: readonly StickCut[];
  /** Length left over behind the last kerf, in; 0 where a kerf would eat it. */
  readonly offcutIn: number;
}

export interface StickList<Piece extends StickPiece = StickPiece> {
  readonly sticks: readonly CutStick[];
  /** Pieces longer than any stock, in the order given. */
  readonly tooLong: readonly Piece[];
  /** What was made least: the sticks where there is one stock, else their price where all have one, else their length. */
  readonly aim: CutAim;
  /** No list has fewer sticks than this, whatever they cost. A count. */
  readonly leastSticks: number;
  readonly proof: Proof;
}

export interface StickOrder<Piece extends StickPiece = StickPiece> {
  readonly pieces: readonly Piece[];
  readonly stocks: readonly StickStock[];
  readonly kerfIn: number;
}

/**
 * Cuts pieces from sticks. Pieces of lengths l fit a stick L when their sum and a kerf between each two is no more than L. With one
 * stock the fewest sticks are sought; with several, each stick of one of them, the least price where every stock has one, else the
 * least length. Proved where a bound is met or the search tried every way; else the proof says how near the list is. Lists of some 40
 * pieces are searched to the end; longer ones as far as a fixed number of steps goes. Deterministic.
 */
export function cutSticks<Piece extends StickPiece>({
  pieces,
  stocks,
  kerfIn,
}: StickOrder<Piece>): StickList<Piece> {
  const longestTicks = Math.max(0, ...stocks.map(({ lengthIn }) => stockTicks(lengthIn, kerfIn)));
  const fits = ({ lengthIn }: StickPiece) => pieceTicks(lengthIn, kerfIn) <= longestTicks;
  const fitting = pieces.filter(fits);
  const tooLong = pieces.filter((piece) => !fits(piece));
  const aim = aimOf(stocks);
  if (fitting.length === 0) {
    const proof = proofOf(aim, 0, 0, true, STICK_WORDS);
    return { sticks: [], tooLong, aim, leastSticks: 0, proof };
  }
  const bySize = alike(fitting, kerfIn);
  const problem: StickProblem = {
    sizes: bySize.map(({ size }) => size),
    counts: bySize.map((each) => each.pieces.length),
    stocks: stocks.map((stock) => ({
      capacity: stockTicks(stock.lengthIn, kerfIn),
      cost: wholeCost(aim, stock),
    })),
  };
  const { fills, cost, least, isProved } = leastFills(problem);
  return {
    sticks: laidOut(fills, bySize, stocks, kerfIn),
    tooLong,
    aim,
    leastSticks: aim === 'count' ? least : leastBins(longestTicks, problem.sizes, problem.counts),
    proof: proofOf(aim, totalOf(aim, cost), totalOf(aim, least), isProved, STICK_WORDS),
  };
}

interface Alike {
  readonly size: number;
  readonly pieces: readonly StickPiece[];
}

/** Pieces by their length in ticks, longest first. */
function alike(pieces: readonly StickPiece[], kerfIn: number): Alike[] {
  const bySize = new Map<number, StickPiece[]>();
  for (const piece of pieces) {
    const size = pieceTicks(piece.lengthIn, kerfIn);
    const known = bySize.get(size);
    if (known === undefined) bySize.set(size, [piece]);
    else known.push(piece);
  }
  return [...bySize].map(([size, each]) => ({ size, pieces: each })).sort((a, b) => b.size - a.size);
}

/** Sticks with their pieces, the longest stock first and within it the longest pieces. */
function laidOut(
  fills: readonly Fill[],
  bySize: readonly Alike[],
  stocks: readonly StickStock[],
  kerfIn: number,
): CutStick[] {
  const next = bySize.map(() => 0);
  const longestFirst = [...fills].sort(
    (a, b) => stocks[b.stock]!.lengthIn - stocks[a.stock]!.lengthIn || comparePieces(a, b),
  );
  return longestFirst.map(({ stock, parts }) => {
    const { id, lengthIn: stockLengthIn, price } = stocks[stock]!;
    const cuts: StickCut[] = [];
    let atIn = 0;
    for (const { size, count } of parts) {
      for (let n = 0; n < count; n++) {
        const piece = bySize[size]!.pieces[next[size]!++]!;
        cuts.push({ id: piece.id, lengthIn: piece.lengthIn, atIn });
        atIn += piece.lengthIn + kerfIn;
      }
    }
    return { stockId: id, stockLengthIn, price, cuts, offcutIn: Math.max(0, stockLengthIn - atIn) };
  });
}

/** The fill with the longer pieces first; sizes count from the longest. */
function comparePieces(a: Fill, b: Fill): number {
  for (let i = 0; i < Math.min(a.parts.length, b.parts.length); i++) {
    const p = a.parts[i]!;
    const q = b.parts[i]!;
    if (p.size !== q.size) return p.size - q.size;
    if (p.count !== q.count) return q.count - p.count;
  }
  return b.parts.length - a.parts.length;
}
