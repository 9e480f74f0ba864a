/** Parts of drawings in section: slab, steel, breaks. A section's own measures: out to the right, up from the soffit, in. */
import type { PaperPoint } from '../figure';
import type { Board } from './board';
import { draw } from './board';
import type { SectionSteel } from './edge-kinds';
import { dotMark, lineMark, runMark } from './marks';
import { movedOn, onWay } from './plan-view';

/** A place of a section on paper. */
export interface SectionView {
  readonly ratio: number;
  readonly at: (outIn: number, upIn: number) => PaperPoint;
}

/** The soffit at the face of the edge comes to the origin. */
export function sectionView(ratio: number): SectionView {
  return { ratio, at: (outIn, upIn) => ({ x: outIn * ratio, y: -upIn * ratio }) };
}

/** Half the height and width of the kink in a break line, and how far it runs past what it breaks, on paper, in. */
const KINK_IN = 0.05;
const BREAK_PAST_IN = 0.06;
/** Smallest dot that prints, on paper, in. */
const LEAST_DOT_IN = 0.016;
/** Dots of steel in a drawn stretch at the most. */
const MOST_DOTS = 200;

/** A break line: what is drawn goes on beyond it. */
export function drawBreak(board: Board, from: PaperPoint, to: PaperPoint): void {
  const lengthIn = Math.hypot(to.x - from.x, to.y - from.y);
  const way = { x: (to.x - from.x) / lengthIn, y: (to.y - from.y) / lengthIn };
  const side = { x: -way.y, y: way.x };
  const middle = onWay(from, to, 0.5);
  const points = [
    movedOn(from, way, -BREAK_PAST_IN),
    movedOn(middle, way, -KINK_IN),
    movedOn(movedOn(middle, way, -KINK_IN / 2), side, KINK_IN),
    movedOn(movedOn(middle, way, KINK_IN / 2), side, -KINK_IN),
    movedOn(middle, way, KINK_IN),
    movedOn(to, way, BREAK_PAST_IN),
  ];
  draw(board, runMark(points, 'thin'));
}

/**
 * Steel between two places of a section. `faces` says at which ends the concrete ends, where the steel stops a cover short of it; at
 * the others it runs to the break.
 */
export function drawSteel(
  board: Board,
  { at, ratio }: SectionView,
  steel: readonly SectionSteel[],
  [fromIn, toIn]: readonly [number, number],
  faces: { readonly atFrom: boolean; readonly atTo: boolean },
): void {
  for (const set of steel) {
    const { isLine, upIn, spacingIn, coverIn } = set;
    const lowIn = fromIn + (faces.atFrom ? coverIn : 0);
    const highIn = toIn - (faces.atTo ? coverIn : 0);
    if (highIn <= lowIn) continue;
    if (isLine) {
      draw(board, lineMark(at(lowIn, upIn), at(highIn, upIn), 'visible'));
      continue;
    }
    const count = Math.min(MOST_DOTS, Math.floor((highIn - lowIn) / spacingIn) + 1);
    for (let k = 0; k < count; k++) {
      const placeIn = faces.atTo ? highIn - k * spacingIn : lowIn + k * spacingIn;
      drawCutSteel(board, { at, ratio }, set, placeIn);
    }
  }
}

/** A bar or wire that the section cuts, as a dot. */
export function drawCutSteel(
  board: Board,
  { at, ratio }: SectionView,
  { upIn, diameterIn }: SectionSteel,
  outIn: number,
): void {
  draw(board, dotMark(at(outIn, upIn), Math.max(LEAST_DOT_IN, (diameterIn / 2) * ratio)));
}

/** Least and most height of the steel over the soffit, in; null without steel. */
export function steelSpread(
  steel: readonly SectionSteel[],
): { readonly lowIn: number; readonly highIn: number } | null {
  if (steel.length === 0) return null;
  return {
    lowIn: Math.min(...steel.map(({ upIn, diameterIn }) => upIn - diameterIn / 2)),
    highIn: Math.max(...steel.map(({ upIn, diameterIn }) => upIn + diameterIn / 2)),
  };
}
