import { describe, expect, test } from 'vitest';
import { box, caseOf, L_SHAPE, LIGHT_MESH, placed, sink } from './cases';

const FREE = { kind: 'free' } as const;
const control = (xIn: number) =>
  ({ id: 'j', kind: 'control', from: { xIn, yIn: 0 }, to: { xIn, yIn: 25.5 } }) as const;

describe('joints', () => {
  test('a control joint across 2 in of slab is cut 1/2 in deep, a quarter of it (ACI 302.1R, from memory)', () => {
    const { joints, totals } = placed(caseOf(box(96, 25.5), { joints: [control(40)] }));
    const joint = joints.find(({ id }) => id === 'joint-j')!;
    expect(joint).toMatchObject({ kind: 'control', depthIn: 0.5, caution: null });
    expect(joint.trace.part).toEqual({ kind: 'joint', id: 'j' });
    expect(joint.lengthIn).toBeCloseTo(25.5, 9);
    expect(totals.find(({ kind }) => kind === 'control-joint')!.lengthIn).toBeCloseTo(25.5, 9);
  });

  test('over a sink it is cut on either side only', () => {
    const { joints } = placed(
      caseOf(box(96, 25.5), { joints: [control(48)], cutouts: [sink(48, 12.5, 30, 17)] }),
    );
    expect(joints[0]!.lines).toHaveLength(2);
    expect(joints[0]!.lengthIn).toBeCloseTo(8.5, 9);
  });

  test('a cut that would reach the steel is a caution', () => {
    const high = [{ ...LIGHT_MESH, depthIn: 0.55 }];
    const { joints, cautions } = placed(
      caseOf(box(96, 25.5), { joints: [control(40)], reinforcement: high }),
    );
    expect(joints[0]!.caution).toContain('reaches the steel');
    expect(cautions).toContain(joints[0]!.caution);
  });

  test('strip runs along both walls of an L, 85-1/2 and 121-1/2 in, each traced to its edge', () => {
    const edges = [FREE, FREE, FREE, FREE, { kind: 'wall' }, { kind: 'wall', gapIn: 0.25 }] as const;
    const { joints, totals } = placed(caseOf(L_SHAPE, { edges: [...edges] }));
    expect(
      joints.map(({ id, lengthIn, widthIn }) => [id, Math.round(lengthIn * 1e6) / 1e6, widthIn]),
    ).toEqual([
      ['isolation-edge-5', 121.5, 0.125],
      ['isolation-edge-6', 85.5, 0.25],
    ]);
    expect(joints[0]!.trace.part).toEqual({ kind: 'edge', index: 4 });
    expect(totals.find(({ kind }) => kind === 'isolation-strip')).toMatchObject({
      count: 2,
      lengthIn: expect.closeTo(207, 6),
    });
  });

  test('a wall without a gap takes no strip and is a caution', () => {
    const edges = [FREE, FREE, { kind: 'wall', gapIn: 0 }, FREE] as const;
    const { joints, totals } = placed(caseOf(box(96, 25.5), { edges: [...edges] }));
    expect(joints[0]!.caution).toContain('hard against the wall');
    expect(totals.some(({ kind }) => kind === 'isolation-strip')).toBe(false);
  });

  test('two pieces that butt share one strip, over the length on which they meet', () => {
    const job = caseOf(box(96, 25.5));
    const [first] = job.pieces;
    const free = {
      kind: 'free' as const,
      profile: { kind: 'square' as const, sizeIn: null, points: null },
      dripGroove: null,
    };
    const butt = (toPieceId: string) => ({ kind: 'butted' as const, toPieceId, gapIn: 0.125 });
    const right = box(40, 20).map(({ xIn, yIn, radiusIn }) => ({ xIn: xIn + 96.125, yIn, radiusIn }));
    const both = {
      ...job,
      pieces: [
        { ...first!, edges: [free, butt('next'), free, free] },
        { ...first!, id: 'next', corners: right, edges: [free, free, free, butt('piece')] },
      ],
    };
    expect(placed(both, {}, 0).joints.map(({ lengthIn }) => lengthIn)).toEqual([20]);
    expect(placed(both, {}, 1).joints).toEqual([]);
    // where only the second says that it butts, the second has the strip
    const oneSided = {
      ...both,
      pieces: [{ ...both.pieces[0]!, edges: [free, free, free, free] }, both.pieces[1]!],
    };
    expect(placed(oneSided, {}, 1).joints.map(({ lengthIn }) => lengthIn)).toEqual([20]);
  });

  test('a construction joint is listed with its length, and no dowels with it', () => {
    const joint = { ...control(40), kind: 'construction' } as const;
    const { joints, totals } = placed(caseOf(box(96, 25.5), { joints: [joint] }));
    expect(joints[0]).toMatchObject({ kind: 'construction', depthIn: 2 });
    expect(joints[0]!.words).toContain('No dowels are counted');
    expect(totals.find(({ kind }) => kind === 'construction-joint')!.lengthIn).toBeCloseTo(25.5, 9);
  });
});
