/** A place on a slab that a picture shows, for the end of a leader. */
import type { PaperPoint } from '../figure';
import type { Point, Region } from '../outline';
import { boundingBox, distanceIn, isPointInPolygon, isPointOnSlab } from '../outline';
import type { Face, Place3 } from './view-faces';

/** Places looked at along each side of the box round a slab. */
const STEPS = 15;

/** The place on a slab's top nearest to `wanted` that nothing covers; null where all of it is hidden. */
export function visiblePlace(
  ordered: readonly Face[],
  slab: { readonly faces: readonly Face[]; readonly region: Region; readonly topIn: number },
  wanted: Point,
  onPlane: (place: Place3) => PaperPoint,
): Place3 | null {
  const own = new Set(slab.faces);
  const shown = ordered.map((face) => ({
    isOwn: own.has(face.partOf ?? face),
    loops: face.loops.map((loop) => loop.map((corner) => asPoint(onPlane(corner)))),
  }));
  const { minXIn, maxXIn, minYIn, maxYIn } = boundingBox(slab.region.outer);
  const grid = Array.from({ length: STEPS * STEPS }, (_, k): Point => {
    const [i, j] = [k % STEPS, Math.floor(k / STEPS)];
    return {
      xIn: minXIn + ((maxXIn - minXIn) * (i + 0.5)) / STEPS,
      yIn: minYIn + ((maxYIn - minYIn) * (j + 0.5)) / STEPS,
    };
  });
  const places = [wanted, ...grid.sort((p, q) => distanceIn(p, wanted) - distanceIn(q, wanted))];
  const found = places.find((place) => {
    if (!isPointOnSlab(place, slab.region)) return false;
    const at = asPoint(onPlane({ x: place.xIn, y: place.yIn, z: slab.topIn }));
    return shown.findLast(({ loops }) => isCovered(at, loops))?.isOwn === true;
  });
  return found === undefined ? null : { x: found.xIn, y: found.yIn, z: slab.topIn };
}

/** By the even-odd rule. */
function isCovered(at: Point, loops: readonly (readonly Point[])[]): boolean {
  return loops.filter((loop) => isPointInPolygon(at, loop)).length % 2 === 1;
}

function asPoint({ x, y }: PaperPoint): Point {
  return { xIn: x, yIn: y };
}
