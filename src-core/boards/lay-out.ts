/** One way of laying the boards, worked through and weighed. */
import type { Direction, Region, Segment } from '../outline';
import { distanceIn } from '../outline';
import { partShape } from './board-marks';
import type { LaidPart } from './board-parts';
import { laidParts } from './board-parts';
import type { BoardStock } from './board-stock';
import type { BoardCutting } from './cut-boards';
import { cutBoards } from './cut-boards';
import { regionInFrame } from './lay-frame';
import type { LayCandidate } from './layout';
import { boardPlaces, courseSeams, crossSeams } from './layout';
import { SAME_IN } from './practice';
import type { SeamFault, SeamRules } from './seam-rules';
import { rulesInFrame, seamFaults } from './seam-rules';
import type { ShapeCut } from './shape-cuts';
import { shapeCuts } from './shape-cuts';

export interface LaySite {
  readonly region: Region;
  readonly rules: SeamRules;
  readonly board: BoardStock;
  readonly kerfIn: number;
}

/** A seam in the frame of its layout, and what is wrong with it. */
export interface LaidSeam {
  readonly seam: Segment;
  readonly faults: readonly SeamFault[];
}

export interface LaidSeams {
  readonly candidate: LayCandidate;
  readonly seams: readonly LaidSeam[];
  readonly faults: number;
  readonly seamIn: number;
}

export interface LaidOut extends LaidSeams {
  readonly parts: readonly LaidPart[];
  readonly cutting: BoardCutting;
  /** Cuts within the rectangle of each part, one list a part. */
  readonly shapeCuts: readonly (readonly ShapeCut[])[];
  /** All that is sawn, in. */
  readonly cutIn: number;
}

/** The seams of a candidate, judged. */
export function laySeams(candidate: LayCandidate, site: LaySite): LaidSeams {
  const local = framed(site, candidate.axis);
  return together(candidate, judged(courseSeams(candidate, local.region, local.board), local), local);
}

/** The site in the frame of an axis. */
function framed(site: LaySite, axis: Direction): LaySite {
  return { ...site, region: regionInFrame(site.region, axis), rules: rulesInFrame(site.rules, axis) };
}

function judged(seams: readonly Segment[], { rules }: LaySite): LaidSeam[] {
  return seams.map((seam) => ({ seam, faults: seamFaults(seam, rules) }));
}

function faultsOf(seams: readonly LaidSeam[]): number {
  return seams.reduce((sum, { faults }) => sum + faults.length, 0);
}

/** The seams between courses with those between the boards of each. */
function together(candidate: LayCandidate, between: readonly LaidSeam[], local: LaySite): LaidSeams {
  const seams = [...between, ...judged(crossSeams(candidate, local.region, local.board), local)];
  const seamIn = seams.reduce((sumIn, { seam }) => sumIn + distanceIn(seam.a, seam.b), 0);
  return { candidate, seams, faults: faultsOf(seams), seamIn };
}

/** The boards of a candidate whose seams are known. */
export function layBoards(laid: LaidSeams, site: LaySite): LaidOut {
  return sawn(laid, partsOf(laid, site), site);
}

function partsOf({ candidate }: LaidSeams, { region, board }: LaySite): LaidPart[] {
  const local = regionInFrame(region, candidate.axis);
  return laidParts(boardPlaces(candidate, local, board), local, board);
}

function sawn(laid: LaidSeams, parts: readonly LaidPart[], { board, kerfIn }: LaySite): LaidOut {
  const cutting = cutBoards(parts, board, kerfIn);
  const shaped = parts.map((part) => shapeCuts(partShape(part), part));
  const straightIn = cutting.boards.flatMap(({ cuts }) => cuts.map(({ from, to }) => distanceIn(from, to)));
  const shapedIn = shaped.flat().map(({ lengthIn }) => lengthIn);
  const cutIn = [...straightIn, ...shapedIn].reduce((sum, lengthIn) => sum + lengthIn, 0);
  return { ...laid, parts, cutting, shapeCuts: shaped, cutIn };
}

/** Below 0 where the first way is better: fewer seams out of place, then fewer boards, then shorter seams, then less to saw. */
export function compareWays(p: LaidOut, q: LaidOut): number {
  const steps = [
    p.faults - q.faults,
    p.cutting.boards.length - q.cutting.boards.length,
    p.seamIn - q.seamIn,
    p.cutIn - q.cutIn,
  ];
  return steps.find((difference) => Math.abs(difference) > SAME_IN) ?? 0;
}

/**
 * The best of the candidates by `compareWays`; of those alike the first. They are taken by what is wrong with their seams and by
 * the length of these, and boards are cut only where a candidate can still be better.
 */
export function bestWay(candidates: readonly LayCandidate[], site: LaySite): LaidOut {
  let best: LaidOut | null = null;
  for (const laid of soundest(candidates, site)) {
    const parts = partsOf(laid, site);
    if (best !== null) {
      const boards = leastFor(parts, site);
      const mostBoards = best.cutting.boards.length;
      if (boards > mostBoards || (boards === mostBoards && laid.seamIn > best.seamIn + SAME_IN)) continue;
    }
    const way = sawn(laid, parts, site);
    if (best === null || compareWays(way, best) < 0) best = way;
  }
  if (best === null) throw new Error('No way to lay boards was tried');
  return best;
}

/** The candidates whose seams are least wrong, those with the shortest seams first. */
function soundest(candidates: readonly LayCandidate[], site: LaySite): LaidSeams[] {
  const frames = new Map<Direction, LaySite>();
  const courses = new Map<string, readonly LaidSeam[]>();
  const begun = candidates.map((candidate) => {
    const { axis, lengthAlong, acrossIn } = candidate;
    const local = frames.get(axis) ?? framed(site, axis);
    frames.set(axis, local);
    const key = `${axis.x} ${lengthAlong} ${acrossIn}`;
    const between = courses.get(key) ?? judged(courseSeams(candidate, local.region, local.board), local);
    courses.set(key, between);
    return { candidate, local, between, faults: faultsOf(between) };
  });
  let least = Number.POSITIVE_INFINITY;
  let found: LaidSeams[] = [];
  for (const { candidate, local, between } of begun.sort((p, q) => p.faults - q.faults)) {
    if (faultsOf(between) > least) break;
    const laid = together(candidate, between, local);
    if (laid.faults > least) continue;
    if (laid.faults < least) found = [];
    least = laid.faults;
    found.push(laid);
  }
  return found.sort((p, q) => apart(p.seamIn, q.seamIn));
}

/** Fewer boards than this cannot hold the rectangles round the parts: by their area, a kerf beside each. */
function leastFor(parts: readonly LaidPart[], { board, kerfIn }: LaySite): number {
  const whole = parts.filter(({ isFull }) => isFull).length;
  const cutIn2 = parts
    .filter(({ isFull }) => !isFull)
    .reduce((sumIn2, { widthIn, depthIn }) => sumIn2 + (widthIn + kerfIn) * (depthIn + kerfIn), 0);
  return whole + Math.ceil(cutIn2 / ((board.lengthIn + kerfIn) * (board.widthIn + kerfIn)) - SAME_IN);
}

function apart(firstIn: number, secondIn: number): number {
  return Math.abs(firstIn - secondIn) > SAME_IN ? firstIn - secondIn : 0;
}
