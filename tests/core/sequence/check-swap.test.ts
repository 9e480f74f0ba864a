import { describe, expect, test } from 'vitest';
import { checkPiece, DEFAULT_LIMITS } from '../../../src-core/checks';
import type { Job } from '../../../src-core/job';
import type { CheckedMoment } from '../../../src-core/sequence';
import { checkSwap, swapStates } from '../../../src-core/sequence';
import { cornerCounter, prop, SWAP_DAY, straightCounter, wallLedger } from './swap-jobs';

/** A full check of one moment, meshed and factored for it alone. */
function freshCheck(job: Job, { day, standing }: Pick<CheckedMoment, 'day' | 'standing'>) {
  return checkPiece(job, job.pieces[0]!, { day, meshSizeIn: null, standing }, DEFAULT_LIMITS);
}

describe('legs, ledger and cabinets all changed on day 30 with no steps drawn', () => {
  const job = straightCounter(1.5);
  const swap = checkSwap(job, 'counter');
  const worst = swap.moments[swap.worst!]!;

  test('has a moment before, one with the bays open, and one with the cabinets in', () => {
    expect(swap.moments.map(({ phase, day, standing }) => [phase, day, standing.length])).toEqual([
      ['before', SWAP_DAY, 9],
      ['out', SWAP_DAY, 0],
      ['in', SWAP_DAY, 4],
    ]);
  });

  test('without anything under it the slab is not analysed, and that is the worst moment', () => {
    expect(worst).toMatchObject({ phase: 'out', cracking: null, checkId: 'support-load', level: 'change' });
    expect(swap.level).toBe('change');
  });
});

describe('a checked moment', () => {
  const job = straightCounter(1.5, {
    swap: {
      steps: [1, 2, 3, 4].map((k) => ({
        id: `step-${k}`,
        day: 10 + k,
        supportsOut: [`leg-${k}a`, `leg-${k}b`],
        supportsIn: [`cab-${k}`],
      })),
    },
  });
  const swap = checkSwap(job, 'counter');
  const worst = swap.moments[swap.worst!]!;

  test('is worst with an end bay open, where the tip hangs on its neighbour and the ledger', () => {
    expect(worst.phase).toBe('out');
    expect(['step-1', 'step-4']).toContain(worst.stepId);
  });

  test('gives what a full check of that step from nothing gives, every ratio within 0.1 %', () => {
    const { checks } = freshCheck(job, worst);
    const key = ({ id, where }: (typeof checks)[number]) =>
      `${id} ${where.kind === 'support' ? where.supportId : ''}`;
    const fresh = new Map(checks.map((check) => [key(check), check]));
    expect(worst.checks).toHaveLength(checks.length);
    expect(worst.checks.length).toBeGreaterThan(10);
    for (const check of worst.checks) {
      const other = fresh.get(key(check))!;
      expect(other.level).toBe(check.level);
      expect(Math.abs(check.ratio - other.ratio), check.id).toBeLessThanOrEqual(1e-3 * other.ratio);
    }
  });

  test('differs by less than 3 % from a check on a mesh of that step alone', () => {
    const supports = job.pieces[0]!.supports.filter(({ id }) => worst.standing.includes(id)).map(
      (support) => ({ ...support, firstDay: 0, lastDay: 60 }),
    );
    const alone = { ...job, pieces: [{ ...job.pieces[0]!, supports }] };
    const { checks } = checkPiece(
      alone,
      alone.pieces[0]!,
      { day: worst.day, meshSizeIn: null },
      DEFAULT_LIMITS,
    );
    const ratio = checks.find(({ id }) => id === 'bending-plain')!.ratio;
    expect(Math.abs(worst.cracking!.ratio / ratio - 1)).toBeLessThan(0.03);
  });

  test('takes the strength of its own day: a day later the same bay is nearer to 28 days', () => {
    const strengths = swap.moments.map(({ concrete }) => concrete!.strengthPsi);
    expect(strengths.every((psi, i) => i === 0 || psi >= strengths[i - 1]!)).toBe(true);
    const [before] = swap.moments;
    expect(before!.concrete!.ageDays).toBe(11);
    expect(freshCheck(job, before!).analysis!.concrete.strengthPsi).toBe(before!.concrete!.strengthPsi);
  });

  test('tells the reach of an open bay as a caution and leaves the verdict to what the slab does', () => {
    const reach = worst.checks.find(({ id }) => id === 'overhang')!;
    expect(reach.level).toBe('engineer');
    expect(worst.level).not.toBe('engineer');
    expect(worst.cautions).toContain(reach.words);
  });

  test('is undecided on a day on which the concrete is not hard', () => {
    const early = { ...job, pieces: [{ ...job.pieces[0]!, pourDay: 11 }] };
    const [before, out] = checkSwap(early, 'counter', { meshSizeIn: 3 }).moments;
    expect(before).toMatchObject({ day: 11, level: 'engineer', cracking: null, concrete: null });
    expect(out!.words).toContain('not hard');
  });
});

test('a step that leaves the slab on one line has no ratio but a sentence', () => {
  const job = straightCounter();
  const supports = [wallLedger('ledger', [0, 24.75], [144, 24.75]), prop('leg', 72, 4)].map((support) => ({
    ...job.pieces[0]!.supports.find(({ kind }) => kind === support.kind)!,
    ...support,
  }));
  const bare = { ...job, pieces: [{ ...job.pieces[0]!, supports }] } as Job;
  const steps = [
    { id: 'leg', isDrawn: true, day: 30, sectionsOut: [], supportsOut: ['leg'], supportsIn: [], note: '' },
  ];
  const { moments } = checkSwap(bare, 'counter', { steps, meshSizeIn: 3 });
  expect(moments.map(({ phase }) => phase)).toEqual(['before', 'out']);
  expect(moments[1]!.level).not.toBe('holds');
});

test('a piece that the job does not have has no moments', () => {
  expect(checkSwap(straightCounter(), 'other')).toMatchObject({ moments: [], worst: null, level: 'holds' });
  expect(swapStates(straightCounter(), 'other')).toEqual([]);
});

test('every moment of a corner counter on eight cabinets is checked in less than 2 s of one processor', () => {
  const job = cornerCounter();
  const names = ['back-1', 'down-1', 'down-2', 'down-3', 'back-2', 'back-3', 'back-4', 'back-5'];
  const steps = names.map((id) => {
    const legs = `leg-${id.replace('back-', 'b').replace('down-', 'd')}`;
    return {
      id,
      isDrawn: true,
      day: SWAP_DAY,
      sectionsOut: [],
      supportsOut: [`${legs}a`, `${legs}b`],
      supportsIn: [id],
      note: '',
    };
  });
  // one run to warm up, as in a window that has been open for a while
  checkSwap(job, 'counter', { steps: steps.slice(0, 1), meshSizeIn: 3 });
  const before = process.cpuUsage();
  const { moments } = checkSwap(job, 'counter', { steps });
  const { user, system } = process.cpuUsage(before);
  expect(moments).toHaveLength(17);
  expect(moments.every(({ cracking }) => cracking !== null)).toBe(true);
  expect((user + system) / 1e6).toBeLessThan(2);
});
