import { describe, expect, test } from 'vitest';
import type { Check } from '../../../src-core/checks';
import type { PieceResult } from '../../../src-core/verdict';
import { governingPlace } from '../../../src-renderer/model/governing-place';
import { momentTicks, sagTicks, shareTicks } from '../../../src-renderer/model/legend-ticks';
import { describeModel } from '../../../src-renderer/model/model-words';
import { PERSON_HEIGHT_IN, personOutline, placeForPerson } from '../../../src-renderer/model/person';
import { ballRound, cutAtIn, jobBounds, pieceBounds } from '../../../src-renderer/model/scene-bounds';
import type { ModelOptions } from '../../../src-renderer/state/window-store';
import { readSmallJob } from './model-fixtures';

const job = readSmallJob();
const piece = job.pieces[0]!;
const plain: ModelOptions = {
  map: 'none',
  isSeeThrough: false,
  cutShare: null,
  explodeShare: 0,
  showsReactions: false,
  showsPerson: false,
};

function check(where: Check['where'], ratio: number): Check {
  return {
    id: 'overhang-bending',
    title: 'Bending',
    pieceId: piece.id,
    where,
    demand: { value: ratio * 100, unit: 'lbf-in/in' },
    capacity: { value: 100, unit: 'lbf-in/in' },
    ratio,
    level: 'holds',
    words: 'Worst over the wall edge.',
    needs: [],
    workings: [],
    cautions: [],
  };
}

function result(checks: readonly Check[]): PieceResult {
  return {
    id: piece.id,
    name: piece.name,
    copies: 1,
    areaFt2: 16,
    weightLb: 390,
    centroid: { xIn: 48, yIn: 12 },
    thicknessIn: 2,
    verdict: { level: 'holds', words: 'Holds', why: '', flags: [] },
    checks,
    reactions: [],
    governing: null,
    mesh: null,
    worstOnTheWay: null,
    changes: [],
    triedInVain: [],
    remarks: [],
  };
}

describe('the check that governs', () => {
  test('at the point of the worst check that has one', () => {
    const place = governingPlace(
      result([
        check({ kind: 'piece' }, 0.9),
        check({ kind: 'point', at: { xIn: 30, yIn: 4 } }, 0.7),
        check({ kind: 'point', at: { xIn: 60, yIn: 4 } }, 0.6),
      ]),
    );
    expect(place?.at).toEqual({ xIn: 30, yIn: 4 });
  });

  test('nowhere when no check has a place or only informs', () => {
    expect(governingPlace(result([check({ kind: 'piece' }, 0.9)]))).toBeNull();
    expect(governingPlace(result([check({ kind: 'point', at: { xIn: 1, yIn: 1 } }, 0)]))).toBeNull();
  });
});

describe('the picture in words', () => {
  test('it names the piece, its sizes in the units of the job, and what colours it', () => {
    const words = describeModel({ job, piece, result: null, deflected: null, options: plain });
    expect(words).toContain('Counter with 1 other piece, 2 in thick, its top 36 in above the floor.');
    expect(words).toContain('own colour');
    expect(words).toContain('not been checked yet');
    const metric = { ...job, shownIn: 'metric' as const };
    expect(describeModel({ job: metric, piece, result: null, deflected: null, options: plain })).toContain(
      '51 mm',
    );
  });

  test('with the bending map it gives the verdict and where the worst place is', () => {
    const words = describeModel({
      job,
      piece,
      result: result([check({ kind: 'point', at: { xIn: 30, yIn: 4 } }, 0.7)]),
      deflected: null,
      options: { ...plain, map: 'bending' },
    });
    expect(words).toContain('coloured by bending');
    expect(words).toContain('Holds. Worst over the wall edge.');
  });

  test('a cut, a slab seen through, parts pulled apart and a person are each said', () => {
    const options = { ...plain, cutShare: 0.25, isSeeThrough: true, explodeShare: 0.5, showsPerson: true };
    const words = describeModel({ job, piece, result: null, deflected: null, options });
    for (const part of ['25 %', 'seen through', 'Pulled apart', '68 in tall']) expect(words).toContain(part);
  });
});

describe('numbers of the legend', () => {
  test('shares are 0, 0.5, 0.8 and 1.0', () => {
    expect(shareTicks().map(({ words }) => words)).toEqual(['0', '0.5', '0.8', '1.0']);
  });

  test('with a limit of 200 lbf-in/in they are 0, 100, 160 and 200 lbf-in/in', () => {
    const { ticks, unit } = momentTicks(200, 'imperial');
    expect(ticks.map(({ words }) => words)).toEqual(['0', '100', '160', '200']);
    expect(unit).toBe('lbf-in/in');
  });

  test('in metric the limit of 200 lbf-in/in is 890 N-m/m (1 lbf is 4.448 N)', () => {
    const { ticks, unit } = momentTicks(200, 'metric');
    expect(ticks.at(-1)!.words).toBe('890');
    expect(unit).toBe('N-m/m');
  });

  test('a largest sag of 0.05 in is halved in the middle', () => {
    expect(sagTicks(0.05, 'imperial').map(({ words }) => words)).toEqual(['0', '0.025 in', '0.05 in']);
  });
});

describe('room and scale', () => {
  test('a counter 36 in high reaches from the floor to its top', () => {
    const { least, most } = pieceBounds(piece);
    expect([least[2], most[2]]).toEqual([0, 36]);
    expect(most[0] - least[0]).toBe(96);
  });

  test('the ball round a 3 x 4 x 12 in box is 13 in across', () => {
    expect(ballRound({ least: [0, 0, 0], most: [3, 4, 12] }).radiusIn).toBe(6.5);
  });

  test('half way through a job is the middle of its length, and the ends still cut it', () => {
    const bounds = { least: [-20, 0, 0], most: [100, 10, 10] } as const;
    expect(cutAtIn(bounds, 0.5)).toBe(40);
    expect(cutAtIn(bounds, 0)).toBeGreaterThan(-20);
    expect(cutAtIn(bounds, 1)).toBeLessThan(100);
  });

  test('the figure is 68 in high, stands on the floor and is the same left and right', () => {
    const outline = personOutline();
    const heights = outline.map(([, up]) => up);
    expect(Math.max(...heights)).toBe(PERSON_HEIGHT_IN);
    expect(Math.min(...heights)).toBe(0);
    const across = outline.map(([x]) => x);
    expect(Math.max(...across)).toBe(-Math.min(...across));
  });

  test('the person stands clear of every piece, also where one takes the left', () => {
    const boxes = job.pieces.map(pieceBounds);
    const { xIn, yIn } = placeForPerson(boxes[0]!, boxes);
    for (const { least, most } of boxes) {
      const isOver = xIn > least[0] && xIn < most[0] && yIn > least[1] && yIn < most[1];
      expect(isOver).toBe(false);
    }
    const left = { least: [-60, -10, 0], most: [-2, 40, 36] } as const;
    expect(placeForPerson(boxes[0]!, [boxes[0]!, left]).xIn).toBeGreaterThan(96);
  });

  test('a job is as large as all of its pieces together', () => {
    const all = jobBounds(job);
    for (const { least, most } of job.pieces.map(pieceBounds)) {
      for (const axis of [0, 1, 2] as const) {
        expect(all.least[axis]).toBeLessThanOrEqual(least[axis]);
        expect(all.most[axis]).toBeGreaterThanOrEqual(most[axis]);
      }
    }
  });
});
