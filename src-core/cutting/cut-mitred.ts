/** Mitred pieces cut from sticks, turned end for end so that like mitres share a cut. */
import { cutSticks } from './cut-sticks';
import { leastFills } from './least-fills';
import { jointIn, type Leans, leansOf } from './mitre';
import { type MitreOrderer, mitreOrderer } from './mitre-order';
import { type MitredStick, sawnStick } from './mitre-saw';
import { ALIKE_IN, EXACT_PARTINGS } from './practice';
import { type CutAim, type Proof, proofOf } from './proof';
import { cheapestSelections, countsIn, partings, selectionsOf } from './selections';
import { aimOf, STICK_WORDS, type StickStock, totalOf, wholeCost } from './stock';
import { pieceTicks, stockTicks } from './ticks';

export interface MitredPiece {
  readonly id: string;
  /** Length along the stick, from the long point of one end to the long point of the other, in. */
  readonly longIn: number;
  /** Width across which its mitres run, in; the same for all pieces of a list. */
  readonly faceIn: number;
  /** Each end from square, rad: 0 butt, above 0 with its long point on the near edge, below 0 with it on the far edge. */
  readonly startRad: number;
  readonly endRad: number;
}

export interface MitredList {
  readonly sticks: readonly MitredStick[];
  /** Pieces longer than any stock, and those whose mitres would meet before an edge is reached, in the order given. */
  readonly tooLong: readonly MitredPiece[];
  readonly tooShort: readonly MitredPiece[];
  readonly aim: CutAim;
  readonly proof: Proof;
}

export interface MitredOrder {
  readonly pieces: readonly MitredPiece[];
  readonly stocks: readonly StickStock[];
  readonly kerfIn: number;
  /** Whether pieces may also be rolled over about their length: both faces of the stock alike. Not, unless said. */
  readonly mayRoll?: boolean;
}

/** Pieces that are alike, and the stock they may come from. */
interface Task {
  readonly kinds: readonly Kind[];
  readonly counts: readonly number[];
  readonly stocks: readonly StickStock[];
  readonly costs: readonly number[];
  readonly kerfIn: number;
  readonly orderer: MitreOrderer;
}

interface Kind {
  readonly longIn: number;
  readonly leans: Leans;
  readonly pieces: readonly MitredPiece[];
}

/** What lies on one stick: its stock, and how many of each kind. */
interface Load {
  readonly stock: number;
  readonly counts: readonly number[];
}

/**
 * Cuts mitred pieces from sticks of their own face. Pieces may be turned half round with their face up; neighbours whose ends lean alike
 * share a cut, others are cut square apart and mitred after. Exact for some ten pieces that are unlike, more where many are alike;
 * beyond that the best of several lists, never worse than without shared cuts. The bound counts the best joint that each end could have.
 * Stick ends are taken as square. Throws where faces differ: those are different sticks.
 */
export function cutMitred({ pieces, stocks, kerfIn, mayRoll = false }: MitredOrder): MitredList {
  const faceIn = pieces[0]?.faceIn ?? 0;
  const other = pieces.find((piece) => Math.abs(piece.faceIn - faceIn) > ALIKE_IN);
  if (other !== undefined)
    throw new Error(`${other.id} is ${other.faceIn} in across, its stick ${faceIn} in`);
  const longestIn = Math.max(0, ...stocks.map(({ lengthIn }) => lengthIn));
  const tooLong = pieces.filter(({ longIn }) => longIn > longestIn + ALIKE_IN);
  const tooShort = pieces.filter((piece) => shortestEdgeIn(piece) < -ALIKE_IN);
  const kinds = kindsOf(pieces.filter((piece) => !tooLong.includes(piece) && !tooShort.includes(piece)));
  const aim = aimOf(stocks);
  const task: Task = {
    kinds,
    counts: kinds.map((kind) => kind.pieces.length),
    stocks,
    costs: stocks.map((stock) => wholeCost(aim, stock)),
    kerfIn,
    orderer: mitreOrderer(kinds, faceIn, kerfIn, mayRoll),
  };
  const { loads, least, isProved } = leastLoads(task, faceIn, mayRoll);
  return {
    sticks: laidOut(task, loads, faceIn),
    tooLong,
    tooShort,
    aim,
    proof: proofOf(aim, totalOf(aim, costOf(task, loads)), totalOf(aim, least), isProved, STICK_WORDS),
  };
}

/** Length of a piece's shorter edge, in: below nought where its mitres meet first. */
function shortestEdgeIn({ longIn, faceIn, startRad, endRad }: MitredPiece): number {
  const { start, end } = leansOf(startRad, endRad);
  const nearIn = Math.max(0, -start) + Math.max(0, end);
  const farIn = Math.max(0, start) + Math.max(0, -end);
  return longIn - faceIn * Math.max(nearIn, farIn);
}

function kindsOf(pieces: readonly MitredPiece[]): Kind[] {
  const byShape = new Map<string, MitredPiece[]>();
  for (const piece of pieces) {
    const key = [piece.longIn, piece.startRad, piece.endRad].join();
    const known = byShape.get(key);
    if (known === undefined) byShape.set(key, [piece]);
    else known.push(piece);
  }
  return [...byShape.values()]
    .map((each) => {
      const { longIn, startRad, endRad } = each[0]!;
      return { longIn, leans: leansOf(startRad, endRad), pieces: each };
    })
    .sort((a, b) => b.longIn - a.longIn);
}

interface LeastLoads {
  readonly loads: readonly Load[];
  readonly least: number;
  readonly isProved: boolean;
}

function leastLoads(task: Task, faceIn: number, mayRoll: boolean): LeastLoads {
  if (task.kinds.length === 0) return { loads: [], least: 0, isProved: true };
  if (partings(task.counts) <= EXACT_PARTINGS) {
    const loads = everyLoad(task);
    return { loads, least: costOf(task, loads), isProved: true };
  }
  const relaxed = relaxedLoads(task, faceIn, mayRoll);
  const lists = [...(relaxed.loads === null ? [] : [relaxed.loads]), longestFirst(task), squareApart(task)];
  const loads = lists.reduce((best, list) => (costOf(task, list) < costOf(task, best) ? list : best));
  return { loads, least: relaxed.least, isProved: costOf(task, loads) <= relaxed.least };
}

function costOf({ costs }: Task, loads: readonly Load[]): number {
  return loads.reduce((sum, { stock }) => sum + costs[stock]!, 0);
}

/** The cheapest stock on which pieces can lie, or -1. */
function stockFor({ stocks, costs, orderer }: Task, counts: readonly number[]): number {
  const runIn = orderer.runIn(counts);
  return stocks.reduce(
    (best, { lengthIn }, i) =>
      runIn <= lengthIn + ALIKE_IN && (best < 0 || costs[i]! < costs[best]!) ? i : best,
    -1,
  );
}

/** The cheapest list of all. */
function everyLoad(task: Task): Load[] {
  const selections = selectionsOf(task.counts);
  const sizes = task.kinds.map(({ longIn }) => longIn);
  const costs = (selection: number) => {
    const stock = stockFor(task, countsIn(selections, selection));
    return stock < 0 ? Number.POSITIVE_INFINITY : task.costs[stock]!;
  };
  return cheapestSelections(selections, sizes, costs).map((selection) => {
    const counts = countsIn(selections, selection);
    return { stock: stockFor(task, counts), counts };
  });
}

/**
 * Every end joined as well as any end of the list could join it. Half of that joint belongs to each of its two ends, so a piece takes its
 * length and both halves, and a stick has room for the two halves at its own ends more. What no such list undercuts, no true one does;
 * where its sticks hold their pieces in truth, it is a true one.
 */
function relaxedLoads(
  task: Task,
  faceIn: number,
  mayRoll: boolean,
): { readonly loads: readonly Load[] | null; readonly least: number } {
  const { kinds, counts, stocks, costs, kerfIn } = task;
  const leans = kinds.flatMap((kind) => [kind.leans.start, kind.leans.end]);
  const nexts = mayRoll ? leans.flatMap((lean) => [lean, -lean]) : leans;
  const bestJointIn = (lean: number) => Math.min(...nexts.map((next) => jointIn(lean, next, faceIn, kerfIn)));
  const looseIn = Math.max(...leans.map(bestJointIn));
  const sized = kinds
    .map(({ longIn, leans: { start, end } }, kind) => ({
      kind,
      size: pieceTicks(longIn + (bestJointIn(start) + bestJointIn(end)) / 2, 0),
    }))
    .sort((a, b) => b.size - a.size);
  const { fills, least } = leastFills({
    sizes: sized.map(({ size }) => size),
    counts: sized.map(({ kind }) => counts[kind]!),
    stocks: stocks.map(({ lengthIn }, i) => ({
      capacity: stockTicks(lengthIn + looseIn, 0),
      cost: costs[i]!,
    })),
  });
  const loads = fills.map(({ parts }) => {
    const held = kinds.map(() => 0);
    for (const { size, count } of parts) held[sized[size]!.kind] = count;
    return { stock: stockFor(task, held), counts: held };
  });
  return { loads: loads.every(({ stock }) => stock >= 0) ? loads : null, least };
}

/** The longest piece first, each onto the first stick that holds it in some order. */
function longestFirst(task: Task): Load[] {
  const { kinds, counts, stocks, orderer } = task;
  const longestIn = Math.max(...stocks.map(({ lengthIn }) => lengthIn));
  const held: number[][] = [];
  kinds.forEach((_, kind) => {
    for (let n = 0; n < counts[kind]!; n++) {
      const withIt = (each: readonly number[]) => each.map((count, i) => (i === kind ? count + 1 : count));
      const stick = held.findIndex((each) => orderer.runIn(withIt(each)) <= longestIn + ALIKE_IN);
      if (stick < 0) held.push(withIt(kinds.map(() => 0)));
      else held[stick] = withIt(held[stick]!);
    }
  });
  return held.map((each) => ({ stock: stockFor(task, each), counts: each }));
}

/** The list without shared cuts, its sticks then ordered. */
function squareApart(task: Task): Load[] {
  const { kinds, stocks, kerfIn } = task;
  const pieces = kinds.flatMap(({ longIn, pieces: each }, kind) =>
    each.map(() => ({ id: `${kind}`, lengthIn: longIn })),
  );
  return cutSticks({ pieces, stocks, kerfIn }).sticks.map(({ cuts }) => {
    const counts = kinds.map((_, kind) => cuts.filter(({ id }) => Number(id) === kind).length);
    return { stock: stockFor(task, counts), counts };
  });
}

function laidOut(
  { kinds, stocks, kerfIn, orderer }: Task,
  loads: readonly Load[],
  faceIn: number,
): MitredStick[] {
  const next = kinds.map(() => 0);
  const longestFirst = [...loads].sort((a, b) => stocks[b.stock]!.lengthIn - stocks[a.stock]!.lengthIn);
  return longestFirst.map(({ stock, counts }) => {
    const steps = orderer.order(counts).map(({ kind, isTurned, isRolled }) => ({
      piece: kinds[kind]!.pieces[next[kind]!++]!,
      lie: { isTurned, isRolled },
    }));
    return sawnStick(steps, stocks[stock]!, faceIn, kerfIn);
  });
}
