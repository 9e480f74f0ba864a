import { describe, expect, test } from 'vitest';
import { polygonAreaIn2 } from '../../../src-core/outline';
import { recompute, recomputeTolerance } from '../../support/recompute';
import { counterWith, findingOf, formsOf, roundOf, sinkOf } from './pieces';

const sinkForm = (...cutouts: Parameters<typeof counterWith>[0]) => formsOf(counterWith(cutouts))[0]!;

describe('a sink that is dropped in', () => {
  const form = sinkForm(sinkOf({ widthIn: 33, depthIn: 20 }, { mounting: 'dropped-in', rimIn: 0.75 }));
  const sink = form.sink!;

  test('of a 33 x 20 in opening has a bowl 32-3/4 x 19-3/4 in and measures 34-1/4 x 21-1/4 in over a 3/4 in rim', () => {
    // 33 - 2 x 1/8 = 32.75, and 32.75 + 2 x 0.75 = 34.25.
    expect(sink.setBackIn).toBe(0.125);
    expect([sink.bowl!.widthIn, sink.bowl!.depthIn]).toEqual([32.75, 19.75]);
    expect([sink.rim!.widthIn, sink.rim!.depthIn]).toEqual([34.25, 21.25]);
    expect(polygonAreaIn2(sink.bowl!.outline)).toBeCloseTo(32.75 * 19.75, 4);
    expect(polygonAreaIn2(sink.rim!.outline)).toBeCloseTo(34.25 * 21.25, 4);
  });

  test('bears with 5/8 in of its rim on the top, and is set after the pour', () => {
    expect(sink.bearingIn).toBe(0.625);
    expect(sink.rimLies).toBe('on the top');
    expect(sink.isCastIn).toBe(false);
    expect(form.infill).toBeNull();
    expect(findingOf(form, 'sink-bearing').level).toBe('ok');
  });

  test.each([
    [0.5, 0.125, 0.375, 'ok'],
    [0.4375, 0.0625, 0.375, 'ok'],
    [0.43, 0.0625, 0.3675, 'attention'],
  ] as const)(
    'with a %s in rim has %s in of clearance and %s in of bearing: %s',
    (rimIn, clearIn, bearingIn, level) => {
      const narrow = sinkForm(sinkOf({ widthIn: 33, depthIn: 20 }, { mounting: 'dropped-in', rimIn }));
      expect(narrow.sink!.setBackIn).toBeCloseTo(clearIn, 12);
      expect(narrow.sink!.bearingIn).toBeCloseTo(bearingIn, 12);
      const finding = findingOf(narrow, 'sink-bearing');
      expect(finding.level).toBe(level);
      expect(finding).toMatchObject({ limit: 0.375, unit: 'in' });
      if (level === 'attention') expect(finding.words).toContain('at least 7/16 in wide');
    },
  );

  test('shows sums that can be worked again by hand', () => {
    expect(sink.lines.map(({ symbol }) => symbol)).toEqual(['s', 'B', 'B', 'F', 'F', 'b']);
    for (const line of sink.lines) {
      expect(Math.abs(recompute(line) - line.value)).toBeLessThanOrEqual(recomputeTolerance(line));
    }
  });
});

describe('a sink under the rim', () => {
  test('of a 26 x 14 in opening is 26-1/4 x 14-1/4 in inside, covered 1/8 in all round, and bears with its whole rim', () => {
    const form = sinkForm(sinkOf({ widthIn: 26, depthIn: 14 }, { mounting: 'under-rim', rimIn: 0.75 }));
    const sink = form.sink!;
    expect([sink.bowl!.widthIn, sink.bowl!.depthIn]).toEqual([26.25, 14.25]);
    expect([sink.rim!.widthIn, sink.rim!.depthIn]).toEqual([27.75, 15.75]);
    expect(sink.bearingIn).toBe(0.75);
    expect(sink.rimLies).toBe('under the slab');
  });

  test('is up at the pour where the slab carries it, and hung later where its cabinet does', () => {
    const size = { widthIn: 26, depthIn: 14 };
    const carried = sinkForm(sinkOf(size, { mounting: 'under-rim' }));
    const later = sinkForm(sinkOf(size, { mounting: 'under-rim', carriedBySlab: false }));
    expect([carried.standsOn, later.standsOn]).toEqual(['bowl', 'deck']);
    expect(later.infill).toBeNull();
    // On the bowl the form is as high as the slab; on the deck it goes through the 1/2 in board as well.
    expect([carried.heightIn, later.heightIn]).toEqual([2, 2.5]);
  });
});

describe('a sink that is cast over', () => {
  const form = sinkForm(
    sinkOf({ widthIn: 20, depthIn: 16 }, { mounting: 'cast-over', bowlDepthIn: 8, emptyWeightLb: 18 }),
  );

  test('of a 20 x 16 in opening is flush with it and reaches 3/4 in under the slab all round', () => {
    expect([form.sink!.bowl!.widthIn, form.sink!.bowl!.depthIn]).toEqual([20, 16]);
    expect([form.sink!.rim!.widthIn, form.sink!.rim!.depthIn]).toEqual([21.5, 17.5]);
    expect(form.sink!.bearingIn).toBe(0.75);
  });

  test('8 in deep holds 2560 in3, 148 lb of damp sand, all of it on the falsework with bowl and form', () => {
    // 20 x 16 x 8 = 2560 in3; 2560 x 100 / 1728 = 148.15 lb.
    expect(form.infill!.volumeIn3).toBeCloseTo(2560, 6);
    expect(form.infill!.sandWeightLb).toBeCloseTo(148.15, 2);
    // A board of 3/4 in instead: 320 x 0.75 x 35 / 1728 = 4.86 lb.
    expect(form.infill!.lidWeightLb).toBeCloseTo(4.86, 2);
    expect(form.weightOnFalseworkLb).toBeCloseTo(148.15 + 18 + form.form.weightLb, 2);
  });

  test('with a 3/8 in rim has too little for the slab to bear on', () => {
    const narrow = sinkForm(sinkOf({ widthIn: 20, depthIn: 16 }, { mounting: 'cast-over', rimIn: 0.375 }));
    expect(findingOf(narrow, 'sink-bearing')).toMatchObject({ level: 'attention', value: 0.375, limit: 0.5 });
  });
});

describe('what lies beside a rim', () => {
  const size = { widthIn: 30, depthIn: 22 };

  test('a 22 in opening in a 25-1/2 in counter leaves a rim 1-1/8 in from the edge; a 1-1/2 in rim comes too near', () => {
    // (25.5 - 22) / 2 = 1.75 in beside the opening; the rim reaches 0.75 - 0.125, or 1.5 - 0.125, past it.
    const good = sinkForm(sinkOf(size, { mounting: 'dropped-in', rimIn: 0.75 }));
    expect(findingOf(good, 'rim-to-edge')).toMatchObject({ level: 'ok', limit: 0.5 });
    expect(findingOf(good, 'rim-to-edge').value).toBeCloseTo(1.125, 6);
    const near = sinkForm(sinkOf(size, { mounting: 'dropped-in', rimIn: 1.5 }));
    expect(findingOf(near, 'rim-to-edge').level).toBe('attention');
    expect(findingOf(near, 'rim-to-edge').value).toBeCloseTo(0.375, 6);
    const over = sinkForm(sinkOf(size, { mounting: 'dropped-in', rimIn: 2 }));
    expect(findingOf(over, 'rim-to-edge')).toMatchObject({ level: 'attention', value: 0 });
  });

  test('two rims on the top are measured rim to rim, a rim below against the opening beside it', () => {
    const sink = { mounting: 'dropped-in', rimIn: 1 } as const;
    const one = sinkOf({ widthIn: 16, depthIn: 16 }, sink, { id: 'left', xIn: 30 });
    const other = sinkOf({ widthIn: 16, depthIn: 16 }, sink, { id: 'right', xIn: 48.5 });
    // Openings 2.5 in apart; each rim reaches 7/8 in past its own: 0.75 in are left.
    const beside = findingOf(sinkForm(one, other), 'rim-to-opening');
    expect(beside.value).toBeCloseTo(0.75, 6);
    expect(beside.level).toBe('ok');
    const below = { ...other, sink: { mounting: 'under-rim', rimIn: 1 } } as const;
    expect(findingOf(sinkForm(one, below), 'rim-to-opening').value).toBeCloseTo(1.625, 6);
  });

  test('a rim over a tap hole is seen', () => {
    const sink = sinkOf({ widthIn: 30, depthIn: 14 }, { mounting: 'dropped-in', rimIn: 2 });
    const tap = roundOf('tap', 1.375, { xIn: 48, yIn: 21.5 });
    const finding = findingOf(sinkForm(sink, tap), 'rim-to-opening');
    expect(finding).toMatchObject({ level: 'attention', value: 0 });
    expect(finding.words).toContain('lies over the tap;');
  });

  test('a bowl that its clearance swallows is said to be none', () => {
    const form = sinkForm(sinkOf({ widthIn: 0.25, depthIn: 0.25 }, { mounting: 'dropped-in' }));
    expect(form.findings.map(({ check, level }) => [check, level])).toContainEqual([
      'bowl-size',
      'attention',
    ]);
  });
});
