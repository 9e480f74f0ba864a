/** Loops that a clipping gives, put together as slabs with their openings. */
import { isPointInPolygon } from './containment';
import type { Point, Region } from './point';
import { signedAreaIn2 } from './polygon-measure';

/** Each counter-clockwise loop is a slab, with the clockwise ones in it as its openings. */
export function regionsOf(loops: readonly (readonly Point[])[]): Region[] {
  const holes = loops.filter((loop) => signedAreaIn2(loop) < 0);
  return loops
    .filter((loop) => signedAreaIn2(loop) > 0)
    .map((outer) => ({ outer, holes: holes.filter((hole) => isPointInPolygon(hole[0]!, outer)) }));
}
