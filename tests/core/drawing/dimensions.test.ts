import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { preparePiece } from '../../../src-core/analysis';
import {
  cutoutDimensions,
  cutoutSizeDimensions,
  edgeDimensions,
  overhangDimensions,
  pieceDimensions,
  supportChains,
} from '../../../src-core/drawing';
import type { Job } from '../../../src-core/job';
import { readJobText } from '../../../src-core/job';
import { pieceOf, rectangle } from './pieces';

const cabinet = (id: string, xIn: number, widthIn: number) => ({
  kind: 'cabinet' as const,
  id,
  corner: { xIn, yIn: 1.5 },
  widthIn,
  depthIn: 24,
});

function exampleJob(name: string): Job {
  const read = readJobText(readFileSync(`assets/jobs/${name}.json`, 'utf8'));
  if (!read.ok) throw new Error(read.problems[0]?.sentence ?? name);
  return read.job;
}

describe('edge dimensions', () => {
  test('a 96 x 25-1/2 in piece has four, all outside it', () => {
    const dimensions = edgeDimensions(pieceOf({}));
    expect(dimensions.map(({ lengthIn }) => lengthIn)).toEqual([96, 25.5, 96, 25.5]);
    expect(dimensions.map(({ place }) => place)).toEqual(
      [
        [0, -1],
        [1, 0],
        [0, 1],
        [-1, 0],
      ].map(([x, y]) => ({
        kind: 'beside',
        outward: { x: expect.closeTo(x!), y: expect.closeTo(y!) },
        row: 0,
      })),
    );
  });

  test('drawn the other way round they stand outside all the same', () => {
    const corners = rectangle(0, 0, 96, 25.5).reverse();
    for (const { from, to, place } of edgeDimensions(pieceOf({ corners }))) {
      if (place.kind !== 'beside') throw new Error('an edge is measured beside it');
      const out = {
        xIn: (from.xIn + to.xIn) / 2 + place.outward.x,
        yIn: (from.yIn + to.yIn) / 2 + place.outward.y,
      };
      expect(out.xIn < 0 || out.xIn > 96 || out.yIn < 0 || out.yIn > 25.5).toBe(true);
    }
  });

  test('an edge with a chain stands in the row beyond it', () => {
    const piece = pieceOf({ supports: [cabinet('b1', 0, 36), cabinet('b2', 36, 36)] });
    const front = pieceDimensions(piece).find(({ key }) => key === 'edge-0');
    const back = pieceDimensions(piece).find(({ key }) => key === 'edge-2');
    expect(front?.place).toMatchObject({ row: 1 });
    expect(back?.place).toMatchObject({ row: 0 });
  });
});

describe('support chains', () => {
  test('two 36 in cabinets from the left end of 96 in leave 24 in', () => {
    const chain = supportChains(pieceOf({ supports: [cabinet('b1', 0, 36), cabinet('b2', 36, 36)] }));
    expect(chain.map(({ lengthIn }) => lengthIn)).toEqual([36, 36, 24]);
    expect(chain.map(({ sets }) => sets?.kind ?? null)).toEqual([
      'support-width',
      'support-width',
      'support-place',
    ]);
  });

  test('brackets at 16 in are counted from the wall side, and the first length moves the row', () => {
    const piece = pieceOf({
      corners: rectangle(0, 0, 48, 12),
      supports: [
        {
          kind: 'bracket',
          id: 'arms',
          roots: [8, 24, 40].map((xIn) => ({ xIn, yIn: 12 })),
          directionDeg: 270,
          reachIn: 10,
          seatWidthIn: 2,
          heelIn: 6,
          arm: { kind: 'flat-bar', widthIn: 2, depthIn: 0.5, yieldPsi: 36_000 },
          backing: 'timber-stud',
          fixing: { kind: 'rated', ratedLoadLbf: 200, ratedAtIn: 8, ratedBy: 'maker' },
        },
      ],
    });
    const chain = supportChains(piece);
    expect(chain.map(({ lengthIn }) => lengthIn)).toEqual([8, 16, 16, 8]);
    expect(chain.every(({ from }) => from.yIn === 12)).toBe(true);
    // edge 3 runs from right to left, so its first length grows towards the left
    expect(chain[0]?.sets).toMatchObject({ kind: 'support-place', id: 'arms', along: { x: -1 } });
    expect(chain[1]?.sets).toBeNull();
  });

  test('two piers under a 46 in hearth are set out along its front, not its end', () => {
    const chain = supportChains(exampleJob('hearth').pieces[0]!);
    expect(chain.map(({ lengthIn }) => lengthIn)).toEqual([4, 38, 4]);
    expect(chain.every(({ from, to }) => from.yIn === to.yIn)).toBe(true);
  });

  test('legs that come out again are not in it, and a wall along the edge has no place on it', () => {
    const piece = pieceOf({
      supports: [
        { kind: 'leg', id: 'leg', centre: { xIn: 30, yIn: 2 }, lastDay: 40 },
        {
          kind: 'wall',
          id: 'wall',
          build: 'stud',
          from: { xIn: 0, yIn: 4 },
          to: { xIn: 96, yIn: 4 },
          widthIn: 5.5,
        },
      ],
    });
    expect(supportChains(piece)).toEqual([]);
  });
});

describe('overhang dimensions', () => {
  test('the bar ledge reaches 11 in past its wall and 1 in behind it', () => {
    const dimensions = overhangDimensions(exampleJob('bar-ledge').pieces[0]!);
    const lengths = new Map(dimensions.map(({ key, lengthIn }) => [key, lengthIn]));
    expect(lengths.get('overhang-0')).toBeCloseTo(1, 6);
    expect(lengths.get('overhang-2')).toBeCloseTo(11, 6);
    expect(lengths.size).toBe(2);
  });

  test('on every piece of the example job they are no longer than those of the load check', () => {
    const job = exampleJob('boathouse-galley');
    let read = 0;
    for (const piece of job.pieces) {
      const result = preparePiece(job, piece, { day: null, meshSizeIn: 3 });
      if (!result.ok) continue;
      for (const { edge, lengthIn } of overhangDimensions(piece).map((one) => ({
        edge: Number(one.key.split('-')[1]),
        lengthIn: one.lengthIn,
      }))) {
        const checked = result.prepared.shape.overhangs.find((one) => one.edge === edge);
        expect(lengthIn, `${piece.id} edge ${edge}`).toBeLessThanOrEqual((checked?.overhangIn ?? 0) + 1e-6);
        read += 1;
      }
    }
    expect(read).toBeGreaterThan(8);
  });

  test('a counter 1-1/2 in past its end cabinet is dimensioned square, not slantwise to its corner', () => {
    const end = overhangDimensions(exampleJob('boathouse-galley').pieces[0]!).find(
      ({ key }) => key === 'overhang-3',
    );
    expect(end?.lengthIn).toBeCloseTo(1.5, 9);
    expect(end?.from.yIn).toBeCloseTo(end!.to.yIn, 9);
  });

  test('nothing is measured across a sink to a bearing behind it', () => {
    const back = {
      kind: 'wall' as const,
      id: 'w',
      build: 'stud' as const,
      from: { xIn: 0, yIn: 22 },
      to: { xIn: 96, yIn: 22 },
    };
    const shape = { kind: 'rectangle' as const, centre: { xIn: 48, yIn: 12 }, widthIn: 90, depthIn: 6 };
    const piece = pieceOf({
      supports: [{ ...back, widthIn: 4 }],
      cutouts: [{ id: 'trough', purpose: 'other', shape }],
    });
    const front = overhangDimensions(piece).find(({ key }) => key === 'overhang-0');
    expect(front?.lengthIn).toBeCloseTo(20, 6);
    expect(front!.from.xIn < 3 || front!.from.xIn > 93).toBe(true);
  });

  test('an edge at a wall has none, nor a piece on nothing', () => {
    const wall = { kind: 'wall' as const };
    const free = { kind: 'free' as const };
    const piece = pieceOf({ edges: [free, free, wall, free], supports: [cabinet('b1', 6, 84)] });
    expect(overhangDimensions(piece).map(({ key }) => key)).toEqual([
      'overhang-0',
      'overhang-1',
      'overhang-3',
    ]);
    expect(overhangDimensions(pieceOf({}))).toEqual([]);
  });
});

describe('cutout dimensions', () => {
  const sink = {
    id: 'sink',
    name: 'Sink',
    purpose: 'sink' as const,
    shape: { kind: 'rectangle' as const, centre: { xIn: 30, yIn: 11 }, widthIn: 26, depthIn: 14 },
  };

  test('a sink is placed from the front and from the nearer end, to its centre', () => {
    const dimensions = cutoutDimensions(pieceOf({ cutouts: [sink] }));
    expect(dimensions.map(({ lengthIn }) => lengthIn)).toEqual([11, 30]);
    expect(dimensions[0]?.sets).toMatchObject({
      kind: 'cutout-place',
      along: { x: expect.closeTo(0), y: 1 },
    });
    expect(dimensions[1]?.sets).toMatchObject({
      kind: 'cutout-place',
      along: { x: 1, y: expect.closeTo(0) },
    });
  });

  test('its width stands along its front and its depth along its right side', () => {
    const piece = pieceOf({ cutouts: [sink] });
    const [width, depth] = cutoutSizeDimensions(piece.cutouts[0]!);
    expect(width).toMatchObject({ lengthIn: 26, from: { xIn: 17, yIn: 4 }, to: { xIn: 43, yIn: 4 } });
    expect(depth?.lengthIn).toBeCloseTo(14, 9);
    expect(depth?.from.xIn).toBeCloseTo(43, 9);
  });
});
