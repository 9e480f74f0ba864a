/** Drip grooves in plan: channels in the soffit along the edges that have one. */
import { Clipper, EndType, FillRule, JoinType } from 'clipper2-ts';
import type { Point } from '../outline';
import { distanceIn, polygonAreaIn2 } from '../outline';
import type { GrooveSection } from '../profile';
import { deepestInsetIn } from '../profile';
import { movedRing } from './moved-ring';
import type { SlabPlan } from './slab-plan';
import { distinctPoints } from './slab-plan';

export interface DripGroove {
  readonly depthIn: number;
  /** Counter-clockwise outlines and clockwise islands, clear of the faces, the openings and one another. */
  readonly loops: readonly (readonly Point[])[];
}

type Paths = { x: number; y: number }[][];

/** Concrete left between a groove and a face, an opening or another groove. Common practice, no source. */
const LAND_IN = 1 / 16;
/** Decimals kept by the clipping library. */
const DECIMALS = 8;
const MITRE_LIMIT = 10;
const ARC_TOLERANCE_IN = 1 / 256;
/** A scrap of groove smaller than this is not cut. */
const LEAST_AREA_IN2 = 1e-3;
/** Cutting one area by another leaves slits and spikes thinner than twice this, which are closed and taken off, in. */
const HAIRLINE_IN = 1 / 256;
/** Points of a groove's outline closer than this are one: far less than the concrete left beside it, in. */
const SHORTEST_IN = 1e-3;

/**
 * The grooves under a slab. A groove turns with its edge from one corner to the next where both edges have the same;
 * it stops short of an edge without it by its own setback and width, as it must of a wall.
 */
export function dripGrooves(plan: SlabPlan): readonly DripGroove[] {
  const { outer, holes, sections } = plan;
  const keys = sections.map(({ groove }) => (groove === null ? '' : JSON.stringify(groove)));
  const outline = [toPath(outer)];
  const openings = inflated(holes.map(toPath), LAND_IN, JoinType.Round);
  let taken: Paths = [];
  return [...new Set(keys)].flatMap((key): DripGroove[] => {
    if (key === '') return [];
    const { setbackIn, widthIn, depthIn } = sections[keys.indexOf(key)]!.groove as GrooveSection;
    const farIn = setbackIn + widthIn;
    const band = difference(
      inflated(outline, -setbackIn, JoinType.Miter),
      inflated(outline, -farIn, JoinType.Miter),
    );
    const elsewhere = Clipper.inflatePathsD(
      chainsWhere(outer, (k) => keys[k] !== key),
      farIn,
      JoinType.Miter,
      EndType.Square,
      MITRE_LIMIT,
      DECIMALS,
    );
    const ring = movedRing(
      plan.lines,
      plan.faces.map((face) => deepestInsetIn(face, depthIn)),
    );
    if (ring === null) return [];
    const land = inflated([toPath(distinctPoints(ring))], -LAND_IN, JoinType.Miter);
    const along = difference(difference(band, elsewhere), [...openings, ...taken]);
    const rough = Clipper.intersectD(along, land, FillRule.NonZero, DECIMALS);
    const cut = inflated(inflated(rough, -HAIRLINE_IN, JoinType.Miter), HAIRLINE_IN, JoinType.Miter);
    taken = [...taken, ...inflated(cut, LAND_IN, JoinType.Miter)];
    const loops = cut
      .map((path) => withoutScraps(path.map(({ x, y }) => ({ xIn: x, yIn: y }))))
      .filter((loop) => loop.length >= 3 && polygonAreaIn2(loop) >= LEAST_AREA_IN2);
    return loops.length === 0 ? [] : [{ depthIn, loops }];
  });
}

/** Without points that all but coincide, which cutting one area by another leaves at its corners. */
function withoutScraps(loop: readonly Point[]): readonly Point[] {
  const kept: Point[] = [];
  for (const point of loop) {
    const last = kept.at(-1);
    if (last === undefined || distanceIn(last, point) >= SHORTEST_IN) kept.push(point);
  }
  while (kept.length > 1 && distanceIn(kept[0]!, kept.at(-1)!) < SHORTEST_IN) kept.pop();
  return kept;
}

/** Runs of segments that fulfil a test, as open paths; a run all the way round comes back to its start. */
function chainsWhere(outer: readonly Point[], wanted: (segment: number) => boolean): Paths {
  const n = outer.length;
  const start = outer.findIndex((_, k) => wanted(k) && !wanted((k + n - 1) % n));
  if (start < 0) return [];
  const chains: Paths = [];
  for (let step = 0; step < n; step++) {
    const k = (start + step) % n;
    if (!wanted(k)) continue;
    const isNew = step === 0 || !wanted((k + n - 1) % n);
    if (isNew) chains.push([toPathPoint(outer[k]!)]);
    chains.at(-1)!.push(toPathPoint(outer[(k + 1) % n]!));
  }
  return chains;
}

function inflated(paths: Paths, byIn: number, join: JoinType): Paths {
  if (paths.length === 0) return [];
  return Clipper.inflatePathsD(paths, byIn, join, EndType.Polygon, MITRE_LIMIT, DECIMALS, ARC_TOLERANCE_IN);
}

function difference(paths: Paths, less: Paths): Paths {
  if (less.length === 0) return paths;
  return Clipper.differenceD(paths, less, FillRule.NonZero, DECIMALS);
}

function toPath(points: readonly Point[]): { x: number; y: number }[] {
  return points.map(toPathPoint);
}

function toPathPoint({ xIn, yIn }: Point): { x: number; y: number } {
  return { x: xIn, y: yIn };
}
