/** Checks that an outline with its cutouts bounds one piece of slab, before anything is laid on it. */

export interface MeshPoint {
  readonly xIn: number;
  readonly yIn: number;
}

export interface MeshSegment {
  readonly a: MeshPoint;
  readonly b: MeshPoint;
}

export type MeshProblemCode =
  | 'mesh-size-not-positive'
  | 'mesh-too-fine'
  | 'number-not-finite'
  | 'outline-too-small'
  | 'outline-crosses-itself'
  | 'cutout-too-small'
  | 'cutout-crosses-itself'
  | 'cutout-leaves-slab'
  | 'cutouts-overlap';

export interface MeshProblem {
  readonly code: MeshProblemCode;
  readonly sentence: string;
}

export type Ring = readonly MeshPoint[];

export type RingsResult =
  | { readonly ok: true; readonly rings: readonly Ring[] }
  | { readonly ok: false; readonly problem: MeshProblem };

/** Points of a ring nearer than this are one point. */
const SAME_POINT_IN = 1e-9;

/**
 * The outline and then its cutouts, without repeated points; or what is wrong with them. Lengths in inches.
 * Rings may run either way round. A ring that touches itself or another ring is refused: the slab would hang
 * together by a point.
 */
export function cleanRings(outer: Ring, holes: readonly Ring[]): RingsResult {
  const rings = [outer, ...holes].map(withoutRepeats);
  for (const [index, ring] of rings.entries()) {
    const problem = ringProblem(ring, index);
    if (problem) return { ok: false, problem };
  }
  for (let i = 0; i < rings.length; i++) {
    for (let j = i + 1; j < rings.length; j++) {
      const problem = pairProblem(rings[i]!, rings[j]!, i, j);
      if (problem) return { ok: false, problem };
    }
  }
  return { ok: true, rings };
}

/** Signed area of a ring in square inches, positive where it runs counter-clockwise (shoelace formula). */
export function ringAreaIn2(ring: Ring): number {
  const origin = ring[0];
  if (!origin) return 0;
  let twiceAreaIn2 = 0;
  for (let i = 1; i + 1 < ring.length; i++) twiceAreaIn2 += cross(origin, ring[i]!, ring[i + 1]!);
  return twiceAreaIn2 / 2;
}

/** Whether a point lies inside the outline and outside every cutout (even-odd rule); undecided on an edge. */
export function isInsideRings(rings: readonly Ring[], xIn: number, yIn: number): boolean {
  let inside = false;
  for (const ring of rings) {
    let a = ring[ring.length - 1]!;
    for (const b of ring) {
      if (a.yIn > yIn !== b.yIn > yIn) {
        const xAtYIn = a.xIn + ((yIn - a.yIn) / (b.yIn - a.yIn)) * (b.xIn - a.xIn);
        if (xIn < xAtYIn) inside = !inside;
      }
      a = b;
    }
  }
  return inside;
}

function withoutRepeats(ring: Ring): Ring {
  const kept: MeshPoint[] = [];
  for (const point of ring) {
    const last = kept[kept.length - 1];
    // So asked, a point that is no number is kept, and refused by name.
    if (!last || !(distance(last, point) <= SAME_POINT_IN)) kept.push(point);
  }
  while (kept.length > 1 && distance(kept[0]!, kept[kept.length - 1]!) <= SAME_POINT_IN) kept.pop();
  return kept;
}

function ringProblem(ring: Ring, index: number): MeshProblem | null {
  const name = index === 0 ? 'The outline' : `Cutout ${index}`;
  const kind = index === 0 ? 'outline' : 'cutout';
  for (const point of ring) {
    if (!Number.isFinite(point.xIn) || !Number.isFinite(point.yIn)) {
      return {
        code: 'number-not-finite',
        sentence: `${name} has a corner at ${point.xIn}, ${point.yIn}; give it numbers.`,
      };
    }
  }
  if (ring.length < 3 || Math.abs(ringAreaIn2(ring)) < SAME_POINT_IN) {
    return {
      code: `${kind}-too-small`,
      sentence: `${name} encloses no area; give it at least three corners.`,
    };
  }
  const n = ring.length;
  for (let i = 0; i < n; i++) {
    const a = ring[i]!;
    const b = ring[(i + 1) % n]!;
    const next = ring[(i + 2) % n]!;
    const foldsBack = Math.abs(cross(a, b, next)) <= SAME_POINT_IN && dot(b, a, next) > 0;
    let at: MeshPoint | null = foldsBack ? b : null;
    // Neighbouring edges share a corner, so the first and the last edge are not compared.
    for (let j = i + 2; j < n && !at; j++) {
      if (i === 0 && j === n - 1) continue;
      if (edgesMeet(a, b, ring[j]!, ring[(j + 1) % n]!)) at = ring[j]!;
    }
    if (at) {
      return {
        code: `${kind}-crosses-itself`,
        sentence: `${name} crosses or touches itself near ${show(at)}; draw it as one line round the edge.`,
      };
    }
  }
  return null;
}

function pairProblem(first: Ring, second: Ring, i: number, j: number): MeshProblem | null {
  const firstIsOutline = i === 0;
  const at = meetingPoint(first, second);
  const inside = isInsideRings([first], second[0]!.xIn, second[0]!.yIn);
  if (firstIsOutline) {
    if (!at && inside) return null;
    return {
      code: 'cutout-leaves-slab',
      sentence: `Cutout ${j} meets the edge or lies outside of the slab near ${show(at ?? second[0]!)}; draw a cutout that breaks the edge as part of the outline.`,
    };
  }
  if (!at && !inside && !isInsideRings([second], first[0]!.xIn, first[0]!.yIn)) return null;
  return {
    code: 'cutouts-overlap',
    sentence: `Cutouts ${i} and ${j} meet near ${show(at ?? second[0]!)}; join them into one or move them apart.`,
  };
}

function meetingPoint(first: Ring, second: Ring): MeshPoint | null {
  for (const [i, a] of first.entries()) {
    const b = first[(i + 1) % first.length]!;
    for (const [j, c] of second.entries()) {
      if (edgesMeet(a, b, c, second[(j + 1) % second.length]!)) return c;
    }
  }
  return null;
}

/** Whether two edges cross or touch; shares no tolerance with the merging of points, which comes later. */
function edgesMeet(a: MeshPoint, b: MeshPoint, c: MeshPoint, d: MeshPoint): boolean {
  if (Math.max(a.xIn, b.xIn) < Math.min(c.xIn, d.xIn) || Math.max(c.xIn, d.xIn) < Math.min(a.xIn, b.xIn)) {
    return false;
  }
  if (Math.max(a.yIn, b.yIn) < Math.min(c.yIn, d.yIn) || Math.max(c.yIn, d.yIn) < Math.min(a.yIn, b.yIn)) {
    return false;
  }
  return cross(a, b, c) * cross(a, b, d) <= 0 && cross(c, d, a) * cross(c, d, b) <= 0;
}

function cross(a: MeshPoint, b: MeshPoint, c: MeshPoint): number {
  return (b.xIn - a.xIn) * (c.yIn - a.yIn) - (b.yIn - a.yIn) * (c.xIn - a.xIn);
}

function dot(apex: MeshPoint, a: MeshPoint, b: MeshPoint): number {
  return (a.xIn - apex.xIn) * (b.xIn - apex.xIn) + (a.yIn - apex.yIn) * (b.yIn - apex.yIn);
}

function distance(a: MeshPoint, b: MeshPoint): number {
  return Math.hypot(a.xIn - b.xIn, a.yIn - b.yIn);
}

function show(point: MeshPoint): string {
  return `x ${point.xIn.toFixed(2)} in, y ${point.yIn.toFixed(2)} in`;
}
