/** Pieces for tests of the placing of steel. */
import type { Job, JobDraft, Piece } from '../../../src-core/job';
import { pieceRegion } from '../../../src-core/job';
import type { Region } from '../../../src-core/outline';
import type { PlaceSteelOptions, SteelPlacing } from '../../../src-core/steel-placing';
import { placeSteel } from '../../../src-core/steel-placing';
import { jobOf } from '../../support/pieces';

export type PieceDraft = JobDraft['pieces'][number];
type LayerDraft = NonNullable<PieceDraft['reinforcement']>[number];

/** 2 x 2 in mesh of 14 gauge wire. */
export const LIGHT_MESH = {
  kind: 'mesh',
  id: 'mesh',
  wireIn: 0.08,
  spacingIn: 2,
  crossWireIn: 0.08,
  crossSpacingIn: 2,
  depthIn: 1,
} as const satisfies LayerDraft;

/** #3 bars at 6 in. */
export const BARS = {
  kind: 'bars',
  id: 'bars',
  barIn: 0.375,
  areaIn2: 0.11,
  spacingIn: 6,
  depthIn: 1,
} as const satisfies LayerDraft;

export const corners = (...pairs: readonly (readonly [number, number, number?])[]) =>
  pairs.map(([xIn, yIn, radiusIn = 0]) => ({ xIn, yIn, radiusIn }));

export const box = (widthIn: number, depthIn: number) =>
  corners([0, 0], [widthIn, 0], [widthIn, depthIn], [0, depthIn]);

/** L of 25-1/2 in arms: 121-1/2 in along the back, 60 in down the left, its inside corner at (25-1/2, 0). */
export const L_SHAPE = corners([0, -60], [25.5, -60], [25.5, 0], [121.5, 0], [121.5, 25.5], [0, 25.5]);

export const sink = (
  xIn: number,
  yIn: number,
  widthIn: number,
  depthIn: number,
  radiusIn = 0,
): NonNullable<PieceDraft['cutouts']>[number] => ({
  id: 'sink',
  purpose: 'sink',
  shape: { kind: 'rectangle', centre: { xIn, yIn }, widthIn, depthIn, radiusIn },
});

/** A job of one piece, 2 in thick with light mesh unless told, f'c 5000. */
export function caseOf(
  shape: ReturnType<typeof corners>,
  more: Partial<PieceDraft> = {},
  job: Partial<JobDraft> = {},
): Job {
  return jobOf({ corners: shape, thicknessIn: 2, reinforcement: [LIGHT_MESH], ...more }, job);
}

export function placed(job: Job, options: PlaceSteelOptions = {}, index = 0): SteelPlacing {
  const result = placeSteel(job, job.pieces[index]!, options);
  if (!result.ok) throw new Error(result.problems[0]!.sentence);
  return result.placing;
}

export function regionOf(piece: Piece): Region {
  const region = pieceRegion(piece);
  if (!region.ok) throw new Error('no region');
  return region;
}

/** Whether a point lies in a shape by casting a ray to the right: not the project's own test of that. */
export function isIn({ outer, holes }: Region, xIn: number, yIn: number): boolean {
  const crosses = (loop: Region['outer']) =>
    loop.filter((p, k) => {
      const q = loop[(k + 1) % loop.length]!;
      if (p.yIn > yIn === q.yIn > yIn) return false;
      return xIn < p.xIn + ((yIn - p.yIn) / (q.yIn - p.yIn)) * (q.xIn - p.xIn);
    }).length %
      2 ===
    1;
  return crosses(outer) && !holes.some(crosses);
}

/** Distance from a point to the nearest side of a shape, in: not the project's own measure of that. */
export function toSideIn({ outer, holes }: Region, xIn: number, yIn: number): number {
  const distances = [outer, ...holes].flatMap((loop) =>
    loop.map((p, k) => {
      const q = loop[(k + 1) % loop.length]!;
      const [dx, dy] = [q.xIn - p.xIn, q.yIn - p.yIn];
      const t = Math.max(0, Math.min(1, ((xIn - p.xIn) * dx + (yIn - p.yIn) * dy) / (dx * dx + dy * dy)));
      return Math.hypot(xIn - p.xIn - t * dx, yIn - p.yIn - t * dy);
    }),
  );
  return Math.min(...distances);
}

/** Points on a square grid over a shape's bounds, those inside it. */
export function gridIn(region: Region, stepIn: number): { xIn: number; yIn: number }[] {
  const xs = region.outer.map(({ xIn }) => xIn);
  const ys = region.outer.map(({ yIn }) => yIn);
  const points: { xIn: number; yIn: number }[] = [];
  for (let xIn = Math.min(...xs) + stepIn / 3; xIn < Math.max(...xs); xIn += stepIn) {
    for (let yIn = Math.min(...ys) + stepIn / 3; yIn < Math.max(...ys); yIn += stepIn) {
      if (isIn(region, xIn, yIn)) points.push({ xIn, yIn });
    }
  }
  return points;
}
