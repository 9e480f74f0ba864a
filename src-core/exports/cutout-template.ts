/** Full-size paper templates of openings. */
import { cutoutCentre } from '../edit';
import type { Figure, Paper } from '../figure';
import { PAPER_SIZES } from '../figure';
import type { Cutout, Job } from '../job';
import { cutoutInPlan } from '../job';
import type { BoundingBox, Direction, Point, Segment } from '../outline';
import { boundingBox, directionAt, edgesOf, leftOf, moved } from '../outline';
import { sentenceCase } from '../units';
import { MOST_PAGES_IN_LINE, TEMPLATE_CHORD_IN, TEMPLATE_PAST_IN } from './practice';
import type { TemplateSheet } from './template-page';
import { pageLabel, templatePage } from './template-page';
import { pageCounts, tilesOver } from './template-tiles';

export interface TemplatePage {
  /** "A1". */
  readonly label: string;
  /**
   * What the frame of the page shows, in inches: plan coordinates, or for the template seen from below those of the plan mirrored left
   * to right about the middle of the opening.
   */
  readonly box: BoundingBox;
  /** The sheet in paper inches at 1 : 1. */
  readonly figure: Figure;
}

export type CutoutTemplate =
  | {
      readonly ok: true;
      readonly columns: number;
      readonly rows: number;
      /** Only pages that part of the outline lies on, front row first. */
      readonly pages: readonly TemplatePage[];
    }
  | { readonly ok: false; readonly sentence: string };

/**
 * The outline of a sink, tap or other opening at full size over as many sheets as it takes, the front of the plan at the foot of each.
 * Seen from below it is mirrored, for marking the underside. The piece and the opening must be in the job; an opening that cannot be
 * drawn, or is too large for paper, comes back as a sentence.
 */
export function cutoutTemplate(
  job: Job,
  pieceId: string,
  cutoutId: string,
  paper: Paper,
  seenFrom: 'above' | 'below' = 'above',
): CutoutTemplate {
  const piece = job.pieces.find(({ id }) => id === pieceId);
  const index = piece?.cutouts.findIndex(({ id }) => id === cutoutId) ?? -1;
  const cutout = piece?.cutouts[index];
  if (piece === undefined || cutout === undefined) throw new Error(`No opening ${cutoutId} in ${pieceId}`);
  const plan = cutoutInPlan(piece, index, { chordToleranceIn: TEMPLATE_CHORD_IN, system: job.shownIn });
  if (!plan.ok) return { ok: false, sentence: plan.problems.map(({ sentence }) => sentence).join(' ') };
  const centre = cutoutCentre(cutout.shape);
  const turn = seenFrom === 'above' ? (p: Point) => p : mirrorAt(centre.xIn);
  const outline = edgesOf(plan.points.map(turn));
  const centreLines = centreLinesOf(cutout.shape, centre, plan.points).map(({ a, b }) => ({
    a: turn(a),
    b: turn(b),
  }));
  const size = PAPER_SIZES[paper];
  const bounds = boundsOf(outline, centreLines);
  const { columns, rows } = pageCounts(bounds, size);
  const name = `${capital(cutout.name ?? cutout.purpose)} of ${piece.name}`;
  if (Math.max(columns, rows) > MOST_PAGES_IN_LINE) {
    const sentence = `${name} is too large for a paper template: it would take more than ${MOST_PAGES_IN_LINE} pages in a row. Mark it out from its dimensions.`;
    return { ok: false, sentence };
  }
  const { tiles, crosses } = tilesOver(bounds, outline, size);
  const sheet: TemplateSheet = {
    id: `template-${piece.id}-${cutout.id}-from-${seenFrom}`,
    name,
    faceWords: seenFrom === 'above' ? 'This face up' : 'Mirrored: this face down',
    paper: size,
    columns,
    rows,
    outline,
    centreLines,
    crosses,
  };
  const pages = tiles.map((tile) => ({
    label: pageLabel(tile),
    box: tile.box,
    figure: templatePage(sheet, tile),
  }));
  return { ok: true, columns, rows, pages };
}

function mirrorAt(middleXIn: number): (point: Point) => Point {
  return ({ xIn, yIn }) => ({ xIn: 2 * middleXIn - xIn, yIn });
}

/** Two lines square to each other through the middle of an opening, along its own directions, a little past its outline. */
function centreLinesOf(shape: Cutout['shape'], centre: Point, points: readonly Point[]): Segment[] {
  const along = directionAt(shape.kind === 'rectangle' ? (shape.angleDeg * Math.PI) / 180 : 0);
  return [along, leftOf(along)].map((direction) => lineThrough(centre, direction, points));
}

function lineThrough(centre: Point, direction: Direction, points: readonly Point[]): Segment {
  const reachesIn = points.map(
    ({ xIn, yIn }) => (xIn - centre.xIn) * direction.x + (yIn - centre.yIn) * direction.y,
  );
  const [leastIn, mostIn] = [Math.min(...reachesIn), Math.max(...reachesIn)];
  return {
    a: moved(centre, direction, leastIn - TEMPLATE_PAST_IN),
    b: moved(centre, direction, mostIn + TEMPLATE_PAST_IN),
  };
}

/** Round the outline with room to spare, and round the centre lines. */
function boundsOf(outline: readonly Segment[], centreLines: readonly Segment[]): BoundingBox {
  const { minXIn, minYIn, maxXIn, maxYIn } = boundingBox(outline.map(({ a }) => a));
  const past = TEMPLATE_PAST_IN;
  return boundingBox([
    { xIn: minXIn - past, yIn: minYIn - past },
    { xIn: maxXIn + past, yIn: maxYIn + past },
    ...centreLines.flatMap(({ a, b }) => [a, b]),
  ]);
}

function capital(words: string): string {
  return sentenceCase(words);
}
