import { describe, expect, test } from 'vitest';
import type { PieceDraft } from './cases';
import {
  BARS,
  box,
  caseOf,
  corners,
  isIn,
  L_SHAPE,
  LIGHT_MESH,
  placed,
  regionOf,
  sink,
  toSideIn,
} from './cases';

const THICK = { thicknessIn: 2.5, reinforcement: [{ ...LIGHT_MESH, depthIn: 1.25 }] };

describe('trimmers', () => {
  test('an L has one at its inside corner, square to the diagonal, twice the development of a #3 long', () => {
    const job = caseOf(L_SHAPE, THICK);
    const { trimmers, totals } = placed(job);
    expect(trimmers).toHaveLength(1);
    const trimmer = trimmers[0]!;
    expect(trimmer).toMatchObject({
      id: 'trimmer-corner-3',
      label: 'T1',
      status: 'recommended',
      barId: '#3',
    });
    expect(trimmer.trace.part).toEqual({ kind: 'corner', index: 2 });
    // 60000 / (25 sqrt 5000) x .375 is 12.73 in to either side (ACI 318-19 25.4.2.3)
    expect(trimmer.lengthIn).toBeCloseTo(25.46, 2);
    const { from, to } = { from: trimmer.from!, to: trimmer.to! };
    expect(Math.abs((to.yIn - from.yIn) / (to.xIn - from.xIn))).toBeCloseTo(1, 9);
    const middle = { xIn: (from.xIn + to.xIn) / 2, yIn: (from.yIn + to.yIn) / 2 };
    // an inch of cover and half the bar from the corner
    expect(Math.hypot(middle.xIn - 25.5, middle.yIn)).toBeCloseTo(1.1875, 9);
    expect(toSideIn(regionOf(job.pieces[0]!), middle.xIn, middle.yIn)).toBeCloseTo(1.1875, 9);
    expect(isIn(regionOf(job.pieces[0]!), middle.xIn, middle.yIn)).toBe(true);
    // on the mesh: 1.25 less the cross wire and half the bar
    expect(trimmer.depthIn).toBeCloseTo(1.25 - 0.08 - 0.1875, 9);
    const total = totals.find(({ kind }) => kind === 'trimmers')!;
    expect(total.count).toBe(1);
    expect(total.massLb).toBeCloseTo((25.46 * 0.376) / 12, 2);
  });

  test('a corner rounded 1-1/2 in lets the bar out after its filling, still an inch clear', () => {
    const rounded = L_SHAPE.map((corner, k) => (k === 2 ? { ...corner, radiusIn: 1.5 } : corner));
    const job = caseOf(rounded, THICK);
    const { from, to } = placed(job).trimmers[0]!;
    const middle = { xIn: (from!.xIn + to!.xIn) / 2, yIn: (from!.yIn + to!.yIn) / 2 };
    expect(toSideIn(regionOf(job.pieces[0]!), middle.xIn, middle.yIn)).toBeCloseTo(1.1875, 1);
  });

  test('a corner rounded wider than 3 in has none', () => {
    const rounded = L_SHAPE.map((corner, k) => (k === 2 ? { ...corner, radiusIn: 4 } : corner));
    expect(placed(caseOf(rounded, THICK)).trimmers).toEqual([]);
  });

  test('a sink well inside the slab has four, none nearer to its lip or an edge than the cover', () => {
    const job = caseOf(box(120, 60), { ...THICK, cutouts: [sink(60, 30, 30, 18, 1)] });
    const region = regionOf(job.pieces[0]!);
    const { trimmers } = placed(job);
    expect(trimmers.map(({ id, status }) => [id, status])).toEqual(
      [1, 2, 3, 4].map((k) => [`trimmer-sink-${k}`, 'recommended']),
    );
    for (const { from, to } of trimmers) {
      for (let t = 0; t <= 1; t += 0.01) {
        const xIn = from!.xIn + t * (to!.xIn - from!.xIn);
        const yIn = from!.yIn + t * (to!.yIn - from!.yIn);
        expect(isIn(region, xIn, yIn)).toBe(true);
        expect(toSideIn(region, xIn, yIn)).toBeGreaterThanOrEqual(0.49);
      }
    }
  });

  test('beside a 4 in rail a trimmer has no room on one side, and is listed as such', () => {
    const { trimmers, totals } = placed(
      caseOf(box(96, 25.5), { ...THICK, cutouts: [sink(48, 12.5, 30, 17, 1)] }),
    );
    expect(trimmers).toHaveLength(4);
    for (const { status, from, lengthIn, words } of trimmers) {
      expect([status, from, lengthIn]).toEqual(['no-room', null, 0]);
      expect(words).toContain('too narrow');
    }
    expect(totals.some(({ kind }) => kind === 'trimmers')).toBe(false);
  });

  test('where it fits only in part it says by how much it is short', () => {
    const { trimmers } = placed(caseOf(box(96, 33), { ...THICK, cutouts: [sink(48, 16.5, 30, 17, 1)] }));
    expect(trimmers[0]!.status).toBe('recommended');
    expect(trimmers[0]!.lengthIn).toBeLessThan(trimmers[0]!.wantedIn);
    expect(trimmers[0]!.words).toContain('but only');
  });

  test('1-1/2 in of slab with mesh in its middle has no depth for one; without steel it has', () => {
    const thin = { thicknessIn: 1.5, reinforcement: [{ ...LIGHT_MESH, depthIn: 0.75 }] };
    const [none] = placed(caseOf(L_SHAPE, thin)).trimmers;
    expect(none!.status).toBe('no-room');
    expect(none!.words).toContain('no room for a #3 bar');
    const [bare] = placed(caseOf(L_SHAPE, { thicknessIn: 1.5, reinforcement: [] })).trimmers;
    expect(bare!.depthIn).toBe(0.75);
    // 1 in leaves 5/16 in over and under a #3
    expect(placed(caseOf(L_SHAPE, { thicknessIn: 1, reinforcement: [] })).trimmers[0]!.status).toBe(
      'no-room',
    );
  });

  test('outdoors 2 in of slab loses the room that it has indoors', () => {
    const outdoors: Partial<PieceDraft> = {
      exposure: 'outdoors',
      reinforcement: [{ ...LIGHT_MESH, depthIn: 1 }],
    };
    expect(placed(caseOf(L_SHAPE)).trimmers[0]!.status).toBe('recommended');
    expect(placed(caseOf(L_SHAPE, outdoors)).trimmers[0]!.status).toBe('no-room');
  });

  test('between bars top and bottom it lies on the lower ones', () => {
    const both = [
      { ...BARS, id: 'top', depthIn: 0.75 },
      { ...BARS, id: 'bottom', depthIn: 2.25 },
    ];
    const [trimmer] = placed(caseOf(L_SHAPE, { thicknessIn: 3, reinforcement: both })).trimmers;
    expect(trimmer!.depthIn).toBeCloseTo(2.25 - 0.375, 9);
  });

  test('a drawing walked the other way round gives the same bar', () => {
    const [one] = placed(caseOf(L_SHAPE, THICK)).trimmers;
    const [other] = placed(
      caseOf(corners(...[...L_SHAPE].reverse().map(({ xIn, yIn }) => [xIn, yIn] as const)), THICK),
    ).trimmers;
    expect(other!.lengthIn).toBeCloseTo(one!.lengthIn, 9);
    expect(other!.from!.xIn + other!.to!.xIn).toBeCloseTo(one!.from!.xIn + one!.to!.xIn, 9);
  });
});
