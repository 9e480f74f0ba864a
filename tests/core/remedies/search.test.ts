import { describe, expect, test } from 'vitest';
import { DEFAULT_LIMITS, stands } from '../../../src-core/checks';
import type { Job } from '../../../src-core/job';
import type { Change } from '../../../src-core/remedies';
import { applyChange, searchChanges } from '../../../src-core/remedies';
import {
  brokenPromise,
  checksOf,
  keepPromises,
  SEARCH_MESH_IN as MESH_IN,
  search,
} from '../../support/kept-promises';
import { HEARTH_E3, jobOf, LEDGE_E1, rectangle, wallAlongX } from '../../support/pieces';

/** Mesh of the ledge's verdict, finer than that of the trials, so that its offers are confirmed. */
const LEDGE_MESH_IN = 2;

function expectPromiseKept(job: Job, change: Change, meshSizeIn = MESH_IN): void {
  expect(brokenPromise(job, change, meshSizeIn)).toBeNull();
}

describe('a loose ledge 1-1/2 in thick and 11 in out on a stud wall', () => {
  const job = LEDGE_E1();
  const found = search(job, undefined, LEDGE_MESH_IN);

  test('is mended in at least two ways, each of which passes when it is made', { timeout: 120_000 }, () => {
    expect(new Set(found.changes.map(({ kinds }) => kinds.join())).size).toBeGreaterThanOrEqual(2);
    for (const change of found.changes) expectPromiseKept(job, change, LEDGE_MESH_IN);
  });

  test('is offered the fewest kinds first, then what gives all that was drawn with the fewest parts', () => {
    const whole = found.changes.filter(({ title }) => !/posts? under the free edge|shorter/.test(title));
    const keys = whole.map(({ kinds, cost }) => kinds.length * 1000 + cost.parts);
    expect(keys).toEqual([...keys].sort((a, b) => a - b));
    expect(found.changes.slice(0, whole.length)).toEqual(whole);
  });

  test('gives the same first offer when only one is asked for, with no more trials', {
    timeout: 120_000,
  }, () => {
    const one = search(job, 1, LEDGE_MESH_IN);
    expect(one.changes).toEqual(found.changes.slice(0, 1));
    expect(one.evaluations).toBeLessThanOrEqual(found.evaluations);
  });

  test('is told of every kind that was tried in vain, with its nearest miss', () => {
    const offered = found.changes.flatMap(({ kinds }) => (kinds.length === 1 ? kinds : []));
    const missed = found.failed.flatMap(({ kinds }) => (kinds.length === 1 ? kinds : []));
    expect([...offered, ...missed].sort()).toEqual(
      expect.arrayContaining(['corbel', 'extra-support', 'shorter-overhang', 'tie', 'wider-bearing']),
    );
    expect(offered.filter((kind) => missed.includes(kind))).toEqual([]);
    for (const { words } of found.failed)
      expect(words).toMatch(/not enough\. Nearest: |not tried\. |confirm/);
  });

  test('stays as it was in the file', () => {
    expect(job).toEqual(LEDGE_E1());
  });
});

test('ties are offered with the rating that their pull asks for, in steps of 50 lbf', {
  timeout: 120_000,
}, () => {
  const job = jobOf({
    use: 'bar-ledge',
    corners: rectangle(60, 15.5),
    thicknessIn: 2,
    supports: [wallAlongX('wall', 0, 60, 11, 7, { build: 'block' })],
  });
  const tie = search(job).changes.find(({ kinds }) => kinds.join() === 'tie');
  if (tie === undefined) throw new Error('no tie is offered');
  expect(tie.title).toMatch(/^Tie it: \d+ ties at \d+ in, each rated \d+ lbf$/);
  const { hold } = applyChange(job, tie).pieces[0]!.supports[0]!;
  const rating = hold.kind === 'tied' ? hold.ratingLbf! : 0;
  expect(rating % 50).toBe(0);
  const asked = checksOf(applyChange(job, tie), 'piece').find(({ id }) => id === 'tie-force')!.demand.value;
  expect(asked).toBeLessThanOrEqual(rating);
  expect(asked).toBeGreaterThan(rating - 50);
});

test('a hearth 1-1/4 in thick that cracks underneath is mended by steel, thickness or a post', {
  timeout: 120_000,
}, () => {
  const job = { ...HEARTH_E3(), pieces: [{ ...HEARTH_E3().pieces[0]!, thicknessIn: 1.25 }] };
  const { changes } = search(job);
  expect(changes.map(({ kinds }) => kinds.join())).toEqual(
    expect.arrayContaining(['thickness', 'extra-support']),
  );
  for (const change of changes) expectPromiseKept(job, change);
  const thicker = changes.find(({ kinds }) => kinds.join() === 'thickness')!;
  const addedIn = applyChange(job, thicker).pieces[0]!.thicknessIn - 1.25;
  expect(thicker.cost.concreteIn3).toBeCloseTo(46 * 20 * addedIn, 6);
  expect(thicker.cost.weightLb).toBeCloseTo((46 * 20 * addedIn * 145) / 1728, 6);
});

test('a piece that nothing carries is offered posts', { timeout: 120_000 }, () => {
  const job = jobOf({ corners: rectangle(36, 20), thicknessIn: 2, use: 'bench' });
  const { changes } = search(job);
  expect(changes[0]!.kinds).toContain('extra-support');
  for (const change of changes) expectPromiseKept(job, change);
});

test('a ledge 1-1/4 in thick and 13 in out on a block wall needs two changes at once: ties and steel at the top are one way', {
  timeout: 120_000,
}, () => {
  const job = jobOf({
    use: 'bar-ledge',
    corners: rectangle(60, 20),
    thicknessIn: 1.25,
    supports: [wallAlongX('wall', 0, 60, 15.75, 5.5, { build: 'block' })],
  });
  const { changes, failed } = search(job);
  const steel = changes.find(({ kinds }) => kinds.join() === 'tie,steel')!;
  expect(steel.id).toBe('piece-tie-steel');
  expect(steel.needs).toEqual(['tie', 'steel']);
  expect(steel.title).toMatch(/^Tie it: .*; (Mesh|Bars): .* below the top$/);
  expectPromiseKept(job, steel);
  expect(failed.map(({ kinds }) => kinds.join())).toEqual(expect.arrayContaining(['tie', 'corbel']));
  for (const { kinds } of changes) expect(kinds.length).toBeLessThanOrEqual(2);
});

test('a cancelled search gives what it has and says how many trials it took', () => {
  const job = LEDGE_E1();
  const failing = checksOf(job, 'piece').filter(({ level }) => !stands(level));
  let trials = 0;
  const found = searchChanges(job, 'piece', {
    failing,
    finalMeshSizeIn: MESH_IN,
    limits: DEFAULT_LIMITS,
    onProgress: (evaluations) => {
      trials = evaluations;
    },
    isCancelled: () => trials >= 3,
  });
  expect(found.evaluations).toBe(3);
  expect(found.changes).toEqual([]);
});

test('no change that 8 random failing jobs are offered fails when it is made', { timeout: 900_000 }, () => {
  const report = keepPromises(8, 1);
  expect(report.jobs).toBe(8);
  expect(report.changes).toBeGreaterThan(4);
});
