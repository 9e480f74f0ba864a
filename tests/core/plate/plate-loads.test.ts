import { describe, expect, test } from 'vitest';
import { addPatchLoad, addPointLoad, addPressure } from '../../../src-core/plate/plate-loads';
import { evenLines, gridMesh, meshLocator, shakenMesh } from '../../support/structured-mesh';

const mesh = shakenMesh(gridMesh(evenLines(0, 20, 20), evenLines(0, 10, 10)), 0.25);
const locate = meshLocator(mesh);

/** Total force and where it acts. */
function resultant(loads: Float64Array): { lbf: number; xIn: number; yIn: number } {
  let lbf = 0;
  let momentX = 0;
  let momentY = 0;
  for (let i = 0; i < mesh.xIn.length; i++) {
    const load = loads[3 * i] ?? 0;
    lbf += load;
    momentX += load * (mesh.xIn[i] ?? 0);
    momentY += load * (mesh.yIn[i] ?? 0);
  }
  return { lbf, xIn: momentX / lbf, yIn: momentY / lbf };
}

describe('loads on the nodes', () => {
  test('a pressure of 0.25 psi on 20 x 10 in is 50 lbf in the middle', () => {
    const loads = new Float64Array(3 * mesh.xIn.length);
    addPressure(mesh, 0.25, loads);
    const { lbf, xIn, yIn } = resultant(loads);
    expect(lbf).toBeCloseTo(50, 9);
    expect(xIn).toBeCloseTo(10, 9);
    expect(yIn).toBeCloseTo(5, 9);
  });

  test('a point load keeps its place between the nodes', () => {
    const loads = new Float64Array(3 * mesh.xIn.length);
    expect(addPointLoad(mesh, locate, { xIn: 7.31, yIn: 2.77, loadLbf: 200 }, loads)).toBe(200);
    const { lbf, xIn, yIn } = resultant(loads);
    expect(lbf).toBeCloseTo(200, 9);
    expect(xIn).toBeCloseTo(7.31, 9);
    expect(yIn).toBeCloseTo(2.77, 9);
  });

  test('a 4 x 2 in patch turned by 30 degrees keeps its load and its middle', () => {
    const loads = new Float64Array(3 * mesh.xIn.length);
    const patch = { xIn: 8, yIn: 5, lengthIn: 4, widthIn: 2, angleRad: Math.PI / 6, loadLbf: 250 };
    expect(addPatchLoad(mesh, locate, patch, loads)).toBeCloseTo(250, 9);
    const { lbf, xIn, yIn } = resultant(loads);
    expect(lbf).toBeCloseTo(250, 9);
    expect(xIn).toBeCloseTo(8, 9);
    expect(yIn).toBeCloseTo(5, 9);
    // The long way runs up to the right: nodes with equal signs of their offsets carry more than those with unequal ones.
    let lean = 0;
    for (let i = 0; i < mesh.xIn.length; i++) {
      lean += (loads[3 * i] ?? 0) * ((mesh.xIn[i] ?? 0) - 8) * ((mesh.yIn[i] ?? 0) - 5);
    }
    // (length^2 - width^2) / 12 cos 30 sin 30 = 0.433 in2 for each lbf.
    expect(lean / 250).toBeGreaterThan(0.35);
    expect(lean / 250).toBeLessThan(0.5);
  });

  test('a patch half over the edge lands half its load, a point off the slab none', () => {
    const loads = new Float64Array(3 * mesh.xIn.length);
    const patch = { xIn: 10, yIn: 0, lengthIn: 4, widthIn: 4, angleRad: 0, loadLbf: 100 };
    expect(addPatchLoad(mesh, locate, patch, loads)).toBeCloseTo(50, 9);
    expect(addPointLoad(mesh, locate, { xIn: 21, yIn: 5, loadLbf: 100 }, loads)).toBe(0);
    expect(resultant(loads).lbf).toBeCloseTo(50, 9);
  });
});
