import { describe, expect, test } from 'vitest';
import type { CurvedForm, EdgeForms } from '../../../src-core/edge-forms';
import { arcLength, madeFor } from '../../../src-core/edge-forms';
import { rectangle } from '../../support/pieces';
import { lastDigit, recompute } from '../../support/recompute';
import { FREE, formsOf, near, openingFormsOf, straightForms, WALL } from './form-pieces';

function curvedForms({ forms }: EdgeForms): CurvedForm[] {
  return forms.filter((form): form is CurvedForm => form.shape === 'curved');
}

const rounded = (radiusIn: number) => rectangle(60, 24).map((corner) => ({ ...corner, radiusIn }));

describe('corner radii', () => {
  test('of 6 in take four strips of a quarter circle, 9.4248 in each, and straight ones between tangents', () => {
    const forms = formsOf({ corners: rounded(6), thicknessIn: 2 });
    // 6 x pi / 2 = 9.4248
    expect(curvedForms(forms).map(({ slabFaceIn }) => slabFaceIn)).toEqual(
      Array(4).fill(near((6 * Math.PI) / 2)),
    );
    expect(curvedForms(forms)[0]!.slabFaceIn).toBeCloseTo(9.4248, 4);
    expect(straightForms(forms).map(({ longIn }) => longIn)).toEqual([48, 12, 48, 12].map(near));
    for (const { start, end } of straightForms(forms)) {
      expect([start.kind, end.kind, start.cutRad, end.cutRad]).toEqual(['tangent', 'tangent', 0, 0]);
    }
  });

  test('are joined where they touch the straight: eight joints and no corner', () => {
    const { junctions, sealing } = formsOf({ corners: rounded(6), thicknessIn: 2 });
    expect(junctions.map(({ kind }) => kind)).toEqual(Array(8).fill('joint'));
    expect(sealing.cornerTapeIn).toBe(0);
    expect(sealing.jointTapeIn).toBe(16);
    // perimeter of the rounded rectangle: 2 (48 + 12) + 2 pi 6
    expect(sealing.beadIn).toBeCloseTo(120 + 12 * Math.PI, 9);
  });

  test('that meet half way have one joint there, not two', () => {
    const forms = formsOf({ corners: rounded(12), thicknessIn: 2 });
    expect(straightForms(forms)).toHaveLength(2);
    expect(forms.junctions).toHaveLength(6);
  });

  test('begin and end on the tangents, turning about their centre', () => {
    const [first] = curvedForms(formsOf({ corners: rounded(6), thicknessIn: 2 }));
    expect(first).toMatchObject({
      centre: { xIn: near(6), yIn: near(6) },
      from: { xIn: near(0), yIn: near(6) },
      to: { xIn: near(6), yIn: near(0) },
    });
    expect(first!.turnRad).toBeCloseTo(Math.PI / 2, 12);
  });

  test('tighter than 3 in are a shaped block, below 12 in kerfed, from there bent', () => {
    expect([1, 2.99, 3, 11, 12, 40].map(madeFor)).toEqual([
      'shaped-block',
      'shaped-block',
      'kerfed',
      'kerfed',
      'bent',
      'bent',
    ]);
  });

  test('at an inside corner turn the other way', () => {
    const corners = [
      { xIn: 0, yIn: -48 },
      { xIn: 25.5, yIn: -48 },
      { xIn: 25.5, yIn: 0, radiusIn: 4 },
      { xIn: 96, yIn: 0 },
      { xIn: 96, yIn: 25.5 },
      { xIn: 0, yIn: 25.5 },
    ];
    const [arc] = curvedForms(formsOf({ corners, thicknessIn: 2 }));
    expect(arc!.turnRad).toBeCloseTo(-Math.PI / 2, 12);
    expect(arc!.slabFaceIn).toBeCloseTo(2 * Math.PI, 9);
    expect(arc!.trace.part).toEqual({ kind: 'corner', index: 2 });
  });

  test('between two profiles are shared out at the middle', () => {
    const edges = [FREE, { ...FREE, profile: { kind: 'bullnose' as const } }, FREE, FREE];
    const corners = rectangle(60, 24).map((corner, i) => ({ ...corner, radiusIn: i === 1 ? 8 : 0 }));
    const halves = curvedForms(formsOf({ corners, thicknessIn: 2, edges }));
    expect(halves.map(({ profile }) => profile.kind)).toEqual(['eased', 'bullnose']);
    expect(halves.map(({ slabFaceIn }) => slabFaceIn)).toEqual([near(2 * Math.PI), near(2 * Math.PI)]);
    expect(halves[0]!.to).toMatchObject({ xIn: near(halves[1]!.from.xIn), yIn: near(halves[1]!.from.yIn) });
  });

  test('between one profile with its size left out and written down are not shared out', () => {
    const profile = (sizeIn: number | null) => ({
      ...FREE,
      profile: { kind: 'round-over' as const, sizeIn },
    });
    const corners = rectangle(60, 24).map((corner, i) => ({ ...corner, radiusIn: i === 1 ? 8 : 0 }));
    const edges = [profile(null), profile(0.5), FREE, FREE];
    expect(curvedForms(formsOf({ corners, thicknessIn: 2, edges }))).toHaveLength(1);
  });

  test('where an exposed edge meets a wall keep the profile of the exposed edge', () => {
    const corners = rectangle(60, 24).map((corner, i) => ({ ...corner, radiusIn: i === 2 ? 8 : 0 }));
    const [arc] = curvedForms(formsOf({ corners, thicknessIn: 2, edges: [FREE, FREE, WALL, FREE] }));
    expect(arc).toMatchObject({ kind: 'profiled', slabFaceIn: near(4 * Math.PI) });
  });
});

describe('round openings', () => {
  const hob = (diameterIn: number) =>
    formsOf({
      corners: rectangle(96, 60),
      thicknessIn: 2,
      cutouts: [
        { id: 'hob', purpose: 'hob', shape: { kind: 'circle', centre: { xIn: 48, yIn: 30 }, diameterIn } },
      ],
    });

  test('of 18 in take a strip as long as the circumference, 56.5487 in, joined once', () => {
    const [form, ...others] = openingFormsOf(hob(18), 'hob');
    expect(others).toEqual([]);
    // pi x 18 = 56.5487
    expect(form!.slabFaceIn).toBeCloseTo(56.5487, 4);
    expect(form!.kind).toBe('sink');
    expect(hob(18).junctions.filter(({ trace }) => trace.part.kind === 'cutout')).toHaveLength(1);
  });

  test('of 40 in are longer than a 96 in stick and take two parts, joined twice', () => {
    const [form] = openingFormsOf(hob(40), 'hob');
    // pi x 40 = 125.66
    expect(form!.parts.map(({ longIn }) => longIn)).toEqual([near(96), near(40 * Math.PI - 96)]);
    expect(hob(40).junctions.filter(({ trace }) => trace.part.kind === 'cutout')).toHaveLength(2);
  });

  test('of 1-3/8 in are a plug', () => {
    const forms = hob(1.375);
    expect(openingFormsOf(forms, 'hob')).toEqual([]);
    expect(forms.plugs).toEqual([
      {
        id: 'piece/cutout/hob/plug',
        trace: { pieceId: 'piece', part: { kind: 'cutout', id: 'hob' } },
        widthIn: 1.375,
        depthIn: 1.375,
        isRound: true,
        heightIn: 2.5,
        perimeterIn: near(Math.PI * 1.375),
        screws: 1,
      },
    ]);
  });
});

test('a sink of 26 x 14 in with 2 in radii takes straights of 22 and 10 in and four corner blocks of pi in', () => {
  const forms = formsOf({
    corners: rectangle(96, 25.5),
    thicknessIn: 2,
    cutouts: [
      {
        id: 'sink',
        purpose: 'sink',
        shape: { kind: 'rectangle', centre: { xIn: 48, yIn: 12 }, widthIn: 26, depthIn: 14, radiusIn: 2 },
      },
    ],
  });
  const sides = openingFormsOf(forms, 'sink');
  const lengths = (shape: 'straight' | 'curved') =>
    sides
      .filter((side) => side.shape === shape)
      .map(({ slabFaceIn }) => slabFaceIn)
      .sort((a, b) => a - b);
  expect(lengths('straight')).toEqual([10, 10, 22, 22].map(near));
  expect(lengths('curved')).toEqual(Array(4).fill(near(Math.PI)));
  expect(sides.filter((side) => side.shape === 'curved' && side.made === 'shaped-block')).toHaveLength(4);
});

test('the length of an arc comes out of its printed numbers', () => {
  const { line } = arcLength({ r: 6, t: 1.570796 });
  expect(Math.abs(recompute(line) - Number(line.result))).toBeLessThanOrEqual(lastDigit(line.result));
});
