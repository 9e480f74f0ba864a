import { describe, expect, it } from 'vitest';
import type { ListField, Thing } from '../../../src-renderer/forms/specs/field';
import { nextRoot } from '../../../src-renderer/forms/specs/next-in-list';
import { pickedFrom } from '../../../src-renderer/forms/specs/picked';
import { WORK_FIELDS } from '../../../src-renderer/forms/specs/work-fields';
import { barValues } from '../../../src-renderer/forms/starts/new-steel';
import { partRows } from '../../../src-renderer/forms/summaries';
import { examplePiece } from './example-jobs';

const counter = examplePiece('boathouse-galley', 'serving-counter');
const factsOf = (of: Parameters<typeof partRows>[0], { piece, job }: typeof counter = counter) =>
  partRows(of, piece, job).map(({ name, facts }) => `${name}: ${facts}`);

describe('a row of the piece form', () => {
  it('sums up a cabinet that comes on day 40 and a leg that goes then', () => {
    const rows = factsOf('support');
    expect(rows[0]).toBe('R1: Cabinet, 30 in by 24 in, from day 40');
    expect(rows).toContain('return leg 1: Leg, 3-1/2 in by 1-1/2 in, day 0 to 40');
  });

  it('sums up edges by their length and what they meet', () => {
    const rows = factsOf('edge');
    expect(rows[2]).toBe('Edge 3, 96 in: free, eased');
    expect(rows[4]).toBe('Edge 5, 121-1/2 in: against a wall, gap 1/8 in');
  });

  it('sums up a sink of 26 by 14 in and a control joint of 25-1/2 in', () => {
    expect(factsOf('cutout')[0]).toBe('Sink: 26 in by 14 in');
    expect(factsOf('joint')).toEqual(['Control joint: 25-1/2 in long']);
  });

  it('prints millimetres in a metric job', () => {
    const metric = { ...counter, job: { ...counter.job, shownIn: 'metric' as const } };
    expect(factsOf('cutout', metric)[0]).toBe('Sink: 660.4 mm by 355.6 mm');
  });
});

describe('a step of the swap in the form of the work', () => {
  it('is told by the names of what goes and comes, as the plan and the swap tell it', () => {
    const steps = WORK_FIELDS.flatMap((field) => (field.kind === 'group' ? field.fields : [])).find(
      (field) => field.kind === 'list' && field.at === 'swap.steps',
    ) as ListField;
    const { job } = counter;
    const [first] = job.swap.steps;
    expect(steps.summary!(first as unknown as Thing, { job, piece: null })).toBe(
      'Day 40: out Sink, front leg 2, front leg 3; in C2, sink',
    );
  });
});

describe('a table of the trade', () => {
  const picks = [{ id: '#3', words: '#3', values: barValues('#3') }];

  it('shows a 3/8 in bar of .11 sq in and 60 ksi as a #3', () => {
    expect(pickedFrom(picks, { barIn: 0.375, areaIn2: 0.11, yieldPsi: 60_000, spacingIn: 6 })?.id).toBe('#3');
  });

  it('shows the same bar at 40 ksi as one of its own', () => {
    expect(pickedFrom(picks, { barIn: 0.375, areaIn2: 0.11, yieldPsi: 40_000 })).toBeNull();
  });
});

describe('the next arm of a row', () => {
  const { job, piece } = examplePiece('bar-ledge', 'bar-ledge');
  const at = (...xs: number[]) => xs.map((xIn) => ({ xIn, yIn: 17.5 }));

  it('goes one spacing beyond the last while the ledge goes on', () => {
    expect(nextRoot(at(8, 24, 40), { job, piece }).xIn).toBe(56);
  });

  it('goes before the first where the ledge ends', () => {
    expect(nextRoot(at(56, 72, 88), { job, piece }).xIn).toBeCloseTo(40, 9);
  });

  it('goes between the last two where the row is full', () => {
    expect(nextRoot(at(8, 24, 40, 56, 72, 88), { job, piece }).xIn).toBe(80);
  });
});
