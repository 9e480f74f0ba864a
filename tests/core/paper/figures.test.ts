import { describe, expect, test } from 'vitest';
import type { Figure, Mark } from '../../../src-core/figure';
import { DETAIL_SCALES, PLAN_SCALES } from '../../../src-core/paper';
import { faultsOf } from './faults';
import { exampleJob, figuresOf, JOB_NAMES, ROOM } from './jobs';

const SYSTEMS = ['imperial', 'metric'] as const;
const CASES = JOB_NAMES.flatMap((name) => SYSTEMS.map((system) => [name, system] as const));

describe.each(CASES)('every drawing of %s in %s units', (name, system) => {
  const figures = figuresOf(exampleJob(name, system));

  test('has all its marks on its paper, words of 6.5 pt and more, and no words on other words', () => {
    expect(figures.length).toBeGreaterThanOrEqual(3);
    expect(figures.flatMap(faultsOf)).toEqual([]);
  });

  test('fits a page of 7.2 x 8.6 in', () => {
    for (const { widthIn, heightIn } of figures) {
      expect(widthIn).toBeLessThanOrEqual(ROOM.widthIn);
      expect(heightIn).toBeLessThanOrEqual(ROOM.heightIn);
    }
  });

  test('is to a standard scale, or says that it has none', () => {
    const standard = [...PLAN_SCALES[system], ...DETAIL_SCALES[system]].map(({ words }) => words);
    for (const { id, scaleWords } of figures) {
      if (id.startsWith('view-')) expect(scaleWords).toBeNull();
      else expect(standard).toContain(scaleWords);
    }
  });

  test('has an id of its own', () => {
    expect(new Set(figures.map(({ id }) => id)).size).toBe(figures.length);
  });

  test('comes out the same a second time', () => {
    expect(figuresOf(exampleJob(name, system))).toEqual(figures);
  });
});

describe('the fault finder', () => {
  const text = (words: string, x: number, y: number, turnDeg = 0, sizePt = 7): Mark => ({
    kind: 'text',
    words,
    at: { x, y },
    sizePt,
    anchor: 'middle',
    turnDeg,
    isBold: false,
    hasGround: false,
  });
  const figure = (...marks: Mark[]): Figure => ({
    id: 'a-drawing',
    title: 'A drawing',
    scaleWords: null,
    widthIn: 2,
    heightIn: 1,
    words: 'A drawing made to be wrong.',
    marks,
  });

  test('passes two words apart', () => {
    expect(faultsOf(figure(text('left', 0.5, 0.5), text('right', 1.5, 0.5)))).toEqual([]);
  });

  test('sees words on words, upright on level too', () => {
    expect(faultsOf(figure(text('one', 1, 0.5), text('other', 1.1, 0.52)))).toHaveLength(1);
    expect(faultsOf(figure(text('one', 1, 0.5), text('other', 1, 0.5, -90)))).toHaveLength(1);
  });

  test('sees words of 6 pt, words off the paper and an id in capitals', () => {
    expect(faultsOf(figure(text('small', 1, 0.5, 0, 6)))).toHaveLength(1);
    expect(faultsOf(figure(text('off', 1.98, 0.5)))).toHaveLength(1);
    expect(faultsOf({ ...figure(text('one', 1, 0.5)), id: 'A Drawing' })).toHaveLength(1);
  });
});
