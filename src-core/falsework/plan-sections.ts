/** The sections of a piece's falsework in plan: one to each cabinet to come, the rest by a most width. */
import type { CabinetSupport, Job, Piece } from '../job';
import { pieceRegion } from '../job';
import type { Direction, Point } from '../outline';
import { clipPatchToRegion, intersectionAreaIn2, loopsAreaIn2, polygonAreaIn2 } from '../outline';
import { divideRun, evenly } from './divide';
import { openingsOf } from './openings';
import type { FalseworkPractice } from './practice';
import {
  alongRun,
  boxOf,
  inPlan,
  type Run,
  rectangleCuts,
  runDirection,
  sharedIn,
  withoutObstacles,
} from './runs';
import type { Section } from './section';
import { frameOf, wallSidesOf, wayOutOf } from './sides';
import {
  buildDay,
  cabinetCorners,
  cabinetsInPlace,
  cabinetsToCome,
  lastDayOf,
  lastingSupports,
  supportPlan,
} from './standing';

export interface SectionPlan {
  readonly sections: readonly Section[];
  /** What cannot be held up as drawn, a sentence each. */
  readonly refusals: readonly string[];
  readonly remarks: readonly string[];
}

/** A section of less than this on the slab holds up nothing, in2. */
const LEAST_ON_SLAB_IN2 = 4;

/** The sections under a piece. What stands at the pour and stays is left out; what a section cannot do alone is refused. */
export function planSections(job: Job, piece: Piece, practice: FalseworkPractice): SectionPlan {
  const region = pieceRegion(piece);
  if (!region.ok) {
    return { sections: [], refusals: region.problems.map(({ sentence }) => sentence), remarks: [] };
  }
  const u = runDirection(piece.corners);
  const lasting = lastingSupports(job, piece);
  const inPlace = cabinetsInPlace(job, piece);
  const obstacles = lasting.map((support) => boxOf(supportPlan(support, region.outer), u));
  const cabinets = cabinetsToCome(job, piece);
  const runs = bestRuns(rectangleCuts(piece.corners, u), cabinets, u).flatMap((run) =>
    withoutObstacles(run, obstacles, practice.bareEdgeIn),
  );
  const refusals = inPlace.map(
    ({ id, name }) =>
      `${name ?? id} stands under "${piece.name}" before the pour, and no deck over it could come out past it. Bring it after the pour, or give it a sub-top that stays.`,
  );
  const shut = inPlace.map(cabinetCorners);
  const cells = runs
    .flatMap((run) => cellsOf(run, { piece, cabinets, u, practice }))
    .filter(({ run }) => {
      const corners = cornersOf(run, u);
      const onSlab = loopsAreaIn2(clipPatchToRegion(corners, region));
      const underCabinets = shut.reduce((sum, plan) => sum + sharedArea(corners, plan), 0);
      return onSlab >= LEAST_ON_SLAB_IN2 && underCabinets < polygonAreaIn2(corners) / 2;
    });

  const sections: Section[] = [];
  for (const { run, cabinet } of cells) {
    const n = sections.length + 1;
    const id = `${piece.id.slice(0, 44)}-fw-${n}`;
    const name =
      cabinet === null ? `${piece.name}, section ${n}` : `${piece.name}, under ${cabinet.name ?? cabinet.id}`;
    const out = wayOutOf(piece, run, u, cabinet);
    if (out === null) {
      refusals.push(`"${name}" has walls all round and no way out by a free edge.`);
      continue;
    }
    const frame = frameOf(run, u, out);
    const opened = openingsOf(piece, frame, obstaclePlans(lasting, region.outer), practice);
    refusals.push(
      ...opened.cutThrough.map(
        (words) => `${words} lies across the line of "${name}"; no section can frame it alone. Move the bay.`,
      ),
    );
    sections.push({
      id,
      name,
      pieceId: piece.id,
      frame,
      cabinetId: cabinet?.id ?? null,
      openings: opened.openings,
      wallSides: wallSidesOf(piece, frame, lasting),
      firstDay: buildDay(piece),
      lastDay: Math.max(buildDay(piece), lastDayOf(job, piece, cabinet)),
    });
  }
  return { sections, refusals, remarks: remarksOf(piece, sections, refusals) };
}

function remarksOf(piece: Piece, sections: readonly Section[], refusals: readonly string[]): string[] {
  const remarks: string[] = [];
  if (sections.length === 0 && refusals.length === 0) {
    remarks.push(
      `Nothing under "${piece.name}" needs a deck: what stands there carries it, and the edge forms carry what passes by a little.`,
    );
  }
  if (piece.supports.some(({ kind }) => kind === 'bracket')) {
    remarks.push(`Notch the deck round the arms under "${piece.name}"; nothing is taken off for them here.`);
  }
  if (piece.fall !== null) {
    remarks.push(
      `"${piece.name}" is cast to a fall: the deck tilts with it, and every leg has its own length.`,
    );
  }
  return remarks;
}

function obstaclePlans(
  lasting: readonly Piece['supports'][number][],
  outline: readonly Point[],
): { readonly id: string; readonly words: string; readonly corners: readonly Point[] }[] {
  return lasting.map((support) => ({
    id: support.id,
    words: support.name ?? `The ${support.kind} ${support.id}`,
    corners: supportPlan(support, outline),
  }));
}

/** The way of cutting that leaves the least of the cabinets on the wrong side of a cut. */
function bestRuns(cuts: readonly Run[][], cabinets: readonly CabinetSupport[], u: Direction): Run[] {
  const lost = (runs: readonly Run[]) =>
    cabinets.reduce((sum, cabinet) => {
      const box = boxOf(cabinetCorners(cabinet), u);
      const shares = runs.map((run) => overlapIn2(run, box));
      return sum + shares.reduce((all, share) => all + share, 0) - Math.max(0, ...shares);
    }, 0);
  const costs = cuts.map(lost);
  return cuts[costs.indexOf(Math.min(...costs))]!;
}

function overlapIn2(a: Run, b: Run): number {
  return Math.max(0, sharedIn(a.u0, a.u1, b.u0, b.u1)) * Math.max(0, sharedIn(a.v0, a.v1, b.v0, b.v1));
}

function sharedArea(a: readonly Point[], b: readonly Point[]): number {
  return intersectionAreaIn2({ outer: a, holes: [] }, { outer: b, holes: [] });
}

function cornersOf({ u0, u1, v0, v1 }: Run, u: Direction): Point[] {
  return [inPlan(u0, v0, u), inPlan(u1, v0, u), inPlan(u1, v1, u), inPlan(u0, v1, u)];
}

interface Cell {
  readonly run: Run;
  readonly cabinet: CabinetSupport | null;
}

interface CutContext {
  readonly piece: Piece;
  readonly cabinets: readonly CabinetSupport[];
  readonly u: Direction;
  readonly practice: FalseworkPractice;
}

/** A run cut along its cabinets, or along its longer side; deep ones into rows as well. */
function cellsOf(run: Run, { piece, cabinets, u, practice }: CutContext): Cell[] {
  const own = cabinets.filter((cabinet) => {
    const box = boxOf(cabinetCorners(cabinet), u);
    return overlapIn2(run, box) > ((box.u1 - box.u0) * (box.v1 - box.v0)) / 2;
  });
  const alongU = own.length > 0 ? runsAlongU(own, u) : run.u1 - run.u0 >= run.v1 - run.v0;
  const line = (box: Run) => (alongU ? { fromIn: box.u0, toIn: box.u1 } : { fromIn: box.v0, toIn: box.v1 });
  const bays = own.map((cabinet) => ({ ...line(boxOf(cabinetCorners(cabinet), u)), ownerId: cabinet.id }));
  const openings = piece.cutouts.flatMap((_, i) => {
    const box = cutoutBox(piece, i, u);
    return box === null || overlapIn2(run, box) === 0 ? [] : [line(box)];
  });
  const stretches = divideRun(line(run), bays, openings, practice.mostWidthIn);
  const deep = alongU
    ? { fromIn: run.v0, toIn: run.v1, ownerId: null }
    : { fromIn: run.u0, toIn: run.u1, ownerId: null };
  return stretches.flatMap((stretch) =>
    evenly(deep, practice.mostDepthIn).map((row) => ({
      cabinet: own.find(({ id }) => id === stretch.ownerId) ?? null,
      run: alongU
        ? { u0: stretch.fromIn, u1: stretch.toIn, v0: row.fromIn, v1: row.toIn }
        : { u0: row.fromIn, u1: row.toIn, v0: stretch.fromIn, v1: stretch.toIn },
    })),
  );
}

/** Whether most of the cabinets stand with their fronts along u. */
function runsAlongU(cabinets: readonly CabinetSupport[], u: Direction): boolean {
  const count = cabinets.filter((cabinet) => {
    const [a, b] = cabinetCorners(cabinet);
    const [from, to] = [alongRun(a!, u), alongRun(b!, u)];
    return Math.abs(to.u - from.u) >= Math.abs(to.v - from.v);
  }).length;
  return count * 2 >= cabinets.length;
}

function cutoutBox(piece: Piece, index: number, u: Direction): Run | null {
  const region = pieceRegion(piece);
  return region.ok ? boxOf(region.holes[index]!, u) : null;
}
