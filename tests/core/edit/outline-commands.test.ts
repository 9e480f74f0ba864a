import { describe, expect, test } from 'vitest';
import type { Edited } from '../../../src-core/edit';
import {
  drawPiece,
  moveCorner,
  moveEdge,
  removeCorner,
  setCornerRadius,
  setEdge,
  setEdgeLength,
  splitEdge,
} from '../../../src-core/edit';
import type { Job } from '../../../src-core/job';
import { polygonAreaIn2 } from '../../../src-core/outline';
import { done, pairs, pieceOf, refusal, sampleJob } from './editing';

const LEDGE = { pieceId: 'ledge' };

/** Corners of the ledge after a command: 60 x 16 in, its front left corner at (0, 40). */
function ledgeAfter(edited: Edited): [number, number][] {
  return pairs(pieceOf(done(edited).job, 'ledge').corners);
}

/** A job with a free slab of its own corners. */
function withSlab(corners: readonly [number, number][]): Job {
  const points = corners.map(([xIn, yIn]) => ({ xIn, yIn }));
  return done(drawPiece.perform(sampleJob(), { corners: points, name: 'Slab' })).job;
}

describe('a corner', () => {
  test('goes to the point that it is put on, and a drag of it is one step', () => {
    const edited = moveCorner.perform(sampleJob(), { ...LEDGE, index: 1, to: { xIn: 64, yIn: 38 } });
    expect(ledgeAfter(edited)).toEqual([
      [0, 40],
      [64, 38],
      [60, 56],
      [0, 56],
    ]);
    expect(done(edited)).toMatchObject({ title: 'Move corner', mergeKey: 'move-corner:ledge:1' });
  });

  test('keeps its rounding when it is moved', () => {
    const round = done(setCornerRadius.perform(sampleJob(), { ...LEDGE, index: 1, radiusIn: 2 })).job;
    const { job } = done(moveCorner.perform(round, { ...LEDGE, index: 1, to: { xIn: 62, yIn: 40 } }));
    expect(pieceOf(job, 'ledge').corners[1]).toEqual({ xIn: 62, yIn: 40, radiusIn: 2 });
  });

  test('a rounding of 30 in on a side of 16 in is refused', () => {
    const problem = refusal(setCornerRadius.perform(sampleJob(), { ...LEDGE, index: 1, radiusIn: 30 }));
    expect([problem.code, problem.pieceId]).toEqual(['radius-too-large', 'ledge']);
  });

  test('crossing the other side is refused', () => {
    const args = { ...LEDGE, index: 1, to: { xIn: 30, yIn: 70 } };
    expect(refusal(moveCorner.perform(sampleJob(), args)).code).toBe('outline-crossing');
  });

  test('is added where an edge is clicked, at its nearest point, and takes the profile of that edge with it', () => {
    const args = { pieceId: 'counter', index: 1, at: { xIn: 99, yIn: 10 } };
    const counter = pieceOf(done(splitEdge.perform(sampleJob(), args)).job, 'counter');
    expect(pairs(counter.corners)).toEqual([
      [0, 0],
      [96, 0],
      [96, 10],
      [96, 24],
      [0, 24],
    ]);
    expect(counter.edges!.map(({ kind }) => kind)).toEqual(['free', 'free', 'free', 'wall', 'butted']);
    expect(counter.edges![2]).toEqual(counter.edges![1]);
  });

  test('taken out leaves one edge fewer, and the edge before it runs on; a triangle keeps its three', () => {
    const slab = withSlab([
      [0, 90],
      [40, 90],
      [40, 110],
      [0, 110],
    ]);
    const { id, name } = slab.pieces[2]!;
    const walled = done(setEdge.perform(slab, { pieceId: id, index: 2, edge: { kind: 'wall' } })).job;
    const { job } = done(removeCorner.perform(walled, { pieceId: id, index: 1 }));
    const piece = pieceOf(job, id);
    expect(pairs(piece.corners)).toEqual([
      [0, 90],
      [40, 110],
      [0, 110],
    ]);
    expect(piece.edges!.map(({ kind }) => kind)).toEqual(['free', 'wall', 'free']);
    const problem = refusal(removeCorner.perform(job, { pieceId: id, index: 2 }));
    expect(problem.sentence).toBe(`"${name}" needs at least three corners.`);
  });

  test('corner 5 of a ledge with four is refused', () => {
    const problem = refusal(removeCorner.perform(sampleJob(), { ...LEDGE, index: 4 }));
    expect(problem).toMatchObject({
      path: 'pieces[1].corners',
      sentence: '"Ledge" has no corner 5; it has 4.',
    });
  });

  test('edges that are none stay none', () => {
    const job = sampleJob();
    const split = splitEdge.perform(job, { ...LEDGE, index: 0, at: { xIn: 20, yIn: 40 } });
    expect(pieceOf(done(split).job, 'ledge').edges).toBeNull();
    const again = removeCorner.perform(done(split).job, { ...LEDGE, index: 1 });
    expect(pieceOf(done(again).job, 'ledge')).toEqual(pieceOf(job, 'ledge'));
  });
});

describe('an edge', () => {
  test.each([
    [
      'front, 3 in out',
      0,
      3,
      [
        [0, 37],
        [60, 37],
        [60, 56],
        [0, 56],
      ],
    ],
    [
      'front, 3 in in',
      0,
      -3,
      [
        [0, 43],
        [60, 43],
        [60, 56],
        [0, 56],
      ],
    ],
    [
      'right, 1/2 in out',
      1,
      0.5,
      [
        [0, 40],
        [60.5, 40],
        [60.5, 56],
        [0, 56],
      ],
    ],
    [
      'back, 4 in out',
      2,
      4,
      [
        [0, 40],
        [60, 40],
        [60, 60],
        [0, 60],
      ],
    ],
    [
      'left, 0.1 in in',
      3,
      -0.1,
      [
        [0.1, 40],
        [60, 40],
        [60, 56],
        [0.1, 56],
      ],
    ],
  ] as const)('%s moves parallel to itself', (_, index, toIn, expected) => {
    const edited = moveEdge.perform(sampleJob(), { ...LEDGE, index, toIn });
    expect(ledgeAfter(edited)).toEqual(expected);
    expect(done(edited)).toMatchObject({ title: 'Move edge', mergeKey: `move-edge:ledge:${index}` });
  });

  test('moves outward of a piece drawn clockwise too', () => {
    const job = withSlab([
      [0, 90],
      [0, 100],
      [40, 100],
      [40, 90],
    ]);
    const { id } = job.pieces[2]!;
    const { job: after } = done(moveEdge.perform(job, { pieceId: id, index: 0, toIn: 5 }));
    expect(pairs(pieceOf(after, id).corners)).toEqual([
      [-5, 90],
      [-5, 100],
      [40, 100],
      [40, 90],
    ]);
  });

  test('slides along slanted neighbours, which keep their direction', () => {
    const job = withSlab([
      [0, 90],
      [40, 90],
      [30, 100],
      [10, 100],
    ]);
    const { id } = job.pieces[2]!;
    const { job: after } = done(moveEdge.perform(job, { pieceId: id, index: 2, toIn: 5 }));
    expect(pairs(pieceOf(after, id).corners)).toEqual([
      [0, 90],
      [40, 90],
      [25, 105],
      [15, 105],
    ]);
  });

  test('moves straight out where its neighbour runs on in the same line', () => {
    const split = done(splitEdge.perform(sampleJob(), { ...LEDGE, index: 0, at: { xIn: 20, yIn: 40 } })).job;
    const edited = moveEdge.perform(split, { ...LEDGE, index: 1, toIn: 2 });
    expect(ledgeAfter(edited)).toEqual([
      [0, 40],
      [20, 38],
      [60, 38],
      [60, 56],
      [0, 56],
    ]);
  });

  test('past the other side is refused in a sentence', () => {
    const problem = refusal(moveEdge.perform(sampleJob(), { ...LEDGE, index: 0, toIn: -20 }));
    expect(problem.sentence).toBe('An edge of "Ledge" cannot be moved past the other side of the piece.');
  });

  test('into the sink is refused', () => {
    const problem = refusal(moveEdge.perform(sampleJob(), { pieceId: 'counter', index: 0, toIn: -4.5 }));
    expect(problem.code).toBe('cutout-near-edge');
  });

  test('given a length of 72 in grows at its far end', () => {
    const edited = setEdgeLength.perform(sampleJob(), { ...LEDGE, index: 0, lengthIn: 72 });
    expect(ledgeAfter(edited)).toEqual([
      [0, 40],
      [72, 40],
      [72, 56],
      [0, 56],
    ]);
    expect(done(edited)).toMatchObject({ title: 'Set edge length', mergeKey: null });
  });

  test('the side of a triangle of 30 x 40 in made 60 in long keeps its angle: 60 x 80 in, four times the area', () => {
    const job = withSlab([
      [0, 90],
      [30, 90],
      [0, 130],
    ]);
    const { id } = job.pieces[2]!;
    const { job: after } = done(setEdgeLength.perform(job, { pieceId: id, index: 0, lengthIn: 60 }));
    const { corners } = pieceOf(after, id);
    expect(pairs(corners)).toEqual([
      [0, 90],
      [60, 90],
      [0, 170],
    ]);
    // Triangle: half of base times height, 60 x 80 / 2.
    expect(polygonAreaIn2(corners)).toBe(2400);
  });

  test.each([0, -3, Number.NaN])('a length of %s is refused', (lengthIn) => {
    const problem = refusal(setEdgeLength.perform(sampleJob(), { ...LEDGE, index: 0, lengthIn }));
    expect(problem.code).toBe('out-of-range');
  });

  test('set against a wall gives a piece without edges free ones elsewhere', () => {
    const { job } = done(setEdge.perform(sampleJob(), { ...LEDGE, index: 2, edge: { kind: 'wall' } }));
    const { edges } = pieceOf(job, 'ledge');
    expect(edges!.map(({ kind }) => kind)).toEqual(['free', 'free', 'wall', 'free']);
    expect(edges![2]).toEqual({ kind: 'wall', gapIn: 0.125 });
  });
});
