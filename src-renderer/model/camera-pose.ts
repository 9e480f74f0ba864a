/** Where the eye stands and what it looks at, as numbers: views by name, steps of the keys, the way from one to another. */
import type { Bounds, Place } from './scene-bounds';
import { united } from './scene-bounds';

/** Opening of the lens from top to bottom, degrees: about that of a 55 mm lens, so that far edges stay true. */
export const LENS_DEG = 30;
/** How near and how far the eye may stand from what it looks at. */
export const NEAREST_IN = 6;
export const FARTHEST_IN = 6000;
/** Short of straight up and down, where left and right would swap. */
const STEEPEST_RAD = Math.PI / 2 - 1e-3;
/** Share of the picture that a fitted drawing fills. */
const FILLED_SHARE = 0.84;
/** Near things look larger, so what fills the middle is found by looking again; after a few times nothing moves. */
const CENTRINGS = 4;

export interface CameraPose {
  readonly target: Place;
  /** Direction from the target to the eye in plan, from x towards y. The front is at -90 degrees. */
  readonly azimuthRad: number;
  readonly elevationRad: number;
  readonly distanceIn: number;
}

export type View = 'front' | 'back' | 'left' | 'right' | 'above' | 'below' | 'corner';

const quarter = Math.PI / 2;
/** Views from a side stand a little above level, so that the top still shows. */
const SIDE_RAD = 0.1;

const DIRECTIONS: { readonly [V in View]: readonly [azimuthRad: number, elevationRad: number] } = {
  front: [-quarter, SIDE_RAD],
  back: [quarter, SIDE_RAD],
  left: [Math.PI, SIDE_RAD],
  right: [0, SIDE_RAD],
  above: [-quarter, STEEPEST_RAD],
  below: [-quarter, -STEEPEST_RAD],
  corner: [-0.3 * Math.PI, 0.15 * Math.PI],
};

/** The pose of a named view from which all of `boxes` is seen. `aspect` is the picture's width over its height. */
export function poseForView(view: View, boxes: readonly Bounds[], aspect: number): CameraPose {
  const [azimuthRad, elevationRad] = DIRECTIONS[view];
  return fitted({ target: [0, 0, 0], azimuthRad, elevationRad, distanceIn: 1 }, boxes, aspect);
}

/** The same direction of looking, moved and drawn back until all of `boxes` fills the middle of the picture. */
export function fitted(pose: CameraPose, boxes: readonly Bounds[], aspect: number): CameraPose {
  const corners = boxes.flatMap(cornersOf);
  const axes = axesOf(pose);
  let target = middleOf(boxes.reduce(united));
  let distanceIn = distanceFor(corners, target, axes, aspect);
  for (let turn = 0; turn < CENTRINGS; turn++) {
    const seen = corners.map((corner) => minus(corner, target));
    const depth = (from: Place) => distanceIn - dot(from, axes.toEye);
    const aside = middleOfRange(seen.map((from) => dot(from, axes.right) / depth(from)));
    const high = middleOfRange(seen.map((from) => dot(from, axes.up) / depth(from)));
    target = moved(moved(target, axes.right, aside * distanceIn), axes.up, high * distanceIn);
    distanceIn = distanceFor(corners, target, axes, aspect);
  }
  return { ...pose, target, distanceIn: clamp(distanceIn, NEAREST_IN, FARTHEST_IN) };
}

/** A place in the picture: -1 at its left and bottom, 1 at its right and top. */
export interface SeenPlace {
  readonly across: number;
  readonly up: number;
  readonly isInFront: boolean;
}

/** Where the corners of `boxes` lie in the picture. */
export function seenFrom(pose: CameraPose, boxes: readonly Bounds[], aspect: number): SeenPlace[] {
  const axes = axesOf(pose);
  const tall = Math.tan((LENS_DEG * Math.PI) / 360);
  return boxes.flatMap(cornersOf).map((corner) => {
    const from = minus(corner, pose.target);
    const depthIn = pose.distanceIn - dot(from, axes.toEye);
    return {
      across: dot(from, axes.right) / (depthIn * tall * aspect),
      up: dot(from, axes.up) / (depthIn * tall),
      isInFront: depthIn > 0,
    };
  });
}

interface Axes {
  readonly toEye: Place;
  readonly right: Place;
  readonly up: Place;
}

/** The least distance from the target at which every corner lies in the filled part of the picture. */
function distanceFor(corners: readonly Place[], target: Place, axes: Axes, aspect: number): number {
  const tall = Math.tan((LENS_DEG * Math.PI) / 360) * FILLED_SHARE;
  let distanceIn = NEAREST_IN;
  for (const corner of corners) {
    const from = minus(corner, target);
    const aside = Math.max(Math.abs(dot(from, axes.right)) / aspect, Math.abs(dot(from, axes.up))) / tall;
    distanceIn = Math.max(distanceIn, aside + dot(from, axes.toEye));
  }
  return distanceIn;
}

/** The eye's own place. */
export function eyeOf(pose: CameraPose): Place {
  const { toEye } = axesOf(pose);
  return moved(pose.target, toEye, pose.distanceIn);
}

/** The pose of an eye that stands at one place and looks at another. */
export function poseFrom(eye: Place, target: Place): CameraPose {
  const [x, y, z] = minus(eye, target);
  return {
    target,
    azimuthRad: Math.atan2(y, x),
    elevationRad: Math.atan2(z, Math.hypot(x, y)),
    distanceIn: Math.hypot(x, y, z),
  };
}

/** Turned about the target, to the right and up positive. */
export function orbited(pose: CameraPose, rightRad: number, upRad: number): CameraPose {
  return {
    ...pose,
    azimuthRad: pose.azimuthRad + rightRad,
    elevationRad: clamp(pose.elevationRad + upRad, -STEEPEST_RAD, STEEPEST_RAD),
  };
}

/** Moved across the picture by shares of the distance, to the right and up positive. */
export function panned(pose: CameraPose, rightShare: number, upShare: number): CameraPose {
  const { right, up } = axesOf(pose);
  const aside = moved(pose.target, right, rightShare * pose.distanceIn);
  return { ...pose, target: moved(aside, up, upShare * pose.distanceIn) };
}

/** Nearer by a factor below 1, farther above. */
export function zoomed(pose: CameraPose, factor: number): CameraPose {
  return { ...pose, distanceIn: clamp(pose.distanceIn * factor, NEAREST_IN, FARTHEST_IN) };
}

/** The pose a share of the way from one to another, slow at both ends and round the shorter side. */
export function between(from: CameraPose, to: CameraPose, share: number): CameraPose {
  const t = clamp(share, 0, 1);
  const eased = t * t * (3 - 2 * t);
  const turn = Math.atan2(
    Math.sin(to.azimuthRad - from.azimuthRad),
    Math.cos(to.azimuthRad - from.azimuthRad),
  );
  return {
    target: moved(from.target, minus(to.target, from.target), eased),
    azimuthRad: from.azimuthRad + turn * eased,
    elevationRad: from.elevationRad + (to.elevationRad - from.elevationRad) * eased,
    distanceIn: from.distanceIn * (to.distanceIn / from.distanceIn) ** eased,
  };
}

function axesOf({ azimuthRad, elevationRad }: CameraPose): Axes {
  const [ca, sa] = [Math.cos(azimuthRad), Math.sin(azimuthRad)];
  const [ce, se] = [Math.cos(elevationRad), Math.sin(elevationRad)];
  return { toEye: [ce * ca, ce * sa, se], right: [-sa, ca, 0], up: [-se * ca, -se * sa, ce] };
}

function cornersOf({ least, most }: Bounds): Place[] {
  const corners: Place[] = [];
  for (const x of [least[0], most[0]])
    for (const y of [least[1], most[1]]) for (const z of [least[2], most[2]]) corners.push([x, y, z]);
  return corners;
}

function middleOf({ least, most }: Bounds): Place {
  return [(least[0] + most[0]) / 2, (least[1] + most[1]) / 2, (least[2] + most[2]) / 2];
}

function middleOfRange(values: readonly number[]): number {
  return (Math.min(...values) + Math.max(...values)) / 2;
}

function minus(a: Place, b: Place): Place {
  return [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
}

function moved(a: Place, along: Place, by: number): Place {
  return [a[0] + along[0] * by, a[1] + along[1] * by, a[2] + along[2] * by];
}

function dot(a: Place, b: Place): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

function clamp(value: number, least: number, most: number): number {
  return Math.min(most, Math.max(least, value));
}
