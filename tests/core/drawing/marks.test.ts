import { describe, expect, test } from 'vitest';
import {
  insideCornerMarks,
  namePoint,
  planBounds,
  seamMarks,
  supportCentre,
} from '../../../src-core/drawing';
import { jobOf, pieceOf, rectangle } from './pieces';

const ell = [
  [0, 0],
  [96, 0],
  [96, 25],
  [25, 25],
  [25, 80],
  [0, 80],
].map(([xIn, yIn]) => ({ xIn: xIn!, yIn: yIn! }));

test('an L has one inside corner, a rectangle none', () => {
  expect(insideCornerMarks(pieceOf({ corners: ell }))).toEqual([{ corner: 3, at: { xIn: 25, yIn: 25 } }]);
  expect(insideCornerMarks(pieceOf({}))).toEqual([]);
});

describe('seams', () => {
  const free = { kind: 'free' as const };

  test('a butted edge is a seam only where the other piece lies along it', () => {
    const butted = { kind: 'butted' as const, toPieceId: 'piece-2' };
    const job = jobOf(
      { edges: [free, butted, free, free] },
      { name: 'Return', corners: rectangle(96.125, 5, 30, 60) },
    );
    expect(seamMarks(job, job.pieces[0]!)).toEqual([
      {
        key: 'butted-1',
        kind: 'butted',
        from: { xIn: 96, yIn: 5 },
        to: { xIn: 96, yIn: 25.5 },
        widthIn: 0.125,
        words: 'Butted to Return',
      },
    ]);
  });

  test('a piece moved 6 in away makes no seam any more', () => {
    const butted = { kind: 'butted' as const, toPieceId: 'piece-2' };
    const job = jobOf({ edges: [free, butted, free, free] }, { corners: rectangle(102, 5, 30, 60) });
    expect(seamMarks(job, job.pieces[0]!)).toEqual([]);
  });

  test('a control joint is one', () => {
    const joint = {
      id: 'j',
      kind: 'control' as const,
      from: { xIn: 48, yIn: 0 },
      to: { xIn: 48, yIn: 25.5 },
    };
    const job = jobOf({ joints: [joint] });
    expect(seamMarks(job, job.pieces[0]!)).toMatchObject([{ key: 'joint-j', words: 'Control joint' }]);
  });
});

test('the bounds of a plan hold every piece and the supports that stand out from under it', () => {
  const job = jobOf(
    { supports: [{ kind: 'leg', id: 'leg', centre: { xIn: 0, yIn: 10 }, widthIn: 4, depthIn: 4 }] },
    { corners: rectangle(100, -30, 40, 20) },
  );
  expect(planBounds(job)).toEqual({ minXIn: -2, minYIn: -30, maxXIn: 140, maxYIn: 25.5 });
});

test('the name of an L whose centroid is off the concrete stands in its wider arm', () => {
  const thin = [
    [0, 0],
    [100, 0],
    [100, 10],
    [10, 10],
    [10, 100],
    [0, 100],
  ].map(([xIn, yIn]) => ({ xIn: xIn!, yIn: yIn! }));
  const { xIn, yIn } = namePoint(pieceOf({ corners: thin }));
  expect(xIn > 0 && yIn > 0 && (xIn < 10 || yIn < 10)).toBe(true);
});

test('a cabinet turned a quarter has its middle to the left of its front', () => {
  const piece = pieceOf({
    supports: [
      { kind: 'cabinet', id: 'c', corner: { xIn: 24, yIn: 0 }, angleDeg: 90, widthIn: 30, depthIn: 24 },
    ],
  });
  const centre = supportCentre(piece.supports[0]!);
  expect(centre?.xIn).toBeCloseTo(12, 9);
  expect(centre?.yIn).toBeCloseTo(15, 9);
});
