/** Everything that is written on the plan, and the handles between, laid out together so that nothing covers anything. */
import type { Dimension } from '../../src-core/drawing';
import type { Piece } from '../../src-core/job';
import type { UnitSystem } from '../../src-core/units';
import { printLength } from '../../src-core/units';
import type { Governing } from '../../src-core/verdict';
import type { Part } from '../state/selection';
import type { Label } from './declutter';
import { boxAbout, declutter } from './declutter';
import type { Frame, Pixel } from './frame';
import { toPixel } from './frame';
import type { Handle } from './handles';
import { handlesOf } from './handles';
import type { PlacedDimension } from './place-dimensions';
import { draftDimensions, figureLabels, settleDimensions } from './place-dimensions';
import type { PlacedName } from './place-names';
import { draftNames, nameLabels, settleNames } from './place-names';
import type { HandleSize, HandleSpot } from './thin-handles';
import { thinHandles } from './thin-handles';

/** Where bending governs, with a word beside it where there is room for one. */
export interface PlacedMark {
  readonly words: string;
  readonly title: string;
  readonly at: Pixel;
  /** Start of the word's base line from the mark, px; null for no word. */
  readonly wordAt: Pixel | null;
}

export interface PlanLabels {
  readonly dimensions: readonly PlacedDimension[];
  readonly names: readonly PlacedName[];
  readonly marks: readonly PlacedMark[];
  readonly handleSizes: ReadonlyMap<string, HandleSize>;
  /** Middle of the word "Front" along the foot of the plan, px from its left; null where there is no room for it. */
  readonly frontAtPx: number | null;
}

export interface LabelledPlan {
  readonly frame: Frame;
  readonly system: UnitSystem;
  readonly pieces: readonly Piece[];
  /** The selected piece, its selected part, and its dimensions, what matters most first. */
  readonly piece: Piece;
  readonly part: Part;
  readonly dimensions: readonly Dimension[];
  readonly governing: Governing | null;
}

const HANDLE_PX = { full: 12, small: 8 } as const;
const CHARACTER_PX = 7;
const WORD_HEIGHT_PX = 16;
const MARK_PX = 14;
/** The word "Front", and its middle above the foot of the plan. */
const FRONT_WIDTH_PX = 56;
const FRONT_HEIGHT_PX = 20;
const FRONT_UP_PX = 16;

/** Lays out the plan: the selected part first, then the outline, what governs, names, and at last what lies inside. */
export function placeLabels(plan: LabelledPlan): PlanLabels {
  const { frame, system, piece, part } = plan;
  const spots = handlesOf(piece).map((handle) => spotOf(frame, piece, handle, part));
  const handleSizes = thinHandles(spots);
  const drafts = draftDimensions(frame, plan.dimensions, (one) => figure(one, system), part);
  const names = draftNames(frame, plan.pieces, piece.id);
  const marks = marksOf(frame, plan.governing);
  const figures = figureLabels(drafts);
  const own = figures.filter((_, i) => drafts[i]!.isOwn);
  const outline = figures.filter((_, i) => !drafts[i]!.isOwn && isOutline(drafts[i]!.dimension));
  const inner = figures.filter((_, i) => !drafts[i]!.isOwn && !isOutline(drafts[i]!.dimension));
  const taken = [
    ...spots.flatMap(({ key, at }) => {
      const size = handleSizes.get(key)!;
      return size === 'hidden' ? [] : [boxAbout(at, HANDLE_PX[size], HANDLE_PX[size])];
    }),
    ...marks.map(({ at }) => boxAbout(at, MARK_PX, MARK_PX)),
  ];
  const front = frontLabel(frame);
  const rooms = declutter(
    [...own, ...outline, ...markLabels(marks), ...nameLabels(names), ...inner, front],
    taken,
  );
  const frontAt = front.places[rooms.get(front.key) ?? -1];
  return {
    dimensions: settleDimensions(drafts, rooms),
    names: settleNames(names, rooms),
    marks: marks.map((mark) => ({
      ...mark,
      wordAt: WORD_PLACES[rooms.get(mark.words) ?? -1]?.(mark) ?? null,
    })),
    handleSizes,
    frontAtPx: frontAt === undefined ? null : (frontAt.left + frontAt.right) / 2,
  };
}

/** The foot of the plan is the front: said in its middle, or at either end where a figure stands there. */
function frontLabel({ widthPx, heightPx }: Frame): Label {
  const yPx = heightPx - FRONT_UP_PX;
  const xsPx = [widthPx / 2, FRONT_WIDTH_PX, widthPx - FRONT_WIDTH_PX];
  return {
    key: 'front',
    places: xsPx.map((xPx) => boxAbout({ xPx, yPx }, FRONT_WIDTH_PX, FRONT_HEIGHT_PX)),
  };
}

function isOutline({ of }: Dimension): boolean {
  return of === 'edge' || of === 'overhang';
}

function figure({ of, lengthIn }: Dimension, system: UnitSystem): string {
  const length = printLength(lengthIn, { system });
  return of === 'overhang' ? `${length} over` : length;
}

type MarkDraft = Omit<PlacedMark, 'wordAt'>;

function marksOf(frame: Frame, governing: Governing | null): MarkDraft[] {
  if (governing === null) return [];
  return [
    { words: 'top', title: 'Most tension at the top', at: toPixel(frame, governing.hogging) },
    { words: 'soffit', title: 'Most tension at the soffit', at: toPixel(frame, governing.sagging) },
  ];
}

/** Up to the right, up to the left, down to the right, down to the left. */
const WORD_PLACES: readonly ((mark: MarkDraft) => Pixel)[] = [
  () => ({ xPx: 8, yPx: -5 }),
  ({ words }) => ({ xPx: -8 - words.length * CHARACTER_PX, yPx: -5 }),
  () => ({ xPx: 8, yPx: 14 }),
  ({ words }) => ({ xPx: -8 - words.length * CHARACTER_PX, yPx: 14 }),
];

function markLabels(marks: readonly MarkDraft[]): Label[] {
  return marks.map((mark) => {
    const widthPx = mark.words.length * CHARACTER_PX;
    const places = WORD_PLACES.map((place) => {
      const { xPx, yPx } = place(mark);
      const middle = { xPx: mark.at.xPx + xPx + widthPx / 2, yPx: mark.at.yPx + yPx - 4 };
      return boxAbout(middle, widthPx, WORD_HEIGHT_PX);
    });
    return { key: mark.words, places };
  });
}

function spotOf(frame: Frame, piece: Piece, handle: Handle, part: Part): HandleSpot {
  const { key, role, at } = handle;
  return {
    key,
    role,
    at: toPixel(frame, at),
    isPicked: part.kind !== 'piece' && isSamePart(handle.part, part),
    lengthPx: role === 'edge' ? edgeLengthIn(piece, handle.index) * frame.pxPerIn : null,
  };
}

function edgeLengthIn({ corners }: Piece, index: number): number {
  const a = corners[index]!;
  const b = corners[(index + 1) % corners.length]!;
  return Math.hypot(b.xIn - a.xIn, b.yIn - a.yIn);
}

function isSamePart(a: Part, b: Part): boolean {
  if (a.kind !== b.kind) return false;
  if ('id' in a && 'id' in b) return a.id === b.id;
  return 'index' in a && 'index' in b && a.index === b.index;
}
