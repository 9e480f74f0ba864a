import { describe, expect, test } from 'vitest';
import {
  cutMitred,
  cutSticks,
  type MitredList,
  type MitredPiece,
  type MitredStick,
  mitredRun,
  mitreKerf,
  squareRun,
} from '../../../src-core/cutting';
import { recompute, recomputeTolerance } from '../../support/recompute';
import { diceOf, seededRandom } from '../../support/seeded-random';
import { leastByTrying, stick } from './cutting-cases';

const MITRE = Math.PI / 4;

function mitred(id: string, longIn: number, startRad: number, endRad: number, faceIn = 3.5): MitredPiece {
  return { id, longIn, faceIn, startRad, endRad };
}

function frame(count: number, longIn = 24): MitredPiece[] {
  return Array.from({ length: count }, (_, i) => mitred(`f${i + 1}`, longIn, MITRE, MITRE));
}

/** Where a piece as laid meets the near and the far edge, from the definition of its long points. */
function edgesOf({ atIn, longIn, startRad, endRad }: MitredStick['cuts'][number], faceIn: number) {
  const back = (rad: number) => Math.abs(faceIn * Math.tan(rad));
  const endIn = atIn + longIn;
  return {
    near: [atIn + (startRad < 0 ? back(startRad) : 0), endIn - (endRad < 0 ? back(endRad) : 0)],
    far: [atIn + (startRad > 0 ? back(startRad) : 0), endIn - (endRad > 0 ? back(endRad) : 0)],
  } as const;
}

/** What is wrong with a mitred list, a sentence each. */
function faultsOf(list: MitredList, asked: readonly MitredPiece[], kerfIn: number): string[] {
  const faults: string[] = [];
  const got = [
    ...list.sticks.flatMap(({ cuts }) => cuts.map(({ id }) => id)),
    ...[...list.tooLong, ...list.tooShort].map(({ id }) => id),
  ];
  if (
    got.sort().join() !==
    asked
      .map(({ id }) => id)
      .sort()
      .join()
  )
    faults.push(`pieces ${got.join()}`);
  for (const { cuts, saws, faceIn, stockLengthIn } of list.sticks) {
    const lastIn = Math.max(...cuts.map(({ atIn, longIn }) => atIn + longIn));
    if (lastIn > stockLengthIn + 1e-6) faults.push(`run ${lastIn} on ${stockLengthIn}`);
    for (const cut of cuts) {
      const own = asked.find(({ id }) => id === cut.id)!;
      const turned = cut.isTurned ? [-own.endRad, -own.startRad] : [own.startRad, own.endRad];
      const angles = turned.map((rad) => (cut.isRolled ? -rad : rad));
      const off = Math.max(Math.abs(angles[0]! - cut.startRad), Math.abs(angles[1]! - cut.endRad));
      if (off > 1e-9) faults.push(`${cut.id} lies at ${angles}`);
      const { near, far } = edgesOf(cut, faceIn);
      const made = saws.filter(({ ends }) => ends.includes(cut.id));
      const isAt = (end: 0 | 1) =>
        made.some(
          ({ nearIn, farIn, kerfLies }) =>
            Math.abs(nearIn - near[end]) < 1e-9 &&
            Math.abs(farIn - far[end]) < 1e-9 &&
            (made.length === 1 || kerfLies === (end === 0 ? 'before' : 'after') || made.length === 2),
        );
      const isStickEnd = [
        near[0] === 0 && far[0] === 0,
        near[1] >= stockLengthIn - 1e-6 && far[1] >= stockLengthIn - 1e-6,
      ];
      for (const end of [0, 1] as const) {
        const shared = saws.some(({ ends, nearIn, farIn }) => {
          const kerf = kerfIn * Math.hypot(1, (farIn - nearIn) / faceIn);
          return (
            ends.includes(cut.id) &&
            Math.abs(nearIn + kerf - near[end]) < 1e-9 &&
            Math.abs(farIn + kerf - far[end]) < 1e-9
          );
        });
        if (!isStickEnd[end] && !isAt(end) && !shared) faults.push(`${cut.id} has no cut at end ${end}`);
      }
    }
    cuts.slice(1).forEach((after, i) => {
      const before = edgesOf(cuts[i]!, faceIn);
      const behind = edgesOf(after, faceIn);
      const isParted = saws.some(({ nearIn, farIn, kerfLies }) => {
        const kerf = kerfIn * Math.hypot(1, (farIn - nearIn) / faceIn);
        const from = kerfLies === 'after' ? 0 : -kerf;
        return (
          nearIn + from >= before.near[1] - 1e-9 &&
          farIn + from >= before.far[1] - 1e-9 &&
          nearIn + from + kerf <= behind.near[0] + 1e-9 &&
          farIn + from + kerf <= behind.far[0] + 1e-9
        );
      });
      if (!isParted) faults.push(`no saw passes between ${cuts[i]!.id} and ${after.id}`);
    });
  }
  return faults;
}

// 13.5 of the engineering basis: 4 (24 - 3.5) + 3 x 1/8 x sqrt 2 + 3.5 = 86.03 in; five 106.71 in; apart 4 x 24 + 3/8 = 96.375 in.
describe('13.5: 24 in pieces mitred at 45 degrees, face 3-1/2 in, kerf 1/8 in', () => {
  const run = (n: number) => mitredRun({ n, l: 24, f: 3.5, a: MITRE, k: 0.125 });

  test('four that share their cuts take 86.03 in, five 106.71 in, four cut apart 96.375 in', () => {
    expect(Math.abs(run(4).value - 86.0303)).toBeLessThan(1e-4);
    expect(Math.abs(run(5).value - 106.7071)).toBeLessThan(1e-4);
    expect(squareRun({ n: 4, l: 24, k: 0.125 }).value).toBe(96.375);
    expect(mitreKerf({ k: 0.125, a: MITRE }).value).toBeCloseTo(0.125 * Math.SQRT2, 12);
  });

  test('the workings come out again from their printed numbers', () => {
    const lines = [run(4), squareRun({ n: 4, l: 24, k: 0.125 }), mitreKerf({ k: 0.125, a: 0.3927 })];
    for (const { line } of lines) {
      expect(Math.abs(recompute(line) - line.value)).toBeLessThanOrEqual(recomputeTolerance(line));
    }
  });

  test('four come from a 96 in stick, turned in turn, with three shared cuts, and five from two', () => {
    const asked = frame(4);
    const list = cutMitred({ pieces: asked, stocks: [stick(96)], kerfIn: 0.125 });
    expect(faultsOf(list, asked, 0.125)).toEqual([]);
    expect(list.proof.words).toBe('fewest sticks, proved');
    const [only, ...others] = list.sticks;
    expect(others).toEqual([]);
    expect(only!.cuts.map(({ isTurned }) => isTurned)).toEqual([false, true, false, true]);
    expect(only!.saws.map(({ ends }) => ends.length)).toEqual([1, 2, 2, 2, 1]);
    const last = only!.cuts.at(-1)!;
    expect(Math.abs(last.atIn + last.longIn - run(4).value)).toBeLessThan(1e-9);
    // Each shared cut saves the face less what the saw takes more at a mitre than square.
    const savedIn = squareRun({ n: 4, l: 24, k: 0.125 }).value - run(4).value;
    expect(Math.abs(savedIn - 3 * (3.5 - 0.125 * (Math.SQRT2 - 1)))).toBeLessThan(1e-9);
    expect(cutMitred({ pieces: frame(5), stocks: [stick(96)], kerfIn: 0.125 }).sticks).toHaveLength(2);
  });

  test('without shared cuts only three would', () => {
    const square = frame(4).map(({ id, longIn }) => ({ id, lengthIn: longIn }));
    expect(cutSticks({ pieces: square, stocks: [stick(96)], kerfIn: 0.125 }).sticks).toHaveLength(2);
  });
});

describe('mitred pieces', () => {
  test('of an outside and an inside corner lean alike and need no turning', () => {
    const asked = [1, 2, 3].map((i) => mitred(`p${i}`, 20, MITRE, -MITRE, 1));
    const list = cutMitred({ pieces: asked, stocks: [stick(96)], kerfIn: 0.125 });
    expect(faultsOf(list, asked, 0.125)).toEqual([]);
    const last = list.sticks[0]!.cuts.at(-1)!;
    // Each takes 20 in to its long points, less the 1 in that it nests, and 1/8 x sqrt 2 of saw.
    expect(Math.abs(last.atIn + last.longIn - (60 - 2 + 0.25 * Math.SQRT2))).toBeLessThan(1e-9);
  });

  test('with a butt end are joined mitre to mitre where one can be turned to meet the other', () => {
    const asked = [mitred('a', 40, MITRE, 0), mitred('b', 40, MITRE, 0)];
    const list = cutMitred({ pieces: asked, stocks: [stick(96)], kerfIn: 0.125 });
    const { saws, offcutIn } = list.sticks[0]!;
    expect(faultsOf(list, asked, 0.125)).toEqual([]);
    expect(saws.map(({ ends }) => ends.length)).toEqual([2, 1]);
    expect(Math.abs(offcutIn - (96 - 80 + 3.5 - 0.125 * Math.SQRT2 - 0.125))).toBeLessThan(1e-9);
  });

  test('of either hand meet only where one may be rolled over', () => {
    const asked = [mitred('a', 40, MITRE, 0), mitred('b', 40, 0, MITRE)];
    const faceUp = cutMitred({ pieces: asked, stocks: [stick(96)], kerfIn: 0.125 });
    const rolled = cutMitred({ pieces: asked, stocks: [stick(96)], kerfIn: 0.125, mayRoll: true });
    expect([faceUp, rolled].map((list) => faultsOf(list, asked, 0.125))).toEqual([[], []]);
    expect(faceUp.sticks[0]!.cuts.some(({ isRolled }) => isRolled)).toBe(false);
    expect(rolled.sticks[0]!.cuts.filter(({ isRolled }) => isRolled)).toHaveLength(1);
    const lengthIn = ({ sticks }: MitredList) => sticks[0]!.cuts[1]!.atIn + 40;
    expect(lengthIn(faceUp)).toBeCloseTo(80.125, 9);
    expect(lengthIn(rolled)).toBeCloseTo(80 - 3.5 + 0.125 * Math.SQRT2, 9);
  });

  test('at 22-1/2 and 45 degrees share the lesser, and the steeper is mitred after', () => {
    const asked = [mitred('a', 40, 0, MITRE), mitred('b', 40, -MITRE / 2, 0)];
    const list = cutMitred({ pieces: asked, stocks: [stick(96)], kerfIn: 0.125 });
    expect(faultsOf(list, asked, 0.125)).toEqual([]);
    const last = list.sticks[0]!.cuts.at(-1)!;
    const wanted = 80 - 3.5 * Math.tan(MITRE / 2) + 0.125 / Math.cos(MITRE / 2);
    expect(Math.abs(last.atIn + last.longIn - wanted)).toBeLessThan(1e-9);
  });

  test('too long for the stock, or too short for their mitres, are told apart', () => {
    const asked = [
      mitred('long', 97, 0, 0),
      mitred('short', 6, MITRE, MITRE),
      mitred('right', 7, MITRE, MITRE),
    ];
    const list = cutMitred({ pieces: asked, stocks: [stick(96)], kerfIn: 0.125 });
    expect(list.tooLong.map(({ id }) => id)).toEqual(['long']);
    expect(list.tooShort.map(({ id }) => id)).toEqual(['short']);
    expect(list.sticks).toHaveLength(1);
  });

  test('of two faces are not cut from one stick', () => {
    const asked = [mitred('a', 20, 0, 0, 3.5), mitred('b', 20, 0, 0, 1.5)];
    expect(() => cutMitred({ pieces: asked, stocks: [stick(96)], kerfIn: 0.125 })).toThrow('1.5 in across');
  });
});

/** Length of stick from one piece's last point to the next one's first, by trying every saw angle that an end asks for. */
function gapIn(
  before: readonly [number, number],
  after: readonly [number, number],
  faceIn: number,
  kerfIn: number,
): number {
  // Ends as (near, far) places with their outermost point at nought; the gap is how far the next piece moves off.
  const leans = [0, (before[1] - before[0]) / faceIn, (after[1] - after[0]) / faceIn];
  return Math.min(
    ...leans.map((lean) => {
      const kerf = kerfIn * Math.hypot(1, lean);
      const sawNear = Math.max(before[0], before[1] - lean * faceIn);
      return Math.max(sawNear + kerf - after[0], sawNear + lean * faceIn + kerf - after[1]);
    }),
  );
}

function shortestRunIn(group: readonly MitredPiece[], kerfIn: number, mayRoll: boolean): number {
  const back = (rad: number, faceIn: number): [number, number] => {
    const offIn = Math.abs(Math.tan(rad)) * faceIn;
    return rad > 0 ? [0, offIn] : [offIn * (rad < 0 ? 1 : 0), 0];
  };
  const ways = ({ startRad, endRad, faceIn }: MitredPiece) =>
    [
      [startRad, endRad],
      [-endRad, -startRad],
      ...(mayRoll
        ? [
            [-startRad, -endRad],
            [endRad, startRad],
          ]
        : []),
    ].map(([start, end]) => ({
      start: back(start!, faceIn),
      end: back(end!, faceIn).map((offIn) => -offIn) as [number, number],
    }));
  const walk = (left: readonly MitredPiece[], end: readonly [number, number] | null): number => {
    if (left.length === 0) return 0;
    return Math.min(
      ...left.flatMap((piece, i) =>
        ways(piece).map(
          (way) =>
            piece.longIn +
            (end === null ? 0 : gapIn(end, way.start, piece.faceIn, kerfIn)) +
            walk(left.toSpliced(i, 1), way.end),
        ),
      ),
    );
  };
  return walk(group, null);
}

describe('60 small lists of mitred pieces', () => {
  test('come to as few sticks as trying every order and turn gives', () => {
    for (let seed = 1; seed <= 60; seed++) {
      const dice = diceOf(seededRandom(seed));
      const angle = () => dice.pick([0, MITRE, MITRE, -MITRE, MITRE / 2]);
      const asked = Array.from({ length: dice.whole(2, 5) }, (_, i) =>
        mitred(`p${i}`, dice.sixteenths(12, 60), angle(), angle(), 3.5),
      );
      const mayRoll = dice.chance(0.4);
      const list = cutMitred({ pieces: asked, stocks: [stick(96)], kerfIn: 0.125, mayRoll });
      const fewest = leastByTrying(asked.length, (group) =>
        shortestRunIn(
          group.map((i) => asked[i]!),
          0.125,
          mayRoll,
        ) <=
        96 + 1e-9
          ? 1
          : Number.POSITIVE_INFINITY,
      );
      expect([seed, faultsOf(list, asked, 0.125), list.sticks.length]).toEqual([seed, [], fewest]);
    }
  });
});

describe('long lists of mitred pieces', () => {
  test.each([1, 2, 3])(
    '60 pieces (seed %d) take no more sticks than cut apart, and no fewer than the bound',
    (seed) => {
      const dice = diceOf(seededRandom(seed));
      const asked = Array.from({ length: 60 }, (_, i) =>
        mitred(`p${i}`, dice.sixteenths(14, 50), dice.pick([0, MITRE]), dice.pick([0, MITRE, -MITRE])),
      );
      const list = cutMitred({ pieces: asked, stocks: [stick(96)], kerfIn: 0.125 });
      expect(faultsOf(list, asked, 0.125)).toEqual([]);
      const apart = cutSticks({
        pieces: asked.map(({ id, longIn }) => ({ id, lengthIn: longIn })),
        stocks: [stick(96)],
        kerfIn: 0.125,
      });
      expect(list.sticks.length).toBeLessThanOrEqual(apart.sticks.length);
      expect(list.proof.leastTotal).toBeLessThanOrEqual(list.sticks.length);
      // Wood that is in the pieces themselves: their mean length fills so much of the sticks.
      const woodIn = asked.reduce(
        (sum, { longIn, startRad, endRad }) =>
          sum + longIn - (3.5 * (Math.abs(Math.tan(startRad)) + Math.abs(Math.tan(endRad)))) / 2,
        0,
      );
      expect(list.proof.leastTotal).toBeGreaterThanOrEqual(Math.floor(woodIn / 96));
    },
  );

  test('from priced stocks come to no more than cut apart', () => {
    const dice = diceOf(seededRandom(9));
    const asked = Array.from({ length: 30 }, (_, i) =>
      mitred(`p${i}`, dice.sixteenths(14, 50), MITRE, MITRE, 1.5),
    );
    const stocks = [
      { id: 'short', lengthIn: 96, price: 4 },
      { id: 'long', lengthIn: 144, price: 5.5 },
    ];
    const list = cutMitred({ pieces: asked, stocks, kerfIn: 0.125 });
    expect(faultsOf(list, asked, 0.125)).toEqual([]);
    const apart = cutSticks({
      pieces: asked.map(({ id, longIn }) => ({ id, lengthIn: longIn })),
      stocks,
      kerfIn: 0.125,
    });
    expect(list.aim).toBe('price');
    expect(list.proof.total).toBeLessThanOrEqual(apart.proof.total);
    expect(list.sticks.reduce((sum, { price }) => sum + price!, 0)).toBeCloseTo(list.proof.total, 9);
  });
});
