/** Sections through the different edges of a piece, in their forms. */
import type { Figure, Mark, PaperPoint } from '../figure';
import type { Job, Piece } from '../job';
import { edgeSection } from '../profile';
import { printLength } from '../units';
import type { Board, WordsToPlace } from './board';
import { boardMarks, draw, newBoard, placeWords } from './board';
import { drawLane, placeLoose } from './dimension-line';
import type { EdgeKind } from './edge-kinds';
import { edgeKinds, edgeKindWords, edgesWords } from './edge-kinds';
import { marksExtent } from './extent';
import { bareFineLength, dimensionNote } from './figure-words';
import { atLargestScale, finishedFigure } from './finish';
import { brokenWords, drawNotes } from './furniture';
import { inRows } from './in-rows';
import { areaMark, runMark, textMark } from './marks';
import { NAME_PT, PT_PER_IN, SMALL_PT } from './practice';
import type { PaperScale, PaperSize } from './scale';
import { DETAIL_SCALES } from './scale';
import type { SectionView } from './section-parts';
import { drawBreak, drawSteel, sectionView, steelSpread } from './section-parts';

/** Slab drawn behind an edge: this much, or this many times its thickness where that is more, and past any groove, in. */
const INSIDE_IN = 3.5;
const INSIDE_THICKNESSES = 1.6;
const PAST_GROOVE_IN = 1;
/** Of a wall or a neighbouring slab this much is drawn, in. */
const NEIGHBOUR_IN = 1.25;

/**
 * A section through each edge of a piece that differs from the others: profile, drip groove, steel with its cover, the backing board
 * below and the form outside. Full size or half size where the room allows.
 */
export function edgeSections(job: Job, piece: Piece, room: PaperSize): Figure {
  const kinds = edgeKinds(piece);
  const draw = (scale: PaperScale): Figure => {
    const parts = kinds.map((kind) => boardMarks(sectionOf(job, piece, kind, sectionView(scale.ratio))));
    return finishedFigure(
      {
        id: `edges-${piece.id}`,
        title: `Edges of ${piece.name} in section`,
        scaleWords: scale.words,
        words: sectionWords(job, piece, kinds),
      },
      withNote(
        inRows(parts, room.widthIn),
        `${dimensionNote(job.shownIn)} Each looks along its edge, the slab to the left.`,
        room,
      ),
    );
  };
  return atLargestScale(DETAIL_SCALES[job.shownIn], room, draw);
}

function sectionOf(job: Job, piece: Piece, kind: EdgeKind, view: SectionView): Board {
  const board = newBoard();
  const { thicknessIn } = piece;
  const { line, groove } = edgeSection(kind.edge, thicknessIn);
  const grooveEndIn = groove === null ? 0 : groove.setbackIn + groove.widthIn + PAST_GROOVE_IN;
  const insideIn = Math.max(INSIDE_IN, INSIDE_THICKNESSES * thicknessIn, grooveEndIn);
  const { at } = view;
  const cutLine = [
    at(-insideIn, 0),
    ...line.map(({ outIn, upIn }) => at(outIn, upIn)),
    at(-insideIn, thicknessIn),
  ];
  draw(board, areaMark([cutLine], 'concrete'));
  const beyondIn = drawOutside(board, view, job, piece, kind);
  const boardIn = job.falsework.backingBoardIn;
  if (boardIn > 0) {
    const under = [at(-insideIn, 0), at(beyondIn, 0), at(beyondIn, -boardIn), at(-insideIn, -boardIn)];
    draw(board, areaMark([under], 'board', 'visible'));
    if (groove !== null) {
      const far = -(groove.setbackIn + groove.widthIn);
      const former = [
        at(far, 0),
        at(-groove.setbackIn, 0),
        at(-groove.setbackIn, groove.depthIn),
        at(far, groove.depthIn),
      ];
      draw(board, areaMark([former], 'timber', 'thin'));
    }
  }
  draw(board, runMark(cutLine, 'cut'));
  drawBreak(board, at(-insideIn, thicknessIn), at(-insideIn, -boardIn));
  drawSteel(board, view, kind.steel, [-insideIn, 0], { atFrom: false, atTo: true });
  dimensionSection(board, view, job, piece, kind, insideIn);
  callOut(board, view, job, piece, kind, insideIn);
  titleBelow(board, `${edgesWords(kind.edges)}: ${edgeKindWords(job, kind.edge)}`);
  return board;
}

/** The form, or the wall or slab that stands there; gives how far out it is drawn. */
function drawOutside(board: Board, { at }: SectionView, job: Job, piece: Piece, { edge }: EdgeKind): number {
  const { thicknessIn } = piece;
  const between = (fromIn: number, toIn: number) => [
    at(fromIn, 0),
    at(toIn, 0),
    at(toIn, thicknessIn),
    at(fromIn, thicknessIn),
  ];
  if (edge.kind === 'free') {
    const { face } = edgeSection(edge, thicknessIn);
    const formIn = job.forms.stripWidthIn;
    const inner = face.map(({ outIn, upIn }) => at(outIn, upIn));
    draw(board, areaMark([[...inner, at(formIn, thicknessIn), at(formIn, 0)]], 'timber', 'visible'));
    return formIn;
  }
  const { gapIn } = edge;
  const farIn = gapIn + NEIGHBOUR_IN;
  if (gapIn > 0) draw(board, areaMark([between(0, gapIn)], 'dark', 'thin'));
  draw(board, areaMark([between(gapIn, farIn)], edge.kind === 'wall' ? 'masonry' : 'concrete'));
  draw(
    board,
    runMark([at(farIn, 0), at(gapIn, 0), at(gapIn, thicknessIn), at(farIn, thicknessIn)], 'visible'),
  );
  drawBreak(board, at(farIn, thicknessIn), at(farIn, 0));
  return gapIn;
}

function dimensionSection(
  board: Board,
  { at }: SectionView,
  job: Job,
  piece: Piece,
  { edge, steel }: EdgeKind,
  insideIn: number,
): void {
  const length = (valueIn: number) => bareFineLength(valueIn, job.shownIn);
  const { thicknessIn } = piece;
  const upright = (lowIn: number, highIn: number) => ({
    from: at(-insideIn, highIn),
    to: at(-insideIn, lowIn),
    words: length(highIn - lowIn),
  });
  const left = { x: -1, y: 0 };
  const spread = steelSpread(steel);
  const covers =
    spread === null
      ? []
      : [upright(spread.highIn, thicknessIn), upright(0, spread.lowIn)].filter(
          ({ from, to }) => Math.abs(from.y - to.y) > 1e-6,
        );
  const inner = drawLane(board, covers, left, 0);
  const outer = drawLane(board, [upright(0, thicknessIn)], left, covers.length === 0 ? 0 : inner.lane + 2);
  const coverIn = Math.min(...steel.map((each) => each.coverIn));
  const across =
    steel.length > 0 && coverIn > 0
      ? [{ from: at(-coverIn, thicknessIn), to: at(0, thicknessIn), words: length(coverIn) }]
      : [];
  const above = drawLane(board, across, { x: 0, y: -1 }, 0);
  const { groove } = edgeSection(edge, thicknessIn);
  const boardIn = job.falsework.backingBoardIn;
  const below =
    groove === null
      ? []
      : [
          [groove.setbackIn + groove.widthIn, groove.setbackIn],
          [groove.setbackIn, 0],
        ].map(([farIn, nearIn]) => ({
          from: at(-farIn!, -boardIn),
          to: at(-nearIn!, -boardIn),
          words: length(farIn! - nearIn!),
        }));
  const lower = drawLane(board, below, { x: 0, y: 1 }, 0);
  placeLoose(board, [...inner.loose, ...outer.loose, ...above.loose, ...lower.loose]);
}

/** Names of the parts, on leaders. */
function callOut(
  board: Board,
  { at }: SectionView,
  job: Job,
  piece: Piece,
  { edge, steel }: EdgeKind,
  insideIn: number,
): void {
  const length = (valueIn: number) => printLength(valueIn, { system: job.shownIn });
  const call = (words: string, target: PaperPoint) => {
    const what: WordsToPlace = { words, sizePt: SMALL_PT };
    placeWords(board, what, [], target);
  };
  const { thicknessIn } = piece;
  if (edge.kind === 'free') {
    const { stripWidthIn } = job.forms;
    call(`form ${length(stripWidthIn)}`, at(stripWidthIn * 0.7, thicknessIn * 0.7));
    const { groove } = edgeSection(edge, thicknessIn);
    if (groove !== null) {
      call(
        `groove ${length(groove.depthIn)} deep`,
        at(-groove.setbackIn - groove.widthIn / 2, groove.depthIn / 2),
      );
    }
  } else {
    if (edge.gapIn > 0) call(`gap ${length(edge.gapIn)}`, at(edge.gapIn / 2, thicknessIn));
    call(edge.kind === 'wall' ? 'wall' : 'other slab', at(edge.gapIn + NEIGHBOUR_IN * 0.6, thicknessIn / 2));
  }
  const boardIn = job.falsework.backingBoardIn;
  if (boardIn > 0) call(`board ${length(boardIn)}`, at(-insideIn * 0.6, -boardIn / 2));
  for (const layer of piece.reinforcement) {
    if (layer.kind !== 'mesh' && layer.kind !== 'bars') continue;
    call(layer.label ?? layer.kind, at(-insideIn * 0.72, thicknessIn - layer.depthIn));
  }
  if (steel.length === 0) call('no steel', at(-insideIn * 0.5, thicknessIn / 2));
}

/** A title under the drawing, broken to its width. */
function titleBelow(board: Board, words: string): void {
  const { minX, maxX, maxY } = marksExtent(boardMarks(board));
  const lineIn = (NAME_PT * 1.25) / PT_PER_IN;
  brokenWords(words, NAME_PT, Math.max(maxX - minX, LEAST_TITLE_IN)).forEach((line, i) => {
    draw(board, textMark(line, { x: minX, y: maxY + 0.06 + (i + 0.9) * lineIn }, NAME_PT, { isBold: true }));
  });
}

const LEAST_TITLE_IN = 1.8;

function withNote(marks: readonly Mark[], note: string, room: PaperSize): Mark[] {
  const { minX, maxX, maxY } = marksExtent(marks);
  const board = newBoard();
  drawNotes(board, [note], { x: minX, y: maxY + 0.14 }, Math.max(maxX - minX, Math.min(room.widthIn, 3.2)));
  return [...marks, ...boardMarks(board)];
}

function sectionWords(job: Job, piece: Piece, kinds: readonly EdgeKind[]): string {
  const length = (valueIn: number) => printLength(valueIn, { system: job.shownIn });
  const each = kinds.map(
    ({ edges, edge }) => `${edgesWords(edges).toLowerCase()} ${edgeKindWords(job, edge)}`,
  );
  return `Sections of the ${length(piece.thicknessIn)} slab at ${each.join('; ')}.`;
}
