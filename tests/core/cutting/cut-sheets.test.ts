import { describe, expect, test } from 'vitest';
import { cutSheets, type SheetList, type SheetPiece } from '../../../src-core/cutting';
import { diceOf, seededRandom } from '../../support/seeded-random';
import { leastByTrying } from './cutting-cases';

const MM = 25.4;
const SHEET = { lengthIn: 96, widthIn: 48 };

function panels(count: number, lengthIn: number, widthIn: number, mayTurn = false): SheetPiece[] {
  return Array.from({ length: count }, (_, i) => ({ id: `p${i + 1}`, lengthIn, widthIn, mayTurn }));
}

interface Part {
  readonly xIn: number;
  readonly yIn: number;
  readonly lengthIn: number;
  readonly widthIn: number;
}

/** Follows the cuts as a person would, and tells what does not come out as the list says. */
function faultsOf(list: SheetList, asked: readonly SheetPiece[], kerfIn: number, sheet = SHEET): string[] {
  const faults: string[] = [];
  const got = [...list.sheets.flatMap(({ pieces }) => pieces), ...list.tooLarge].map(({ id }) => id).sort();
  if (
    got.join() !==
    asked
      .map(({ id }) => id)
      .sort()
      .join()
  )
    faults.push(`pieces ${got.join()}`);
  for (const { cuts, pieces, offcuts } of list.sheets) {
    const parts = new Map<string, Part>([['sheet', { xIn: 0, yIn: 0, ...sheet }]]);
    for (const { part, runs, atIn, from, to, makes } of cuts) {
      const whole = parts.get(part);
      if (whole === undefined) {
        faults.push(`no part ${part} to cut`);
        continue;
      }
      parts.delete(part);
      const isAcross = runs === 'across';
      const reach = isAcross ? to.yIn - from.yIn - whole.widthIn : to.xIn - from.xIn - whole.lengthIn;
      if (Math.abs(reach) > 1e-9) faults.push(`a cut of ${part} does not run from edge to edge`);
      const beyondIn = atIn + kerfIn;
      const halves: Part[] = isAcross
        ? [
            { ...whole, lengthIn: atIn },
            { ...whole, xIn: whole.xIn + beyondIn, lengthIn: whole.lengthIn - beyondIn },
          ]
        : [
            { ...whole, widthIn: atIn },
            { ...whole, yIn: whole.yIn + beyondIn, widthIn: whole.widthIn - beyondIn },
          ];
      makes.forEach((name, i) => {
        parts.set(name, halves[i]!);
      });
    }
    for (const named of [...pieces, ...offcuts]) {
      const part = parts.get(named.part);
      parts.delete(named.part);
      for (const key of ['xIn', 'yIn', 'lengthIn', 'widthIn'] as const) {
        if (part === undefined || Math.abs(part[key] - named[key]) > 1e-6)
          faults.push(`${named.part} is not where it is said`);
      }
    }
    if (parts.size > 0) faults.push(`parts left over: ${[...parts.keys()].join()}`);
    for (const piece of pieces) {
      const own = asked.find(({ id }) => id === piece.id)!;
      if (piece.isTurned && !own.mayTurn) faults.push(`${piece.id} is turned across its grain`);
      const [lengthIn, widthIn] = piece.isTurned ? [own.widthIn, own.lengthIn] : [own.lengthIn, own.widthIn];
      const off = Math.max(Math.abs(piece.lengthIn - lengthIn), Math.abs(piece.widthIn - widthIn));
      if (off > 1e-6) faults.push(`${piece.id} is ${piece.lengthIn} by ${piece.widthIn}`);
    }
  }
  return faults;
}

function sheetsFor(asked: readonly SheetPiece[], kerfIn: number, sheet = SHEET): number {
  const list = cutSheets({ pieces: asked, sheet, kerfIn });
  expect(faultsOf(list, asked, kerfIn, sheet)).toEqual([]);
  expect(list.proof.isProved).toBe(true);
  return list.sheets.length;
}

// Numbers of the engineering basis, section 13, where they were found by exhaustive search.
describe('sheets of 48 by 96 in', () => {
  test.each([
    ['24 x 30 in with a kerf of 1/8 in', 24, 30, 0.125, 3],
    ['24 x 30 in without a kerf', 24, 30, 0, 6],
    ['23-7/8 x 30 in with a kerf of 1/8 in', 23.875, 30, 0.125, 6],
  ])(
    '13.6: %s: a sheet holds %d x %d, kerf %d, %d times, turned or not',
    (_, widthIn, lengthIn, kerfIn, held) => {
      for (const mayTurn of [false, true]) {
        expect(sheetsFor(panels(held, lengthIn, widthIn, mayTurn), kerfIn)).toBe(1);
        expect(sheetsFor(panels(held + 1, lengthIn, widthIn, mayTurn), kerfIn)).toBe(2);
      }
    },
  );

  test('13.7: 25-1/2 x 72, 22 x 72 and two of 22 x 23-1/2 in fill one sheet to 96.7 %, and 12 x 23 in more does not go in', () => {
    const asked = [
      { id: 'a', lengthIn: 72, widthIn: 25.5, mayTurn: true },
      { id: 'b', lengthIn: 72, widthIn: 22, mayTurn: true },
      { id: 'c', lengthIn: 23.5, widthIn: 22, mayTurn: true },
      { id: 'd', lengthIn: 23.5, widthIn: 22, mayTurn: true },
    ];
    const usedIn2 = asked.reduce((sum, { lengthIn, widthIn }) => sum + lengthIn * widthIn, 0);
    expect(Math.abs(usedIn2 / (96 * 48) - 0.967)).toBeLessThan(5e-4);
    expect(sheetsFor(asked, 0.125)).toBe(1);
    expect(sheetsFor([...asked, { id: 'e', lengthIn: 23, widthIn: 12, mayTurn: true }], 0.125)).toBe(2);
  });

  test('13.8: give 18 strips of 2-1/2 in, 22 of 2 in, and a sheet of 1220 mm gives 23 of 50 mm', () => {
    expect([18, 19].map((count) => sheetsFor(panels(count, 96, 2.5), 0.125))).toEqual([1, 2]);
    expect([22, 23].map((count) => sheetsFor(panels(count, 96, 2), 0.125))).toEqual([1, 2]);
    const metric = { lengthIn: 2440 / MM, widthIn: 1220 / MM };
    const strips = (count: number) => sheetsFor(panels(count, 2440 / MM, 50 / MM), 3 / MM, metric);
    expect([strips(23), strips(24)]).toEqual([1, 2]);
  });

  test('hold a piece across only where its grain may turn', () => {
    const [across] = panels(1, 40, 60);
    expect(cutSheets({ pieces: [across!], sheet: SHEET, kerfIn: 0.125 }).tooLarge).toHaveLength(1);
    const free = { ...across!, mayTurn: true };
    const list = cutSheets({ pieces: [free], sheet: SHEET, kerfIn: 0.125 });
    expect(list.sheets[0]!.pieces).toEqual([
      { id: 'p1', isTurned: true, part: '2a', xIn: 0, yIn: 0, lengthIn: 60, widthIn: 40 },
    ]);
  });

  test('are cut in the order of the work, the larger offcut first', () => {
    const list = cutSheets({ pieces: panels(2, 36, 25.5), sheet: SHEET, kerfIn: 0.125 });
    const [sheet] = list.sheets;
    expect(
      sheet!.cuts.map(({ number, part, runs, atIn, makes }) => [number, part, runs, atIn, makes]),
    ).toEqual([
      [1, 'sheet', 'along', 25.5, ['1a', '1b']],
      [2, '1a', 'across', 72.125, ['2a', '2b']],
      [3, '2a', 'across', 36, ['3a', '3b']],
    ]);
    expect(sheet!.cuts[0]).toMatchObject({ from: { xIn: 0, yIn: 25.5 }, to: { xIn: 96, yIn: 25.5 } });
    expect(sheet!.offcuts).toEqual([
      { part: '1b', xIn: 0, yIn: 25.625, lengthIn: 96, widthIn: 22.375 },
      { part: '2b', xIn: 72.25, yIn: 0, lengthIn: 23.75, widthIn: 25.5 },
    ]);
  });

  test('are none for no pieces', () => {
    const list = cutSheets({ pieces: [], sheet: SHEET, kerfIn: 0.125 });
    expect(list).toMatchObject({ sheets: [], tooLarge: [], leastSheets: 0, proof: { isProved: true } });
  });
});

/** Whether a group comes out of a rectangle by cuts from edge to edge, from the whole down to the pieces. */
function comesOut(group: readonly SheetPiece[], lengthIn: number, widthIn: number, kerfIn: number): boolean {
  if (group.length === 0) return true;
  const fits = (l: number, w: number) => l <= lengthIn + 1e-9 && w <= widthIn + 1e-9;
  if (
    group.some(
      (each) => !fits(each.lengthIn, each.widthIn) && !(each.mayTurn && fits(each.widthIn, each.lengthIn)),
    )
  ) {
    return false;
  }
  if (group.length === 1) return true;
  // A first cut may as well lie where some of the pieces, one behind the other, end.
  const stops = [0];
  for (const piece of group) {
    const sides = piece.mayTurn ? [piece.lengthIn, piece.widthIn] : [piece.lengthIn];
    const other = piece.mayTurn ? sides : [piece.widthIn];
    for (const at of [...stops])
      for (const side of new Set([...sides, ...other])) stops.push(at + side + kerfIn);
  }
  for (let mask = 1; mask < 2 ** group.length - 1; mask++) {
    const first = group.filter((_, i) => (mask >> i) & 1);
    const second = group.filter((_, i) => !((mask >> i) & 1));
    for (const stop of new Set(stops)) {
      const atIn = stop - kerfIn;
      if (atIn <= 0) continue;
      if (
        atIn < lengthIn &&
        comesOut(first, atIn, widthIn, kerfIn) &&
        comesOut(second, lengthIn - stop, widthIn, kerfIn)
      ) {
        return true;
      }
      if (
        atIn < widthIn &&
        comesOut(first, lengthIn, atIn, kerfIn) &&
        comesOut(second, lengthIn, widthIn - stop, kerfIn)
      ) {
        return true;
      }
    }
  }
  return false;
}

describe('small lists of panels', () => {
  test('40 lists of up to 4 come to as few sheets as trying every cut gives', () => {
    for (let seed = 1; seed <= 40; seed++) {
      const dice = diceOf(seededRandom(seed));
      const asked = Array.from({ length: dice.whole(2, 4) }, (_, i) => ({
        id: `p${i}`,
        lengthIn: dice.whole(10, 70),
        widthIn: dice.whole(8, 40),
        mayTurn: dice.chance(0.4),
      }));
      const fewest = leastByTrying(asked.length, (group) =>
        comesOut(
          group.map((i) => asked[i]!),
          96,
          48,
          0.125,
        )
          ? 1
          : Number.POSITIVE_INFINITY,
      );
      expect([seed, sheetsFor(asked, 0.125)]).toEqual([seed, fewest]);
    }
  });
});

describe('long lists of panels', () => {
  test.each([1, 2, 3, 4])(
    '60 panels (seed %d) keep to the bound, and every cut runs from edge to edge',
    (seed) => {
      const dice = diceOf(seededRandom(seed));
      const asked = Array.from({ length: 60 }, (_, i) => ({
        id: `p${i}`,
        lengthIn: dice.sixteenths(8, 60),
        widthIn: dice.sixteenths(6, 40),
        mayTurn: dice.chance(0.5),
      }));
      const list = cutSheets({ pieces: asked, sheet: SHEET, kerfIn: 0.125 });
      expect(faultsOf(list, asked, 0.125)).toEqual([]);
      const areaIn2 = asked.reduce(
        (sum, { lengthIn, widthIn }) => sum + (lengthIn + 0.125) * (widthIn + 0.125),
        0,
      );
      expect(list.leastSheets).toBeGreaterThanOrEqual(Math.ceil(areaIn2 / (96.125 * 48.125)));
      expect(list.leastSheets).toBeLessThanOrEqual(list.sheets.length);
      expect(list.sheets.length - list.leastSheets).toBeLessThanOrEqual(2);
    },
  );

  test('40 panels wider than half a sheet are proved by their lengths alone', () => {
    const asked = Array.from({ length: 40 }, (_, i) => ({
      id: `p${i}`,
      lengthIn: 30 + i / 16,
      widthIn: 25.5,
      mayTurn: false,
    }));
    const list = cutSheets({ pieces: asked, sheet: SHEET, kerfIn: 0.125 });
    expect(faultsOf(list, asked, 0.125)).toEqual([]);
    // 30 to 31-5/8 in lie three to a sheet, 31-15/16 in and more two: (96.125 - .125 x 3) / 3 is 31.92 in.
    expect(list.leastSheets).toBeGreaterThanOrEqual(14);
    expect(list.proof.isProved).toBe(list.sheets.length === list.leastSheets);
  });
});
