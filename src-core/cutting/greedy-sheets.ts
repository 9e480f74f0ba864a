/** Quick lists of sheets: pieces in some order, each into the room where it fits best, which is then cut in two both ways. */
import {
  type Box,
  fitsIn,
  joinBoxes,
  pieceBoxes,
  type SawWay,
  type SheetKind,
  type SheetSize,
} from './boxes';
import { SHEET_ROUNDS } from './practice';

/** A part of a sheet: free, holding a piece, or cut in two. */
interface Room extends SheetSize {
  box: Box | null;
  parts: { readonly way: SawWay; readonly first: Room; readonly second: Room } | null;
}

/** Kinds of pieces in the order in which they are laid. */
type Queue = readonly number[];

interface Rule {
  /** How badly a piece fits a room; the least is chosen. */
  readonly misfit: (room: SheetSize, piece: SheetSize) => number;
  /** Which cut goes through the whole room first. */
  readonly firstCut: (room: SheetSize, piece: SheetSize) => SawWay;
}

const MISFITS: readonly Rule['misfit'][] = [
  (room, piece) => room.length * room.width - piece.length * piece.width,
  (room, piece) => Math.min(room.length - piece.length, room.width - piece.width),
];

const FIRST_CUTS: readonly Rule['firstCut'][] = [
  () => 'across',
  () => 'along',
  (room, piece) => (room.length - piece.length > room.width - piece.width ? 'across' : 'along'),
];

const RULES: readonly Rule[] = MISFITS.flatMap((misfit) =>
  FIRST_CUTS.map((firstCut) => ({ misfit, firstCut })),
);

/** What pieces are sorted by, the largest first. */
const SORTS: readonly ((kind: SheetKind) => number)[] = [
  ({ length, width }) => length * width,
  ({ length }) => length,
  ({ width }) => width,
  ({ length, width }) => Math.max(length, width),
];

/** One box a sheet, from the best of the quick lists. Stops at `least` sheets. Every piece must fit the sheet. */
export function greedyBoxes(
  kinds: readonly SheetKind[],
  counts: readonly number[],
  sheet: SheetSize,
  least: number,
): Box[] {
  const boxesOfKind = kinds.map((kind, i) => pieceBoxes(kind, i, sheet));
  let best: Room[] | null = null;
  for (const measure of SORTS) {
    for (const rule of RULES) {
      let queue: Queue = counts
        .flatMap((count, kind) => Array.from({ length: count }, () => kind))
        .sort((a, b) => measure(kinds[b]!) - measure(kinds[a]!) || a - b);
      for (let round = 0; round < SHEET_ROUNDS; round++) {
        const sheets = laySheets(boxesOfKind, queue, sheet, rule);
        if (best === null || sheets.length < best.length) best = sheets;
        if (best.length <= least) return boxesOf(best);
        queue = lastFirst(queue, sheets);
      }
    }
  }
  return best === null ? [] : boxesOf(best);
}

function laySheets(
  boxesOfKind: readonly (readonly Box[])[],
  queue: Queue,
  sheet: SheetSize,
  rule: Rule,
): Room[] {
  const sheets: Room[] = [];
  const free: Room[] = [];
  for (const kind of queue) {
    const boxes = boxesOfKind[kind]!;
    let choice = bestRoom(free, boxes, rule);
    if (choice === null) {
      const next: Room = { ...sheet, box: null, parts: null };
      sheets.push(next);
      free.push(next);
      choice = bestRoom(free, boxes, rule);
    }
    if (choice === null) throw new Error(`kind ${kind} fits no sheet`);
    const { at, box } = choice;
    const room = free[at]!;
    free.splice(at, 1, ...layIn(room, box, rule.firstCut(room, box)));
  }
  return sheets;
}

/** The free room that a piece fits best, and how it lies there; null where it fits none. */
function bestRoom(
  free: readonly Room[],
  boxes: readonly Box[],
  { misfit }: Rule,
): { readonly at: number; readonly box: Box } | null {
  let best: { at: number; box: Box } | null = null;
  let least = Number.POSITIVE_INFINITY;
  for (let at = 0; at < free.length; at++) {
    for (const box of boxes) {
      if (!fitsIn(box, free[at]!)) continue;
      const own = misfit(free[at]!, box);
      if (own >= least) continue;
      least = own;
      best = { at, box };
    }
  }
  return best;
}

/** Lays a box in the corner of a room, and gives the two rooms that are left. */
function layIn(room: Room, box: Box, way: SawWay): Room[] {
  const held = cutRoom(room, box, way);
  const exact = cutRoom(held.first, box, way === 'across' ? 'along' : 'across');
  exact.first.box = box;
  return [held.second, exact.second];
}

function cutRoom(room: Room, box: SheetSize, way: SawWay): { readonly first: Room; readonly second: Room } {
  const { length, width } = room;
  const part = (size: SheetSize): Room => ({ ...size, box: null, parts: null });
  const [first, second] =
    way === 'across'
      ? [part({ length: box.length, width }), part({ length: length - box.length, width })]
      : [part({ length, width: box.width }), part({ length, width: width - box.width })];
  room.parts = { way, first, second };
  return { first, second };
}

/** The pieces of the last sheet before the others. */
function lastFirst(queue: Queue, sheets: readonly Room[]): Queue {
  const last = kindsIn(boxesOf(sheets.slice(-1))[0]!);
  const rest = [...queue];
  for (const kind of last) rest.splice(rest.lastIndexOf(kind), 1);
  return [...last, ...rest];
}

function kindsIn({ made }: Box): number[] {
  return made.of === 'piece' ? [made.kind] : [...kindsIn(made.first), ...kindsIn(made.second)];
}

function boxesOf(sheets: readonly Room[]): Box[] {
  return sheets.flatMap((room) => boxOf(room) ?? []);
}

/** What a room holds without its offcuts, or null. */
function boxOf({ box, parts }: Room): Box | null {
  if (parts === null) return box;
  const first = boxOf(parts.first);
  const second = boxOf(parts.second);
  if (first === null || second === null) return first ?? second;
  return joinBoxes(parts.way, first, second);
}
