import { describe, expect, test } from 'vitest';
import { cutoutDimensions, overhangDimensions, supportChains } from '../../../src-core/drawing';
import type { Job, Piece } from '../../../src-core/job';
import { handleLabel } from '../../../src-renderer/plan/handle-words';
import type { Handle } from '../../../src-renderer/plan/handles';
import { anchorsOf, handleOf, handlesOf, movesAlong } from '../../../src-renderer/plan/handles';
import type { PlanEdit } from '../../../src-renderer/plan/plan-edits';
import { moveHandleTo, removeHandle, setDimension, sizeAt } from '../../../src-renderer/plan/plan-edits';
import { nearestAnchor, snapMove } from '../../../src-renderer/plan/snap-move';
import { createWindowStore } from '../../../src-renderer/state/window-store';
import { jobOf } from '../../core/drawing/pieces';

const job = jobOf({
  name: 'Counter',
  cutouts: [
    {
      id: 'sink',
      name: 'Sink',
      purpose: 'sink',
      shape: { kind: 'rectangle', centre: { xIn: 30, yIn: 12 }, widthIn: 20, depthIn: 14 },
    },
  ],
  supports: [
    {
      kind: 'wall',
      id: 'wall',
      build: 'stud',
      from: { xIn: 0, yIn: 22 },
      to: { xIn: 96, yIn: 22 },
      widthIn: 5.5,
    },
    { kind: 'cabinet', id: 'cab', corner: { xIn: 48, yIn: 1.5 }, widthIn: 36, depthIn: 12 },
  ],
  loads: {
    fixed: [
      { id: 'oven', name: 'Oven', centre: { xIn: 70, yIn: 10 }, widthIn: 12, depthIn: 12, weightLb: 60 },
    ],
  },
});
const piece = job.pieces[0]!;
const handle = (key: string): Handle => handleOf(piece, key)!;

/** The first piece after an edit, and what was refused. */
function edited(edit: PlanEdit | null, from: Job = job): { piece: Piece; sentences: string[] } {
  const store = createWindowStore(from, 'light');
  const problems = edit?.(store.getState().run) ?? [];
  return {
    piece: store.getState().history.job.pieces[0]!,
    sentences: problems.map(({ sentence }) => sentence),
  };
}

describe('handles of a piece', () => {
  test('are reached as the piece, its corners and edges in turn, cutouts, supports, loads', () => {
    expect(handlesOf(piece).map(({ key }) => key)).toEqual([
      'piece',
      'corner-0',
      'edge-0',
      'corner-1',
      'edge-1',
      'corner-2',
      'edge-2',
      'corner-3',
      'edge-3',
      'cutout-sink',
      'cutout-size-sink',
      'support-from-wall',
      'support-wall',
      'support-to-wall',
      'support-cab',
      'load-oven',
    ]);
  });

  test('are told with their sizes', () => {
    const label = (key: string) => handleLabel(piece, handle(key), 'imperial');
    expect(label('piece')).toBe('Counter, 96 in by 25-1/2 in');
    expect(label('corner-1')).toBe('Corner 2, 96 in from the left, 0 in from the front');
    expect(label('edge-1')).toBe('Edge 2, 25-1/2 in long, free');
    expect(label('cutout-sink')).toBe(
      'Sink, 20 in by 14 in, middle 30 in from the left, 12 in from the front',
    );
    expect(label('support-from-wall')).toBe('Start of Wall wall, 0 in from the left, 22 in from the front');
    expect(label('load-oven')).toBe('Oven, middle 70 in from the left, 10 in from the front');
  });
});

describe('moving handles', () => {
  test('a corner goes to its point', () => {
    const moved = edited(moveHandleTo(piece, handle('corner-1'), { xIn: 100, yIn: -2 }));
    expect(moved.piece.corners[1]).toMatchObject({ xIn: 100, yIn: -2 });
  });

  test('an edge goes only square to itself', () => {
    const moved = edited(moveHandleTo(piece, handle('edge-0'), { xIn: 60, yIn: -3 }));
    expect(moved.piece.corners.map(({ yIn }) => yIn)).toEqual([-3, -3, 25.5, 25.5]);
    expect(moved.piece.corners.map(({ xIn }) => xIn)).toEqual([0, 96, 96, 0]);
    expect(moveHandleTo(piece, handle('edge-0'), { xIn: 60, yIn: 0 })).toBeNull();
  });

  test('a piece takes its cutouts and supports along', () => {
    const { at } = handle('piece');
    const moved = edited(moveHandleTo(piece, handle('piece'), { xIn: at.xIn + 5, yIn: at.yIn + 1 }));
    expect(moved.piece.corners[0]).toMatchObject({ xIn: 5, yIn: 1 });
    expect(moved.piece.cutouts[0]?.shape).toMatchObject({ centre: { xIn: 35, yIn: 13 } });
    expect(moved.piece.supports[1]).toMatchObject({ corner: { xIn: 53, yIn: 2.5 } });
  });

  test('a cutout, a load, a cabinet and the end of a wall go where they are put', () => {
    const to = (key: string, xIn: number, yIn: number) =>
      edited(moveHandleTo(piece, handle(key), { xIn, yIn })).piece;
    expect(to('cutout-sink', 28, 12).cutouts[0]?.shape).toMatchObject({ centre: { xIn: 28, yIn: 12 } });
    expect(to('load-oven', 60, 9).loads.fixed[0]?.centre).toEqual({ xIn: 60, yIn: 9 });
    expect(to('support-cab', 64, 7.5).supports[1]).toMatchObject({ corner: { xIn: 46, yIn: 1.5 } });
    expect(to('support-to-wall', 90, 22).supports[0]).toMatchObject({ to: { xIn: 90, yIn: 22 } });
  });

  test('the sizing corner of a sink 2 in farther right makes it 4 in wider, about its middle', () => {
    const { at } = handle('cutout-size-sink');
    expect(at).toEqual({ xIn: 40, yIn: 5 });
    const moved = edited(moveHandleTo(piece, handle('cutout-size-sink'), { xIn: 42, yIn: 5 }));
    expect(moved.piece.cutouts[0]?.shape).toMatchObject({
      widthIn: 24,
      depthIn: 14,
      centre: { xIn: 30, yIn: 12 },
    });
  });

  test('a sizing corner drawn past the middle leaves the smallest opening, not a negative one', () => {
    const sizing = handle('cutout-size-sink');
    if (sizing.role !== 'cutout-size') throw new Error('not a sizing handle');
    expect(sizeAt(sizing, { xIn: 10, yIn: 40 })).toEqual({ widthIn: 0.25, depthIn: 0.25 });
  });

  test('a sink taken off the slab is refused with a sentence, and stays', () => {
    const moved = edited(moveHandleTo(piece, handle('cutout-sink'), { xIn: 200, yIn: 12 }));
    expect(moved.sentences[0]).toMatch(/\S/);
    expect(moved.piece).toEqual(piece);
  });

  test('many moves in one drag are one step of the history', () => {
    const store = createWindowStore(job, 'light');
    store.getState().beginDrag();
    for (const xIn of [97, 98, 99]) {
      const now = store.getState().history.job.pieces[0]!;
      moveHandleTo(now, handleOf(now, 'corner-1')!, { xIn, yIn: 0 })?.(store.getState().run);
    }
    store.getState().endDrag();
    expect(store.getState().history.past).toHaveLength(1);
    store.getState().undo();
    expect(store.getState().history.job.pieces[0]?.corners[1]).toMatchObject({ xIn: 96, yIn: 0 });
  });
});

describe('removing', () => {
  test('a corner, a cutout and a load can go; an edge cannot', () => {
    expect(edited(removeHandle(piece, handle('load-oven'))).piece.loads.fixed).toEqual([]);
    expect(edited(removeHandle(piece, handle('cutout-sink'))).piece.cutouts).toEqual([]);
    expect(removeHandle(piece, handle('edge-0'))).toBeNull();
  });
});

describe('typed dimensions', () => {
  test('a sink 11 in from the front moves from 12 to 11 in', () => {
    const dimension = cutoutDimensions(piece).find(({ lengthIn }) => lengthIn === 12)!;
    const moved = edited(setDimension(piece.id, dimension, 11)).piece;
    expect(moved.cutouts[0]?.shape).toMatchObject({ centre: { xIn: 30, yIn: 11 } });
  });

  test('an overhang of 1-1/2 in typed as 4 in takes the front edge 2-1/2 in farther out', () => {
    const dimension = overhangDimensions(piece).find(({ key }) => key === 'overhang-0')!;
    const moved = edited(setDimension(piece.id, dimension, dimension.lengthIn + 2.5)).piece;
    expect(moved.corners[0]?.yIn).toBeCloseTo(-2.5, 9);
  });

  test('a cabinet 48 in from the end typed as 50 in moves right, its width typed as 30 in keeps its left side', () => {
    const chain = supportChains(piece);
    expect(chain.map(({ lengthIn }) => lengthIn)).toEqual([48, 36, 12]);
    expect(edited(setDimension(piece.id, chain[0]!, 50)).piece.supports[1]).toMatchObject({
      corner: { xIn: 50, yIn: 1.5 },
    });
    expect(edited(setDimension(piece.id, chain[1]!, 30)).piece.supports[1]).toMatchObject({
      corner: { xIn: 48, yIn: 1.5 },
      widthIn: 30,
    });
    expect(edited(setDimension(piece.id, chain[2]!, 10)).piece.supports[1]).toMatchObject({
      corner: { xIn: 50, yIn: 1.5 },
    });
  });

  test('the same length again changes nothing', () => {
    expect(setDimension(piece.id, supportChains(piece)[0]!, 48)).toBeNull();
  });
});

describe('where a drag comes to rest', () => {
  const grid = { gridIn: 1 / 8, targets: [], reachIn: 0.5 };

  test('a cabinet is brought to rest by the corner nearest to the hand', () => {
    const cabinet = handle('support-cab');
    const anchor = nearestAnchor(anchorsOf(piece, cabinet), { xIn: 80, yIn: 3 });
    expect(anchor).toEqual({ xIn: 84, yIn: 1.5 });
    const target = { kind: 'point' as const, key: 'x', words: 'corner of X', at: { xIn: 96, yIn: 0 } };
    const { to, words } = snapMove(
      { handle: cabinet, anchor },
      { dxIn: 11.8, dyIn: -1.3 },
      { ...grid, targets: [target] },
    );
    expect(to).toEqual({ xIn: 78, yIn: 6 });
    expect(words).toBe('on corner of X');
  });

  test('an edge moved 2.06 in out and 30 in along rests 2 in out', () => {
    const { to, words } = snapMove(
      { handle: handle('edge-0'), anchor: handle('edge-0').at },
      { dxIn: 30, dyIn: -2.06 },
      grid,
    );
    expect(to).toEqual({ xIn: 48, yIn: -2 });
    expect(words).toBeNull();
  });

  test('a corner is not held by itself or its own edges, but by other corners', () => {
    const except = movesAlong(piece, handle('corner-0'));
    expect(except).toEqual(['piece-1/corner-0', 'piece-1/edge-3', 'piece-1/edge-0', 'piece-1/centre-line']);
    expect(movesAlong(piece, handle('support-cab'))).toEqual(['piece-1/support-cab']);
  });
});
