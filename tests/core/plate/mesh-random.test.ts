import fc from 'fast-check';
import { expect, test } from 'vitest';
import { meshRegion } from '../../../src-core/plate/mesh';
import { isInsideRings, type MeshPoint } from '../../../src-core/plate/mesh-region';
import { validateMesh } from '../../support/validate-mesh';

const share = fc.double({ min: 0, max: 1, noNaN: true });

/** A ring of one corner in each of several equal sectors round the origin, so that it cannot cross itself. */
function starRing(leastIn: number, mostIn: number): fc.Arbitrary<MeshPoint[]> {
  return fc.array(fc.tuple(share, share), { minLength: 4, maxLength: 12 }).map((corners) =>
    corners.map(([turn, reach], i) => {
      const angleRad = (2 * Math.PI * (i + 0.8 * turn)) / corners.length;
      const radiusIn = leastIn + reach * (mostIn - leastIn);
      return { xIn: radiusIn * Math.cos(angleRad), yIn: radiusIn * Math.sin(angleRad) };
    }),
  );
}

const anywhere = fc.tuple(share, share).map(([s, t]) => ({ xIn: 80 * s - 40, yIn: 80 * t - 40 }));

/** Places on an edge of the ring or just beside it, where contact points lie. */
function nearRing(ring: readonly MeshPoint[]): fc.Arbitrary<MeshPoint> {
  return fc
    .tuple(fc.nat(ring.length - 1), share, fc.constantFrom(0, 1e-12, -1e-9, 0.01, -0.015, 0.03, 0.2))
    .map(([i, t, asideIn]) => {
      const a = ring[i]!;
      const b = ring[(i + 1) % ring.length]!;
      return { xIn: a.xIn + t * (b.xIn - a.xIn) + asideIn, yIn: a.yIn + t * (b.yIn - a.yIn) - asideIn / 3 };
    });
}

const randomSlab = fc.record({ outer: starRing(16, 40), hole: starRing(0.5, 3) }).chain(({ outer, hole }) => {
  const place = fc.oneof(anywhere, nearRing(outer), nearRing(hole), fc.constantFrom(...outer));
  return fc.record({
    outer: fc.constant(outer),
    holes: fc.constant([hole]),
    fixedPoints: fc.array(place, { maxLength: 12 }),
    segments: fc.array(fc.record({ a: place, b: place }), { maxLength: 6 }),
    sizeIn: fc.constantFrom(1.5, 2, 3),
  });
});

test('any simple slab with a cutout, points and lines anywhere meshes soundly, or is refused in words', () => {
  fc.assert(
    fc.property(randomSlab, (slab) => {
      const result = meshRegion(slab);
      // The edges of an outline of few corners can pass through the cutout; only that may be refused.
      if (!result.ok) return expect(result.problem.code).toBe('cutout-leaves-slab');
      const { mesh, fixedNodes } = result;
      expect(validateMesh(mesh, slab)).toEqual([]);
      for (const [i, point] of slab.fixedPoints.entries()) {
        const node = fixedNodes[i]!;
        const rings = [slab.outer, ...slab.holes];
        if (node < 0) expect(isInsideRings(rings, point.xIn, point.yIn)).toBe(false);
        else
          expect(Math.hypot(mesh.xIn[node]! - point.xIn, mesh.yIn[node]! - point.yIn)).toBeLessThan(0.0201);
      }
    }),
    { numRuns: 300, seed: 20260101 },
  );
});
