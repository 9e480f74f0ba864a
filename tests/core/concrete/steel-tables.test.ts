import { describe, expect, test } from 'vitest';
import { BARS, LIGHT_MESH_YIELD_PSI, MESHES, WIRES } from '../../../src-core/concrete';
import { expectWithin } from './within';

const bar = (id: string) => BARS.find((each) => each.id === id);
const mesh = (id: string) => MESHES.find((each) => each.id === id);

describe('steel tables', () => {
  // ASTM A615 Table 1.
  test('#3, #4, #5 and #6 have .11, .20, .31 and .44 in2 and .376, .668, 1.043 and 1.502 lb/ft', () => {
    expect(['#3', '#4', '#5', '#6'].map((id) => bar(id)?.areaIn2)).toEqual([0.11, 0.2, 0.31, 0.44]);
    expect(['#3', '#4', '#5', '#6'].map((id) => bar(id)?.weightLbPerFt)).toEqual([
      0.376, 0.668, 1.043, 1.502,
    ]);
  });

  // Published nominal areas and weights: EN 10080 6/8/10/12 mm: 28.3/50.3/78.5/113 mm2, .222/.395/.617/.888 kg/m.
  test('6, 8, 10 and 12 mm bars have the areas and weights of their nominal sizes', () => {
    const nominal = [
      ['6 mm', 28.3, 0.222],
      ['8 mm', 50.3, 0.395],
      ['10 mm', 78.5, 0.617],
      ['12 mm', 113.1, 0.888],
    ] as const;
    for (const [id, areaMm2, kgPerM] of nominal) {
      expectWithin((bar(id)?.areaIn2 ?? 0) * 645.16, areaMm2, 2e-3);
      expectWithin(((bar(id)?.weightLbPerFt ?? 0) * 0.45359237) / 0.3048, kgPerM, 2e-3);
    }
  });

  // Nominal areas of inch bars are rounded: .20 in2 of #4 is 1.9 % over its circle.
  test('every bar and wire has the area of its diameter, every bar weighs 490 lb/ft3', () => {
    for (const each of [...BARS, ...WIRES]) {
      expectWithin(each.areaIn2, (Math.PI / 4) * each.diameterIn ** 2, 0.02);
    }
    for (const each of BARS)
      expectWithin(each.weightLbPerFt, (Math.PI / 4) * (each.diameterIn ** 2 / 144) * 490, 2e-3);
  });

  // ASTM A1064: the number is the area in hundredths of a square inch.
  test('the number of a wire is its area in hundredths of a square inch', () => {
    for (const wire of WIRES) expectWithin(wire.areaIn2 * 100, Number(wire.id.slice(1)), 1e-12);
  });

  test('every mesh has the steel of its wire and spacing', () => {
    for (const each of MESHES) {
      const wireArea = (Math.PI / 4) * each.wireDiameterIn ** 2;
      expectWithin(each.areaIn2PerFt, (wireArea * 12) / each.spacingIn, 2e-3);
    }
  });

  // ASTM A1064 styles; light mesh by steel wire gauge.
  test('common meshes have .028, .063, .058, .120 in2 a foot, light mesh .0184 and .0302', () => {
    const ids = ['6x6-W1.4', '4x4-W2.1', '6x6-W2.9', '4x4-D4'];
    expect(ids.map((id) => mesh(id)?.areaIn2PerFt)).toEqual([0.028, 0.063, 0.058, 0.12]);
    expectWithin(mesh('2x2-16ga')?.areaIn2PerFt ?? 0, 0.0184, 2e-3);
    expectWithin(mesh('2x2-14ga')?.areaIn2PerFt ?? 0, 0.0302, 2e-3);
  });

  test('light mesh is no code reinforcement and counts 40 ksi', () => {
    const light = MESHES.filter((each) => !each.isCodeReinforcement);
    expect(light.map((each) => each.id)).toEqual(['2x2-16ga', '2x2-14ga']);
    for (const each of light) expect(each.yieldPsi).toBe(LIGHT_MESH_YIELD_PSI);
  });

  test('no id is given twice', () => {
    for (const table of [BARS, WIRES, MESHES]) {
      expect(new Set(table.map((each) => each.id)).size).toBe(table.length);
    }
  });
});
