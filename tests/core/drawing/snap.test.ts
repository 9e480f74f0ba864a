import { describe, expect, test } from 'vitest';
import type { SnapTarget } from '../../../src-core/drawing';
import { snapDistance, snapPoint, snapTargets, toGrid } from '../../../src-core/drawing';
import { jobOf, rectangle } from './pieces';

const corner: SnapTarget = {
  kind: 'point',
  key: 'a/corner-0',
  words: 'corner of A',
  at: { xIn: 10.03, yIn: 4 },
};
const edge: SnapTarget = {
  kind: 'line',
  key: 'a/edge-0',
  words: 'edge of A',
  a: { xIn: 0, yIn: 7.1 },
  b: { xIn: 20, yIn: 7.1 },
};
const upright: SnapTarget = {
  kind: 'line',
  key: 'a/edge-1',
  words: 'edge of A',
  a: { xIn: 15.3, yIn: 0 },
  b: { xIn: 15.3, yIn: 20 },
};

describe('snapping a point', () => {
  test('with nothing near takes it to the nearest 1/8 in, or 5 mm', () => {
    const at = { xIn: 3.07, yIn: -2.2 };
    expect(snapPoint(at, { gridIn: 1 / 8, targets: [], reachIn: 1 })).toEqual({
      at: { xIn: 3.125, yIn: -2.25 },
      to: [],
    });
    expect(snapPoint(at, { gridIn: 5 / 25.4, targets: [], reachIn: 1 }).at.xIn * 25.4).toBeCloseTo(80, 9);
  });

  test('a corner 0.4 in away takes it, one 0.6 in away does not when the reach is 0.5 in', () => {
    const options = { gridIn: 1 / 8, targets: [corner], reachIn: 0.5 };
    expect(snapPoint({ xIn: 10.43, yIn: 4 }, options)).toEqual({
      at: { xIn: 10.03, yIn: 4 },
      to: [{ kind: 'on', target: corner }],
    });
    expect(snapPoint({ xIn: 10.63, yIn: 4.6 }, options)).toEqual({
      at: { xIn: 10.625, yIn: 4.625 },
      to: [],
    });
  });

  test('an edge takes it across, the grid along', () => {
    const snapped = snapPoint({ xIn: 5.2, yIn: 7.3 }, { gridIn: 1 / 8, targets: [edge], reachIn: 0.5 });
    expect(snapped.at).toEqual({ xIn: 5.25, yIn: 7.1 });
    expect(snapped.to).toEqual([{ kind: 'on', target: edge }]);
  });

  test('a corner beats the edge that it lies nearer to', () => {
    const near: SnapTarget = { ...corner, at: { xIn: 5, yIn: 7.4 } };
    const snapped = snapPoint({ xIn: 5.1, yIn: 7.1 }, { gridIn: 1 / 8, targets: [edge, near], reachIn: 0.5 });
    expect(snapped.at).toEqual({ xIn: 5, yIn: 7.4 });
  });

  test('where two edges meet within reach it goes to their meeting', () => {
    const options = { gridIn: 1 / 8, targets: [edge, upright], reachIn: 0.5 };
    const snapped = snapPoint({ xIn: 15.1, yIn: 7.3 }, options);
    expect(snapped.at.xIn).toBeCloseTo(15.3, 9);
    expect(snapped.at.yIn).toBeCloseTo(7.1, 9);
    expect(snapped.to).toHaveLength(2);
  });

  test('far from a corner but level with it, it takes the corner its x', () => {
    const options = { gridIn: 1 / 8, targets: [corner], reachIn: 0.5 };
    expect(snapPoint({ xIn: 9.8, yIn: 40.3 }, options)).toEqual({
      at: { xIn: 10.03, yIn: 40.25 },
      to: [{ kind: 'aligned', axis: 'x', target: corner }],
    });
  });
});

describe('snapping a distance', () => {
  const outward = { x: 0, y: -1 };

  test('ends level with a corner within reach', () => {
    const options = { gridIn: 1 / 8, targets: [corner], reachIn: 0.5 };
    const snapped = snapDistance({ xIn: 0, yIn: 10 }, outward, 5.7, options);
    expect(snapped).toEqual({ distanceIn: 6, to: corner });
  });

  test('an edge at 10.03 in moved about 5 in ends on the grid at 5 in', () => {
    const options = { gridIn: 1 / 8, targets: [], reachIn: 0.5 };
    const snapped = snapDistance({ xIn: 3, yIn: 10.03 }, outward, 5.01, options);
    expect(10.03 - snapped.distanceIn).toBeCloseTo(5, 9);
    expect(snapped.to).toBeNull();
  });
});

test('the grid rounds halves up and keeps the sign', () => {
  expect(toGrid(0.1875, 1 / 8)).toBe(0.25);
  expect(toGrid(-0.3, 1 / 8)).toBe(-0.25);
});

describe('targets of a job', () => {
  const job = jobOf(
    {
      cutouts: [
        {
          id: 'drain',
          purpose: 'drain',
          shape: { kind: 'circle', centre: { xIn: 48, yIn: 12 }, diameterIn: 3 },
        },
      ],
      supports: [
        {
          kind: 'wall',
          id: 'wall',
          build: 'stud',
          from: { xIn: 0, yIn: 4 },
          to: { xIn: 96, yIn: 4 },
          widthIn: 5.5,
        },
        { kind: 'leg', id: 'leg', centre: { xIn: 90, yIn: 22 } },
      ],
    },
    { corners: rectangle(0, 40, 30, 20) },
  );

  test('have the corners, edges and centre lines of both pieces, and the faces of a wall', () => {
    const targets = snapTargets(job, []);
    const lineAt = (yIn: number) =>
      targets.some((t) => t.kind === 'line' && t.a.yIn === yIn && t.b.yIn === yIn);
    expect(lineAt(12.75)).toBe(true);
    expect(lineAt(50)).toBe(true);
    expect(lineAt(6.75)).toBe(true);
    expect(lineAt(1.25)).toBe(true);
    const pointAt = (xIn: number, yIn: number) =>
      targets.some((t) => t.kind === 'point' && t.at.xIn === xIn && t.at.yIn === yIn);
    expect(pointAt(30, 60)).toBe(true);
    expect(pointAt(48, 12)).toBe(true);
    expect(pointAt(90, 22)).toBe(true);
  });

  test('leave out the corner that is moved, or the whole piece', () => {
    const keys = (except: readonly string[]) => snapTargets(job, except).map(({ key }) => key);
    expect(keys([])).toContain('piece-1/corner-1');
    expect(keys(['piece-1/corner-1'])).not.toContain('piece-1/corner-1');
    expect(keys(['piece-1/corner-1'])).toContain('piece-1/corner-2');
    expect(keys(['piece-1/']).some((key) => key.startsWith('piece-1'))).toBe(false);
    expect(keys(['piece-1/'])).toContain('piece-2/corner-0');
  });
});
