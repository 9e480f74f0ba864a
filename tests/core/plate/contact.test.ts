import { describe, expect, test } from 'vitest';
import { convexHull, signedDistanceToHullIn } from '../../../src-core/outline';
import type { ContactLinks } from '../../../src-core/plate';
import { prepareContact, resultantOf, solveContact } from '../../../src-core/plate';
import { seededRandom } from '../../support/seeded-random';

/** Links under a rigid plate: no flexibility of its own, so that statics and springs decide. */
function links(
  points: readonly (readonly [number, number])[],
  more: Partial<ContactLinks> = {},
): ContactLinks {
  const n = points.length;
  return {
    xIn: Float64Array.from(points, ([x]) => x),
    yIn: Float64Array.from(points, ([, y]) => y),
    stiffnessLbfPerIn: new Float64Array(n).fill(1000),
    gapIn: new Float64Array(n),
    acts: new Int8Array(n).fill(1),
    ...more,
  };
}

function solveRigid(under: ContactLinks, forces: { xIn: number; yIn: number; lbf: number }[], held = false) {
  const n = under.xIn.length;
  const system = prepareContact(under, new Float64Array(n * n));
  if (system === null) throw new Error('links lie in one line');
  return solveContact(system, new Float64Array(n), resultantOf(system, forces), { held });
}

const SQUARE = [
  [0, 0],
  [10, 0],
  [10, 10],
  [0, 10],
] as const;

describe('contact of a rigid slab on springs (statics)', () => {
  test('a load in the middle of four equal springs shares itself out evenly', () => {
    const { reactionLbf, turnsOver } = solveRigid(links(SQUARE), [{ xIn: 5, yIn: 5, lbf: 100 }]);
    expect(turnsOver).toBe(false);
    for (const r of reactionLbf) expect(r).toBeCloseTo(25, 7);
  });

  test('a load near one corner lifts the opposite one, and statics alone gives the other three: 10, 80 and 10 lb', () => {
    // four springs that could pull would give 25 (1 + 0.8 + 0.8) at the corner and 25 (1 - 1.6) = -15 lb opposite
    const { reactionLbf, bears } = solveRigid(links(SQUARE), [{ xIn: 9, yIn: 1, lbf: 100 }]);
    expect(bears[3]).toBe(0);
    expect(reactionLbf[3]).toBe(0);
    // moments about x and y axes through (0,0): R1*10 + R2*10 = 900, R2*10 = 100
    expect(reactionLbf[2]).toBeCloseTo(10, 8);
    expect(reactionLbf[1]).toBeCloseTo(80, 8);
    expect(reactionLbf[0]).toBeCloseTo(10, 8);
  });

  test('a load beyond all springs turns the slab over, and no number is lost to NaN', () => {
    const { reactionLbf, turnsOver } = solveRigid(links(SQUARE), [{ xIn: 5, yIn: -3, lbf: 100 }]);
    expect(turnsOver).toBe(true);
    expect(reactionLbf.every(Number.isFinite)).toBe(true);
  });

  test('over 2000 random slabs on four to nine supports, one turns over where and only where its load lies outside of their hull', () => {
    const random = seededRandom(12);
    const between = (least: number, most: number) => least + (most - least) * random();
    let over = 0;
    for (let run = 0; run < 2000; run++) {
      const n = 4 + Math.floor(6 * random());
      const places = Array.from({ length: n }, () => ({ xIn: between(0, 48), yIn: between(0, 26) }));
      const at = { xIn: between(-10, 58), yIn: between(-8, 34) };
      const insideIn = signedDistanceToHullIn(at, convexHull(places));
      if (Math.abs(insideIn) < 0.1) continue;
      const under = links(places.map(({ xIn, yIn }) => [xIn, yIn] as const));
      // any give of the slab will do: G times its own transpose, which no load finds negative
      const root = Array.from({ length: n * n }, () => between(-0.02, 0.02));
      const give = Float64Array.from({ length: n * n }, (_, k) => {
        const [i, j] = [Math.floor(k / n), k % n];
        return root.slice(0, n).reduce((sum, _g, c) => sum + root[i * n + c]! * root[j * n + c]!, 0);
      });
      const system = prepareContact(under, give);
      if (system === null) continue;
      const free = Float64Array.from({ length: n }, () => between(0, 0.1));
      const load = resultantOf(system, [{ ...at, lbf: 780 }]);
      expect(solveContact(system, free, load).turnsOver, `run ${run}, ${insideIn} in inside`).toBe(
        insideIn < 0,
      );
      over += insideIn < 0 ? 1 : 0;
    }
    expect(over).toBeGreaterThan(500);
    expect(over).toBeLessThan(1800);
  });

  test('the same load is held when every spring may also pull', () => {
    const { reactionLbf, turnsOver } = solveRigid(links(SQUARE), [{ xIn: 5, yIn: -3, lbf: 100 }], true);
    expect(turnsOver).toBe(false);
    // pairs front and back by moments about the front line: back pair = -100 * 3 / 10
    expect(reactionLbf[2]! + reactionLbf[3]!).toBeCloseTo(-30, 8);
    expect(reactionLbf[0]! + reactionLbf[1]!).toBeCloseTo(130, 8);
  });

  test('a tie at the back holds the slab down with load times overhang over lever', () => {
    const under = links([...SQUARE, [5, 10]], { acts: Int8Array.of(1, 1, 1, 1, -1) });
    const { reactionLbf, turnsOver } = solveRigid(under, [{ xIn: 5, yIn: -3, lbf: 100 }]);
    expect(turnsOver).toBe(false);
    expect(reactionLbf[4]).toBeCloseTo(-30, 8);
    expect(reactionLbf[2]).toBe(0);
  });

  test('a tie stays slack while the slab presses down', () => {
    const under = links([...SQUARE, [5, 5]], { acts: Int8Array.of(1, 1, 1, 1, -1) });
    const { reactionLbf } = solveRigid(under, [{ xIn: 5, yIn: 5, lbf: 100 }]);
    expect(reactionLbf[4]).toBe(0);
  });

  test('a support with a gap of 1/64 in takes nothing until the slab has come down by 1/64 in', () => {
    // three springs settle 100/3/1000 = 0.0333 in; the middle one starts 1/64 in lower: 3 k w + k (w - g) = 100
    const under = links(
      [
        [0, 0],
        [10, 0],
        [5, 8],
        [5, 8 / 3],
      ],
      { gapIn: Float64Array.of(0, 0, 0, 1 / 64) },
    );
    const { reactionLbf } = solveRigid(under, [{ xIn: 5, yIn: 8 / 3, lbf: 100 }]);
    const w = (100 + 1000 / 64) / 4000;
    expect(reactionLbf[3]).toBeCloseTo(1000 * (w - 1 / 64), 8);
    const light = solveRigid(under, [{ xIn: 5, yIn: 8 / 3, lbf: 40 }]);
    expect(light.reactionLbf[3]).toBe(0);
  });

  test('a foot raised by 0.01 in under a stiff slab takes more than its share', () => {
    const under = links(SQUARE, { gapIn: Float64Array.of(-0.01, 0, 0, 0) });
    const { reactionLbf } = solveRigid(under, [{ xIn: 5, yIn: 5, lbf: 100 }]);
    expect(reactionLbf[0]).toBeCloseTo(25 + 1000 * 0.01 * 0.25, 8);
    expect(reactionLbf.reduce((sum, r) => sum + r, 0)).toBeCloseTo(100, 7);
  });

  test('supports in one line hold nothing level', () => {
    const under = links([
      [0, 0],
      [5, 5],
      [10, 10],
    ]);
    expect(prepareContact(under, new Float64Array(9))).toBeNull();
  });
});

describe('which links bear does not depend on where the search starts', () => {
  test('every one of 64 starting sets of six springs ends at the same reactions', () => {
    const points = [
      [0, 0],
      [12, 0],
      [24, 0],
      [0, 8],
      [12, 8],
      [24, 8],
    ] as const;
    const under = links(points);
    const system = prepareContact(under, new Float64Array(36))!;
    const load = resultantOf(system, [{ xIn: 22, yIn: 0.5, lbf: 120 }]);
    const expected = solveContact(system, new Float64Array(6), load);
    expect(expected.bears).toContain(0);
    for (let set = 0; set < 64; set++) {
      const start = Uint8Array.from(points, (_, i) => (set >> i) & 1);
      const found = solveContact(system, new Float64Array(6), load, { start });
      expect(found.turnsOver).toBe(false);
      found.reactionLbf.forEach((r, i) => {
        expect(r).toBeCloseTo(expected.reactionLbf[i]!, 7);
      });
    }
  });
});
