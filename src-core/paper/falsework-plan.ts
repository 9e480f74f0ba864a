/** The plan of the falsework under a piece: sections, sticks, legs with the lengths to cut, and the order in which it comes out. */

import type { DesignedSection, FalseworkDesign } from '../falsework';
import { legNumber, placeInPlan, sectionCorners, sectionLetter, turnedPlace } from '../falsework';
import type { Figure, PaperPoint, Pen } from '../figure';
import type { Job, Piece } from '../job';
import { pieceRegion } from '../job';
import { boundingBox, leftOf } from '../outline';
import type { Board, Spot } from './board';
import { boardMarks, draw, newBoard, placeWords } from './board';
import { bareLength, dimensionNote } from './figure-words';
import { atLargestScale, finishedFigure } from './finish';
import { drawFurniture } from './furniture';
import { drawLegs, nameLegs } from './leg-marks';
import { areaMark, lineMark, loopMark } from './marks';
import type { PlanView } from './plan-view';
import { movedOn, planView } from './plan-view';
import { SMALL_PT } from './practice';
import type { PaperScale, PaperSize } from './scale';
import { PLAN_SCALES } from './scale';

/** Thickness of a ledger in plan, in. */
const LEDGER_IN = 1.5;
/** Size of a section's letter. */
const LETTER_PT = 13;
/** Arrow by which a section comes out, on paper, in. */
const ARROW_IN = 0.3;
const HEAD_IN = 0.1;

/**
 * The falsework of a piece in plan at the largest standard scale that its room takes: each leg with its number and the length it is
 * cut to, each section with its letter, day and way out. null where nothing was designed.
 */
export function falseworkPlan(
  job: Job,
  piece: Piece,
  design: FalseworkDesign,
  room: PaperSize,
): Figure | null {
  if (design.sections.length === 0) return null;
  const region = pieceRegion(piece);
  const slab = region.ok ? [region.outer, ...region.holes] : [];
  const box = boundingBox(
    [...slab, ...design.sections.map(({ section }) => sectionCorners(section.frame))].flat(),
  );
  const order = removalOrder(design);
  const drawAt = (scale: PaperScale): Figure => {
    const board = newBoard();
    const view = planView(box, scale.ratio);
    for (const loop of slab) draw(board, loopMark(view.loop(loop), 'centre'));
    for (const section of design.sections) drawSectionLines(board, view, section);
    for (const section of design.sections) drawLegs(board, view, section);
    for (const section of design.sections) drawWayOut(board, view, section);
    design.sections.forEach((section, i) => {
      nameSection(board, view, section, sectionLetter(i), order.indexOf(section) + 1);
    });
    const everyLeg = design.sections.flatMap(({ legs }) => legs.map(({ at }) => view.at(at)));
    design.sections.forEach((section, i) => {
      nameLegs(board, view, job, section, sectionLetter(i), everyLeg);
    });
    drawFurniture(board, {
      ratio: scale.ratio,
      system: job.shownIn,
      notes: falseworkNotes(job, design),
      leastWidthIn: Math.min(room.widthIn, LEAST_NOTE_IN),
      hasFront: true,
    });
    return finishedFigure(
      {
        id: `falsework-${piece.id}`,
        title: `Falsework under ${piece.name}`,
        scaleWords: scale.words,
        words: falseworkWords(job, piece, design, order),
      },
      boardMarks(board),
    );
  };
  return atLargestScale(PLAN_SCALES[job.shownIn], room, drawAt);
}

const LEAST_NOTE_IN = 4;

/** Sections in the order in which they come out: by their day, then as they stand in the design. */
function removalOrder({ sections }: FalseworkDesign): DesignedSection[] {
  return [...sections].sort((a, b) => a.section.lastDay - b.section.lastDay);
}

function drawSectionLines(
  board: Board,
  view: PlanView,
  { section, worked: { framing } }: DesignedSection,
): void {
  const { frame, openings } = section;
  const { joistRun } = framing.arrangement;
  const on = (s: number, t: number): PaperPoint => {
    const { p, q } = turnedPlace(s, t, joistRun);
    return view.at(placeInPlan(frame, p, q));
  };
  const stick = (from: PaperPoint, to: PaperPoint, pen: Pen) => draw(board, lineMark(from, to, pen));
  for (const { s, t0, t1 } of framing.joists) stick(on(s, t0), on(s, t1), 'thin');
  for (const { t, s0, s1 } of framing.headers) stick(on(s0, t), on(s1, t), 'thin');
  for (const { kind, t } of framing.lines) {
    if (kind === 'stringer') stick(on(0, t), on(framing.acrossIn, t), 'hidden');
    if (kind === 'ledger') {
      const [low, high] = [t - LEDGER_IN / 2, t + LEDGER_IN / 2];
      const loop = [on(0, low), on(framing.acrossIn, low), on(framing.acrossIn, high), on(0, high)];
      draw(board, areaMark([loop], 'dark', 'thin'));
    }
  }
  for (const { patch } of openings) {
    const { p0, p1, q0, q1 } = patch;
    const corners = [
      [p0, q0],
      [p1, q0],
      [p1, q1],
      [p0, q1],
    ].map(([p, q]) => view.at(placeInPlan(frame, p!, q!)));
    draw(
      board,
      loopMark(corners, 'visible'),
      lineMark(corners[0]!, corners[2]!, 'thin'),
      lineMark(corners[1]!, corners[3]!, 'thin'),
    );
  }
  draw(board, loopMark(view.loop(sectionCorners(frame)), 'visible'));
}

/** An arrow across the side by which a section comes out. */
function drawWayOut(board: Board, view: PlanView, { section: { frame }, way }: DesignedSection): void {
  if (way.by === null) return;
  const { widthIn, depthIn, along } = frame;
  const back = leftOf(along);
  const sides = {
    front: { middle: placeInPlan(frame, widthIn / 2, 0), out: { x: -back.x, y: -back.y } },
    left: { middle: placeInPlan(frame, 0, depthIn / 2), out: { x: -along.x, y: -along.y } },
    right: { middle: placeInPlan(frame, widthIn, depthIn / 2), out: along },
  };
  const { middle, out } = sides[way.by];
  const on = view.way(out);
  const side = { x: -on.y, y: on.x };
  const tail = movedOn(view.at(middle), on, ARROW_GAP_IN);
  const tip = movedOn(tail, on, ARROW_IN);
  const neck = movedOn(tip, on, -HEAD_IN);
  draw(
    board,
    lineMark(tail, neck, 'visible'),
    areaMark([[tip, movedOn(neck, side, HEAD_IN / 3), movedOn(neck, side, -HEAD_IN / 3)]], 'ink', 'thin'),
  );
}

const ARROW_GAP_IN = 0.06;

function nameSection(
  board: Board,
  view: PlanView,
  { section }: DesignedSection,
  letter: string,
  turn: number,
): void {
  const { frame } = section;
  const middle = view.at(placeInPlan(frame, frame.widthIn / 2, frame.depthIn / 2));
  const near = (shifts: readonly (readonly [number, number])[], from: PaperPoint): Spot[] =>
    shifts.map(([x, y], i) => ({
      centre: { x: from.x + x, y: from.y + y },
      turnDeg: 0,
      leaderTo: null,
      cost: i * 0.03,
    }));
  const { centre } = placeWords(
    board,
    { words: letter, sizePt: LETTER_PT, isBold: true },
    near(LETTER_SHIFTS, middle),
    middle,
  );
  const words = `out ${turn}, day ${section.lastDay}`;
  placeWords(board, { words, sizePt: SMALL_PT }, near(DAY_SHIFTS, centre), centre);
}

/** Places of a letter round the middle of its section, and of its day round the letter, on paper, in. */
const LETTER_SHIFTS: readonly (readonly [number, number])[] = [
  [0, -0.06],
  [0.1, -0.06],
  [-0.1, -0.06],
  [0, -0.18],
  [0, 0.1],
  [0.2, 0],
  [-0.2, 0],
];
const DAY_SHIFTS: readonly (readonly [number, number])[] = [
  [0, 0.16],
  [0, -0.16],
  [0, 0.22],
  [0.1, 0.16],
  [-0.1, 0.16],
];

function falseworkNotes(job: Job, { sections }: FalseworkDesign): string[] {
  const kinds = new Set(sections.flatMap(({ worked: { framing } }) => framing.lines.map(({ kind }) => kind)));
  const hasOpening = sections.some(({ section }) => section.openings.length > 0);
  const sticks = [
    'thin lines joists',
    ...(kinds.has('stringer') ? ['broken lines stringers'] : []),
    ...(kinds.has('ledger') ? ['shaded strips ledgers'] : []),
    ...(hasOpening ? ['crossed boxes openings'] : []),
    'chain line the slab above',
  ];
  return [
    `${dimensionNote(job.shownIn)} Black: legs, each with its number and the length to cut. ${capitalised(sticks.join(', '))}.`,
    'Arrows: the way out, in the order "out 1, 2 ...". Nothing comes out before its day, and nobody is under the slab when it does.',
  ];
}

function falseworkWords(
  job: Job,
  piece: Piece,
  design: FalseworkDesign,
  order: readonly DesignedSection[],
): string {
  const letters = new Map(design.sections.map((section, i) => [section, sectionLetter(i)]));
  const legs = design.sections.reduce((sum, each) => sum + each.legs.length, 0);
  const out = order.map((section) => `${letters.get(section)} on day ${section.section.lastDay}`);
  const lengths = design.sections.flatMap((section, i) =>
    section.legs.map(
      ({ leg }, k) => `${legNumber(sectionLetter(i), k)} ${bareLength(leg.cutIn, job.shownIn)}`,
    ),
  );
  return `Plan of the falsework under ${piece.name}: ${design.sections.length} sections on ${legs} legs. They come out in this order: ${out.join(', ')}. Legs cut to: ${lengths.join(', ')}.`;
}

function capitalised(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
