import { describe, expect, test } from 'vitest';
import type { PartRef } from '../../../src-core/edit';
import {
  addCutout,
  addJoint,
  addLoad,
  addSteel,
  addSupport,
  duplicatePart,
  moveCutout,
  moveLoad,
  moveSupport,
  moveSupportEnd,
  removePart,
  resizeCutout,
  resizeSupport,
} from '../../../src-core/edit';
import { done, pairs, pieceOf, refusal, sampleJob } from './editing';

const pieceId = 'counter';

describe('parts added from drafts', () => {
  const circle = { kind: 'circle', centre: { xIn: 84, yIn: 12 }, diameterIn: 4 };
  test.each([
    [
      'an opening',
      addCutout.perform(sampleJob(), { pieceId, cutout: { purpose: 'drain', shape: circle } }),
      'drain',
      'Add drain',
    ],
    [
      'an opening for anything',
      addCutout.perform(sampleJob(), { pieceId, cutout: { purpose: 'other', shape: circle } }),
      'cutout',
      'Add cutout',
    ],
    [
      'a leg',
      addSupport.perform(sampleJob(), { pieceId, support: { kind: 'leg', centre: { xIn: 30, yIn: 3 } } }),
      'leg-2',
      'Add leg',
    ],
    [
      'fibre',
      addSteel.perform(sampleJob(), { pieceId, layer: { kind: 'fibre', material: 'glass' } }),
      'fibre',
      'Add fibre',
    ],
    [
      'a joint',
      addJoint.perform(sampleJob(), {
        pieceId,
        joint: { kind: 'control', from: { xIn: 20, yIn: 0 }, to: { xIn: 20, yIn: 24 } },
      }),
      'joint-2',
      'Add joint',
    ],
    [
      'a load',
      addLoad.perform(sampleJob(), {
        pieceId,
        load: { name: 'Crate', centre: { xIn: 80, yIn: 12 }, widthIn: 8, depthIn: 8, weightLb: 50 },
      }),
      'load',
      'Add load',
    ],
  ] as const)('%s takes an id that nothing has', (_, edited, id, title) => {
    expect([done(edited).madeId, done(edited).title]).toEqual([id, title]);
  });

  test('what the draft leaves out takes its default', () => {
    const support = { kind: 'leg', centre: { xIn: 30, yIn: 3 } };
    const { job } = done(addSupport.perform(sampleJob(), { pieceId, support }));
    expect(pieceOf(job, pieceId).supports[3]).toMatchObject({ widthIn: 3.5, depthIn: 1.5, firstDay: 0 });
  });

  test('a leg beside the slab, a support of no kind, and an opening over the sink are refused', () => {
    const job = sampleJob();
    const beside = { kind: 'leg', centre: { xIn: 30, yIn: -8 } };
    expect(refusal(addSupport.perform(job, { pieceId, support: beside })).code).toBe('support-outside');
    expect(refusal(addSupport.perform(job, { pieceId, support: { kind: 'string' } })).code).toBe(
      'unknown-choice',
    );
    expect(refusal(addSupport.perform(job, { pieceId, support: 'leg' })).code).toBe('wrong-type');
    const shape = { kind: 'circle', centre: { xIn: 48, yIn: 12 }, diameterIn: 4 };
    const cutout = { purpose: 'tap', shape };
    expect(refusal(addCutout.perform(job, { pieceId, cutout })).code).toBe('cutouts-overlap');
    expect(refusal(addLoad.perform(job, { pieceId: 'shelf', load: {} })).code).toBe('reference-unknown');
  });
});

describe('openings', () => {
  test('go where their middle is put, as one step while they are dragged', () => {
    const edited = done(moveCutout.perform(sampleJob(), { pieceId, id: 'sink', to: { xIn: 40, yIn: 11 } }));
    expect(pieceOf(edited.job, pieceId).cutouts[0]!.shape).toMatchObject({ centre: { xIn: 40, yIn: 11 } });
    expect([edited.title, edited.mergeKey]).toEqual(['Move cutout', 'move-cutout:counter:sink']);
  });

  test('sized to 24 x 3 in round their corners no more than fits', () => {
    const args = { pieceId, id: 'sink', widthIn: 24, depthIn: 3 };
    const shape = pieceOf(done(resizeCutout.perform(sampleJob(), args)).job, pieceId).cutouts[0]!.shape;
    expect(shape).toMatchObject({ widthIn: 24, depthIn: 3, radiusIn: 1.5, centre: { xIn: 48, yIn: 12 } });
  });

  test('that are round take the size that was changed', () => {
    for (const size of [
      { widthIn: 2, depthIn: 1.5 },
      { widthIn: 1.5, depthIn: 2 },
    ]) {
      const { job } = done(resizeCutout.perform(sampleJob(), { pieceId, id: 'tap', ...size }));
      expect(pieceOf(job, pieceId).cutouts[1]!.shape).toMatchObject({ diameterIn: 2 });
    }
  });

  test('of many corners are moved by the middle of the rectangle round them, and stretched', () => {
    const corners = [
      { xIn: 78, yIn: 4 },
      { xIn: 90, yIn: 4 },
      { xIn: 84, yIn: 12 },
    ];
    const cutout = { purpose: 'other', shape: { kind: 'polygon', corners } };
    const cut = done(addCutout.perform(sampleJob(), { pieceId, cutout })).job;
    const moved = done(moveCutout.perform(cut, { pieceId, id: 'cutout', to: { xIn: 84, yIn: 10 } })).job;
    const sized = done(resizeCutout.perform(moved, { pieceId, id: 'cutout', widthIn: 6, depthIn: 4 })).job;
    const shape = pieceOf(sized, pieceId).cutouts[2]!.shape;
    expect(shape.kind === 'polygon' && pairs(shape.corners)).toEqual([
      [81, 8],
      [87, 8],
      [84, 12],
    ]);
  });

  test('half an inch from the edge are refused', () => {
    const args = { pieceId, id: 'sink', to: { xIn: 48, yIn: 7.5 } };
    expect(refusal(moveCutout.perform(sampleJob(), args)).code).toBe('cutout-near-edge');
    expect(refusal(moveCutout.perform(sampleJob(), { ...args, id: 'hob' })).sentence).toBe(
      '"Counter" has no cutout "hob".',
    );
  });
});

describe('supports', () => {
  test('move by so much from where they are', () => {
    const edited = done(moveSupport.perform(sampleJob(), { pieceId, id: 'leg', dxIn: -8, dyIn: 1.5 }));
    expect(pieceOf(edited.job, pieceId).supports[2]).toMatchObject({ centre: { xIn: 40, yIn: 3.5 } });
    expect([edited.title, edited.mergeKey]).toEqual(['Move leg', 'move-support:counter:leg']);
  });

  test('a wall is drawn longer by its end; a leg has none', () => {
    const args = { pieceId: 'ledge', id: 'wall', end: 'from', to: { xIn: 12, yIn: 44 } } as const;
    const edited = done(moveSupportEnd.perform(sampleJob(), args));
    expect(pieceOf(edited.job, 'ledge').supports[0]).toMatchObject({
      from: { xIn: 12, yIn: 44 },
      to: { xIn: 60, yIn: 44 },
    });
    expect(edited.title).toBe('Move end of wall');
    const leg = { ...args, pieceId, id: 'leg' };
    expect(refusal(moveSupportEnd.perform(sampleJob(), leg)).sentence).toBe('A leg has no ends to move.');
  });

  test('a wall drawn to nothing is refused', () => {
    const args = { pieceId: 'ledge', id: 'wall', end: 'from', to: { xIn: 60, yIn: 44 } } as const;
    expect(refusal(moveSupportEnd.perform(sampleJob(), args)).code).toBe('support-no-length');
  });

  test.each([
    ['a leg', pieceId, 'leg', { widthIn: 5.5, depthIn: 3.5 }],
    ['a pier', pieceId, 'pier-left', { footprint: { widthIn: 5.5, depthIn: 3.5 } }],
    ['the strip of a wall', 'ledge', 'wall', { widthIn: 5.5 }],
    ['arms', 'ledge', 'arms', { seatWidthIn: 5.5, reachIn: 3.5 }],
  ] as const)('%s can be sized', (_, of, id, expected) => {
    const { job } = done(resizeSupport.perform(sampleJob(), { pieceId: of, id, widthIn: 5.5, depthIn: 3.5 }));
    expect(pieceOf(job, of).supports.find((support) => support.id === id)).toMatchObject(expected);
  });

  test('a full bed has no size of its own', () => {
    const bedded = done(addSupport.perform(sampleJob(), { pieceId, support: { kind: 'full-bed' } })).job;
    const args = { pieceId, id: 'full-bed', widthIn: 5, depthIn: 5 };
    expect(refusal(resizeSupport.perform(bedded, args)).sentence).toBe(
      'A full bed is as large as its corners, or as the piece.',
    );
  });
});

test('a load stands where its middle is put, and not over the sink', () => {
  const { job } = done(moveLoad.perform(sampleJob(), { pieceId, id: 'urn', to: { xIn: 80, yIn: 12 } }));
  expect(pieceOf(job, pieceId).loads.fixed[0]!.centre).toEqual({ xIn: 80, yIn: 12 });
  const over = moveLoad.perform(sampleJob(), { pieceId, id: 'urn', to: { xIn: 48, yIn: 12 } });
  expect(refusal(over).sentence).toBe('The fixed load "Urn" on "Counter" stands over an opening.');
});

const PARTS: readonly [PartRef, string][] = [
  [{ kind: 'cutout', id: 'tap' }, 'tap-2'],
  [{ kind: 'support', id: 'leg' }, 'leg-2'],
  [{ kind: 'load', id: 'urn' }, 'urn-2'],
  [{ kind: 'steel', id: 'mesh' }, 'mesh-2'],
  [{ kind: 'joint', id: 'joint' }, 'joint-2'],
];

describe('any part', () => {
  test.each(PARTS)('%o can be taken out and leaves the others the same objects', (part) => {
    const before = sampleJob();
    const { job, title } = done(removePart.perform(before, { pieceId, part }));
    expect(title).toBe(`Remove ${part.kind}`);
    expect(JSON.stringify(pieceOf(job, pieceId))).not.toContain(`"${part.id}"`);
    expect(pieceOf(job, pieceId).corners).toBe(before.pieces[0]!.corners);
    expect(refusal(removePart.perform(job, { pieceId, part })).code).toBe('reference-unknown');
  });

  test('a support taken out leaves the swap', () => {
    const part = { kind: 'support', id: 'leg' } as const;
    const { job } = done(removePart.perform(sampleJob(), { pieceId, part }));
    expect(job.swap.steps[0]).toMatchObject({
      sectionsOut: ['fw'],
      supportsOut: [],
      supportsIn: ['pier-right'],
    });
  });

  test.each(PARTS)('%o can be doubled as %s, beside the first in the list', (part, id) => {
    const { job, madeId, title } = done(duplicatePart.perform(sampleJob(), { pieceId, part }));
    expect([madeId, title]).toEqual([id, `Duplicate ${part.kind}`]);
    const { cutouts, supports, reinforcement, joints, loads } = pieceOf(job, pieceId);
    const ids = [...cutouts, ...supports, ...reinforcement, ...joints, ...loads.fixed].map((one) => one.id);
    expect(ids[ids.indexOf(part.id) + 1]).toBe(id);
  });

  test('a copy goes where there is room: the tap 3-1/2 in to the right, an urn 12 in from it with a name of its own', () => {
    const tap = done(duplicatePart.perform(sampleJob(), { pieceId, part: { kind: 'cutout', id: 'tap' } }));
    expect(pieceOf(tap.job, pieceId).cutouts[2]!.shape).toMatchObject({ centre: { xIn: 51.5, yIn: 21.5 } });
    const urn = done(duplicatePart.perform(sampleJob(), { pieceId, part: { kind: 'load', id: 'urn' } }));
    expect(pieceOf(urn.job, pieceId).loads.fixed[1]).toMatchObject({
      name: 'Urn 2',
      centre: { xIn: 32, yIn: 12 },
    });
  });

  test('a copy without room is refused', () => {
    const sized = { pieceId, id: 'sink', widthIn: 60, depthIn: 14 };
    const wide = done(resizeCutout.perform(sampleJob(), sized)).job;
    const edited = duplicatePart.perform(wide, { pieceId, part: { kind: 'cutout', id: 'sink' } });
    expect(refusal(edited).code).toBe('cutout-outside');
  });
});
