import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type FloorPoint,
  floorHeights,
  floorSurface,
  type LegInput,
  legAt,
  legLength,
  shimThickness,
  WEDGE_SHIMS,
} from '../../../src-core/levels';
import { recompute, recomputeTolerance } from '../../support/recompute';

const MM = 1 / 25.4;
const LEG: LegInput = {
  at: { xIn: 0, yIn: 0 },
  footWidthIn: 0,
  footDepthIn: 0,
  footAngleRad: 0,
  soffitIn: 34,
  panelIn: 23 / 32,
  joistIn: 3.5,
  plateIn: 1.5,
  shimIn: 0.25,
  shims: WEDGE_SHIMS,
  cutStepIn: 1 / 16,
  cutLengthIn: null,
  shownIn: 'imperial',
};
const at = (xIn: number, yIn: number, heightIn: number): FloorPoint => ({ xIn, yIn, heightIn });
const onFloor = (heightIn: number, given: Partial<LegInput> = {}) =>
  legAt(floorSurface([at(0, 0, heightIn)]), { ...LEG, ...given });
/** A floor that falls by so much for each inch to the right. */
const sloping = (fall: number) =>
  floorSurface([
    at(-50, -50, 50 * fall),
    at(50, -50, -50 * fall),
    at(50, 50, -50 * fall),
    at(-50, 50, 50 * fall),
  ]);
const codes = (leg: { readonly warnings: readonly { readonly code: string }[] }) =>
  leg.warnings.map(({ code }) => code);

describe('leg lengths of the basis', () => {
  // Arithmetic of the stack; the figures are those of the basis.
  test.each([
    [0, 28.031],
    [-3 / 8, 28.406],
    [-3 / 16, 28.219],
    [-3 / 4, 28.781],
  ])('14.2: with the deck at %d in the leg is %d in', (heightIn, lengthIn) => {
    expect(Math.abs(onFloor(heightIn).lengthIn - lengthIn)).toBeLessThanOrEqual(0.001);
  });

  test('14.2: it is cut to 28 in and the shim grows to .281 in', () => {
    const leg = onFloor(0);
    expect(leg.cutIn).toBe(28);
    expect(Math.abs(leg.shimIn - 0.281)).toBeLessThanOrEqual(0.001);
    expect(leg.words).toBe('28 in, shim 9/32 in');
    expect(codes(leg)).toEqual([]);
  });

  test.each([
    [0, 714],
    [-10, 724],
    [-5, 719],
    [-19, 733],
  ])('14.3: with the deck at %d mm the leg is %d mm', (heightMm, lengthMm) => {
    const leg = onFloor(heightMm * MM, {
      soffitIn: 865 * MM,
      panelIn: 18 * MM,
      joistIn: 89 * MM,
      plateIn: 38 * MM,
      shimIn: 6 * MM,
      cutStepIn: MM,
      shownIn: 'metric',
    });
    expect(leg.lengthIn / MM).toBeCloseTo(lengthMm, 9);
    expect(leg.words).toBe(`${lengthMm} mm, shim 6 mm`);
  });
});

describe('a leg on its floor', () => {
  test('floor, leg, shim, plate, joist and panel always come up to the soffit', () => {
    const height = fc.double({ min: -6, max: 6, noNaN: true });
    fc.assert(
      fc.property(height, fc.double({ min: 0.1, max: 0.6, noNaN: true }), (heightIn, shimIn) => {
        const leg = onFloor(heightIn, { shimIn });
        const stack = leg.floorIn + leg.cutIn + leg.shimIn + LEG.plateIn + LEG.joistIn + LEG.panelIn;
        expect(stack).toBeCloseTo(LEG.soffitIn, 9);
        expect(leg.shimIn).toBeGreaterThanOrEqual(shimIn - 1e-6);
        expect(leg.shimIn).toBeLessThan(shimIn + 1 / 16);
        expect(Math.abs(leg.cutIn * 16 - Math.round(leg.cutIn * 16))).toBeLessThan(1e-9);
      }),
    );
  });

  test('the same floor read with a rod gives the same legs as read as heights', () => {
    const reading = fc.record({
      xIn: fc.double({ min: -60, max: 60, noNaN: true }),
      yIn: fc.double({ min: -30, max: 30, noNaN: true }),
      valueIn: fc.double({ min: -2, max: 2, noNaN: true }),
    });
    fc.assert(
      fc.property(
        fc.array(reading, { minLength: 1, maxLength: 12 }),
        fc.double({ min: 20, max: 80, noNaN: true }),
        (readings, sightIn) => {
          const heights = readings.map((each, i) => ({ ...each, id: `r${i}` }));
          const rods = heights.map((each) => ({ ...each, valueIn: sightIn - each.valueIn }));
          const leg = (convention: 'height' | 'rod', list: typeof heights) =>
            legAt(floorSurface(floorHeights({ convention, readings: list }, { kind: 'highest' })), {
              ...LEG,
              footWidthIn: 3.5,
              footDepthIn: 1.5,
            });
          const [byHeight, byRod] = [leg('height', heights), leg('rod', rods)];
          expect(byRod.lengthIn).toBeCloseTo(byHeight.lengthIn, 9);
          expect(byRod.footFallIn).toBeCloseTo(byHeight.footFallIn, 9);
          expect(codes(byRod)).toEqual(codes(byHeight));
        },
      ),
    );
  });

  test('a foot on a slope of 1 in 50 is measured from its high side: 3-1/2 in wide, 0.035 in shorter', () => {
    const foot = { footWidthIn: 3.5, footDepthIn: 3.5 };
    const leg = legAt(sloping(0.02), { ...LEG, ...foot });
    expect(leg.footFallIn).toBeCloseTo(0.07, 9);
    expect(leg.lengthIn).toBeCloseTo(legAt(sloping(0.02), LEG).lengthIn - 0.035, 9);
    expect(codes(leg)).toEqual([]);
  });

  test('wedges take up 1/8 in across the foot and no more', () => {
    const foot = { footWidthIn: 3.5, footDepthIn: 1.5 };
    expect(codes(legAt(sloping(0.125 / 3.5), { ...LEG, ...foot }))).toEqual([]);
    const steep = legAt(sloping(0.13 / 3.5), { ...LEG, ...foot });
    expect(codes(steep)).toEqual(['foot-on-slope']);
    // Turned a quarter, the narrow side lies along the fall.
    const turned = { ...LEG, ...foot, footAngleRad: Math.PI / 2 };
    expect(codes(legAt(sloping(0.13 / 3.5), turned))).toEqual([]);
  });

  test('a leg cut beforehand leaves the rest to the shim, from 1/16 to 3/4 in', () => {
    const cut = (cutLengthIn: number) => onFloor(0, { cutLengthIn });
    expect(cut(27.53125).shimIn).toBeCloseTo(0.75, 12);
    expect(codes(cut(27.53125))).toEqual([]);
    expect(codes(cut(27.5))).toEqual(['shim-too-thick']);
    expect(codes(cut(28.21875))).toEqual([]);
    expect(codes(cut(28.25))).toEqual(['shim-too-thin']);
    expect(cut(28.25).warnings[0]!.sentence).toBe(
      'The shim comes to 1/32 in, under the 1/16 in that wedges need. Cut this leg shorter.',
    );
  });

  test('where the floor comes up to the plate there is no room, and where it was not read that is said', () => {
    expect(codes(onFloor(28.1))).toEqual(['no-room']);
    expect(onFloor(28.1).cutIn).toBe(0);
    expect(codes(onFloor(0, { at: { xIn: 40, yIn: 0 } }))).toEqual(['floor-not-read']);
    expect(codes(legAt(floorSurface([]), LEG))).toEqual(['floor-not-read']);
  });

  test('both lines land on their printed results', () => {
    for (const { line } of [
      legLength({ hs: 34, tp: 0.71875, dj: 3.5, tt: 1.5, g: 0.25, hf: -0.375 }),
      shimThickness({ g: 0.25, Ll: 28.40625, Lc: 28.375 }),
    ]) {
      expect(Math.abs(recompute(line) - Number(line.result))).toBeLessThanOrEqual(recomputeTolerance(line));
    }
  });
});
