/** Places worth trying for a load patch whose sides run along x and y: corners, along edges and lips, a grid within. */
import { stretchesOnSlab } from './clipping';
import { cornerAnglesRad, outlineEdges } from './edges';
import { fitsUpright } from './patch';
import type { Direction, Point, Region } from './point';
import { between, leftOf, moved } from './point';
import { boundingBox, counterClockwise } from './polygon-measure';

/** A patch that fits. Narrow strips of slab may hold only a smaller one than asked for. */
export interface PatchPlace {
  readonly centre: Point;
  readonly widthIn: number;
  readonly depthIn: number;
  readonly isShrunk: boolean;
  readonly from: 'corner' | 'given' | 'edge' | 'inside';
}

export interface PatchSize {
  readonly widthIn: number;
  readonly depthIn: number;
}

/** Turns sharper than this are corners; gentler ones are chords of one curved edge. */
const CORNER_TURN_RAD = (20 * Math.PI) / 180;
/** Cosine beyond which an edge runs along a side of the patch. */
const ALONG_SIDE_RATIO = 1 - 1e-9;
const HALVINGS = 30;
const PUSHES_A_SIDE = 8;
/** Sizes of shrunk patches are rounded down to this, in. */
const SIZE_STEP_IN = 1 / 64;

/** A stretch of boundary without sharp turns: one long edge, or the chords of a curve. */
interface Run {
  readonly edges: readonly RunEdge[];
  readonly lengthIn: number;
}

interface RunEdge {
  readonly a: Point;
  readonly b: Point;
  readonly lengthIn: number;
  readonly inward: Direction;
}

/** Tight in every convex corner of the outline, and off every other corner by as little as lets the patch fit. */
export function cornerPlaces(region: Region, size: PatchSize): PatchPlace[] {
  return slabLoops(region).flatMap((loop) => {
    const edges = outlineEdges(loop.points);
    const n = edges.length;
    const angles = cornerAnglesRad(edges.map(({ a }) => a));
    return edges.flatMap((outgoing, i): PatchPlace[] => {
      const turnRad = loop.inwardSign * (Math.PI - angles[i]!);
      if (turnRad < CORNER_TURN_RAD) return [];
      const before = signed(edges[(i + n - 1) % n]!.inward, loop.inwardSign);
      const after = signed(outgoing.inward, loop.inwardSign);
      const tight = tightBetween(outgoing.a, before, after, size);
      const across = { x: before.x + after.x, y: before.y + after.y };
      const length = Math.hypot(across.x, across.y);
      if (tight === null || length === 0) return [];
      return placed(region, tight, { x: across.x / length, y: across.y / length }, size, 'corner');
    });
  });
}

/** Along the outline and the lips of cutouts, tight to the edge, at about `spacingIn`, at the ends and in the middle. */
export function edgePlaces(region: Region, size: PatchSize, spacingIn: number): PatchPlace[] {
  return slabLoops(region).flatMap((loop) =>
    runsOf(loop.points, loop.inwardSign, spacingIn).flatMap((run) =>
      runPlacesIn(run, size, spacingIn).flatMap((atIn) => {
        const { edge, point } = onRun(run, atIn);
        const centre = moved(point, edge.inward, reachIn(edge.inward, size));
        return [
          ...narrowPlace(region, point, edge.inward, size),
          ...placed(region, centre, edge.inward, size, 'edge'),
        ];
      }),
    ),
  );
}

/** A grid over the slab at about `spacingIn`, symmetrical in its bounds. */
export function insidePlaces(region: Region, size: PatchSize, spacingIn: number): PatchPlace[] {
  const box = boundingBox(region.outer);
  const xs = gridIn(box.minXIn + size.widthIn / 2, box.maxXIn - size.widthIn / 2, spacingIn);
  const ys = gridIn(box.minYIn + size.depthIn / 2, box.maxYIn - size.depthIn / 2, spacingIn);
  return xs.flatMap((xIn) =>
    ys.flatMap((yIn): PatchPlace[] => {
      const centre = { xIn, yIn };
      if (!fitsUpright(region, centre, size.widthIn, size.depthIn)) return [];
      return [{ centre, ...size, isShrunk: false, from: 'inside' }];
    }),
  );
}

/** The patch at `centre`, or as little along `inward` from it as lets it fit; none within its own size. */
export function placed(
  region: Region,
  centre: Point,
  inward: Direction,
  size: PatchSize,
  from: PatchPlace['from'],
): PatchPlace[] {
  const fits = (byIn: number) => fitsUpright(region, moved(centre, inward, byIn), size.widthIn, size.depthIn);
  const place = (byIn: number): PatchPlace[] => [
    { centre: moved(centre, inward, byIn), ...size, isShrunk: false, from },
  ];
  if (fits(0)) return place(0);
  const stepIn = Math.min(size.widthIn, size.depthIn) / PUSHES_A_SIDE;
  const limitIn = size.widthIn + size.depthIn;
  for (let byIn = stepIn; byIn <= limitIn; byIn += stepIn) {
    if (!fits(byIn)) continue;
    let tooLittleIn = byIn - stepIn;
    let enoughIn = byIn;
    for (let k = 0; k < HALVINGS; k++) {
      const middleIn = (tooLittleIn + enoughIn) / 2;
      if (fits(middleIn)) enoughIn = middleIn;
      else tooLittleIn = middleIn;
    }
    return place(enoughIn);
  }
  return [];
}

/** Rounds a shrunk side (in) down to a length that a person can read off a tape. */
export function tapeSizeIn(sizeIn: number): number {
  if (sizeIn < SIZE_STEP_IN) return sizeIn;
  return Math.floor(sizeIn / SIZE_STEP_IN + 1e-4) * SIZE_STEP_IN;
}

/** A strip of slab less deep than the patch, between an edge and a cutout: the patch shrunk across the strip. */
function narrowPlace(region: Region, point: Point, inward: Direction, size: PatchSize): PatchPlace[] {
  const alongX = Math.abs(inward.x) > ALONG_SIDE_RATIO;
  if (!alongX && Math.abs(inward.y) <= ALONG_SIDE_RATIO) return [];
  const [ahead] = stretchesOnSlab(point, inward, region).filter(({ toIn }) => toIn > SIZE_STEP_IN);
  if (ahead === undefined || ahead.fromIn > SIZE_STEP_IN) return [];
  const sideIn = tapeSizeIn(ahead.toIn);
  if (sideIn <= 0 || sideIn >= (alongX ? size.widthIn : size.depthIn)) return [];
  const narrow = alongX ? { ...size, widthIn: sideIn } : { ...size, depthIn: sideIn };
  const centre = moved(point, inward, ahead.toIn / 2);
  if (!fitsUpright(region, centre, narrow.widthIn, narrow.depthIn)) return [];
  return [{ centre, ...narrow, isShrunk: true, from: 'edge' }];
}

/** Each boundary with the sign that turns its own inside toward the concrete: a cutout's inside is not concrete. */
function slabLoops(region: Region): { points: readonly Point[]; inwardSign: 1 | -1 }[] {
  return [
    { points: counterClockwise(region.outer), inwardSign: 1 },
    ...region.holes.map((hole) => ({ points: counterClockwise(hole), inwardSign: -1 as const })),
  ];
}

function signed(direction: Direction, sign: 1 | -1): Direction {
  return { x: sign * direction.x, y: sign * direction.y };
}

/** How far a patch reaches from its centre against `inward`, in. */
function reachIn(inward: Direction, size: PatchSize): number {
  return (Math.abs(inward.x) * size.widthIn + Math.abs(inward.y) * size.depthIn) / 2;
}

/** Centre of the patch that touches both lines through `corner` with the given inward normals. */
function tightBetween(corner: Point, before: Direction, after: Direction, size: PatchSize): Point | null {
  const det = before.x * after.y - before.y * after.x;
  if (det === 0) return null;
  const b = reachIn(before, size);
  const a = reachIn(after, size);
  return {
    xIn: corner.xIn + (b * after.y - a * before.y) / det,
    yIn: corner.yIn + (a * before.x - b * after.x) / det,
  };
}

function runsOf(points: readonly Point[], sign: 1 | -1, spacingIn: number): Run[] {
  const edges = outlineEdges(points).map(({ a, b, lengthIn, inward }) => ({
    a,
    b,
    lengthIn,
    inward: signed(inward, sign),
  }));
  const runs: RunEdge[][] = [];
  for (const edge of edges) {
    const run = runs.at(-1);
    if (run !== undefined && continues(run.at(-1)!, edge, spacingIn)) run.push(edge);
    else runs.push([edge]);
  }
  if (runs.length > 1 && continues(runs.at(-1)!.at(-1)!, runs[0]![0]!, spacingIn)) {
    runs[0] = [...runs.pop()!, ...runs[0]!];
  }
  return runs.map((run) => ({ edges: run, lengthIn: run.reduce((sumIn, e) => sumIn + e.lengthIn, 0) }));
}

function continues(one: RunEdge, next: RunEdge, spacingIn: number): boolean {
  const isShort = one.lengthIn < spacingIn && next.lengthIn < spacingIn;
  return (
    isShort && one.inward.x * next.inward.x + one.inward.y * next.inward.y > Math.cos(2 * CORNER_TURN_RAD)
  );
}

/** Middle first, then the ends where the patch lies within the run, the ends themselves, and even steps between. */
function runPlacesIn(run: Run, size: PatchSize, spacingIn: number): number[] {
  const { lengthIn } = run;
  const first = run.edges[0]!;
  const last = run.edges.at(-1)!;
  const startIn = Math.min(lengthIn / 2, reachIn(leftOf(first.inward), size));
  const endIn = Math.max(lengthIn / 2, lengthIn - reachIn(leftOf(last.inward), size));
  const steps = gridIn(startIn, endIn, spacingIn);
  return [lengthIn / 2, ...steps, 0, lengthIn];
}

function onRun(run: Run, atIn: number): { edge: RunEdge; point: Point } {
  let leftIn = atIn;
  for (const edge of run.edges) {
    if (leftIn <= edge.lengthIn) return { edge, point: between(edge.a, edge.b, leftIn / edge.lengthIn) };
    leftIn -= edge.lengthIn;
  }
  const edge = run.edges.at(-1)!;
  return { edge, point: edge.b };
}

/** Places from `fromIn` to `toIn` in equal steps of at most `spacingIn`, the middle among them. */
function gridIn(fromIn: number, toIn: number, spacingIn: number): number[] {
  if (toIn < fromIn) return [];
  const steps = 2 * Math.max(1, Math.ceil((toIn - fromIn) / spacingIn / 2 - 1e-9));
  return Array.from({ length: steps + 1 }, (_, k) => fromIn + ((toIn - fromIn) * k) / steps);
}
