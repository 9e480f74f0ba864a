import { describe, expect, test } from 'vitest';
import { placeSteel, standoffsUnder } from '../../../src-core/steel-placing';
import type { PieceDraft } from './cases';
import {
  BARS,
  box,
  caseOf,
  corners,
  gridIn,
  isIn,
  L_SHAPE,
  LIGHT_MESH,
  placed,
  regionOf,
  sink,
} from './cases';

const roundTop = Array.from({ length: 24 }, (_, k) => {
  const angleRad = (2 * Math.PI * k) / 24;
  return { xIn: 24 * Math.cos(angleRad), yIn: 24 * Math.sin(angleRad), radiusIn: 0 };
});

const SHAPES: Readonly<Record<string, { shape: ReturnType<typeof corners>; more?: Partial<PieceDraft> }>> = {
  'a rectangle': { shape: box(96, 25.5) },
  'an L with a rounded inside corner': {
    shape: corners([0, -60], [25.5, -60], [25.5, 0, 3], [121.5, 0], [121.5, 25.5], [0, 25.5, 4]),
  },
  'a rectangle round a sink': { shape: box(96, 25.5), more: { cutouts: [sink(48, 12.5, 30, 17, 2)] } },
  'a round top': { shape: roundTop },
  'a narrow ledge': { shape: box(120, 5) },
  'a U': {
    shape: corners([0, 0], [120, 0], [120, 60], [96, 60], [96, 25], [24, 25], [24, 60], [0, 60]),
  },
};

describe('standoffs 10 in apart', () => {
  test.each(Object.keys(SHAPES))(
    'under %s hold up every point, stand on the form and are not too many',
    (name) => {
      const { shape, more } = SHAPES[name]!;
      const job = caseOf(shape, more, { forms: { standoffSpacingIn: 10 } });
      const piece = job.pieces[0]!;
      const region = regionOf(piece);
      const places = placed(job).standoffs;
      expect(standoffsUnder(piece, 10)).toEqual(places);
      for (const point of [...gridIn(region, 0.5), ...region.outer, ...region.holes.flat()]) {
        const nearestIn = Math.min(
          ...places.map(({ at }) => Math.hypot(at.xIn - point.xIn, at.yIn - point.yIn)),
        );
        expect(nearestIn).toBeLessThanOrEqual(10);
      }
      for (const { at } of places) expect(isIn(region, at.xIn, at.yIn)).toBe(true);
      const loops = [region.outer, ...region.holes];
      const around = loops.map((loop) =>
        loop.reduce((sum, p, k) => {
          const q = loop[(k + 1) % loop.length]!;
          return sum + Math.hypot(q.xIn - p.xIn, q.yIn - p.yIn);
        }, 0),
      );
      const shoelace = loops.map((loop) =>
        Math.abs(
          loop.reduce((sum, p, k) => {
            const q = loop[(k + 1) % loop.length]!;
            return sum + (p.xIn * q.yIn - q.xIn * p.yIn) / 2;
          }, 0),
        ),
      );
      const areaIn2 = shoelace[0]! - shoelace.slice(1).reduce((sum, hole) => sum + hole, 0);
      // the outline alone is the stricter of the two perimeters
      expect(places.length).toBeLessThanOrEqual((1.1 * areaIn2) / (0.866 * 100) + around[0]! / 10);
    },
  );
});

describe('what stands on standoffs', () => {
  test('mesh 1 in below the top of a 2 in slab stands on 0.92 in', () => {
    const { standoffSets } = placed(caseOf(box(60, 25)));
    expect(standoffSets).toHaveLength(1);
    expect(standoffSets[0]!.heightIn).toBeCloseTo(0.92, 12);
  });

  test('a chair under mesh 3/4 in below the top of a 1-1/2 in slab is 0.67 in high', () => {
    const { standoffs } = placed(
      caseOf(box(20, 20), { thicknessIn: 1.5, reinforcement: [{ ...LIGHT_MESH, depthIn: 0.75 }] }),
    );
    expect(standoffs.length).toBeGreaterThan(0);
    for (const { heightIn } of standoffs) expect(heightIn).toBeCloseTo(0.67, 12);
  });

  test('bars laid on bars that cross them need no standoffs of their own', () => {
    const along = { ...BARS, id: 'along', depthIn: 1.0625 };
    const across = { ...BARS, id: 'across', angleDeg: 90, depthIn: 0.6875 };
    const { standoffSets, cautions } = placed(caseOf(box(92, 27), { reinforcement: [along, across] }));
    expect(standoffSets.map(({ layerId }) => layerId)).toEqual(['along']);
    expect(standoffSets[0]!.heightIn).toBeCloseTo(0.75, 12);
    expect(cautions.join(' ')).not.toContain('same height');
  });

  test('bars that run the same way as those below them, or high over them, stand on their own', () => {
    const low = { ...BARS, id: 'low', depthIn: 2.25 };
    const same = { ...BARS, id: 'same', depthIn: 1.875 };
    const high = { ...BARS, id: 'high', angleDeg: 90, depthIn: 0.75 };
    const { standoffSets } = placed(
      caseOf(box(92, 27), { thicknessIn: 3, reinforcement: [low, same, high] }),
    );
    expect(standoffSets.map(({ layerId }) => layerId)).toEqual(['low', 'same', 'high']);
  });

  test('bars in a field of their own have standoffs there only', () => {
    const field = [
      { xIn: 0, yIn: 0 },
      { xIn: 30, yIn: 0 },
      { xIn: 30, yIn: 27 },
      { xIn: 0, yIn: 27 },
    ];
    const top = { ...BARS, id: 'top', depthIn: 0.75, corners: field };
    const job = caseOf(box(92, 27), { thicknessIn: 3, reinforcement: [{ ...LIGHT_MESH, depthIn: 2 }, top] });
    const { standoffs: all } = placed(job);
    const own = all.filter(({ layerId }) => layerId === 'top');
    expect(own.length).toBeGreaterThan(5);
    for (const { at } of own) expect(at.xIn).toBeLessThanOrEqual(30);
    expect(
      Math.max(...all.filter(({ layerId }) => layerId === 'mesh').map(({ at }) => at.xIn)),
    ).toBeGreaterThan(80);
  });

  test('layers that run through each other are told apart', () => {
    const across = { ...BARS, id: 'across', angleDeg: 90 };
    expect(placed(caseOf(box(92, 27), { reinforcement: [BARS, across] })).cautions.join(' ')).toContain(
      '"bars" and "across" lie at the same height',
    );
  });

  test('a slab without steel has none, and one that cannot be built gives its problems', () => {
    expect(placed(caseOf(box(60, 25), { reinforcement: [] })).standoffs).toEqual([]);
    expect(standoffsUnder({ ...caseOf(box(60, 25)).pieces[0]!, reinforcement: [] }, null)).toEqual([]);
    const job = caseOf(L_SHAPE);
    const piece = { ...job.pieces[0]!, corners: corners([0, 0], [10, 10], [10, 0], [0, 10]) };
    const result = placeSteel(job, piece);
    expect(result.ok).toBe(false);
    expect(!result.ok && result.problems[0]!.code).toBe('outline-crossing');
  });
});
