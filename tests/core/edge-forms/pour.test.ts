import { describe, expect, test } from 'vitest';
import {
  beadVolume,
  bracePush,
  formPressure,
  formResultant,
  pressureOf,
  rimDrop,
  sealantFor,
  TUBE_IN3,
  tubeCount,
} from '../../../src-core/edge-forms';
import { KG_PER_M3_PER_PCF, KPA_PER_PSF, L_PER_IN3, MM_PER_IN, N_PER_LBF } from '../../../src-core/units';
import { rectangle } from '../../support/pieces';
import { lastDigit, recompute } from '../../support/recompute';
import { FREE, formsOf, near, WALL } from './form-pieces';

describe('the push of wet concrete', () => {
  test('24 kN/m3 and 600 mm give 14.4 kPa and 4.32 kN/m, the fluid head of ACI 347R', () => {
    const pcf = 24_000 / 9.80665 / KG_PER_M3_PER_PCF;
    const of = { w: pcf, h: 600 / MM_PER_IN };
    expect(formPressure.compute(of) * KPA_PER_PSF).toBeCloseTo(14.4, 6);
    const kNPerM = (formResultant.compute(of) * N_PER_LBF) / (12 * MM_PER_IN);
    expect(kNPerM).toBeCloseTo(4.32, 6);
  });

  test('150 pcf against a 4 in edge gives 50 psf and 8.33 lbf/ft, against 36 in 450 psf and 675 lbf/ft (basis 8.6)', () => {
    for (const [h, psf, plf] of [
      [4, 50, 8.3333],
      [36, 450, 675],
    ] as const) {
      expect(formPressure.compute({ w: 150, h })).toBeCloseTo(psf, 9);
      expect(formResultant.compute({ w: 150, h })).toBeCloseTo(plf, 3);
    }
  });

  test('150 pcf and 2 in give 25 psf, 2.083 lbf/ft and 2.08 lbf on a brace every 12 in', () => {
    const { pressurePsf, resultantLbfPerFt, braceLbf, braceSpacingIn } = pressureOf(150, 2);
    expect(pressurePsf).toBeCloseTo(25, 9);
    expect(resultantLbfPerFt).toBeCloseTo(150 / 72, 9);
    expect(braceSpacingIn).toBe(12);
    expect(braceLbf).toBeCloseTo(150 / 72, 9);
  });

  test("a piece takes the job's wet density", () => {
    const { pressure } = formsOf(
      { corners: rectangle(60, 24), thicknessIn: 3 },
      { falsework: { wetDensityPcf: 120 } },
    );
    expect(pressure.pressurePsf).toBeCloseTo(30, 9);
  });
});

describe('tape and sealant', () => {
  test('a 60 x 24 x 2 in slab: 8 in of corner tape, 176 in of bead', () => {
    // foot 2 (60 + 24) = 168, four corners of 2
    const { sealing } = formsOf({ corners: rectangle(60, 24), thicknessIn: 2 });
    expect(sealing).toEqual({ cornerTapeIn: 8, jointTapeIn: 0, beadIn: 176 });
  });

  test('an opening and a plug add their foot, and an opening its corners', () => {
    const { sealing } = formsOf({
      corners: rectangle(60, 24),
      thicknessIn: 2,
      cutouts: [
        {
          id: 'sink',
          purpose: 'sink',
          shape: { kind: 'rectangle', centre: { xIn: 25, yIn: 12 }, widthIn: 20, depthIn: 12 },
        },
        { id: 'tap', purpose: 'tap', shape: { kind: 'circle', centre: { xIn: 45, yIn: 12 }, diameterIn: 2 } },
      ],
    });
    expect(sealing.cornerTapeIn).toBeCloseTo(16, 9);
    expect(sealing.beadIn).toBeCloseTo(176 + 64 + 8 + 2 * Math.PI, 9);
  });

  test('176 in of 1/4 in quarter round is 8.639 in3: one tube; 372 in is two', () => {
    // pi / 4 x 0.0625 = 0.0490874 in2; x 176 = 8.6394 in3; a tube of 10.1 fl oz is 18.227 in3, so 371.3 in
    expect(sealantFor(176).volumeIn3).toBeCloseTo(8.6394, 4);
    expect(sealantFor(176).tubes).toBe(1);
    expect(sealantFor(371).tubes).toBe(1);
    expect(sealantFor(372).tubes).toBe(2);
    expect(sealantFor(0).tubes).toBe(0);
  });

  test('a tube of 10.1 US fl oz holds 299 mL', () => {
    // 1 US fl oz is 29.5735 mL: NIST SP 811 B.8
    expect(TUBE_IN3 * L_PER_IN3 * 1000).toBeCloseTo(10.1 * 29.5735, 2);
  });

  test('walls take isolation strip: an L along 96 and 73.5 in of wall', () => {
    const corners = [
      { xIn: 0, yIn: -48 },
      { xIn: 25.5, yIn: -48 },
      { xIn: 25.5, yIn: 0 },
      { xIn: 96, yIn: 0 },
      { xIn: 96, yIn: 25.5 },
      { xIn: 0, yIn: 25.5 },
    ];
    const { isolation } = formsOf({ corners, thicknessIn: 2, edges: [FREE, FREE, FREE, FREE, WALL, WALL] });
    expect(isolation.map(({ lengthIn, thicknessIn }) => [lengthIn, thicknessIn])).toEqual([
      [near(96), 0.125],
      [near(73.5), 0.125],
    ]);
  });
});

describe('a fall', () => {
  const fall = (inPerFt: number, towardDeg: number) =>
    formsOf({ corners: rectangle(92, 27), thicknessIn: 2, fall: { inPerFt, towardDeg } }).rim;

  test('of 1/8 in a foot to the front lowers the front rim of a 27 in bench by 9/32 in', () => {
    // 27 / 12 x 1/8 = 0.28125
    const { marks, fallIn, words } = fall(0.125, 270);
    expect(fallIn).toBeCloseTo(0.28125, 12);
    for (const { at, belowHighestIn } of marks) {
      expect(belowHighestIn).toBeCloseTo(at.yIn === 0 ? 0.28125 : 0, 9);
    }
    expect(words).toContain('falls 1/8 in in a foot to the front');
    expect(words).toContain('9/32');
  });

  test('towards 30 degrees lies on one plane through every corner', () => {
    // Drop from the corner (0, 0): (x cos 30 + y sin 30) x 1/4 / 12
    const { marks } = fall(0.25, 30);
    for (const { at, belowHighestIn } of marks) {
      expect(belowHighestIn).toBeCloseTo(((at.xIn * Math.sqrt(3)) / 2 + at.yIn / 2) / 48, 9);
    }
  });

  test('is measured where a corner radius begins and ends', () => {
    const corners = rectangle(60, 24).map((corner) => ({ ...corner, radiusIn: 6 }));
    const { marks } = formsOf({ corners, thicknessIn: 2, fall: { inPerFt: 0.25, towardDeg: 0 } }).rim;
    expect(marks).toHaveLength(8);
    expect(Math.max(...marks.map(({ belowHighestIn }) => belowHighestIn))).toBeCloseTo(60 / 48, 9);
    expect(new Set(marks.map(({ id }) => id)).size).toBe(8);
  });

  test('of none is level', () => {
    const { rim } = formsOf({ corners: rectangle(60, 24), thicknessIn: 2 });
    expect(rim.words).toBe('The form stands level.');
    expect(rim.marks.map(({ belowHighestIn }) => belowHighestIn)).toEqual([0, 0, 0, 0]);
  });
});

test('a drip groove takes a strip along its edge, as deep as the slab allows', () => {
  const dripGroove = { widthIn: 0.25, depthIn: 0.25, setbackIn: 0.75 };
  const { grooves } = formsOf({
    corners: rectangle(96, 17.5),
    thicknessIn: 1.5,
    edges: [FREE, FREE, { ...FREE, dripGroove }, FREE],
  });
  expect(grooves).toEqual([
    {
      id: 'piece/edge/3/form/groove',
      trace: { pieceId: 'piece', part: { kind: 'edge', index: 2 } },
      section: { widthIn: 0.25, depthIn: 0.25, setbackIn: 0.75 },
      lengthIn: 96,
    },
  ]);
});

test('every line of workings comes out of its printed numbers', () => {
  const lines = [
    formPressure({ w: 150, h: 1.5 }).line,
    formResultant({ w: 150, h: 1.5 }).line,
    bracePush({ R: 1.171875, s: 24 }).line,
    beadVolume({ r: 0.25, Ls: 176 }).line,
    tubeCount({ Vs: 19, Vt: TUBE_IN3 }).line,
    rimDrop({ i: 0.125, s: 27 }).line,
  ];
  for (const line of lines) {
    expect(Math.abs(recompute(line) - Number(line.result))).toBeLessThanOrEqual(lastDigit(line.result));
  }
});
