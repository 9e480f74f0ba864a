/** Prisms and boxes, the parts that supports are put together from. */
import type { Direction, Point } from '../outline';
import { counterClockwise, leftOf } from '../outline';
import { triangulateFace } from './flat-face';
import type { SolidBuilder } from './solid-builder';

export type Vector = readonly [number, number, number];

/** Where a section lies: its own x along `across`, its own y along `up`; it is pushed along their cross product. */
export interface Frame {
  readonly origin: Vector;
  readonly across: Vector;
  readonly up: Vector;
}

/** A frame that lies level at a height: sections in it are plans, x along a direction, and are pushed upwards. */
export function planFrame(at: Point, zIn: number, along: Direction): Frame {
  const left = leftOf(along);
  return { origin: [at.xIn, at.yIn, zIn], across: [along.x, along.y, 0], up: [left.x, left.y, 0] };
}

/** A frame that stands across a direction: sections are seen from its far end and are pushed along it. */
export function crossFrame(at: Point, zIn: number, along: Direction): Frame {
  const left = leftOf(along);
  return { origin: [at.xIn, at.yIn, zIn], across: [left.x, left.y, 0], up: [0, 0, 1] };
}

/** A frame that stands along a direction: sections are side views, x along it, and are pushed to its right. */
export function sideFrame(at: Point, zIn: number, along: Direction): Frame {
  return { origin: [at.xIn, at.yIn, zIn], across: [along.x, along.y, 0], up: [0, 0, 1] };
}

/** The drawing's own plan at a height. */
export function levelFrame(zIn: number): Frame {
  return planFrame({ xIn: 0, yIn: 0 }, zIn, { x: 1, y: 0 });
}

/** Adds the closed prism of a section: an outline, then openings, either way round. Nothing where it has no length. */
export function addPrism(
  builder: SolidBuilder,
  frame: Frame,
  section: readonly (readonly Point[])[],
  lengthIn: number,
): void {
  if (!(lengthIn > 0)) return;
  const loops = section.map((loop, i) =>
    i === 0 ? counterClockwise(loop) : [...counterClockwise(loop)].reverse(),
  );
  const ids = [0, lengthIn].map((alongIn) =>
    loops.map((loop) => loop.map((point) => builder.addPoint(...placed(frame, point, alongIn)))),
  );
  const [near, far] = ids as [number[][], number[][]];
  near.forEach((loop, i) => {
    loop.forEach((a, k) => {
      const next = (k + 1) % loop.length;
      builder.addTriangle(a, loop[next]!, far[i]![next]!);
      builder.addTriangle(a, far[i]![next]!, far[i]![k]!);
    });
  });
  const [flatNear, flatFar] = [near.flat(), far.flat()];
  const triangles = triangulateFace(loops);
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [triangles[t]!, triangles[t + 1]!, triangles[t + 2]!];
    builder.addTriangle(flatFar[a]!, flatFar[b]!, flatFar[c]!);
    builder.addTriangle(flatNear[a]!, flatNear[c]!, flatNear[b]!);
  }
}

/** From and to along one axis of a frame, in. */
export type Range = readonly [number, number];

/** Adds a box within ranges along a frame's three axes. Nothing where a range is empty. */
export function addBox(builder: SolidBuilder, frame: Frame, across: Range, up: Range, along: Range): void {
  if (!(across[1] > across[0] && up[1] > up[0] && along[1] > along[0])) return;
  const origin = placed(frame, { xIn: 0, yIn: 0 }, along[0]);
  addPrism(builder, { ...frame, origin }, [rectangle(across, up)], along[1] - along[0]);
}

/** Corners of a rectangle within two ranges, counter-clockwise. */
export function rectangle([left, right]: Range, [near, far]: Range): Point[] {
  return [
    { xIn: left, yIn: near },
    { xIn: right, yIn: near },
    { xIn: right, yIn: far },
    { xIn: left, yIn: far },
  ];
}

/** The place of a section's point in the drawing, pushed so far. */
function placed({ origin, across, up }: Frame, { xIn, yIn }: Point, alongIn: number): Vector {
  const push = cross(across, up);
  const at = (axis: 0 | 1 | 2) => origin[axis] + xIn * across[axis] + yIn * up[axis] + alongIn * push[axis];
  return [at(0), at(1), at(2)];
}

function cross(a: Vector, b: Vector): Vector {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}
