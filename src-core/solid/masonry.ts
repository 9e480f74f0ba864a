/** Walls and piers laid in courses: a plain prism with the joints as ink lines. */
import type { Point } from '../outline';
import { between, counterClockwise, distanceIn } from '../outline';
import { addPrism, levelFrame } from './extrusion';
import { solidBuilder } from './solid-builder';
import type { Solid } from './types';

/** Height of a course and length of a unit, joint included. */
export interface Bond {
  readonly courseIn: number;
  readonly unitIn: number;
}

/** An 8 x 16 block and a modular brick laid three courses to 8 in. Common practice, no source. */
export const BLOCK_BOND: Bond = { courseIn: 8, unitIn: 16 };
export const BRICK_BOND: Bond = { courseIn: 8 / 3, unitIn: 8 };
/** More courses than this are left plain. */
const MOST_COURSES = 200;
/** A side shorter than this, such as a chord of a round pier, shows no joint of its own, in. */
const SHORTEST_SIDE_IN = 3;

/** Masonry on a footprint from one height to another; courses are laid from below, in running bond. */
export function masonrySolid(footprint: readonly Point[], fromIn: number, toIn: number, bond: Bond): Solid {
  const builder = solidBuilder();
  addPrism(builder, levelFrame(fromIn), [footprint], toIn - fromIn);
  const sides = counterClockwise(footprint);
  const courses = Math.ceil((toIn - fromIn) / bond.courseIn - 1e-6);
  if (courses > MOST_COURSES) return builder.finish();
  const line = (a: Point, aIn: number, b: Point, bIn: number) =>
    builder.ink(builder.addPoint(a.xIn, a.yIn, aIn), builder.addPoint(b.xIn, b.yIn, bIn));
  sides.forEach((a, i) => {
    const b = sides[(i + 1) % sides.length]!;
    const lengthIn = distanceIn(a, b);
    for (let course = 0; course < courses; course++) {
      const lowIn = fromIn + course * bond.courseIn;
      const highIn = Math.min(toIn, lowIn + bond.courseIn);
      if (course > 0) line(a, lowIn, b, lowIn);
      if (lengthIn < SHORTEST_SIDE_IN) continue;
      const shiftIn = ((course + i) % 2) * (bond.unitIn / 2);
      for (let atIn = shiftIn || bond.unitIn; atIn < lengthIn - 1e-6; atIn += bond.unitIn) {
        const at = between(a, b, atIn / lengthIn);
        line(at, lowIn, at, highIn);
      }
    }
  });
  return builder.finish();
}
