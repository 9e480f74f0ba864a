import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { Job } from '../../../src-core/job';
import { readJobText } from '../../../src-core/job';

const FOLDER = new URL('../../../assets/jobs/', import.meta.url);
const FILES = readdirSync(FOLDER).filter((file) => file.endsWith('.json'));

function example(file: string): Job {
  const reading = readJobText(readFileSync(new URL(file, FOLDER), 'utf8'));
  if (!reading.ok) throw new Error(`${file}: ${JSON.stringify(reading.problems, null, 1)}`);
  return reading.job;
}

describe('example jobs', () => {
  test.each(FILES)('%s reads without problems and needs no migration', (file) => {
    const reading = readJobText(readFileSync(new URL(file, FOLDER), 'utf8'));
    expect(reading).toMatchObject({ ok: true, migratedFrom: null });
  });

  test('five jobs are shipped', () => {
    expect(FILES.sort()).toEqual([
      'bar-ledge.json',
      'boathouse-galley.json',
      'gate-pier-cap.json',
      'hearth.json',
      'straight-counter.json',
    ]);
  });

  test('a file is named after the id of its job', () => {
    expect(FILES.map((file) => `${example(file).id}.json`)).toEqual(FILES);
  });

  test('every shipped price is marked as invented', () => {
    const priced = FILES.flatMap((file) => example(file).stock).filter(({ price }) => price !== null);
    expect(priced.length).toBeGreaterThan(0);
    expect(priced.filter(({ priceFrom }) => priceFrom !== 'invented')).toEqual([]);
  });

  test('no shipped job writes a field that only repeats the default of an empty piece', () => {
    for (const file of FILES) {
      const text = readFileSync(new URL(file, FOLDER), 'utf8');
      expect(text).not.toMatch(/"(fixed|joints|cutouts|supports|reinforcement|removableParts)": \[\]/);
      expect(text).not.toMatch(/: null/);
    }
  });
});

describe('the Boathouse galley', () => {
  const job = example('boathouse-galley.json');

  test('has a counter, two ledges, a bench of each kind, a hearth and three caps', () => {
    expect(job.pieces.map(({ id, copies }) => [id, copies])).toEqual([
      ['serving-counter', 1],
      ['bar-ledge', 1],
      ['foot-ledge', 1],
      ['fish-bench', 1],
      ['bench-seat', 1],
      ['stove-hearth', 1],
      ['gate-cap', 3],
    ]);
  });

  test('its cabinets come five weeks and more after the pour, when the temporary supports go', () => {
    const supports = job.pieces[0]!.supports;
    const cabinets = supports.filter(({ kind }) => kind === 'cabinet');
    const temporary = supports.filter(({ kind }) => kind !== 'cabinet');
    expect(Math.min(...cabinets.map(({ firstDay }) => firstDay))).toBe(40);
    expect(
      temporary.every(({ firstDay, lastDay }) => firstDay === 0 && lastDay !== null && lastDay >= 40),
    ).toBe(true);
  });

  test('its swap steps take every temporary support out and bring every cabinet in, once', () => {
    const supports = job.pieces[0]!.supports;
    const out = job.swap.steps.flatMap(({ supportsOut }) => supportsOut).sort();
    const coming = job.swap.steps.flatMap(({ supportsIn }) => supportsIn).sort();
    const sections = job.swap.steps.flatMap(({ sectionsOut }) => sectionsOut).sort();
    expect(out).toEqual(
      supports
        .filter(({ kind }) => kind !== 'cabinet')
        .map(({ id }) => id)
        .sort(),
    );
    expect(coming).toEqual(
      supports
        .filter(({ kind }) => kind === 'cabinet')
        .map(({ id }) => id)
        .sort(),
    );
    expect(sections).toEqual(job.falsework.sections.map(({ id }) => id).sort());
  });

  test('each swap step falls on the day on which its supports go and come', () => {
    const byId = new Map(
      job.pieces.flatMap(({ supports }) => supports).map((support) => [support.id, support]),
    );
    for (const { day, supportsOut, supportsIn } of job.swap.steps) {
      for (const id of supportsOut) expect(byId.get(id)!.lastDay).toBe(day);
      for (const id of supportsIn) expect(byId.get(id)!.firstDay).toBe(day);
    }
  });
});
