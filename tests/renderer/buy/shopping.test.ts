import { describe, expect, test } from 'vitest';
import { setTick } from '../../../src-core/edit';
import { designJob } from '../../../src-core/falsework';
import { jobTakeoff, linesOf } from '../../../src-core/takeoff';
import { stateWords, totalWords } from '../../../src-renderer/buy/head-words';
import { buyGroups, countWords, isOfFalsework } from '../../../src-renderer/buy/shopping-rows';
import { done } from '../../core/edit/editing';
import { GALLEY, GALLEY_TAKEOFF } from './taken-off';

const whole = jobTakeoff(GALLEY, designJob(GALLEY));
const groups = buyGroups(GALLEY_TAKEOFF, null, GALLEY);
const rows = groups.flatMap((group) => group.rows);

describe('the shopping list as it is read', () => {
  test('has a row for every line, under the heading of where one buys it', () => {
    expect(rows.map(({ id }) => id)).toEqual(linesOf(GALLEY_TAKEOFF.list).map(({ id }) => id));
    expect(groups.map(({ title }) => title)).toEqual([
      'Timber yard',
      "Builders' merchant",
      'Hardware',
      'Protection',
    ]);
  });

  test('says the exact need, what to buy, the price of one and of all, and that it is invented', () => {
    // 6 sticks at the 14.50 of the example's stock
    const form = rows.find(({ name }) => name.startsWith('Edge form, eased 1/8 in, 2 in high'))!;
    expect(form).toMatchObject({
      buy: '6 sticks of 8 ft',
      need: `takes 40' 6-1/4"`,
      cost: '87.00',
      price: '14.50 each, an invented price',
    });
    const bags = rows.find(({ id }) => id === 'mix/worktop-mix')!;
    expect(bags).toMatchObject({ cost: '', price: 'no price known' });
  });

  test('sources of a line come to its exact need, and those that read alike stand together', () => {
    const strips = rows.find(({ name }) => name.startsWith('Edge form, eased 1/8 in, 2 in high'))!;
    const [line] = linesOf(GALLEY_TAKEOFF.list).filter(({ id }) => id === strips.id);
    expect(line!.sources.reduce((sum, { amount }) => sum + amount, 0)).toBeCloseTo(486.25, 1);
    expect(strips.sources.find(({ words }) => words === 'Foot ledge, edge 3')?.amount).toMatch(
      /^2 of them, /,
    );
    expect(new Set(strips.sources.map(({ key }) => key)).size).toBe(strips.sources.length);
    expect(strips.sources.length).toBeLessThan(line!.sources.length);
  });

  test('ticks fit the job file, differ for every line, and come back as ticked rows', () => {
    const ids = rows.map(({ tickId }) => tickId);
    expect(new Set(ids).size).toBe(ids.length);
    for (const tickId of ids) {
      const { job } = done(setTick.perform(GALLEY, { id: tickId, done: true, words: 'a line' }));
      const ticked = buyGroups(GALLEY_TAKEOFF, null, job)
        .flatMap((group) => group.rows)
        .filter(({ isTicked }) => isTicked);
      expect(ticked.map((row) => row.tickId)).toEqual([tickId]);
    }
  });

  test('the count says how many are ticked', () => {
    const { job } = done(setTick.perform(GALLEY, { id: rows[0]!.tickId, done: true, words: 'a line' }));
    expect(countWords(groups)).toBe(`${rows.length} things to buy`);
    expect(countWords(buyGroups(GALLEY_TAKEOFF, null, job))).toBe(`${rows.length} things to buy, 1 ticked`);
  });
});

describe('while the falsework is being designed', () => {
  test('its lines are just those that the quick take-off leaves out', () => {
    const quick = new Set(linesOf(GALLEY_TAKEOFF.list).map(({ id }) => id));
    const left = linesOf(whole.list).filter(({ id }) => !quick.has(id));
    expect(left.length).toBeGreaterThan(3);
    expect(linesOf(whole.list).filter(isOfFalsework)).toEqual(left);
    expect(linesOf(GALLEY_TAKEOFF.list).filter(isOfFalsework)).toEqual([]);
  });

  test('its lines stand as they were, marked, and no line is lost or doubled', () => {
    const kept = buyGroups(GALLEY_TAKEOFF, whole.list, GALLEY).flatMap((group) => group.rows);
    expect(kept.map(({ id }) => id).sort()).toEqual(
      linesOf(whole.list)
        .map(({ id }) => id)
        .sort(),
    );
    expect(kept.filter(({ isEarlier }) => isEarlier).map(({ id }) => id)).toEqual(
      linesOf(whole.list)
        .filter(isOfFalsework)
        .map(({ id }) => id),
    );
    const settled = buyGroups(whole, whole.list, GALLEY).flatMap((group) => group.rows);
    expect(settled.some(({ isEarlier }) => isEarlier)).toBe(false);
  });

  test('the head says what is missing, and nothing once all is there', () => {
    expect(totalWords(GALLEY_TAKEOFF)).toMatch(/in all.*\. The falsework comes on top\.$/);
    expect(totalWords(whole)).toMatch(/have no price\.$/);
    const fresh = { isStale: false, isWorking: true };
    expect(stateWords(null, fresh)).toBe('Taking off the drawing.');
    expect(stateWords(GALLEY_TAKEOFF, fresh)).toBe('The falsework is being designed.');
    expect(stateWords(GALLEY_TAKEOFF, { isStale: false, isWorking: false })).toBe(
      'The falsework follows once the drawing rests.',
    );
    expect(stateWords(whole, { ...fresh, isStale: true })).toBe('Changed since; counting again.');
    expect(stateWords(whole, { isStale: false, isWorking: false })).toBe('');
  });
});
