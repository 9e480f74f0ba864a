/** A sheet sawn into its pieces: every cut from edge to edge of the part it goes through, in the order of the work. */
import type { Box, SawWay } from './boxes';
import { ALIKE_IN } from './practice';

/** A rectangle on the sheet: x along the sheet's length, y across its width, from one corner, in. */
export interface SheetPlace {
  readonly xIn: number;
  readonly yIn: number;
  readonly lengthIn: number;
  readonly widthIn: number;
}

/** A piece where it lies; its length and width here are measured along and across the sheet. */
export interface SheetCutPiece extends SheetPlace {
  readonly id: string;
  readonly isTurned: boolean;
  /** Part that is the piece once its cuts are made. */
  readonly part: string;
}

/** One cut. Parts are named after the cut that makes them: cut 3 makes 3a and 3b; the whole sheet is "sheet". */
export interface SheetCut {
  readonly number: number;
  readonly part: string;
  readonly runs: SawWay;
  /** Distance of the kerf from the part's own edge, in: what the fence is set to. */
  readonly atIn: number;
  /** The line on the sheet, at the near side of the kerf, in. */
  readonly from: { readonly xIn: number; readonly yIn: number };
  readonly to: { readonly xIn: number; readonly yIn: number };
  /** Parts that it makes: one where the kerf takes the rest. */
  readonly makes: readonly string[];
}

export interface SheetOffcut extends SheetPlace {
  readonly part: string;
}

export interface SawnSheet {
  readonly cuts: readonly SheetCut[];
  readonly pieces: readonly SheetCutPiece[];
  readonly offcuts: readonly SheetOffcut[];
}

/** Size of pieces and how they are called, by kind. */
export interface SheetPieces {
  readonly sizeOf: (kind: number) => { readonly lengthIn: number; readonly widthIn: number };
  /** The next piece of a kind. */
  readonly take: (kind: number) => string;
}

/** Cuts, places and offcuts of one sheet. */
export function sawSheet(
  box: Box,
  sheet: { readonly lengthIn: number; readonly widthIn: number },
  kerfIn: number,
  { sizeOf, take }: SheetPieces,
): SawnSheet {
  const cuts: SheetCut[] = [];
  const pieces: SheetCutPiece[] = [];
  const offcuts: SheetOffcut[] = [];

  const sizeIn = ({ made }: Box): { readonly lengthIn: number; readonly widthIn: number } => {
    if (made.of === 'piece') {
      const { lengthIn, widthIn } = sizeOf(made.kind);
      return made.isTurned ? { lengthIn: widthIn, widthIn: lengthIn } : { lengthIn, widthIn };
    }
    const first = sizeIn(made.first);
    const second = sizeIn(made.second);
    const longerIn = Math.max(first.lengthIn, second.lengthIn);
    const widerIn = Math.max(first.widthIn, second.widthIn);
    return made.way === 'across'
      ? { lengthIn: first.lengthIn + kerfIn + second.lengthIn, widthIn: widerIn }
      : { lengthIn: longerIn, widthIn: first.widthIn + kerfIn + second.widthIn };
  };

  /** One cut through a part; the rest is null where the kerf takes it. */
  const cut = (part: string, place: SheetPlace, runs: SawWay, atIn: number) => {
    const number = cuts.length + 1;
    const { xIn, yIn, lengthIn, widthIn } = place;
    const isAcross = runs === 'across';
    const leftIn = (isAcross ? lengthIn : widthIn) - atIn - kerfIn;
    const kept = isAcross ? { ...place, lengthIn: atIn } : { ...place, widthIn: atIn };
    const beyondIn = atIn + kerfIn;
    const rest = isAcross
      ? { ...place, xIn: xIn + beyondIn, lengthIn: leftIn }
      : { ...place, yIn: yIn + beyondIn, widthIn: leftIn };
    const hasRest = leftIn > ALIKE_IN;
    const names = { kept: `${number}a`, rest: `${number}b` };
    cuts.push({
      number,
      part,
      runs,
      atIn,
      from: isAcross ? { xIn: xIn + atIn, yIn } : { xIn, yIn: yIn + atIn },
      to: isAcross ? { xIn: xIn + atIn, yIn: yIn + widthIn } : { xIn: xIn + lengthIn, yIn: yIn + atIn },
      makes: hasRest ? [names.kept, names.rest] : [names.kept],
    });
    return {
      kept: { part: names.kept, place: kept },
      rest: hasRest ? { part: names.rest, place: rest } : null,
    };
  };

  const work = (part: string, place: SheetPlace, held: Box): void => {
    const { lengthIn, widthIn } = sizeIn(held);
    const trim = trimOf(place, lengthIn, widthIn);
    if (trim !== null) {
      const { kept, rest } = cut(part, place, trim, trim === 'across' ? lengthIn : widthIn);
      if (rest !== null) offcuts.push({ part: rest.part, ...rest.place });
      work(kept.part, kept.place, held);
      return;
    }
    const { made } = held;
    if (made.of === 'piece') {
      pieces.push({ id: take(made.kind), isTurned: made.isTurned, part, ...place });
      return;
    }
    const first = sizeIn(made.first);
    const { kept, rest } = cut(part, place, made.way, made.way === 'across' ? first.lengthIn : first.widthIn);
    if (rest === null) throw new Error(`cut ${kept.part} leaves nothing for its second part`);
    work(kept.part, kept.place, made.first);
    work(rest.part, rest.place, made.second);
  };
  work('sheet', { xIn: 0, yIn: 0, ...sheet }, box);
  return { cuts, pieces, offcuts };

  /** The cut that takes off what is too much, the one with the larger offcut first; null where nothing is. */
  function trimOf(place: SheetPlace, lengthIn: number, widthIn: number): SawWay | null {
    const longIn = place.lengthIn - lengthIn;
    const wideIn = place.widthIn - widthIn;
    if (longIn <= ALIKE_IN && wideIn <= ALIKE_IN) return null;
    if (wideIn <= ALIKE_IN) return 'across';
    if (longIn <= ALIKE_IN) return 'along';
    return longIn * place.widthIn >= wideIn * place.lengthIn ? 'across' : 'along';
  }
}
