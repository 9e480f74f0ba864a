import { describe, expect, test } from 'vitest';
import { addItem, removeItem, setField, setUnits } from '../../../src-core/edit';
import { done, pieceOf, refusal, sampleJob } from './editing';

const set = (path: readonly (string | number)[], value: unknown) =>
  setField.perform(sampleJob(), { path, value, title: 'Change it' });

describe('a field set to what a person entered', () => {
  test('takes the value under the title of the form, and is a step of its own', () => {
    const { job, title, mergeKey } = done(set(['pieces', 0, 'thicknessIn'], 2.5));
    expect([job.pieces[0]!.thicknessIn, title, mergeKey]).toEqual([2.5, 'Change it', null]);
  });

  test('leaves every other piece and part the same object', () => {
    const before = sampleJob();
    const args = { path: ['pieces', 0, 'supports', 1, 'lastDay'], value: 31, title: 'Change it' };
    const { job } = done(setField.perform(before, args));
    expect(job.pieces[1]).toBe(before.pieces[1]);
    expect(job.mixes).toBe(before.mixes);
    expect(job.pieces[0]!.cutouts).toBe(before.pieces[0]!.cutouts);
    expect(job.pieces[0]!.supports[0]).toBe(before.pieces[0]!.supports[0]);
    expect(job.pieces[0]!.supports[1]).not.toBe(before.pieces[0]!.supports[1]);
  });

  test('gives the same job where the value is what it was, number or whole object', () => {
    const before = sampleJob();
    for (const [path, value] of [
      [['pieces', 0, 'thicknessIn'], 2],
      [['site', 'calendar'], { startsOn: '2027-04-26', restDays: [], handOverDay: 40 }],
    ] as const) {
      expect(done(setField.perform(before, { path, value, title: 'Change it' })).job).toBe(before);
    }
  });

  test('undefined takes an optional name away', () => {
    const named = done(set(['pieces', 0, 'supports', 0, 'name'], 'left pier')).job;
    expect(named.pieces[0]!.supports[0]!.name).toBe('left pier');
    const path = ['pieces', 0, 'supports', 0, 'name'];
    const { job } = done(setField.perform(named, { path, value: undefined, title: 'Change it' }));
    expect('name' in job.pieces[0]!.supports[0]!).toBe(false);
  });

  test('a draft of an object takes its defaults', () => {
    const { job } = done(set(['pieces', 1, 'supports', 0, 'hold'], { kind: 'tied', ratingLbf: 300 }));
    expect(job.pieces[1]!.supports[0]!.hold).toEqual({
      kind: 'tied',
      spacingIn: 16,
      ratingLbf: 300,
      stiffness: { low: 2000, high: 20000 },
    });
  });

  test.each([
    ['a thickness below 1/4 in', ['pieces', 0, 'thicknessIn'], 0.1, 'out-of-range', 'pieces[0].thicknessIn'],
    ['a text for a number', ['pieces', 0, 'thicknessIn'], 'two', 'wrong-type', 'pieces[0].thicknessIn'],
    [
      'a number that is none',
      ['pieces', 0, 'thicknessIn'],
      Number.NaN,
      'wrong-type',
      'pieces[0].thicknessIn',
    ],
    ['a mix that is not there', ['pieces', 0, 'mixId'], 'lime', 'mix-unknown', 'pieces[0].mixId'],
    ['a field that no piece has', ['pieces', 0, 'girth'], 3, 'unknown-field', 'pieces[0].girth'],
    [
      'a field of nothing',
      ['pieces', 0, 'colour', 'pigment'],
      'slate',
      'unknown-field',
      'pieces.0.colour.pigment',
    ],
    ['a piece beyond the last', ['pieces', 9, 'thicknessIn'], 2, 'unknown-field', 'pieces.9.thicknessIn'],
    ['the length of a list', ['pieces', 'length'], 0, 'unknown-field', 'pieces.length'],
    ['no field at all', [], {}, 'unknown-field', ''],
    [
      'a slab lower than the profile of its edge',
      ['pieces', 0, 'thicknessIn'],
      1,
      'profile-too-tall',
      'pieces[0].edges[0].profile.points[1].upIn',
    ],
  ] as const)('%s is refused with its place', (_, path, value, code, at) => {
    const problem = refusal(set(path, value));
    expect([problem.code, problem.path]).toEqual([code, at]);
    expect(problem.sentence).toMatch(/^[A-Z"].*\.$/);
  });
});

describe('lists', () => {
  const reading = { id: 'b', xIn: 5, yIn: 6, valueIn: 0.25 };
  const path = ['site', 'levels', 'readings'];

  test('an entry goes to the end and is what was made', () => {
    const { job, madeId } = done(
      addItem.perform(sampleJob(), { path, value: reading, title: 'Add reading' }),
    );
    expect(job.site.levels.readings.map(({ id }) => id)).toEqual(['a', 'b']);
    expect(madeId).toBe('b');
  });

  test('an entry without an id makes nothing to select', () => {
    const cylinders = ['mixes', 0, 'cylinders'];
    const value = { ageDays: 7, strengthPsi: 3800 };
    const edited = done(addItem.perform(sampleJob(), { path: cylinders, value, title: 'Add cylinder' }));
    expect(edited.job.mixes[0]!.cylinders).toEqual([value]);
    expect('madeId' in edited).toBe(false);
  });

  test('an entry is taken out, and the others stay the same objects', () => {
    const before = done(addItem.perform(sampleJob(), { path, value: reading, title: 'Add reading' })).job;
    const { job } = done(removeItem.perform(before, { path, index: 0, title: 'Remove reading' }));
    expect(job.site.levels.readings).toEqual([reading]);
    expect(job.site.levels.readings[0]).toBe(before.site.levels.readings[1]);
  });

  test('an entry twice over, an entry that is not there, and a list that is none are refused', () => {
    const job = sampleJob();
    const again = { ...reading, id: 'a' };
    expect(refusal(addItem.perform(job, { path, value: again, title: 'Add' })).code).toBe('id-repeated');
    expect(refusal(removeItem.perform(job, { path, index: 3, title: 'Remove' })).sentence).toBe(
      'The list has no entry 4.',
    );
    const name = { path: ['name'], value: 'x', title: 'Add' };
    expect(refusal(addItem.perform(job, name)).sentence).toBe('The field "name" is no list.');
    const mixes = { path: ['mixes'], index: 0, title: 'Remove mix' };
    expect(refusal(removeItem.perform(job, mixes)).code).toBe('wrong-length');
  });
});

test('a job shown in metric units keeps its numbers', () => {
  const before = sampleJob();
  const { job, title } = done(setUnits.perform(before, { system: 'metric' }));
  expect([job.shownIn, title]).toEqual(['metric', 'Change units']);
  expect(job.pieces).toBe(before.pieces);
  expect(pieceOf(job, 'counter').thicknessIn).toBe(2);
});
