/** Names on the plan: which have room in what they name, and where they stand clear of each other. */
import { namePoint, supportCentre } from '../../src-core/drawing';
import type { Piece } from '../../src-core/job';
import type { Point } from '../../src-core/outline';
import { boundingBox } from '../../src-core/outline';
import type { Frame, Pixel } from './frame';
import { toPixel } from './frame';

export interface PlacedName {
  readonly key: string;
  readonly words: string;
  /** Middle of the base line. */
  readonly at: Pixel;
  /** True for what lies under the selected piece. */
  readonly isQuiet: boolean;
}

const CHARACTER_PX = 7;
const LINE_PX = 18;
/** From the middle of a thing down to its base line: round the middle, or below the handle there. */
const CENTRED_PX = 5;
const BELOW_HANDLE_PX = 22;

/** Names of all pieces but the selected one, which has dimensions, and of the cabinets under that. */
export function placeNames(frame: Frame, pieces: readonly Piece[], selectedId: string | null): PlacedName[] {
  const placed: PlacedName[] = [];
  const add = (key: string, words: string, at: Point, roomIn: number, isQuiet: boolean) => {
    if (words.length * CHARACTER_PX > roomIn * frame.pxPerIn) return;
    const { xPx, yPx } = toPixel(frame, at);
    let lowPx = yPx + (isQuiet ? BELOW_HANDLE_PX : CENTRED_PX);
    const covers = ({ words: other, at: there }: PlacedName) =>
      Math.abs(there.xPx - xPx) < ((words.length + other.length) * CHARACTER_PX) / 2 &&
      Math.abs(there.yPx - lowPx) < LINE_PX;
    while (placed.some(covers)) lowPx += LINE_PX;
    placed.push({ key, words, at: { xPx, yPx: lowPx }, isQuiet });
  };
  for (const piece of pieces) {
    if (piece.id !== selectedId) {
      const { minXIn, maxXIn, minYIn, maxYIn } = boundingBox(piece.corners);
      add(piece.id, piece.name, namePoint(piece), Math.max(maxXIn - minXIn, maxYIn - minYIn), false);
      continue;
    }
    for (const support of piece.supports) {
      const at = supportCentre(support);
      if (support.kind !== 'cabinet' || at === null) continue;
      add(`${piece.id} ${support.id}`, support.name ?? support.id, at, support.widthIn, true);
    }
  }
  return placed;
}
