import { describe, expect, test } from 'vitest';
import { TAPE_PAST_IN } from '../../../src-core/boards';
import { jobSchema } from '../../../src-core/job';
import {
  circlePoints,
  differenceAreaIn2,
  distanceIn,
  intersectionAreaIn2,
  loopsAreaIn2,
  nearestOnOutline,
  regionAreaIn2,
  signedAreaIn2,
} from '../../../src-core/outline';
import { randomJob } from '../../support/random-job';
import { seededRandom } from '../../support/seeded-random';
import { boardsOf, COUNTER, ELL, exampleJob, regionOf, slabOf } from './jobs';

const sizes = (boards: ReturnType<typeof boardsOf>) =>
  boards.parts.map(({ widthIn, depthIn }) => [widthIn, depthIn]);

describe('a counter of 96 x 25-1/2 in on boards of 60 x 36 in', () => {
  const boards = boardsOf(slabOf(COUNTER));

  test('takes two boards, and no fewer can be', () => {
    // 96 x 25.5 = 2448 in2, one board 60 x 36 = 2160 in2.
    expect(boards.boardCount).toBe(2);
    expect(boards.leastBoards).toBe(2);
    expect(boards.isProvedFewest).toBe(true);
    expect(boards.isCuttingProved).toBe(true);
    expect(boards.wasteRatio).toBeCloseTo(1 - 2448 / 4320, 12);
  });

  test('has one seam across it, 25-1/2 in long, 36 in from one end', () => {
    expect(sizes(boards)).toEqual([
      [60, 25.5],
      [36, 25.5],
    ]);
    expect(boards.seams.map(({ a, b }) => [a.xIn, b.xIn])).toEqual([[60, 60]]);
    expect(boards.seamIn).toBeCloseTo(25.5, 9);
    expect(boards.tapeIn).toBeCloseTo(25.5 + 2 * TAPE_PAST_IN, 9);
  });

  test('is sawn with one cut a part, 25-1/2 in from the end of one board and from the side of the other', () => {
    // The shorter part is turned: 25.5 in along the board and 36 in, its whole width, across.
    const cuts = boards.boards.map((board) => board.cuts.map(({ runs, atIn }) => [runs, atIn]));
    expect(cuts).toEqual([[['across', 25.5]], [['along', 25.5]]]);
    expect(boards.parts.map(({ placed }) => placed.isTurned)).toEqual([false, true]);
    expect(boards.parts.every(({ shapeCuts }) => shapeCuts.length === 0)).toBe(true);
    const offcutsIn2 = boards.boards
      .flatMap(({ offcuts }) => offcuts)
      .reduce((sum, { lengthIn, widthIn }) => sum + lengthIn * widthIn, 0);
    expect(offcutsIn2).toBeCloseTo(4320 - 2448, 6);
  });

  test('marks each part with the face that lies up and the edge that lies in front', () => {
    for (const { mark, widthIn } of boards.parts) {
      expect(mark).toMatchObject({ onFace: 'This face up', onFrontEdge: 'This edge to the front' });
      expect(mark!.frontEdgeIn).toBe(widthIn);
      expect(distanceIn(mark!.frontEdge.a, mark!.frontEdge.b)).toBeCloseTo(widthIn, 9);
    }
  });
});

describe('boards that are not sawn', () => {
  test('120 x 36 in takes two whole boards without a cut or a mark', () => {
    const boards = boardsOf(
      slabOf([
        [0, 0],
        [120, 0],
        [120, 36],
        [0, 36],
      ]),
    );
    expect(boards.boardCount).toBe(2);
    expect(boards.parts.map(({ isFull, mark }) => [isFull, mark])).toEqual([
      [true, null],
      [true, null],
    ]);
    expect(boards.boards.flatMap(({ cuts }) => cuts)).toEqual([]);
    expect(boards.wasteRatio).toBeCloseTo(0, 12);
  });

  test('a slab of 36 x 60 in takes one, laid the other way', () => {
    const boards = boardsOf(
      slabOf([
        [0, 0],
        [36, 0],
        [36, 60],
        [0, 60],
      ]),
    );
    expect(boards.lengthAlong).toBe('y');
    expect(boards.parts.map(({ isFull }) => isFull)).toEqual([true]);
  });
});

describe('the stock', () => {
  const board = { id: 'own', name: 'Own board', kind: 'board', lengthIn: 48, widthIn: 96 } as const;

  test('gives the board where it has one with a size and the right thickness, its longer side along', () => {
    const job = slabOf(COUNTER, {}, { stock: [{ ...board, id: 'thick', thicknessIn: 1 }, board] });
    expect(boardsOf(job).board).toEqual({ stockId: 'own', lengthIn: 96, widthIn: 48, thicknessIn: 0.5 });
    expect(boardsOf(job).boardCount).toBe(1);
  });

  test('a kerf makes 24 in boards fall short: two parts 24 in wide no longer come from one of 48 in', () => {
    const stock = [{ ...board, lengthIn: 60, widthIn: 48 }];
    const slab = [
      [0, 0],
      [120, 0],
      [120, 24],
      [0, 24],
    ] as const;
    expect(boardsOf(slabOf(slab, {}, { stock })).boardCount).toBe(1);
    expect(boardsOf(slabOf(slab, {}, { stock, forms: { kerfIn: 0.125 } })).boardCount).toBe(2);
  });

  test('no backing board, no boards', () => {
    expect(() => boardsOf(slabOf(COUNTER, {}, { falsework: { backingBoardIn: 0 } }))).toThrow('no boards');
  });
});

const SINK = {
  id: 'sink',
  purpose: 'sink',
  shape: { kind: 'rectangle', centre: { xIn: 60, yIn: 12 }, widthIn: 30, depthIn: 16, radiusIn: 2 },
} as const;
const TAP = {
  id: 'tap',
  purpose: 'tap',
  shape: { kind: 'circle', centre: { xIn: 61, yIn: 22.5 }, diameterIn: 1.5 },
} as const;
const BASIN = {
  id: 'basin',
  purpose: 'sink',
  shape: { kind: 'circle', centre: { xIn: 60, yIn: 12.75 }, diameterIn: 15 },
} as const;

const TURNED = [
  [0, 0],
  [80, 60],
  [65, 80],
  [-15, 20],
] as const;

const JOBS = {
  'a counter': slabOf(COUNTER),
  'a counter round a sink and a tap': slabOf(COUNTER, { cutouts: [SINK, TAP] }),
  'a counter round a basin': slabOf(COUNTER, { cutouts: [BASIN] }),
  'an L': slabOf(ELL),
  'an L with a sink': slabOf(ELL, { cutouts: [SINK] }),
  'an L rounded at its inside corner': slabOf([
    [0, -60],
    [25.5, -60],
    [25.5, 0, 3],
    [121.5, 0],
    [121.5, 25.5],
    [0, 25.5],
  ]),
  'a counter turned out of square': slabOf(TURNED),
  'a table 90 x 70 in': slabOf([
    [0, 0],
    [90, 0],
    [90, 70],
    [0, 70],
  ]),
  'a disc of 72 in': slabOf([
    [0, 0, 36],
    [72, 0, 36],
    [72, 72, 36],
    [0, 72, 36],
  ]),
  'the galley counter': exampleJob('boathouse-galley'),
};

describe.each(Object.entries(JOBS))('%s', (_, job) => {
  const region = regionOf(job);
  const boards = boardsOf(job);

  test('is covered to its area, by parts that lie under it and apart from each other', () => {
    const sumIn2 = boards.parts.reduce((sum, { areaIn2 }) => sum + areaIn2, 0);
    expect(Math.abs(sumIn2 - regionAreaIn2(region))).toBeLessThan(1e-6);
    boards.parts.forEach(({ inPlan, areaIn2 }, i) => {
      expect(loopsAreaIn2([inPlan.outer, ...inPlan.holes])).toBeCloseTo(areaIn2, 6);
      expect(differenceAreaIn2(inPlan, region)).toBeLessThan(1e-5);
      for (const other of boards.parts.slice(i + 1)) {
        expect(intersectionAreaIn2(inPlan, other.inPlan)).toBeLessThan(1e-5);
      }
    });
  });

  test('is cut from boards that hold every part, none over another', () => {
    const { lengthIn, widthIn } = boards.board;
    const sheet = {
      outer: [
        [0, 0],
        [lengthIn, 0],
        [lengthIn, widthIn],
        [0, widthIn],
      ].map(([xIn, yIn]) => ({ xIn: xIn!, yIn: yIn! })),
      holes: [],
    };
    boards.parts.forEach(({ onBoard, placed, areaIn2 }, i) => {
      expect(placed.board).toBeLessThan(boards.boardCount);
      expect(loopsAreaIn2([onBoard.outer, ...onBoard.holes])).toBeCloseTo(areaIn2, 5);
      expect(differenceAreaIn2(onBoard, sheet)).toBeLessThan(1e-4);
      for (const other of boards.parts.slice(i + 1)) {
        if (other.placed.board !== placed.board) continue;
        expect(intersectionAreaIn2(onBoard, other.onBoard)).toBeLessThan(1e-4);
      }
    });
  });

  test('has its seams 3 in or more off every corner of an opening and inside corner', () => {
    expect(boards.findings.map(({ about, level }) => [about, level])).toEqual([
      ['corner', 'ok'],
      ['edge', 'ok'],
      ['overhang', 'ok'],
      ['fewest-boards', 'ok'],
    ]);
    const corners = [...region.holes.flat(), ...insideOf(job)];
    for (const { a, b } of boards.seams) {
      for (const corner of corners) {
        expect(nearestOnOutline(corner, [a, b]).distanceIn).toBeGreaterThan(3 - 1e-5);
      }
    }
  });

  test('has seams as long as half of what its parts are round, less the slab itself', () => {
    const roundIn = (loops: readonly (readonly { xIn: number; yIn: number }[])[]) =>
      loops.reduce(
        (sum, loop) => sum + loop.reduce((s, p, i) => s + distanceIn(p, loop[(i + 1) % loop.length]!), 0),
        0,
      );
    const parts = boards.parts.reduce((sum, { inPlan }) => sum + roundIn([inPlan.outer, ...inPlan.holes]), 0);
    expect(boards.seamIn).toBeCloseTo((parts - roundIn([region.outer, ...region.holes])) / 2, 4);
  });

  test('draws a part that is cut from the back left for right, of the same area and the same front edge', () => {
    for (const { shape, mark, areaIn2, widthIn } of boards.parts) {
      if (mark === null) continue;
      const { faceDown } = mark;
      expect(signedAreaIn2(faceDown.outer)).toBeCloseTo(-signedAreaIn2(shape.outer), 9);
      expect(loopsAreaIn2([faceDown.outer, ...faceDown.holes])).toBeCloseTo(-areaIn2, 5);
      shape.outer.forEach(({ xIn, yIn }, i) => {
        expect(faceDown.outer[i]!.xIn).toBeCloseTo(widthIn - xIn, 9);
        expect(faceDown.outer[i]!.yIn).toBe(yIn);
      });
    }
  });

  test('names every part and seam once', () => {
    const ids = [...boards.parts, ...boards.seams].map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
  });
});

/** The inside corner of an L, as drawn. */
function insideOf(job: ReturnType<typeof slabOf>) {
  const { corners } = job.pieces[0]!;
  return corners.length === 6 ? [corners[2]!] : [];
}

describe('what is sawn within a part', () => {
  test('a sink wholly within a board is sawn as four straight cuts and four rounded corners', () => {
    const stock = [{ id: 'b', name: 'Board', kind: 'board', lengthIn: 96, widthIn: 48 }] as const;
    const { parts } = boardsOf(slabOf(COUNTER, { cutouts: [SINK] }, { stock: [...stock] }));
    const kinds = parts[0]!.shapeCuts.map(({ kind }) => kind).sort();
    expect(kinds).toEqual(['curve', 'curve', 'curve', 'curve', 'level', 'level', 'upright', 'upright']);
    // The sink's front lies at 12 - 8 = 4 in, its left side at 60 - 15 = 45 in; straight lengths are 30 - 4 and 16 - 4.
    const level = parts[0]!.shapeCuts.filter(({ kind }) => kind === 'level');
    expect(level.map(({ offsetIn, lengthIn }) => [offsetIn, lengthIn]).sort()).toEqual([
      [20, 26],
      [4, 26],
    ]);
    const upright = parts[0]!.shapeCuts.filter(({ kind }) => kind === 'upright');
    expect(upright.map(({ offsetIn, lengthIn }) => [offsetIn, lengthIn]).sort()).toEqual([
      [45, 12],
      [75, 12],
    ]);
  });

  test('a round basin is one curve, as long as its circle but for the chords', () => {
    const stock = [{ id: 'b', name: 'Board', kind: 'board', lengthIn: 96, widthIn: 48 }] as const;
    const { parts } = boardsOf(slabOf(COUNTER, { cutouts: [BASIN] }, { stock: [...stock] }));
    expect(parts[0]!.shapeCuts.map(({ kind }) => kind)).toEqual(['curve']);
    const circle = circlePoints({ xIn: 0, yIn: 0 }, 7.5, 1 / 64);
    const chordsIn = circle.reduce((sum, p, i) => sum + distanceIn(p, circle[(i + 1) % circle.length]!), 0);
    expect(parts[0]!.shapeCuts[0]!.lengthIn).toBeCloseTo(chordsIn, 6);
  });
});

test('the boards of 20 random pieces add up to the slab within 1e-6 in2, each on a board of the list', () => {
  for (let seed = 1; seed <= 20; seed++) {
    const job = jobSchema.parse(randomJob(seededRandom(seed)));
    const boards = boardsOf(job);
    const sumIn2 = boards.parts.reduce((sum, { areaIn2 }) => sum + areaIn2, 0);
    expect(Math.abs(sumIn2 - regionAreaIn2(regionOf(job))), `seed ${seed}`).toBeLessThan(1e-6);
    const used = new Set(boards.parts.map(({ placed }) => placed.board));
    expect(used.size, `seed ${seed}`).toBe(boards.boardCount);
    expect(boards.boardCount, `seed ${seed}`).toBeGreaterThanOrEqual(boards.leastBoards);
  }
});
