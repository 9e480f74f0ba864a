import { PerspectiveCamera, Vector3 } from 'three';
import { describe, expect, test } from 'vitest';
import type { CameraPose, View } from '../../../src-renderer/model/camera-pose';
import {
  between,
  eyeOf,
  fitted,
  LENS_DEG,
  NEAREST_IN,
  orbited,
  panned,
  poseForView,
  poseFrom,
  zoomed,
} from '../../../src-renderer/model/camera-pose';
import { NAMED_STEPS, stepOfKey, stepped } from '../../../src-renderer/model/camera-step';
import { projectToScreen } from '../../../src-renderer/model/project-to-screen';
import type { Bounds } from '../../../src-renderer/model/scene-bounds';

const counter: Bounds = { least: [0, 0, 0], most: [96, 24, 36] };
const views: readonly View[] = ['front', 'back', 'left', 'right', 'above', 'below', 'corner'];

function cameraAt(pose: CameraPose, aspect: number): PerspectiveCamera {
  const camera = new PerspectiveCamera(LENS_DEG, aspect, 1, 10000);
  camera.up.set(0, 0, 1);
  camera.position.set(...eyeOf(pose));
  camera.lookAt(...pose.target);
  camera.updateMatrixWorld();
  return camera;
}

describe('views by name', () => {
  test('from the front the eye stands at the low-y side, from the left at the low-x side', () => {
    expect(eyeOf(poseForView('front', [counter], 1.5))[1]).toBeLessThan(0);
    expect(eyeOf(poseForView('left', [counter], 1.5))[0]).toBeLessThan(0);
    expect(eyeOf(poseForView('back', [counter], 1.5))[1]).toBeGreaterThan(24);
    expect(eyeOf(poseForView('right', [counter], 1.5))[0]).toBeGreaterThan(96);
    expect(eyeOf(poseForView('above', [counter], 1.5))[2]).toBeGreaterThan(36);
    expect(eyeOf(poseForView('below', [counter], 1.5))[2]).toBeLessThan(0);
  });

  test.each(views)(
    'from "%s" every corner lies in the picture, wide or tall, and one comes near its rim',
    (view) => {
      for (const aspect of [2.2, 0.6]) {
        const camera = cameraAt(poseForView(view, [counter], aspect), aspect);
        let farthest = 0;
        for (const x of [0, 96])
          for (const y of [0, 24])
            for (const z of [0, 36]) {
              const seen = new Vector3(x, y, z).project(camera);
              farthest = Math.max(farthest, Math.abs(seen.x), Math.abs(seen.y));
            }
        expect(farthest).toBeLessThan(0.86);
        expect(farthest).toBeGreaterThan(0.8);
      }
    },
  );

  test('from above and from below the left of the plan is at the left of the picture', () => {
    for (const view of ['above', 'below', 'front'] as const) {
      const camera = cameraAt(poseForView(view, [counter], 1.5), 1.5);
      const left = new Vector3(0, 12, 18).project(camera);
      const right = new Vector3(96, 12, 18).project(camera);
      expect(left.x).toBeLessThan(right.x);
    }
  });
});

describe('steps of the camera', () => {
  const pose: CameraPose = { target: [10, 20, 30], azimuthRad: 0.4, elevationRad: 0.3, distanceIn: 100 };

  test('a pose is found again from its eye and its target', () => {
    const again = poseFrom(eyeOf(pose), pose.target);
    expect(again.azimuthRad).toBeCloseTo(0.4, 10);
    expect(again.elevationRad).toBeCloseTo(0.3, 10);
    expect(again.distanceIn).toBeCloseTo(100, 8);
  });

  test('turning keeps the distance and stops short of straight up', () => {
    const high = orbited(pose, 0.1, 9);
    expect(high.distanceIn).toBe(100);
    expect(high.elevationRad).toBeLessThan(Math.PI / 2);
    expect(high.elevationRad).toBeGreaterThan(1.5);
  });

  test('moving 0.1 to the right at 100 in moves the target 10 in, level and square to the line of sight', () => {
    const { target } = panned(pose, 0.1, 0);
    const step = [target[0] - 10, target[1] - 20, target[2] - 30];
    expect(Math.hypot(...step)).toBeCloseTo(10, 8);
    expect(step[2]).toBeCloseTo(0, 10);
    expect(step[0]! * Math.cos(0.4) + step[1]! * Math.sin(0.4)).toBeCloseTo(0, 10);
  });

  test('nearer than 6 in the eye does not go', () => {
    expect(zoomed(pose, 0.001).distanceIn).toBe(NEAREST_IN);
  });

  test('fitting all keeps the direction of looking', () => {
    const all = fitted(pose, [counter], 1.5);
    expect(all.azimuthRad).toBe(0.4);
    expect(all.elevationRad).toBe(0.3);
  });

  test('three piers far apart fill the picture from side to side, though the box round them has empty corners', () => {
    const pier = (x: number, y: number): Bounds => ({ least: [x, y, 0], most: [x + 8, y + 8, 34] });
    const piers = [pier(0, 0), pier(200, 0), pier(200, 120)];
    const camera = cameraAt(fitted(pose, piers, 1.5), 1.5);
    const across = piers.flatMap(({ least, most }) =>
      [least[0], most[0]].flatMap((x) =>
        [least[1], most[1]].flatMap((y) =>
          [least[2], most[2]].map((z) => new Vector3(x, y, z).project(camera).x),
        ),
      ),
    );
    expect(Math.max(...across)).toBeCloseTo(0.84, 1);
    expect(Math.min(...across)).toBeCloseTo(-0.84, 1);
  });

  test('the way from one pose to another begins and ends on them and takes the shorter turn', () => {
    const from = { ...pose, azimuthRad: 3 };
    const to = { ...pose, azimuthRad: -3, distanceIn: 400 };
    expect(between(from, to, 0)).toEqual(from);
    expect(between(from, to, 1).distanceIn).toBeCloseTo(400, 8);
    expect(between(from, to, 0.5).azimuthRad).toBeCloseTo(Math.PI, 10);
    expect(between(from, to, 0.5).distanceIn).toBeCloseTo(200, 8);
  });

  test('figures 0 to 7 are the eight named views, each with a key of its own', () => {
    expect(NAMED_STEPS.map(({ key }) => key)).toEqual(['0', '1', '2', '3', '4', '5', '6', '7']);
    expect(stepOfKey('5', false)).toEqual({ kind: 'view', view: 'above' });
    expect(stepOfKey('0', false)).toEqual({ kind: 'fit-all' });
  });

  test('an arrow turns, the same with Shift moves, and other keys are left to the window', () => {
    expect(stepOfKey('ArrowLeft', false)?.kind).toBe('orbit');
    expect(stepOfKey('ArrowLeft', true)?.kind).toBe('pan');
    expect(stepOfKey('z', false)).toBeNull();
    expect(stepOfKey('Delete', false)).toBeNull();
  });

  test('plus comes nearer and minus goes back by as much', () => {
    const near = stepped(pose, stepOfKey('+', true)!)!;
    expect(near.distanceIn).toBeLessThan(100);
    expect(stepped(near, stepOfKey('-', false)!)!.distanceIn).toBeCloseTo(100, 8);
  });
});

describe('a place in the picture', () => {
  const pose = poseForView('corner', [counter], 1.6);
  const camera = cameraAt(pose, 1.6);
  const matrix = camera.projectionMatrix.clone().multiply(camera.matrixWorldInverse).elements;

  test('what is looked at lies in the middle of an 800 x 500 px picture', () => {
    const { xPx, yPx, isInFront } = projectToScreen(matrix, pose.target, 800, 500);
    expect(xPx).toBeCloseTo(400, 6);
    expect(yPx).toBeCloseTo(250, 6);
    expect(isInFront).toBe(true);
  });

  test('it agrees with the projection of three.js, y counted down from the top', () => {
    const seen = new Vector3(96, 0, 36).project(camera);
    const { xPx, yPx } = projectToScreen(matrix, [96, 0, 36], 800, 500);
    expect(xPx).toBeCloseTo(((seen.x + 1) / 2) * 800, 6);
    expect(yPx).toBeCloseTo(((1 - seen.y) / 2) * 500, 6);
  });

  test('a place behind the eye is told apart', () => {
    const [eye, { target }] = [eyeOf(pose), pose];
    const behind = [eye[0] * 2 - target[0], eye[1] * 2 - target[1], eye[2] * 2 - target[2]] as const;
    expect(projectToScreen(matrix, behind, 800, 500).isInFront).toBe(false);
  });

  test('a matrix of another size is refused', () => {
    expect(() => projectToScreen([1, 2, 3], [0, 0, 0], 10, 10)).toThrow(/16 numbers/);
  });
});
