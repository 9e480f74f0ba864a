import { describe, expect, test } from 'vitest';
import { concreteColour, concreteRoughness } from '../../../src-renderer/model/concrete-colour';
import type { Grain } from '../../../src-renderer/model/grain';
import { grainPixels, TILE_PX } from '../../../src-renderer/model/grain';

const far = (a: readonly number[], b: readonly number[]) => Math.hypot(...a.map((v, k) => v - b[k]!));

describe('colour of concrete', () => {
  const plain = concreteColour(null, 'smooth');

  test('without pigment it is a grey that leans to warm', () => {
    expect(plain[0]).toBeGreaterThan(plain[2]);
    expect(plain[0] - plain[2]).toBeLessThan(24);
  });

  test('a pigment dosed at nought changes nothing', () => {
    expect(concreteColour({ pigment: 'Terracotta', pigmentRatio: 0 }, 'smooth')).toEqual(plain);
  });

  test('more pigment goes farther from plain grey, from 1 % to 6 %', () => {
    const at = (ratio: number) =>
      far(concreteColour({ pigment: 'Terracotta', pigmentRatio: ratio }, 'smooth'), plain);
    expect(at(0.01)).toBeGreaterThan(10);
    expect(at(0.03)).toBeGreaterThan(at(0.01));
    expect(at(0.06)).toBeGreaterThan(at(0.03));
  });

  test('slate at 3 % is darker than plain, and terracotta redder than green', () => {
    const slate = concreteColour({ pigment: 'Slate grey', pigmentRatio: 0.03 }, 'smooth');
    expect(slate[1]).toBeLessThan(plain[1] - 40);
    const terracotta = concreteColour({ pigment: 'terracotta', pigmentRatio: 0.05 }, 'smooth');
    expect(terracotta[0]).toBeGreaterThan(terracotta[1] + 40);
  });

  test('a pigment with a name that says no colour still shows', () => {
    const own = concreteColour({ pigment: 'Number 7', pigmentRatio: 0.05 }, 'smooth');
    expect(far(own, plain)).toBeGreaterThan(20);
  });

  test('no channel leaves 0 to 255, whatever the finish', () => {
    for (const finish of ['smooth', 'honed', 'exposed'] as const) {
      for (const value of concreteColour({ pigment: 'white', pigmentRatio: 0.2 }, finish)) {
        expect(value).toBeGreaterThanOrEqual(0);
        expect(value).toBeLessThanOrEqual(255);
      }
    }
  });

  test('exposed stone is duller than a honed top, and that than a trowelled one', () => {
    expect(concreteRoughness('exposed')).toBeGreaterThan(concreteRoughness('honed'));
    expect(concreteRoughness('honed')).toBeGreaterThan(concreteRoughness('smooth'));
  });
});

describe('grain', () => {
  const greys = (grain: Grain) => {
    const pixels = grainPixels(grain);
    return Array.from({ length: TILE_PX * TILE_PX }, (_, i) => pixels[i * 4]!);
  };
  const spread = (values: readonly number[]) => {
    const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
    return Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / values.length);
  };

  test('a tile is the same each time', () => {
    expect(Buffer.compare(grainPixels('honed'), grainPixels('honed'))).toBe(0);
  });

  test('exposed stone is coarser than a honed top, and that than a trowelled one', () => {
    expect(spread(greys('exposed'))).toBeGreaterThan(spread(greys('honed')) * 1.5);
    expect(spread(greys('honed'))).toBeGreaterThan(spread(greys('smooth')));
  });

  test('a soft tile meets itself at its ends: the step across the seam is no larger than any within', () => {
    const values = greys('smooth');
    const step = (column: number, next: number) =>
      Math.max(
        ...Array.from({ length: TILE_PX }, (_, row) =>
          Math.abs(values[row * TILE_PX + column]! - values[row * TILE_PX + next]!),
        ),
      );
    const within = Math.max(...Array.from({ length: TILE_PX - 1 }, (_, column) => step(column, column + 1)));
    expect(step(TILE_PX - 1, 0)).toBeLessThanOrEqual(within);
  });

  test('timber changes faster across its grain than along it', () => {
    const values = greys('timber');
    let across = 0;
    let along = 0;
    for (let row = 1; row < TILE_PX; row++) {
      for (let column = 1; column < TILE_PX; column++) {
        const here = values[row * TILE_PX + column]!;
        across += Math.abs(here - values[row * TILE_PX + column - 1]!);
        along += Math.abs(here - values[(row - 1) * TILE_PX + column]!);
      }
    }
    expect(across).toBeGreaterThan(along * 4);
  });
});
