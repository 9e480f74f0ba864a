import { describe, expect, it } from 'vitest';
import type { QuickFields } from '../../../src-core/starters';
import { DEFAULT_QUICK_FIELDS, QUICK_DEFAULTS, quickCheckJob } from '../../../src-core/starters';
import { choicesOf, withChoice, withSize } from '../../../src-renderer/start/quick-form';

const ledge = DEFAULT_QUICK_FIELDS;

describe('choicesOf', () => {
  it('offers a bar ledge on a stud or a block wall, and no holding down on base cabinets', () => {
    expect(choicesOf('bearing', ledge).map(({ words }) => words)).toEqual(['A stud wall', 'A block wall']);
    expect(choicesOf('held', QUICK_DEFAULTS.counter).map(({ value }) => value)).toEqual(['loose']);
    expect(choicesOf('held', ledge)).toHaveLength(2);
  });

  it('offers every kind of piece and every steel, whatever else is answered', () => {
    expect(choicesOf('kind', QUICK_DEFAULTS.cap).map(({ value }) => value)).toEqual(
      Object.keys(QUICK_DEFAULTS),
    );
    expect(choicesOf('steel', QUICK_DEFAULTS.cap)).toHaveLength(3);
  });
});

describe('withChoice', () => {
  it('brings the usual sizes of a counter in place of the usual sizes of a ledge', () => {
    expect(withChoice(ledge, 'kind', 'counter')).toEqual(QUICK_DEFAULTS.counter);
  });

  it('keeps a length of 120 in that was typed when the kind changes', () => {
    const counter = withChoice({ ...ledge, lengthIn: 120 }, 'kind', 'counter');
    expect(counter).toEqual({ ...QUICK_DEFAULTS.counter, lengthIn: 120 });
  });

  it('lays a tied slab loose when it is put on cabinets, and moves a ledge off a wall that a hearth has not', () => {
    const tied: QuickFields = { ...QUICK_DEFAULTS.counter, bearing: 'block-wall', held: 'tied' };
    expect(withChoice(tied, 'bearing', 'cabinets').held).toBe('loose');
    const onBlock: QuickFields = { ...ledge, bearing: 'block-wall' };
    expect(withChoice(onBlock, 'kind', 'cap').bearing).toBe('piers');
    expect(withChoice(onBlock, 'kind', 'hearth').bearing).toBe('block-wall');
  });

  it('goes through every kind from every kind without an answer that cannot be', () => {
    for (const from of Object.values(QUICK_DEFAULTS)) {
      for (const { value } of choicesOf('kind', from)) {
        for (const bearing of choicesOf('bearing', withChoice(from, 'kind', value))) {
          const fields = withChoice(withChoice(from, 'kind', value), 'bearing', bearing.value);
          const made = quickCheckJob(fields);
          const wrong = made.ok ? [] : made.problems.filter(({ field }) => !field.endsWith('In'));
          expect(wrong, `${from.kind} to ${value} on ${bearing.value}`).toEqual([]);
        }
      }
    }
  });
});

describe('withSize', () => {
  it('refuses an overhang of 17 in on a ledge 17-1/2 in deep, in the units of the page', () => {
    const inches = withSize(ledge, 'overhangIn', 17, 'imperial');
    expect(inches.ok).toBe(false);
    expect(!inches.ok && inches.sentence).toContain('1/2 in');
    const metric = withSize(ledge, 'overhangIn', 17, 'metric');
    expect(!metric.ok && metric.sentence).toContain('12.7 mm');
  });

  it('takes a depth of 12 in although the 11 in overhang is then the one to mend', () => {
    const taken = withSize(ledge, 'depthIn', 12, 'imperial');
    expect(taken).toEqual({ ok: true, fields: { ...ledge, depthIn: 12 } });
    const made = quickCheckJob({ ...ledge, depthIn: 12 });
    expect(made.ok).toBe(false);
    expect(!made.ok && made.problems.map(({ field }) => field)).toEqual(['overhangIn']);
  });

  it('takes 16 in and leaves what was given as it was', () => {
    expect(withSize(ledge, 'overhangIn', 16, 'imperial')).toEqual({
      ok: true,
      fields: { ...ledge, overhangIn: 16 },
    });
    expect(ledge.overhangIn).toBe(11);
  });
});
