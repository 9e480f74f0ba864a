/** Where the number of each leg stands beside its dot, so that it lies on no letter, no dot and no other number. */

export interface PlacePx {
  readonly x: number;
  readonly y: number;
}

export type Anchor = 'start' | 'middle' | 'end';

export interface NumberedDot {
  readonly number: string;
  readonly at: PlacePx;
  /** Middle of its section: numbers stand toward it where they can. */
  readonly middle: PlacePx;
}

export interface PlacedNumber {
  readonly label: PlacePx;
  readonly anchor: Anchor;
}

interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Width of a section's own letter, and half its height, px. */
const LETTER_HALF_PX = 9;
/** Width of a letter or figure at the most, half the height of a line, and radius of a dot with its rim, px. */
const CHARACTER_PX = 7.5;
const HALF_LINE_PX = 6;
const DOT_PX = 4;
/** From a dot to the line of its number above or below it, and to a number at its side, px. */
const ABOVE_PX = 12;
const ASIDE_PX = 6;
/** How far a number that begins or ends at its dot reaches back over it, px. */
const BACK_PX = 3;

/** A place for each number in the order of the dots; where nothing is free, the one toward the middle of its section. */
export function placeNumbers(
  dots: readonly NumberedDot[],
  letters: readonly { readonly text: string; readonly at: PlacePx }[],
  frame: { readonly widthPx: number; readonly heightPx: number },
): PlacedNumber[] {
  const taken = [...letters.map(({ text, at }) => letterBox(text, at)), ...dots.map(({ at }) => dotBox(at))];
  return dots.map((dot) => {
    const choices = choicesOf(dot);
    const isFree = ({ label, anchor }: PlacedNumber) => {
      const box = textBox(dot.number, label, anchor);
      return isWithin(box, frame) && taken.every((other) => areApart(box, other));
    };
    const placed = choices.find(isFree) ?? choices[0]!;
    taken.push(textBox(dot.number, placed.label, placed.anchor));
    return placed;
  });
}

/** Toward the middle of the section first: above or below, then beside it, then away from it. */
function choicesOf({ at, middle }: NumberedDot): PlacedNumber[] {
  const inward = at.y > middle.y ? -ABOVE_PX : ABOVE_PX;
  const anchors: readonly Anchor[] =
    at.x < middle.x - ASIDE_PX
      ? ['start', 'middle', 'end']
      : at.x > middle.x + ASIDE_PX
        ? ['end', 'middle', 'start']
        : ['middle', 'start', 'end'];
  const onLine = (dy: number) =>
    anchors.map((anchor) => ({ anchor, label: { x: at.x + backOver(anchor), y: at.y + dy } }));
  const aside = anchors
    .filter((anchor) => anchor !== 'middle')
    .map((anchor) => ({
      anchor,
      label: { x: at.x + (anchor === 'start' ? ASIDE_PX : -ASIDE_PX), y: at.y },
    }));
  return [...onLine(inward), ...aside, ...onLine(-inward)];
}

function backOver(anchor: Anchor): number {
  if (anchor === 'middle') return 0;
  return anchor === 'start' ? -BACK_PX : BACK_PX;
}

function textBox(text: string, { x, y }: PlacePx, anchor: Anchor): Box {
  const wide = text.length * CHARACTER_PX;
  const left = anchor === 'start' ? x : anchor === 'end' ? x - wide : x - wide / 2;
  return { left, right: left + wide, top: y - HALF_LINE_PX, bottom: y + HALF_LINE_PX };
}

function letterBox(text: string, { x, y }: PlacePx): Box {
  const half = (text.length * LETTER_HALF_PX) / 2;
  return { left: x - half, right: x + half, top: y - LETTER_HALF_PX, bottom: y + LETTER_HALF_PX };
}

function dotBox({ x, y }: PlacePx): Box {
  return { left: x - DOT_PX, right: x + DOT_PX, top: y - DOT_PX, bottom: y + DOT_PX };
}

function areApart(a: Box, b: Box): boolean {
  return a.right <= b.left || b.right <= a.left || a.bottom <= b.top || b.bottom <= a.top;
}

function isWithin(
  { left, right, top, bottom }: Box,
  { widthPx, heightPx }: { readonly widthPx: number; readonly heightPx: number },
): boolean {
  return left >= 0 && right <= widthPx && top >= 0 && bottom <= heightPx;
}
