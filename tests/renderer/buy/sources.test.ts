import { describe, expect, test } from 'vitest';
import { linesOf } from '../../../src-core/takeoff';
import type { Trace } from '../../../src-core/trace';
import { lookAtSource } from '../../../src-renderer/buy/look-at-source';
import { placeOf, selectionOf } from '../../../src-renderer/buy/sources';
import { createWindowStore } from '../../../src-renderer/state/window-store';
import { pieceOf, sampleJob } from '../../core/edit/editing';
import { GALLEY, GALLEY_TAKEOFF } from './taken-off';

const job = sampleJob();
const of = (part: Trace['part'], pieceId = 'counter'): Trace => ({ pieceId, part });

describe('where a number comes from', () => {
  test('the part itself is picked out: an edge, an opening, a joint, a layer of steel', () => {
    for (const part of [
      { kind: 'piece' },
      { kind: 'edge', index: 2 },
      { kind: 'corner', index: 0 },
      { kind: 'cutout', id: 'sink' },
      { kind: 'joint', id: 'joint' },
      { kind: 'steel', id: 'mesh' },
    ] as const) {
      expect(selectionOf(job, of(part))).toEqual({ pieceId: 'counter', part });
    }
  });

  test('a section of the falsework and a part that is gone pick out their piece, a piece that is gone nothing', () => {
    const whole = { pieceId: 'counter', part: { kind: 'piece' } };
    expect(selectionOf(job, of({ kind: 'section', id: 'counter-section-1' }))).toEqual(whole);
    expect(selectionOf(job, of({ kind: 'cutout', id: 'hob' }))).toEqual(whole);
    expect(selectionOf(job, of({ kind: 'edge', index: 4 }))).toEqual(whole);
    expect(selectionOf(job, of({ kind: 'piece' }, 'no-such-piece'))).toBeNull();
  });

  test('the views are sent to the middle of an edge of 96 in, the centre of an opening, and nowhere for a whole piece', () => {
    expect(placeOf(job, of({ kind: 'edge', index: 0 }))).toEqual({ xIn: 48, yIn: 0 });
    expect(placeOf(job, of({ kind: 'corner', index: 2 }))).toEqual({ xIn: 96, yIn: 24 });
    const sink = placeOf(job, of({ kind: 'cutout', id: 'sink' }))!;
    expect([sink.xIn, sink.yIn]).toEqual([expect.closeTo(48, 6), expect.closeTo(12, 6)]);
    expect(placeOf(job, of({ kind: 'joint', id: 'joint' }))).toEqual({ xIn: 70, yIn: 12 });
    expect(placeOf(job, of({ kind: 'piece' }))).toBeNull();
    expect(placeOf(job, of({ kind: 'edge', index: 9 }))).toBeNull();
  });

  test('every source of every line of the galley can be picked out as the part that it names', () => {
    for (const { sources } of linesOf(GALLEY_TAKEOFF.list)) {
      for (const { trace } of sources) {
        const selection = selectionOf(GALLEY, trace);
        expect(selection?.pieceId).toBe(trace.pieceId);
        if (trace.part.kind !== 'section') expect(selection?.part).toEqual(trace.part);
      }
    }
  });

  test('looking at a source selects it and flies there; a source whose piece is gone leaves all as it was', () => {
    const store = createWindowStore(job, 'light');
    lookAtSource(store, of({ kind: 'edge', index: 0 }));
    const { selection, flyTo } = store.getState();
    expect(selection).toEqual({ pieceId: 'counter', part: { kind: 'edge', index: 0 } });
    expect(flyTo).toEqual({ pieceId: 'counter', at: { xIn: 48, yIn: 0 }, request: 1 });
    expect(pieceOf(job, 'counter').corners[0]).toMatchObject({ xIn: 0, yIn: 0 });
    lookAtSource(store, of({ kind: 'piece' }, 'no-such-piece'));
    expect(store.getState().selection).toBe(selection);
    expect(store.getState().flyTo).toBe(flyTo);
  });
});
