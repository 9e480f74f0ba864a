import { describe, expect, test } from 'vitest';
import { screwPlacesIn, splitRun } from '../../../src-core/edge-forms';
import { rectangle } from '../../support/pieces';
import { FREE, formsOf, near, straightForms } from './form-pieces';

const run = (lengthIn: number, more: Partial<Parameters<typeof splitRun>[0]> = {}) =>
  splitRun({ lengthIn, startPastIn: 0, endPastIn: 0, stockIn: 96, keepOffIn: [], ...more });

describe('butt joints', () => {
  test('a run of 96 in needs none from 96 in stock; a hair more does', () => {
    expect(run(96).jointsIn).toEqual([]);
    expect(run(96.01).jointsIn).toHaveLength(1);
  });

  test('mitres count: 94 in of slab with 1-1/2 in at each end is 97 in of strip', () => {
    expect(run(94, { startPastIn: 1.5, endPastIn: 1.5 }).jointsIn).toEqual([88]);
  });

  test('a joint keeps 6 in from the corner even where the stick would reach nearer', () => {
    expect(run(100).jointsIn).toEqual([94]);
    expect(run(144, { startPastIn: 1.5, endPastIn: 1.5 }).jointsIn).toEqual([94.5]);
  });

  test('a joint steps back from the corner of a cutout and from a seam by 2 in', () => {
    expect(run(144, { keepOffIn: [95] }).jointsIn).toEqual([93]);
    expect(run(144, { keepOffIn: [95, 92] }).jointsIn).toEqual([90]);
    expect(run(144, { keepOffIn: [98] }).jointsIn).toEqual([96]);
  });

  test('where corners leave no clear place the joint is forced, and says so', () => {
    const keepOffIn = Array.from({ length: 60 }, (_, k) => 3 * k);
    expect(run(144, { keepOffIn })).toEqual({ jointsIn: [96], isForced: true });
  });

  test('is the fewest parts: no choice on a half-inch grid has fewer, for 60 runs', () => {
    let compared = 0;
    for (let k = 0; k < 60; k++) {
      const lengthIn = 60 + ((k * 37) % 300);
      const stockIn = 48 + 12 * (k % 5);
      const keepOffIn = [(k * 13) % lengthIn, (k * 29) % lengthIn, (k * 41) % lengthIn];
      const found = splitRun({ lengthIn, startPastIn: 1.5, endPastIn: 0, stockIn, keepOffIn });
      if (found.isForced) continue;
      compared++;
      expect(found.jointsIn.length, `run ${k}`).toBeLessThanOrEqual(
        fewestJoints(lengthIn, 1.5, stockIn, keepOffIn),
      );
    }
    expect(compared).toBeGreaterThan(50);
  });

  test('a counter of 144 in takes two parts, square at the joint, which adds up to the run', () => {
    const forms = formsOf({ corners: rectangle(144, 25.5), thicknessIn: 1.5 });
    const front = straightForms(forms)[0]!;
    expect(front.parts.map(({ longIn }) => longIn)).toEqual([near(96), near(51)]);
    expect(front.parts[0]!.end).toMatchObject({ kind: 'joint', cutRad: 0 });
    expect(front.parts.map(({ longIn }) => longIn).reduce((a, b) => a + b)).toBeCloseTo(front.longIn, 9);
    expect(forms.junctions.filter(({ kind }) => kind === 'joint')).toHaveLength(2);
  });

  test('a counter keeps its joints off the sink and off its control joint', () => {
    const forms = formsOf({
      corners: rectangle(144, 25.5),
      thicknessIn: 1.5,
      edges: [FREE, FREE, FREE, FREE],
      joints: [{ id: 'joint', kind: 'control', from: { xIn: 91, yIn: 0 }, to: { xIn: 91, yIn: 25.5 } }],
      cutouts: [
        {
          id: 'sink',
          purpose: 'sink',
          shape: { kind: 'rectangle', centre: { xIn: 79, yIn: 12 }, widthIn: 30, depthIn: 16 },
        },
      ],
    });
    // The stick reaches 94.5; the sink's corner stands at 94, so the joint steps to 92, and off the control joint at 91 to 89
    expect(straightForms(forms)[0]!.parts[0]!.toIn).toBeCloseTo(89, 9);
  });

  test('stock of the job counts, offcuts under 24 in do not', () => {
    const strip = (id: string, lengthIn: number) => ({ id, name: id, kind: 'form-strip' as const, lengthIn });
    const forms = formsOf(
      { corners: rectangle(144, 25.5), thicknessIn: 1.5 },
      { stock: [strip('long', 192), strip('offcut', 12)] },
    );
    expect(straightForms(forms)[0]!.parts).toHaveLength(1);
    const short = formsOf(
      { corners: rectangle(144, 25.5), thicknessIn: 1.5 },
      { stock: [strip('offcut', 12)] },
    );
    expect(straightForms(short)[0]!.parts).toHaveLength(2);
  });
});

describe('screws', () => {
  test('a 96 in part takes 11: two near each end, seven between at 11 in', () => {
    // 96 - 2 x 4 = 88 in between the inner screws; 88 / 12 = 7.33, so 8 spaces of 11 in and 7 screws
    const places = screwPlacesIn(96);
    expect(places).toHaveLength(11);
    expect(places.slice(0, 3)).toEqual([2, 4, 15]);
    expect(places.slice(-2)).toEqual([92, 94]);
  });

  test.each([
    [32, 5],
    [33, 6],
    [20, 4],
    [9, 2],
  ])('a part of %d in takes %d', (lengthIn, count) => {
    expect(screwPlacesIn(lengthIn)).toHaveLength(count);
  });

  test('none stands more than 12 in from the next', () => {
    for (let lengthIn = 4; lengthIn < 200; lengthIn += 0.37) {
      const places = screwPlacesIn(lengthIn);
      places.slice(1).forEach((at, k) => {
        expect(at - places[k]!).toBeLessThanOrEqual(12 + 1e-9);
        expect(at).toBeGreaterThan(places[k]!);
      });
      expect(places.at(-1)!).toBeLessThan(lengthIn);
    }
  });

  test('of a 60 x 24 in slab: twice 8 and twice 5, each with its part', () => {
    // 60: (60 - 8) / 12 = 4.33, so 4 between and 8; 24: (24 - 8) / 12 = 1.33, so 1 between and 5
    const { screws } = formsOf({ corners: rectangle(60, 24), thicknessIn: 2 });
    expect(screws.map(({ count }) => count).sort()).toEqual([5, 5, 8, 8]);
    expect(screws.map(({ id }) => id)).toContain('piece/edge/1/form/1/screws');
  });
});

/** Fewest joints by trying every place on a half-inch grid. */
function fewestJoints(
  lengthIn: number,
  pastIn: number,
  stockIn: number,
  keepOffIn: readonly number[],
): number {
  const clear = [];
  for (let atIn = 6; atIn <= lengthIn - 6; atIn += 0.5) {
    if (keepOffIn.every((line) => Math.abs(line - atIn) >= 2)) clear.push(atIn);
  }
  let reached = [0];
  for (let joints = 0; joints < 20; joints++) {
    const past = joints === 0 ? pastIn : 0;
    if (reached.some((fromIn) => lengthIn - fromIn + past <= stockIn)) return joints;
    reached = clear.filter((atIn) =>
      reached.some((fromIn) => atIn - fromIn >= 6 && atIn - fromIn + past <= stockIn),
    );
  }
  return 20;
}
