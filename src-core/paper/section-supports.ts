/** What a section finds under a slab: supports that its line crosses, and brackets just behind it. */
import { stands } from '../analysis';
import type { Fill } from '../figure';
import type { ArmSection, BracketSupport, Piece, Support } from '../job';
import { bearingPatches } from '../job';
import type { Direction, Point } from '../outline';
import { clipSegmentToRegion, directionAt, moved } from '../outline';
import type { Board } from './board';
import { draw } from './board';
import { areaMark, loopMark, runMark } from './marks';
import type { SectionView } from './section-parts';
import { drawBreak } from './section-parts';
import { supportLoops, supportName } from './support-shapes';

/** From a point of the free edge straight in. */
export interface CutLine {
  readonly from: Point;
  readonly inward: Direction;
}

/** From the free edge inward, in. */
export interface Stretch {
  readonly fromIn: number;
  readonly toIn: number;
}

/** A support as a section finds it. */
export interface CutSupport {
  readonly support: Support;
  readonly name: string;
  /** Where the line crosses the whole support; null where it only passes it. */
  readonly stretch: Stretch | null;
  /** Parts that bear and are cut: the sides and rails of a cabinet. */
  readonly parts: readonly Stretch[];
  /** The arm of a bracket behind the section; null for all else. */
  readonly behind: Stretch | null;
}

/** Of what stands below the soffit this much is drawn, in. */
export const BELOW_IN = 9;
/** A ledger's height and a bed's depth, as in the model; a stud wall's plate. Common practice, no source. */
const LEDGER_IN = 5.5;
const BED_IN = 0.5;
const PLATE_IN = 1.5;
const HEEL_IN = 0.25;
/** An arm that runs within this (cosine) of the section lies in it or behind it. */
const ALONG_COSINE = 0.95;
/** The line is followed this far to either side of its beginning, in. */
const REACH_IN = 500;

/** Supports that stay and lie on or behind a line. */
export function cutSupports(piece: Piece, line: CutLine, outer: readonly Point[]): CutSupport[] {
  return piece.supports
    .filter((support) => stands(support, null))
    .flatMap((support): CutSupport[] => {
      const stretches = supportLoops(support, outer).flatMap((loop) => stretchesOn(line, loop));
      const parts = bearingPatches(support, outer).flatMap(({ corners }) => stretchesOn(line, corners));
      const stretch =
        stretches.length === 0
          ? null
          : {
              fromIn: Math.min(...stretches.map(({ fromIn }) => fromIn)),
              toIn: Math.max(...stretches.map(({ toIn }) => toIn)),
            };
      const behind = stretch === null && support.kind === 'bracket' ? armBehind(support, line) : null;
      if (stretch === null && behind === null) return [];
      return [{ support, name: supportName(support), stretch, parts, behind }];
    });
}

function stretchesOn({ from, inward }: CutLine, loop: readonly Point[]): Stretch[] {
  const segment = { a: moved(from, inward, -REACH_IN), b: moved(from, inward, REACH_IN) };
  const along = ({ xIn, yIn }: Point) => (xIn - from.xIn) * inward.x + (yIn - from.yIn) * inward.y;
  return clipSegmentToRegion(segment, { outer: loop, holes: [] }).map(({ a, b }) => ({
    fromIn: Math.min(along(a), along(b)),
    toIn: Math.max(along(a), along(b)),
  }));
}

/** The arm nearest to the line, seen square to it; null where the arms run another way. */
function armBehind(bracket: BracketSupport, { from, inward }: CutLine): Stretch | null {
  const way = directionAt((bracket.directionDeg * Math.PI) / 180);
  const cosine = way.x * inward.x + way.y * inward.y;
  if (Math.abs(cosine) < ALONG_COSINE) return null;
  const off = ({ xIn, yIn }: Point) => Math.abs((xIn - from.xIn) * inward.y - (yIn - from.yIn) * inward.x);
  const root = bracket.roots.reduce((best, next) => (off(next) < off(best) ? next : best));
  const rootIn = (root.xIn - from.xIn) * inward.x + (root.yIn - from.yIn) * inward.y;
  const tipIn = rootIn + Math.sign(cosine) * bracket.reachIn;
  return { fromIn: Math.min(rootIn, tipIn), toIn: Math.max(rootIn, tipIn) };
}

/** One support below the soffit; what reaches lower than is drawn ends in a break. */
export function drawCutSupport(board: Board, view: SectionView, cut: CutSupport, soffitIn: number): void {
  const { support, stretch, behind } = cut;
  const downIn = -Math.min(BELOW_IN, Math.max(soffitIn, PLATE_IN));
  const topIn = -support.gapIn;
  if (stretch === null) {
    if (behind !== null && support.kind === 'bracket') drawArm(board, view, support, behind, topIn, true);
    return;
  }
  const body = (fill: Fill) => drawBody(board, view, stretch, [topIn, downIn], fill);
  switch (support.kind) {
    case 'wall':
      if (support.build === 'stud') {
        body('none');
        fillBox(board, view, stretch, [topIn, topIn - PLATE_IN], 'timber');
      } else body('masonry');
      return;
    case 'pier':
      body(PIER_FILLS[support.build]);
      return;
    case 'leg':
      body('timber');
      return;
    case 'ledger':
      fillBox(board, view, stretch, [topIn, Math.max(topIn - LEDGER_IN, -soffitIn)], 'timber');
      return;
    case 'full-bed':
      fillBox(board, view, stretch, [topIn, topIn - BED_IN], 'dark');
      return;
    case 'bracket':
      drawArm(board, view, support, stretch, topIn, false);
      return;
    case 'cabinet': {
      const boardIn = support.backingBoardIn ?? 0;
      body('none');
      for (const part of cut.parts) {
        const isRail = part.toIn - part.fromIn < (stretch.toIn - stretch.fromIn) / 2;
        const lowIn = isRail
          ? Math.max(downIn, topIn - boardIn - RAIL_IN)
          : topIn - boardIn - support.panelIn;
        fillBox(board, view, part, [topIn - boardIn, lowIn], 'timber');
      }
      if (boardIn > 0) fillBox(board, view, stretch, [topIn, topIn - boardIn], 'board');
    }
  }
}

/** Depth of a cabinet's rail as it is drawn, in. Common practice, no source. */
const RAIL_IN = 3;

const PIER_FILLS = {
  block: 'masonry',
  brick: 'masonry',
  stone: 'masonry',
  concrete: 'concrete',
  'timber-post': 'timber',
} as const satisfies { readonly [build: string]: Fill };

function fillBox(
  board: Board,
  { at }: SectionView,
  { fromIn, toIn }: Stretch,
  [topIn, lowIn]: readonly [number, number],
  fill: Fill,
): void {
  const loop = [at(-fromIn, topIn), at(-toIn, topIn), at(-toIn, lowIn), at(-fromIn, lowIn)];
  draw(board, areaMark([loop], fill, 'visible'));
}

/** Sides and top, open to a break below. */
function drawBody(
  board: Board,
  { at }: SectionView,
  { fromIn, toIn }: Stretch,
  [topIn, lowIn]: readonly [number, number],
  fill: Fill,
): void {
  const loop = [at(-fromIn, lowIn), at(-fromIn, topIn), at(-toIn, topIn), at(-toIn, lowIn)];
  if (fill !== 'none') draw(board, areaMark([loop], fill));
  draw(board, runMark(loop, 'visible'));
  drawBreak(board, at(-fromIn, lowIn), at(-toIn, lowIn));
}

/** An arm along its stretch, and the heel at the end that is its root. */
function drawArm(
  board: Board,
  { at }: SectionView,
  bracket: BracketSupport,
  { fromIn, toIn }: Stretch,
  topIn: number,
  isBehind: boolean,
): void {
  const deepIn = armDepthIn(bracket.arm);
  // the free edge is at 0, so the arm's root is its far end
  const loop = [
    at(-fromIn, topIn),
    at(-toIn, topIn),
    at(-toIn, topIn - bracket.heelIn),
    at(-toIn + HEEL_IN, topIn - bracket.heelIn),
    at(-toIn + HEEL_IN, topIn - deepIn),
    at(-fromIn, topIn - deepIn),
  ];
  if (isBehind) draw(board, loopMark(loop, 'hidden'));
  else draw(board, areaMark([loop], bracket.arm.kind === 'knee-brace' ? 'timber' : 'steel', 'visible'));
}

function armDepthIn(arm: ArmSection): number {
  return arm.kind === 'angle' ? arm.legDepthIn : arm.depthIn;
}
