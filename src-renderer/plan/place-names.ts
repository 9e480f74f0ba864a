/** Names on the plan: which have room in what they name, and where they may stand. */
import { namePoint, supportCentre } from '../../src-core/drawing';
import type { Piece } from '../../src-core/job';
import type { Point } from '../../src-core/outline';
import { edgesOf, firstHitIn } from '../../src-core/outline';
import type { Label } from './declutter';
import { boxAbout } from './declutter';
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

export interface NameDraft extends Omit<PlacedName, 'at'> {
  /** Middles of the base line that would do, the best first. */
  readonly places: readonly Pixel[];
}

const CHARACTER_PX = 7;
const LINE_PX = 18;
/** From the middle of a thing down to its base line: round the middle, or below the handle there. */
const CENTRED_PX = 5;
const BELOW_HANDLE_PX = 22;
/** From the base line up to the middle of the letters. */
const HALF_LETTER_PX = 4;
/** Lines that a name may be pushed down. */
const MOST_LINES = 3;
/** A cabinet less deep than this on the screen has room for its handle only. */
const LEAST_DEPTH_PX = 56;
/** Height of the controls along the top of the plan. */
const CONTROLS_PX = 52;

/** Names of all pieces but the selected one, which has dimensions, and of the cabinets under that, where they have room. */
export function draftNames(frame: Frame, pieces: readonly Piece[], selectedId: string | null): NameDraft[] {
  const draft = (key: string, words: string, at: Point, roomIn: number, isQuiet: boolean): NameDraft[] => {
    if (words.length * CHARACTER_PX > roomIn * frame.pxPerIn) return [];
    const { xPx, yPx } = toPixel(frame, at);
    const firstPx = yPx + (isQuiet ? BELOW_HANDLE_PX : CENTRED_PX);
    const places = Array.from({ length: isQuiet ? 1 : MOST_LINES }, (_, line) => ({
      xPx,
      yPx: firstPx + line * LINE_PX,
    }));
    return [{ key, words, isQuiet, places: places.filter((place) => isOnPlan(frame, place, words)) }];
  };
  return pieces.flatMap((piece) => {
    if (piece.id !== selectedId) {
      const at = namePoint(piece);
      return draft(piece.id, piece.name, at, roomAcrossIn(piece, at), false);
    }
    return piece.supports.flatMap((support) => {
      const at = supportCentre(support);
      if (support.kind !== 'cabinet' || at === null) return [];
      if (support.depthIn * frame.pxPerIn < LEAST_DEPTH_PX) return [];
      return draft(`${piece.id} ${support.id}`, support.name ?? support.id, at, support.widthIn, true);
    });
  });
}

/** Slab to both sides of a point on it, as far as it goes on the nearer side. */
function roomAcrossIn({ corners }: Piece, at: Point): number {
  const sides = edgesOf(corners);
  const toSide = (x: number) => firstHitIn(at, { x, y: 0 }, sides) ?? 0;
  return 2 * Math.min(toSide(-1), toSide(1));
}

function isOnPlan({ widthPx, heightPx }: Frame, { xPx, yPx }: Pixel, words: string): boolean {
  const halfPx = (words.length * CHARACTER_PX) / 2;
  return xPx - halfPx > 0 && xPx + halfPx < widthPx && yPx - LINE_PX > CONTROLS_PX && yPx < heightPx;
}

/** Names as labels that want room. */
export function nameLabels(drafts: readonly NameDraft[]): Label[] {
  return drafts.map(({ key, words, places }) => ({
    key,
    places: places.map(({ xPx, yPx }) =>
      boxAbout({ xPx, yPx: yPx - HALF_LETTER_PX }, words.length * CHARACTER_PX, LINE_PX),
    ),
  }));
}

/** The names that found room. */
export function settleNames(drafts: readonly NameDraft[], rooms: ReadonlyMap<string, number>): PlacedName[] {
  return drafts.flatMap(({ places, ...name }): PlacedName[] => {
    const at = places[rooms.get(name.key) ?? -1];
    return at === undefined ? [] : [{ ...name, at }];
  });
}
