import { describe, expect, test } from 'vitest';
import { jobSchema } from '../../../src-core/job';
import { jobTakeoff, linesOf } from '../../../src-core/takeoff';
import { rectangle } from '../../support/pieces';
import type { PieceDraft } from './cases';
import { lineOf, SQUARE, sinkJob } from './cases';

type CutoutDraft = NonNullable<PieceDraft['cutouts']>[number];

function ids(takeoff: ReturnType<typeof jobTakeoff>): string[] {
  return linesOf(takeoff.list).map(({ id }) => id);
}

describe('an opening', () => {
  test('1-1/2 in wide is one plug with one screw and a washer, and no strip', () => {
    const tap: CutoutDraft = {
      id: 'tap',
      purpose: 'tap',
      shape: { kind: 'circle', centre: { xIn: 30, yIn: 12 }, diameterIn: 1.5 },
    };
    const takeoff = jobTakeoff(sinkJob({}, { cutouts: [tap] }), null);
    expect(lineOf(takeoff, 'plugs').needed).toBe(1);
    expect(lineOf(takeoff, 'washers').needed).toBe(1);
    // 26 of the edges, as without an opening
    expect(lineOf(takeoff, 'screws/forms').needed).toBe(27);
    expect(ids(takeoff).some((id) => id.startsWith('strip/sink'))).toBe(false);
  });

  test('of 4 x 200 in in a 6 in slab lifts harder than the two screws of a plug hold: one more is counted, none twice', () => {
    // 150 x 800 x 6 / 1728 = 416.7 lb displaced, 800 x 6.5 x 35 / 1728 = 105.3 lb of plug: 311.4 lbf. A #8 screw of 3 in:
    // 2850 x 0.42^2 x 0.164 x (3 - 0.46875 - 0.328) x 1.15 x 0.7 = 146.2 lbf (NDS 2018 12.2.2), so three
    const slot: CutoutDraft = {
      id: 'slot',
      purpose: 'other',
      shape: { kind: 'rectangle', centre: { xIn: 120, yIn: 12 }, widthIn: 200, depthIn: 4 },
    };
    const takeoff = jobTakeoff(
      sinkJob({}, { corners: rectangle(240, 24), thicknessIn: 6, cutouts: [slot] }),
      null,
    );
    const { needed, sources } = lineOf(takeoff, 'washers');
    expect(needed).toBe(3);
    expect(sources.map(({ amount }) => amount)).toEqual([2, 1]);
    expect(sources[1]!.words).toContain('against uplift');
  });

  test('on a bowl that is cast in takes a rod and sand, and no screw from below', () => {
    const cast = (mounting: 'cast-over' | 'dropped-in') => {
      const shape = { kind: 'rectangle' as const, centre: { xIn: 25, yIn: 12 }, widthIn: 20, depthIn: 12 };
      const sink = { mounting, bowlDepthIn: 8 };
      return jobTakeoff(sinkJob({}, { cutouts: [{ id: 'sink', purpose: 'sink', shape, sink }] }), null);
    };
    const over = cast('cast-over');
    expect(lineOf(over, 'rods').needed).toBe(1);
    expect(lineOf(over, 'screws/forms').needed).toBe(26);
    expect(ids(over)).not.toContain('washers');
    // The bowl is as large as the opening: 20 x 12 x 8 in at 100 lb/ft3 = 111.1 lb, with a tenth 122.2, three bags of 50 lb
    const sand = lineOf(over, 'sand');
    expect(sand.needed).toBeCloseTo((20 * 12 * 8 * 100) / 1728, 6);
    expect(sand.buy).toBe(3);
    // It stands on the rim, so its strips are as high as the slab is thick; those on the deck go through the board
    expect(ids(over)).toContain('strip/sink/form-strip/2/1.5/96/strip');
    expect(ids(cast('dropped-in'))).toContain('strip/sink/form-strip/2.5/1.5/96/strip');
    expect(ids(cast('dropped-in'))).not.toContain('rods');
  });
});

describe('isolation strip', () => {
  test('along a wall is cut with the forms once, 60 in of 1/4 in', () => {
    const wall = { kind: 'wall', gapIn: 0.25 } as const;
    const takeoff = jobTakeoff(sinkJob({}, { edges: [SQUARE, SQUARE, wall, SQUARE] }), null);
    const lines = linesOf(takeoff.list).filter(({ name }) => name.startsWith('Isolation'));
    expect(lines).toHaveLength(1);
    expect(lines[0]!.needed).toBeCloseTo(60, 6);
    expect(lines[0]!.group).toBe('builders-merchant');
  });

  test('across a slab is a line of its own: 24 in of a joint from front to back', () => {
    const joints = [
      {
        id: 'across',
        kind: 'isolation' as const,
        from: { xIn: 50, yIn: 0 },
        to: { xIn: 50, yIn: 24 },
        widthIn: 0.25,
      },
    ];
    const takeoff = jobTakeoff(sinkJob({}, { joints, cutouts: [] }), null);
    const joint = lineOf(takeoff, 'isolation-joint/');
    expect(joint.needed).toBeCloseTo(24, 6);
    expect(joint.sources[0]!.trace.part).toEqual({ kind: 'joint', id: 'across' });
  });
});

describe('strips of a later pour like one stripped before', () => {
  const draft = sinkJob({}, { cutouts: [], reinforcement: [] });
  const [piece] = draft.pieces;
  const twoPours = (pourDay: number) =>
    jobSchema.parse({ ...draft, pieces: [piece, { ...piece, id: 'later', name: 'Later', pourDay }] });

  test('are used again: two sticks and not four, and the list says so', () => {
    const takeoff = jobTakeoff(twoPours(5), null);
    expect(lineOf(takeoff, 'strip/').buy).toBe(2);
    expect(takeoff.list.remarks).toEqual([expect.stringContaining('4 form strips are used again')]);
    // Screws, tape and sealant are those of both pours
    expect(lineOf(takeoff, 'screws/forms').needed).toBe(52);
  });

  test('are cut anew on the day of the same pour, or where no day is known on which the first come off', () => {
    expect(lineOf(jobTakeoff(twoPours(0), null), 'strip/').buy).toBe(4);
    expect(lineOf(jobTakeoff(twoPours(5), null, { strippedOnDay: () => null }), 'strip/').buy).toBe(4);
  });

  test('wait for the first work day after the strength allows it', () => {
    // Day 0 is a Friday and stripped after a day of age at 20 C; with Saturday and Sunday off that is Monday, day 3
    const calendar = { startsOn: '2027-04-30', restDays: ['sat', 'sun'] as const };
    const withRest = (pourDay: number) =>
      jobSchema.parse({
        ...twoPours(pourDay),
        site: { ...draft.site, calendar: { ...draft.site.calendar, ...calendar } },
      });
    expect(lineOf(jobTakeoff(withRest(3), null), 'strip/').buy).toBe(4);
    expect(lineOf(jobTakeoff(withRest(4), null), 'strip/').buy).toBe(2);
    expect(lineOf(jobTakeoff(twoPours(3), null), 'strip/').buy).toBe(2);
  });
});

test('a piece that cannot be drawn is left out, and the list says so', () => {
  const draft = sinkJob();
  const [piece] = draft.pieces;
  // Radii of 20 in have no room on sides of 24 in.
  const corners = rectangle(60, 24).map((corner) => ({ ...corner, radiusIn: 20 }));
  const job = { ...draft, pieces: [piece!, { ...piece!, id: 'broken', name: 'Broken', corners }] };
  const takeoff = jobTakeoff(job, null);
  expect(takeoff.list.gaps[0]).toContain('"Broken" cannot be drawn and is left out');
  expect(lineOf(takeoff, 'board/').needed).toBeCloseTo(1200, 6);
});

test('fibre without a dose and a mix without bag data are told as gaps', () => {
  const fibre = { kind: 'fibre', id: 'fibre', material: 'glass' } as const;
  const job = sinkJob({ mixes: [{ id: 'mix', name: 'Site mix' }] }, { reinforcement: [fibre] });
  const { list } = jobTakeoff(job, null);
  expect(list.gaps.join(' ')).toContain('No dose is stated for the fibre');
  expect(list.gaps.join(' ')).toContain('Only volumes can be given');
  const mix = linesOf(list).find(({ id }) => id === 'mix/mix')!;
  // 1.38889 x 1.02 x 1.1 = 1.558 cu ft
  expect(mix.buyWords).toContain('2 cu ft, ordered by volume');
});
