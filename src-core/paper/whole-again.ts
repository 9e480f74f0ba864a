/** Parts of cut faces put together again where the order of painting allows, so that no seam shows across a plain top. */
import type { PaperPoint } from '../figure';
import type { Region } from '../outline';
import { intersectionAreaIn2 } from '../outline';
import type { Face, Place3 } from './view-faces';

/** Faces that cover less than this of each other only touch, in2. */
const TOUCH_IN2 = 1e-3;

interface Seen {
  readonly face: Face;
  /** Its outline in the picture, openings filled. */
  readonly outline: Region;
  readonly minX: number;
  readonly maxX: number;
  readonly minY: number;
  readonly maxY: number;
}

/** The same picture from fewer faces: a whole face stands for its parts where nothing between them in order covers any of them. */
export function wholeAgain(ordered: readonly Face[], onPlane: (place: Place3) => PaperPoint): Face[] {
  let list = ordered.map((face) => seenAs(face, onPlane));
  const cut = new Set(ordered.flatMap(({ partOf }) => (partOf === null ? [] : [partOf])));
  for (const whole of cut) list = joined(list, seenAs(whole, onPlane));
  return list.map(({ face }) => face);
}

function joined(list: Seen[], whole: Seen): Seen[] {
  const places = list.flatMap(({ face }, i) => (face.partOf === whole.face ? [i] : []));
  const [first, last] = [places[0]!, places.at(-1)!];
  const isOther = ({ face }: Seen) => face.partOf !== whole.face;
  const between = (from: number, to: number) => list.slice(from, to).filter(isOther);
  const others = list.filter(isOther);
  // painted late, a part must not cover what was painted over it; painted early, nothing between may lie under it
  const mayBeLate = places.every((place) =>
    between(place, last).every((other) => !cover(other, list[place]!)),
  );
  if (mayBeLate) {
    const at = last - places.length + 1;
    return [...others.slice(0, at), whole, ...others.slice(at)];
  }
  const mayBeEarly = places.every((place) =>
    between(first, place).every((other) => !cover(other, list[place]!)),
  );
  return mayBeEarly ? [...others.slice(0, first), whole, ...others.slice(first)] : list;
}

function cover(one: Seen, other: Seen): boolean {
  if (one.minX >= other.maxX || other.minX >= one.maxX) return false;
  if (one.minY >= other.maxY || other.minY >= one.maxY) return false;
  return intersectionAreaIn2(one.outline, other.outline) > TOUCH_IN2;
}

function seenAs(face: Face, onPlane: (place: Place3) => PaperPoint): Seen {
  const points = face.loops[0]!.map(onPlane);
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  return {
    face,
    outline: { outer: points.map(({ x, y }) => ({ xIn: x, yIn: y })), holes: [] },
    minX: Math.min(...xs),
    maxX: Math.max(...xs),
    minY: Math.min(...ys),
    maxY: Math.max(...ys),
  };
}
