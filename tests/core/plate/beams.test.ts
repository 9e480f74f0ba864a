import { describe, expect, test } from 'vitest';
import { addPressure } from '../../../src-core/plate/plate-loads';
import { solvePlate } from '../../../src-core/plate/plate-solve';
import {
  concreteBending,
  percentOff,
  type SolvedCase,
  solveCase,
  unitBending,
} from '../../support/plate-case';
import { evenLines, gridMesh, nearestNode } from '../../support/structured-mesh';

// One-way strips with nu 0 against the usual table of beam formulae (any beam table). Strips 2 wide, D = EI per inch = 1.

/** A strip of the given length, held at its left and right end, under unit pressure or unit load per inch of one line. */
function strip(length: number, left: string, right: string, lineLoadAt: number | null = null): SolvedCase {
  const mesh = gridMesh(evenLines(0, length, 96), evenLines(0, 2, 8));
  const loads = new Float64Array(3 * mesh.xIn.length);
  if (lineLoadAt === null) addPressure(mesh, 1, loads);
  else {
    for (const y of evenLines(0, 2, 8)) {
      loads[3 * nearestNode(mesh, lineLoadAt, y)] = y === 0 || y === 2 ? 0.125 : 0.25;
    }
  }
  const hold = (x: number): string => (x === 0 ? left : x === length ? right : '');
  return solveCase(mesh, unitBending(0), hold, loads);
}

function deflectionAt({ mesh, u }: SolvedCase, x: number): number {
  return u[3 * nearestNode(mesh, x, 1)] ?? Number.NaN;
}

function momentAt({ mesh, moments }: SolvedCase, x: number): number {
  return moments.mx[nearestNode(mesh, x, 1)] ?? Number.NaN;
}

const L = 24;

describe('a strip that bends one way', () => {
  test('on two supports sinks 5 w L^4/384 EI and sags w L^2/8', () => {
    const beam = strip(L, 'w', 'w');
    expect(percentOff(deflectionAt(beam, L / 2), (5 * L ** 4) / 384)).toBeLessThan(0.2);
    expect(percentOff(momentAt(beam, L / 2), L ** 2 / 8)).toBeLessThan(0.2);
  });

  test('fixed at one end sinks w L^4/8 EI at its tip and hogs w L^2/2 at its root', () => {
    const beam = strip(L, 'wxy', '');
    expect(percentOff(deflectionAt(beam, L), L ** 4 / 8)).toBeLessThan(0.2);
    expect(percentOff(momentAt(beam, 0), -(L ** 2) / 2)).toBeLessThan(0.2);
  });

  test('fixed at one end with P at its tip sinks P L^3/3 EI and hogs P L', () => {
    const beam = strip(L, 'wxy', '', L);
    expect(percentOff(deflectionAt(beam, L), L ** 3 / 3)).toBeLessThan(0.1);
    expect(percentOff(momentAt(beam, 0), -L)).toBeLessThan(0.1);
  });

  test('propped at one end and fixed at the other sinks 0.005416 w L^4/EI, hogs w L^2/8, sags 9 w L^2/128 (basis 1.22)', () => {
    const beam = strip(L, 'wxy', 'w');
    const deepest = Math.max(...evenLines(0, L, 96).map((x) => deflectionAt(beam, x)));
    const sag = Math.max(...evenLines(0, L, 96).map((x) => momentAt(beam, x)));
    expect(percentOff(deepest / L ** 4, 0.005416)).toBeLessThan(0.2);
    expect(percentOff(momentAt(beam, 0), -(L ** 2) / 8)).toBeLessThan(0.3);
    expect(percentOff(sag, (9 * L ** 2) / 128)).toBeLessThan(0.3);
  });

  test('fixed at both ends sinks w L^4/384 EI and hogs w L^2/12', () => {
    const beam = strip(L, 'wxy', 'wxy');
    expect(percentOff(deflectionAt(beam, L / 2), L ** 4 / 384)).toBeLessThan(0.2);
    expect(percentOff(momentAt(beam, 0), -(L ** 2) / 12)).toBeLessThan(0.3);
  });

  test('on two supports with P in its middle sinks P L^3/48 EI and sags P L/4', () => {
    const beam = strip(L, 'w', 'w', L / 2);
    expect(percentOff(deflectionAt(beam, L / 2), L ** 3 / 48)).toBeLessThan(0.1);
    expect(percentOff(momentAt(beam, L / 2), L / 4)).toBeLessThan(0.3);
  });
});

describe('a 2 in slab of 4000 psi concrete at 145 pcf', () => {
  const psi = 24.167 / 144;

  test('1 in wide and 48 in long on two supports sinks 0.00483 in and sags 48.3 lb-in/in (basis 1.20)', () => {
    const mesh = gridMesh(evenLines(0, 48, 48), evenLines(0, 1, 1));
    const loads = new Float64Array(3 * mesh.xIn.length);
    addPressure(mesh, psi, loads);
    const beam = solveCase(mesh, concreteBending(2, 0), (x) => (x === 0 || x === 48 ? 'w' : ''), loads);
    expect(percentOff(deflectionAt(beam, 24), 0.00483)).toBeLessThan(0.5);
    expect(percentOff(momentAt(beam, 24), 48.3)).toBeLessThan(0.5);
  });

  test('10 in past a clamped root sinks 8.73e-5 in at its tip and hogs 8.39 lb-in/in (basis 1.21)', () => {
    const mesh = gridMesh(evenLines(0, 10, 20), evenLines(0, 6, 12));
    const loads = new Float64Array(3 * mesh.xIn.length);
    addPressure(mesh, psi, loads);
    const slab = solveCase(mesh, concreteBending(2, 0), (x) => (x === 0 ? 'wxy' : ''), loads);
    const root = nearestNode(mesh, 0, 3);
    expect(percentOff(slab.u[3 * nearestNode(mesh, 10, 3)] ?? 0, 8.73e-5)).toBeLessThan(0.5);
    expect(percentOff(slab.moments.mx[root] ?? 0, -8.39)).toBeLessThan(0.5);
  });

  test('on a line of springs sinks by its weight over their stiffness: 0.5 in for 24 lbf on 48 lbf/in', () => {
    const mesh = gridMesh(evenLines(0, 12, 12), evenLines(0, 2, 2));
    const loads = new Float64Array(3 * mesh.xIn.length);
    addPressure(mesh, 1, loads);
    const springs = Array.from(mesh.xIn.keys(), (node) => ({ node, stiffnessLbfPerIn: 0 }));
    // Each node's own share of 48 lbf/in, so that the slab sinks level.
    loads.forEach((load, freedom) => {
      const spring = springs[Math.floor(freedom / 3)];
      if (freedom % 3 === 0 && spring) spring.stiffnessLbfPerIn = 2 * load;
    });
    const fixed = new Uint8Array(loads.length);
    const solution = solvePlate({ mesh, bending: concreteBending(2, 0.2), fixed, springs, loads });
    if (!solution.ok) throw new Error(`loose at ${solution.row}`);
    for (let i = 0; i < mesh.xIn.length; i++) expect(solution.u[3 * i]).toBeCloseTo(0.5, 7);
  });

  test('cracked across its span to 2 % of its stiffness sinks 50 times as far under the same moment', () => {
    const mesh = gridMesh(evenLines(0, 48, 24), evenLines(0, 4, 2));
    const loads = new Float64Array(3 * mesh.xIn.length);
    addPressure(mesh, psi, loads);
    const hold = (x: number): string => (x === 0 || x === 48 ? 'w' : '');
    const whole = unitBending(0);
    const cracked = Float64Array.from(whole);
    cracked[0] = 0.02;
    const perTriangle = Float64Array.from(
      { length: 3 * mesh.triangles.length },
      (_, i) => cracked[i % 9] ?? 0,
    );
    const soft = solveCase(mesh, perTriangle, hold, loads);
    const stiff = solveCase(mesh, whole, hold, loads);
    const ratio = deflectionAt(soft, 24) / deflectionAt(stiff, 24);
    expect(percentOff(ratio, 50)).toBeLessThan(0.3);
    // Statics alone sets the moment of a strip on two supports.
    expect(percentOff(momentAt(soft, 24), (psi * 48 ** 2) / 8)).toBeLessThan(0.5);
  });
});
