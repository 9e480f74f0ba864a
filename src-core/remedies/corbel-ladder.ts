/** Brackets under the overhang: stock arms lagged to the studs, at the widest spacing that passes. */
import type { StockArm } from '../bracket';
import { armProperties, bracketIsDecidable, STOCK_ARMS } from '../bracket';
import type { BracketSupport, Piece } from '../job';
import type { Point } from '../outline';
import { distanceIn, isPointOnSlab, moved } from '../outline';
import type { Reach, Root } from './reach';
import { reachesOf, rootOf } from './reach';
import type { Ladder, LadderContext, Run, Step } from './step';
import { freshId, ladder } from './step';

const SPACINGS_IN = [48, 32, 24, 16];
/** Shortest arm worth its lags, in. */
const LEAST_REACH_IN = 3;
const REACH_STEP_IN = 0.5;
/** Narrowest wall that has a stud to take a lag, in. */
const LEAST_STUD_WALL_IN = 3;
/** Middle of the stud at either end of a wall, from its end. */
const END_STUD_IN = 1.5;
/** How far an arm's tip stays within the slab. */
const TIP_INSIDE_IN = 0.5;

/** Arms from the weakest in bending to the stiffest. */
const ARMS: readonly StockArm[] = [...STOCK_ARMS].sort((a, b) => stiffnessOf(a) - stiffnessOf(b));

function stiffnessOf({ arm }: StockArm): number {
  const { modulusPsi, inertiaIn4 } = armProperties(arm);
  return modulusPsi * inertiaIn4;
}

/** A stronger or closer row where brackets stand already; else a new row on the stud wall under the longest overhang. */
export function corbelLadder(context: LadderContext): Ladder {
  const { piece, analysis } = context;
  if (analysis === null) return ladder('corbel', [], 2, 'It cannot be judged before something carries it.');
  const rows = piece.supports.filter((one): one is BracketSupport => one.kind === 'bracket');
  const better = rows.map((row) => [
    runOf(context, row, row.roots),
    runOf(context, row, betweenToo(row.roots)),
  ]);
  const reach = reachesOf(piece, analysis)[0];
  const fresh = reach === undefined ? { groups: [], excuse: 'Nothing overhangs.' } : newRows(context, reach);
  const groups = [...better, ...fresh.groups];
  const leastParts = groups.reduce(
    (least, runs) => Math.min(least, ...runs.flatMap((run) => run.map(rootCount))),
    1e9,
  );
  const trouble = rows.map((row) => bracketIsDecidable(row, context.limits.bracketReachEngineerIn));
  const excuse = trouble.find((sentence) => sentence !== null) ?? fresh.excuse;
  return ladder('corbel', groups, groups.length === 0 ? 0 : leastParts, excuse);
}

function newRows(context: LadderContext, reach: Reach): { groups: Run[][]; excuse: string } {
  const root = rootOf(context.piece, reach);
  if (root === null || root.support.kind !== 'wall') {
    return { groups: [], excuse: 'No wall stands behind the overhang to hang brackets on.' };
  }
  const wall = root.support;
  if (wall.build !== 'stud') {
    const excuse = `The wall is of ${wall.build}; anchors there are for an engineer, or for a bracket with a rated load that its maker states.`;
    return { groups: [], excuse };
  }
  if (wall.widthIn < LEAST_STUD_WALL_IN) {
    return { groups: [], excuse: 'The wall is too thin to have a stud that takes a lag.' };
  }
  const spacings = SPACINGS_IN.filter((spacingIn) => isAtStuds(spacingIn, wall.studSpacingIn));
  const groups = reachesFor(context, root.overhangIn).map((reachIn) =>
    spacings.map((spacingIn) => {
      const roots = studRoots(context, root, spacingIn, reachIn);
      return roots.length < 2 ? [] : runOf(context, rowOn(context, root, reachIn), roots);
    }),
  );
  return { groups, excuse: 'No arm fits under the overhang.' };
}

/** Whether brackets that far apart all meet a stud. */
function isAtStuds(spacingIn: number, studSpacingIn: number): boolean {
  const share = spacingIn / studSpacingIn;
  return share > 0.99 && Math.abs(share - Math.round(share)) < 0.01;
}

/** Two thirds of the overhang (common practice, no source), and all of it but an inch. */
function reachesFor({ limits }: LadderContext, overhangIn: number): number[] {
  const down = (valueIn: number) =>
    Math.min(limits.bracketReachEngineerIn, Math.floor(valueIn / REACH_STEP_IN + 1e-9) * REACH_STEP_IN);
  const reaches = [down((overhangIn * 2) / 3), down(overhangIn - 1)];
  return [...new Set(reaches)].filter((reachIn) => reachIn >= LEAST_REACH_IN);
}

/** Points on the wall face at both end studs of the stretch that the slab covers, and at every spacing between. */
function studRoots({ region }: LadderContext, root: Root, spacingIn: number, reachIn: number): Point[] {
  const { support, along, outward, lengthIn } = root;
  const face = moved(support.from, outward, support.widthIn / 2);
  const isUnder = (atIn: number) => {
    const at = moved(face, along, atIn);
    return [0.5, reachIn / 2, reachIn + TIP_INSIDE_IN].every((outIn) =>
      isPointOnSlab(moved(at, outward, outIn), region),
    );
  };
  const places: number[] = [];
  for (let atIn = 0; atIn <= lengthIn + 1e-9; atIn += 0.5) if (isUnder(atIn)) places.push(atIn);
  const firstIn = (places[0] ?? 0) + END_STUD_IN;
  const lastIn = (places.at(-1) ?? 0) - END_STUD_IN;
  if (lastIn - firstIn < spacingIn / 4) return [];
  const between: number[] = [];
  for (let atIn = firstIn - END_STUD_IN + spacingIn; atIn < lastIn - spacingIn / 4; atIn += spacingIn) {
    if (isUnder(atIn)) between.push(atIn);
  }
  return [firstIn, ...between, lastIn].map((atIn) => moved(face, along, atIn));
}

function rowOn(context: LadderContext, { support, outward }: Root, reachIn: number): BracketSupport {
  const stock = ARMS[0]!;
  const directionDeg = Math.round(((Math.atan2(outward.y, outward.x) * 180) / Math.PI) * 1e6) / 1e6;
  return {
    id: freshId(context.job, context.piece, `${support.id.slice(0, 40)}-brackets`),
    kind: 'bracket',
    firstDay: 0,
    lastDay: null,
    gapIn: 0,
    raisedIn: 0,
    stiffness: null,
    hold: { kind: 'resting' },
    roots: [],
    directionDeg,
    reachIn,
    seatWidthIn: stock.seatWidthIn,
    heelIn: stock.heelIn,
    arm: stock.arm,
    backing: 'timber-stud',
    fixing: stock.fixing,
    make: stock.make,
  };
}

/** The row with every stock arm that can be decided here, weakest first. */
function runOf(context: LadderContext, row: BracketSupport, roots: readonly Point[]): Step[] {
  if (row.backing !== 'timber-stud' || roots.length === 0) return [];
  return ARMS.flatMap((stock) => {
    const { arm, make, heelIn, seatWidthIn, fixing } = stock;
    const changed: BracketSupport = { ...row, roots: [...roots], arm, make, heelIn, seatWidthIn, fixing };
    if (bracketIsDecidable(changed, context.limits.bracketReachEngineerIn) !== null) return [];
    return [corbelStep(context, changed, stock)];
  });
}

function corbelStep({ piece, print }: LadderContext, row: BracketSupport, stock: StockArm): Step {
  const count = row.roots.length;
  const title = `Brackets: ${count} at ${print.length(widestGapIn(row.roots))}, reach ${print.length(row.reachIn)}, ${stock.words}`;
  const isNew = piece.supports.every(({ id }) => id !== row.id);
  return {
    kind: 'corbel',
    piece: withRow(piece, row, isNew),
    ratedSupportIds: [],
    words: () => ({
      title,
      parts: count,
      partsWords: [`${count} brackets of ${stock.words}, each lagged to a stud or to blocking`],
    }),
    givesLess: false,
    shortTitle: title,
  };
}

function withRow(piece: Piece, row: BracketSupport, isNew: boolean): Piece {
  const supports = isNew
    ? [...piece.supports, row]
    : piece.supports.map((support) => (support.id === row.id ? row : support));
  return { ...piece, supports };
}

function rootCount({ piece }: Step): number {
  return Math.min(...piece.supports.flatMap((one) => (one.kind === 'bracket' ? [one.roots.length] : [])));
}

/** The roots of a row and one more between each two. */
function betweenToo(roots: readonly Point[]): Point[] {
  return roots.flatMap((root, i) => {
    const next = roots[i + 1];
    if (next === undefined) return [root];
    return [root, { xIn: (root.xIn + next.xIn) / 2, yIn: (root.yIn + next.yIn) / 2 }];
  });
}

function widestGapIn(roots: readonly Point[]): number {
  return roots.reduce(
    (most, root, i) => (i === 0 ? most : Math.max(most, distanceIn(roots[i - 1]!, root))),
    0,
  );
}
