import { describe, expect, test } from 'vitest';
import type { EdgeProfile } from '../../../src-core/job';
import type { ProfilePoint } from '../../../src-core/profile';
import {
  CHAMFER_LEG_IN,
  COVE_RADIUS_IN,
  EASED_RADIUS_IN,
  edgeProfile,
  HALF_BULLNOSE_MOST_IN,
  OGEE_SIZE_IN,
  profileAreaLostIn2,
  ROUND_OVER_RADIUS_IN,
  STEP_SIZE_IN,
} from '../../../src-core/profile';

const KINDS = [
  'square',
  'eased',
  'chamfer',
  'round-over',
  'bullnose',
  'half-bullnose',
  'cove',
  'ogee',
  'stepped',
] as const;

function profile(kind: EdgeProfile['kind'], sizeIn: number | null = null): EdgeProfile {
  return { kind, sizeIn, points: null };
}

function own(...points: readonly (readonly [number, number])[]): EdgeProfile {
  return { kind: 'own', sizeIn: null, points: points.map(([outIn, upIn]) => ({ outIn, upIn })) };
}

/** Area between a square corner and the quarter circle that rounds it. */
const spandrelIn2 = (radiusIn: number) => (1 - Math.PI / 4) * radiusIn ** 2;
const quarterIn2 = (radiusIn: number) => (Math.PI / 4) * radiusIn ** 2;

function pairs(points: readonly ProfilePoint[]): [number, number][] {
  return points.map(({ outIn, upIn }) => [outIn, upIn]);
}

describe('the face of an edge', () => {
  test.each(KINDS)('%s of any size fits slabs of 1/4, 1-1/2 and 4 in from soffit to top', (kind) => {
    for (const sizeIn of [null, 1 / 16, 0.5, 1, 12]) {
      for (const t of [0.25, 1.5, 4]) {
        const points = edgeProfile(profile(kind, sizeIn), t);
        expect(points[0]!.upIn).toBe(0);
        expect(points.at(-1)!.upIn).toBe(t);
        points.forEach(({ outIn, upIn }, k) => {
          expect(outIn).toBeLessThanOrEqual(0);
          expect(outIn).toBeGreaterThanOrEqual(-t - 1e-9);
          if (k > 0) expect(upIn).toBeGreaterThanOrEqual(points[k - 1]!.upIn);
        });
        expect(Math.max(...points.map(({ outIn }) => outIn))).toBeCloseTo(0, 9);
      }
    }
  });

  test('a chamfer of 1/4 in on 1-1/2 in goes straight up to 1-1/4 in and back 1/4 in', () => {
    expect(pairs(edgeProfile(profile('chamfer', 0.25), 1.5))).toEqual([
      [0, 0],
      [0, 1.25],
      [-0.25, 1.5],
    ]);
  });

  test('a step of 3/8 in has a level tread', () => {
    expect(pairs(edgeProfile(profile('stepped'), 1.5))).toEqual([
      [0, 0],
      [0, 1.125],
      [-0.375, 1.125],
      [-0.375, 1.5],
    ]);
  });

  test('a bullnose of 1-1/2 in starts and ends 3/4 in back and is widest at half height', () => {
    const points = edgeProfile(profile('bullnose'), 1.5);
    expect(points[0]!.outIn).toBeCloseTo(-0.75, 9);
    expect(points.at(-1)!.outIn).toBeCloseTo(-0.75, 9);
    expect(points.find(({ upIn }) => Math.abs(upIn - 0.75) < 1e-9)!.outIn).toBeCloseTo(0, 9);
  });

  test('chords of a 1 in round-over stay within the tolerance asked for', () => {
    const farthestIn = (toleranceIn: number) => {
      const arc = edgeProfile(profile('round-over', 1), 2, toleranceIn).filter(({ upIn }) => upIn >= 1);
      const middles = arc.slice(1).map((q, k) => ({
        outIn: (q.outIn + arc[k]!.outIn) / 2,
        upIn: (q.upIn + arc[k]!.upIn) / 2,
      }));
      return Math.max(...middles.map(({ outIn, upIn }) => 1 - Math.hypot(outIn + 1, upIn - 1)));
    };
    expect(farthestIn(1 / 64)).toBeLessThanOrEqual(1 / 64);
    expect(farthestIn(1 / 1024)).toBeLessThanOrEqual(1 / 1024);
    expect(farthestIn(1 / 64)).toBeGreaterThan(1 / 1024);
  });

  test('an own profile runs plumb to soffit and top', () => {
    expect(pairs(edgeProfile(own([0, 0.5], [-0.5, 1]), 1.5))).toEqual([
      [0, 0],
      [0, 0.5],
      [-0.5, 1],
      [-0.5, 1.5],
    ]);
  });

  test('an own profile that sticks out 1/4 in slides back to the face, and one too tall is cut at the top', () => {
    expect(pairs(edgeProfile(own([0, 0], [0.25, 1], [0, 3]), 1.5))).toEqual([
      [-0.25, 0],
      [0, 1],
      [-0.25, 1.5],
    ]);
  });

  test('a point of an own profile below the one before it is raised to it', () => {
    const points = edgeProfile(own([0, 0], [0, 1], [-0.5, 0.75], [-0.5, 1.5]), 1.5);
    expect(pairs(points)).toEqual([
      [0, 0],
      [0, 1],
      [-0.5, 1],
      [-0.5, 1.5],
    ]);
  });

  test('an own profile without points is square', () => {
    expect(pairs(edgeProfile(own(), 1.5))).toEqual([
      [0, 0],
      [0, 1.5],
    ]);
  });

  test('a slab without thickness is refused', () => {
    expect(() => edgeProfile(profile('square'), 0)).toThrow('not positive');
  });
});

describe('section area that a profile takes off, by areas of circles and squares', () => {
  const t = 2;
  test.each([
    ['square', 0],
    ['eased', spandrelIn2(EASED_RADIUS_IN)],
    ['chamfer', CHAMFER_LEG_IN ** 2 / 2],
    ['round-over', spandrelIn2(ROUND_OVER_RADIUS_IN)],
    ['bullnose', 2 * spandrelIn2(t / 2)],
    ['half-bullnose', spandrelIn2(HALF_BULLNOSE_MOST_IN)],
    ['cove', quarterIn2(COVE_RADIUS_IN)],
    // Round and hollow halves of an S curve make up for each other.
    ['ogee', OGEE_SIZE_IN ** 2 / 2],
    ['stepped', STEP_SIZE_IN ** 2],
  ] as const)('%s takes %f in2 at its own size', (kind, areaIn2) => {
    const lostIn2 = profileAreaLostIn2(profile(kind), t);
    expect(Math.abs(lostIn2 - areaIn2)).toBeLessThanOrEqual(2e-3 * areaIn2);
  });
});
