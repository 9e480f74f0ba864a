/** Pieces of sheet put together as a saw takes them apart: each box is a piece, or two boxes with one cut from edge to edge between. */

/** Across: the saw runs over the sheet's width, and the two parts lie one after the other along its length. Along: the other way. */
export type SawWay = 'across' | 'along';

/** A box with its smallest length and width, in ticks with one kerf. */
export interface Box {
  readonly length: number;
  readonly width: number;
  readonly made:
    | { readonly of: 'piece'; readonly kind: number; readonly isTurned: boolean }
    | { readonly of: 'parts'; readonly way: SawWay; readonly first: Box; readonly second: Box };
}

/** Pieces of sheet that are alike, in ticks with one kerf. */
export interface SheetKind {
  readonly length: number;
  readonly width: number;
  readonly mayTurn: boolean;
}

export interface SheetSize {
  readonly length: number;
  readonly width: number;
}

/** Two boxes with a cut between. */
export function joinBoxes(way: SawWay, first: Box, second: Box): Box {
  const made = { of: 'parts', way, first, second } as const;
  return way === 'across'
    ? { length: first.length + second.length, width: Math.max(first.width, second.width), made }
    : { length: Math.max(first.length, second.length), width: first.width + second.width, made };
}

/** A piece as it lies, and turned where its grain allows; only what fits the sheet. */
export function pieceBoxes({ length, width, mayTurn }: SheetKind, kind: number, sheet: SheetSize): Box[] {
  const straight: Box = { length, width, made: { of: 'piece', kind, isTurned: false } };
  const across: Box = { length: width, width: length, made: { of: 'piece', kind, isTurned: true } };
  return (mayTurn && length !== width ? [straight, across] : [straight]).filter((box) => fitsIn(box, sheet));
}

/** Whether a box fits a sheet. */
export function fitsIn(box: SheetSize, sheet: SheetSize): boolean {
  return box.length <= sheet.length && box.width <= sheet.width;
}

/** Larger of the two offcuts that one cut beside a box can leave of a sheet, ticks squared. */
export function largestOffcut({ length, width }: SheetSize, sheet: SheetSize): number {
  return Math.max((sheet.length - length) * sheet.width, (sheet.width - width) * sheet.length);
}
