/** Panels cut from sheets by cuts from edge to edge: the fewest sheets, with a proof or with how near it came. */
import { type Box, pieceBoxes, type SheetKind, type SheetSize } from './boxes';
import { fewestBoxes } from './exact-sheets';
import { greedyBoxes } from './greedy-sheets';
import { EXACT_PARTINGS } from './practice';
import { type Proof, proofOf } from './proof';
import { type SawnSheet, sawSheet } from './saw-sheet';
import { partings } from './selections';
import { SHARE_SLACK, sharesOf } from './shares';
import { pieceTicks, stockTicks } from './ticks';

export interface SheetPiece {
  readonly id: string;
  /** Measured along the sheet's length, the way its grain runs, unless it may turn, in. */
  readonly lengthIn: number;
  readonly widthIn: number;
  readonly mayTurn: boolean;
}

export interface SheetList<Piece extends SheetPiece = SheetPiece> {
  readonly sheets: readonly SawnSheet[];
  /** Pieces that no sheet holds, in the order given. */
  readonly tooLarge: readonly Piece[];
  /** No list has fewer sheets than this. A count. */
  readonly leastSheets: number;
  readonly proof: Proof;
}

export interface SheetOrder<Piece extends SheetPiece = SheetPiece> {
  readonly pieces: readonly Piece[];
  readonly sheet: { readonly lengthIn: number; readonly widthIn: number };
  readonly kerfIn: number;
}

const SHEET_WORDS = { one: 'sheet', many: 'sheets' } as const;

/**
 * Cuts pieces from sheets of one size, every cut from edge to edge of the part it goes through. Exact for up to ten pieces, more where
 * many are alike; beyond that the best of several quick lists, proved where it meets the bound. A piece is turned only where it may be.
 */
export function cutSheets<Piece extends SheetPiece>({
  pieces,
  sheet,
  kerfIn,
}: SheetOrder<Piece>): SheetList<Piece> {
  const size: SheetSize = {
    length: stockTicks(sheet.lengthIn, kerfIn),
    width: stockTicks(sheet.widthIn, kerfIn),
  };
  const fits = (piece: SheetPiece) => pieceBoxes(kindOf(piece, kerfIn), 0, size).length > 0;
  const groups = alike(pieces.filter(fits), kerfIn);
  const kinds = groups.map(({ kind }) => kind);
  const counts = groups.map((group) => group.pieces.length);
  const bound = leastSheets(kinds, counts, size);
  const isExact = partings(counts) <= EXACT_PARTINGS;
  const boxes: readonly Box[] = isExact
    ? fewestBoxes(kinds, counts, size)
    : greedyBoxes(kinds, counts, size, bound);
  const isProved = isExact || boxes.length === bound;
  const next = groups.map(() => 0);
  const least = isProved ? boxes.length : bound;
  return {
    sheets: boxes.map((box) =>
      sawSheet(box, sheet, kerfIn, {
        sizeOf: (kind) => groups[kind]!.pieces[0]!,
        take: (kind) => groups[kind]!.pieces[next[kind]!++]!.id,
      }),
    ),
    tooLarge: pieces.filter((piece) => !fits(piece)),
    leastSheets: least,
    proof: proofOf('count', boxes.length, least, isProved, SHEET_WORDS),
  };
}

function kindOf({ lengthIn, widthIn, mayTurn }: SheetPiece, kerfIn: number): SheetKind {
  return { length: pieceTicks(lengthIn, kerfIn), width: pieceTicks(widthIn, kerfIn), mayTurn };
}

/** Pieces that are alike, the largest first. */
function alike(
  pieces: readonly SheetPiece[],
  kerfIn: number,
): { readonly kind: SheetKind; readonly pieces: readonly SheetPiece[] }[] {
  const groups = new Map<string, { kind: SheetKind; pieces: SheetPiece[] }>();
  for (const piece of pieces) {
    const kind = kindOf(piece, kerfIn);
    const key = Object.values(kind).join();
    const known = groups.get(key);
    if (known === undefined) groups.set(key, { kind, pieces: [piece] });
    else known.pieces.push(piece);
  }
  return [...groups.values()].sort((a, b) => b.kind.length * b.kind.width - a.kind.length * a.kind.width);
}

/**
 * Least number of sheets, proved: a piece's share of the length times its share of the width, summed, for every pair of share functions;
 * the plain lengths among them give the area. Fekete & Schepers, A general framework for bounds for higher-dimensional orthogonal
 * packing problems (2004), from memory. A piece that may turn takes the lesser of its two shares.
 */
export function leastSheets(
  kinds: readonly SheetKind[],
  counts: readonly number[],
  sheet: SheetSize,
): number {
  const ways = kinds.map((kind) => pieceBoxes(kind, 0, sheet));
  const along = sharesOf(
    sheet.length,
    ways.flatMap((boxes) => boxes.map(({ length }) => length)),
  );
  const across = sharesOf(
    sheet.width,
    ways.flatMap((boxes) => boxes.map(({ width }) => width)),
  );
  const lengths = along.map((share) => ways.map((boxes) => boxes.map(({ length }) => share(length))));
  const widths = across.map((share) => ways.map((boxes) => boxes.map(({ width }) => share(width))));
  let most = 0;
  for (const length of lengths) {
    for (const width of widths) {
      let sum = 0;
      for (let kind = 0; kind < kinds.length; kind++) {
        let share = length[kind]![0]! * width[kind]![0]!;
        if (ways[kind]!.length > 1) share = Math.min(share, length[kind]![1]! * width[kind]![1]!);
        sum += share * counts[kind]!;
      }
      most = Math.max(most, sum);
    }
  }
  return Math.max(0, Math.ceil(most - SHARE_SLACK));
}
