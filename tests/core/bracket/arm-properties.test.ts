import { describe, expect, test } from 'vitest';
import { armAllowableMoment, armProperties, hasThinWall } from '../../../src-core/bracket';
import type { ArmSection } from '../../../src-core/job';
import { ANGLE, apart, BRACE, FLAT, TEE, TUBE } from './samples';

function tube(sideIn: number, wallIn: number): ArmSection {
  return { kind: 'tube', widthIn: sideIn, depthIn: sideIn, wallIn, yieldPsi: 36_000 };
}

describe('section values of arms', () => {
  // basis 7.1
  test('a flat bar 2 x 1/2 laid flat has I .02083 in4 and Z .125 in3', () => {
    const bar = armProperties(FLAT);
    expect(apart(bar.inertiaIn4, 0.02083)).toBeLessThan(3e-3);
    expect(apart(bar.plasticModulusIn3, 0.125)).toBeLessThan(3e-3);
    expect(bar.sidePlateIn).toBe(0.5);
  });

  // basis 7.2
  test('a 1-1/2 tube with .12 walls has I .2118 in4 and S .2824 in3', () => {
    const section = armProperties(TUBE);
    expect(apart(section.inertiaIn4, 0.2118)).toBeLessThan(3e-3);
    expect(apart(section.tensionModulusIn3, 0.2824)).toBeLessThan(3e-3);
    expect(section.compressionModulusIn3).toBe(section.tensionModulusIn3);
  });

  // AISC Steel Construction Manual Table 1-7, L2x2x1/4, from memory: A .944, I .346, S .244, y .586, 3.19 lb/ft.
  test('an angle 2 x 2 x 1/4 is within 2 % of the rolled table', () => {
    const section = armProperties(ANGLE);
    expect(apart(section.areaIn2, 0.944)).toBeLessThan(0.02);
    expect(apart(section.inertiaIn4, 0.346)).toBeLessThan(0.02);
    expect(apart(section.compressionModulusIn3, 0.244)).toBeLessThan(0.02);
    expect(apart(section.centroidIn, 0.586)).toBeLessThan(0.02);
    expect(apart(section.weightLbPerFt, 3.19)).toBeLessThan(0.02);
  });

  // AISC Steel Construction Manual Table 1-7, L3x2x1/4, long leg down, from memory: A 1.20, I 1.09, S .541, y .980.
  test('an angle 3 x 2 x 1/4 with its long leg down is within 2 % of the rolled table', () => {
    const section = armProperties({ ...ANGLE, kind: 'angle', legWidthIn: 2, legDepthIn: 3 } as ArmSection);
    expect(apart(section.areaIn2, 1.2)).toBeLessThan(0.02);
    expect(apart(section.inertiaIn4, 1.09)).toBeLessThan(0.02);
    expect(apart(section.compressionModulusIn3, 0.541)).toBeLessThan(0.02);
    expect(apart(section.centroidIn, 0.98)).toBeLessThan(0.02);
  });

  // AISC Steel Construction Manual Table 1-12, from memory: HSS2x2x1/8 (t .116) I .486, S .486, Z .584;
  // HSS2x2x1/4 (t .233) I .747, S .747, Z .964. The rolled tubes have corner radii of twice the wall.
  test('square corners overstate a rolled tube by up to 8 % in thin walls and 18 % in thick ones', () => {
    const thin = armProperties(tube(2, 0.116));
    expect(thin.inertiaIn4 / 0.486).toBeGreaterThan(1);
    expect(thin.inertiaIn4 / 0.486).toBeLessThan(1.08);
    const thick = armProperties(tube(2, 0.233));
    expect(thick.inertiaIn4 / 0.747).toBeGreaterThan(1);
    expect(thick.inertiaIn4 / 0.747).toBeLessThan(1.18);
  });

  // Same tables: the moment that the arm is credited stays under Fy Z of the rolled tube, radii and all.
  test('the moment credited to a tube stays under that of the rolled tube', () => {
    expect(armAllowableMoment(tube(2, 0.116), 10)?.allowableLbfIn).toBeLessThan((36_000 * 0.584) / 1.67);
    expect(armAllowableMoment(tube(2, 0.233), 10)?.allowableLbfIn).toBeLessThan((36_000 * 0.964) / 1.67);
  });

  // AISC 360-22 F10.2: an equal-leg angle free to move sideways counts 0.80 of its geometric section modulus. By hand:
  // a thin equal angle has Ixy = -0.6 Ix, so the free second moment is 0.64 of it. Square toes make the modulus 4 % less.
  test('an equal angle free to move sideways counts about 0.80 of its modulus and 0.64 of its stiffness', () => {
    const section = armProperties(ANGLE);
    expect(apart(section.freeModulusIn3 / section.compressionModulusIn3, 0.8)).toBeLessThan(0.05);
    expect(apart(section.freeInertiaIn4 / section.inertiaIn4, 0.64)).toBeLessThan(0.04);
  });

  test('a tee has the section of its angle and is held sideways by its own symmetry', () => {
    const tee = armProperties(TEE);
    expect(tee.inertiaIn4).toBe(armProperties(ANGLE).inertiaIn4);
    expect(tee.freeInertiaIn4).toBe(tee.inertiaIn4);
  });

  // By hand: 2 x 1/4 flange over a 1-3/4 x 1/4 stem; half of .9375 in2 lies in the top .2344 in; first moments about it.
  test('the plastic modulus of a tee 2 x 2 x 1/4 is the first moment of its halves, .445 in3', () => {
    const halvesIn = 0.234375;
    const flange = (2 * halvesIn ** 2) / 2 + (2 * (0.25 - halvesIn) ** 2) / 2;
    const stem = 1.75 * 0.25 * (0.25 + 0.875 - halvesIn);
    expect(armProperties(TEE).plasticModulusIn3).toBeCloseTo(flange + stem, 9);
    // AISC Manual Table 1-7, L2x2x1/4 Z .440, from memory.
    expect(apart(armProperties(TEE).plasticModulusIn3, 0.44)).toBeLessThan(0.02);
  });

  test('a tube whose walls meet inside is a solid bar, not a negative one', () => {
    expect(armProperties(tube(1, 0.6)).areaIn2).toBe(1);
  });

  // AISC Manual Table 1-21 (square and rectangular bars): 3.40 lb/ft for a 2 x 1/2 bar, from memory.
  test('a flat bar 2 x 1/2 weighs 3.40 lb a foot', () => {
    expect(armProperties(FLAT).weightLbPerFt).toBeCloseTo(3.4, 2);
  });

  // By hand: 62.4 x .42 / (1 + .009 x .42 x 19) x 1.19 = 29.1 lb/ft3; 5.25 in2 -> 1.06 lb/ft.
  test('a spruce 2x4 of a brace weighs 1.06 lb a foot', () => {
    expect(armProperties(BRACE).weightLbPerFt).toBeCloseTo(1.06, 2);
    expect(armProperties(BRACE).yieldPsi).toBeNull();
  });
});

describe('moments that arms may carry', () => {
  // basis 7.1: 36 000 x .125 / 1.67 = 2695 lb-in, 269 lb at 10 in.
  test('a flat bar 2 x 1/2 laid flat may carry 2695 lb-in', () => {
    expect(apart(armAllowableMoment(FLAT, 10)?.allowableLbfIn ?? 0, 2695)).toBeLessThan(3e-3);
  });

  // By hand, AISC 360-22 F11.2(b): bar 1/4 x 3 on edge, 12 in free: r = 12 x 3 / .0625 = 576; E/Fy 805.6;
  // .08 E/Fy 64.4 < 576 < 1.9 E/Fy 1531; S .375; Mn = (1.52 - .274 x 576/805.6) x 36 000 x .375 = 17 875; /1.67 = 10 704.
  test('a bar 1/4 x 3 on edge, 12 in long, twists at 10 704 lb-in allowable', () => {
    const bar: ArmSection = { kind: 'flat-bar', widthIn: 0.25, depthIn: 3, yieldPsi: 36_000 };
    expect(apart(armAllowableMoment(bar, 12)?.allowableLbfIn ?? 0, 10_704)).toBeLessThan(1e-3);
  });

  // By hand, F11.2(c): bar 1/8 x 3 on edge, 16 in: r = 3072 > 1531; Mn = 1.9 x 29e6 x .1875 / 3072 = 3363; /1.67 = 2014.
  test('a bar 1/8 x 3 on edge, 16 in long, twists before it yields, at 2014 lb-in allowable', () => {
    const bar: ArmSection = { kind: 'flat-bar', widthIn: 0.125, depthIn: 3, yieldPsi: 36_000 };
    expect(apart(armAllowableMoment(bar, 16)?.allowableLbfIn ?? 0, 2014)).toBeLessThan(1e-3);
  });

  test('the moment of a bar on edge steps by less than 0.2 % where one twisting rule takes over from the next', () => {
    const bar: ArmSection = { kind: 'flat-bar', widthIn: 0.25, depthIn: 3, yieldPsi: 36_000 };
    for (const limit of [0.08, 1.9]) {
      const reachIn = ((limit * 29e6) / 36_000) * (0.25 ** 2 / 3);
      const before = armAllowableMoment(bar, reachIn * 0.9999)?.allowableLbfIn ?? 0;
      const after = armAllowableMoment(bar, reachIn * 1.0001)?.allowableLbfIn ?? 0;
      expect(apart(after, before)).toBeLessThan(2e-3);
    }
  });

  test('a timber brace is a truss and has no moment of its own', () => {
    expect(armAllowableMoment(BRACE, 12)).toBeNull();
  });

  // AISC 360-22 Table B4.1b, Fy 36: .83 sqrt(E/Fy) = 23.6 for legs, 1.40 sqrt(E/Fy) = 39.7 for tube walls.
  test('an angle leg of 23 thicknesses is stout and one of 24 is thin; a tube wall turns thin past 39.7', () => {
    const angle = (ratio: number): ArmSection => ({
      kind: 'angle',
      legWidthIn: ratio * 0.125,
      legDepthIn: 2,
      wallIn: 0.125,
      yieldPsi: 36_000,
    });
    expect(hasThinWall(angle(23))).toBe(false);
    expect(hasThinWall(angle(24))).toBe(true);
    expect(hasThinWall(tube(41.5 * 0.05, 0.05))).toBe(false);
    expect(hasThinWall(tube(42 * 0.05, 0.05))).toBe(true);
  });
});
