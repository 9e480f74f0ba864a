import { describe, expect, test } from 'vitest';
import { layOutSupports } from '../../../src-core/analysis';
import { proposeSwap, swapStates, swapSteps, withSwapSteps } from '../../../src-core/sequence';
import { checkMoments } from '../../../src-core/sequence/check-swap';
import { standingWith, swapPlan } from '../../../src-core/sequence/swap-plan';
import { cornerCounter, SWAP_DAY, sectionUnder, straightCounter } from './swap-jobs';

const COARSE_IN = 3;
const straight = straightCounter(1.5);
const piece = straight.pieces[0]!;

const laidOut = layOutSupports(straight, piece, COARSE_IN);

/** Cracking ratio of a moment by its full check, kept by what stands. */
const known = new Map<string, number>();
function checkedRatio(standing: readonly string[]): number {
  if (!laidOut.ok) throw new Error(laidOut.cannot.sentence);
  const key = [...standing].sort().join(' ');
  const before = known.get(key);
  if (before !== undefined) return before;
  const moment = { stepId: null, phase: 'out' as const, day: SWAP_DAY, standing, sections: [] };
  const { moments } = checkMoments(laidOut.sets, [], [moment], {});
  const ratio = moments[0]!.cracking!.ratio;
  known.set(key, ratio);
  return ratio;
}

function ordersOf(items: readonly number[]): number[][] {
  if (items.length === 0) return [[]];
  return items.flatMap((item) =>
    ordersOf(items.filter((other) => other !== item)).map((rest) => [item, ...rest]),
  );
}

describe('the straight counter on four cabinets', () => {
  const proposal = proposeSwap(straight, 'counter', { meshSizeIn: COARSE_IN });
  if (!proposal.ok) throw new Error(proposal.sentence);

  test('no order of all 24 has a milder worst moment than the proposed one', () => {
    const plan = swapPlan(straight, piece);
    const worstOf = (order: readonly number[]): number => {
      let done = 0;
      let worst = 0;
      for (const item of order) {
        worst = Math.max(worst, checkedRatio(standingWith(plan, done, item)));
        done |= 1 << item;
        worst = Math.max(worst, checkedRatio(standingWith(plan, done, null)));
      }
      return worst;
    };
    const worsts = ordersOf([0, 1, 2, 3]).map(worstOf);
    const mildest = Math.min(...worsts);
    const proposed = worstOf(
      proposal.order.map((id) => plan.bays.findIndex(({ cabinet }) => cabinet.id === id)),
    );
    expect(worsts).toHaveLength(24);
    expect(Math.max(...worsts)).toBeGreaterThan(1.02 * mildest);
    expect(proposed).toBeLessThanOrEqual(mildest * (1 + 1e-6));
    expect(Math.abs(proposal.worstCrackingRatio / mildest - 1)).toBeLessThan(1e-6);
  });

  test('every order was weighed, and the check of its moments finds the worst that the search found', () => {
    expect(proposal.isExact).toBe(true);
    const after = proposal.check.moments.slice(1).map(({ cracking }) => cracking!.ratio);
    expect(Math.abs(Math.max(...after) / proposal.worstCrackingRatio - 1)).toBeLessThan(1e-9);
  });

  test('a step takes out the two legs of its bay and brings its cabinet in; the ledger goes last of all', () => {
    const [first] = proposal.steps;
    const number = proposal.order[0]!.at(-1);
    expect(first).toMatchObject({
      day: SWAP_DAY,
      supportsOut: [`leg-${number}a`, `leg-${number}b`],
      supportsIn: [`cab-${number}`],
    });
    expect(proposal.steps).toHaveLength(5);
    expect(proposal.steps.at(-1)).toMatchObject({ supportsOut: ['ledger'], supportsIn: [] });
  });

  test('put into the job, its steps give the same moments, and the days of its supports agree with them', () => {
    const job = withSwapSteps(straight, 'counter', proposal.steps);
    const moments = swapStates(job, 'counter');
    expect(job.swap.steps).toHaveLength(5);
    expect(swapSteps(job, job.pieces[0]!).every(({ isDrawn }) => isDrawn)).toBe(true);
    expect(moments.map(({ standing }) => standing)).toEqual(
      proposal.check.moments.map(({ standing }) => standing),
    );
  });
});

describe('the way in', () => {
  const corner = cornerCounter();
  const plan = swapPlan(corner, corner.pieces[0]!);
  const bay = (id: string) => plan.bays.find(({ cabinet }) => cabinet.id === id)!;

  test('the corner cabinet is blocked by the first of the return, and props before it are out for the move', () => {
    expect(bay('back-1').blockedBy).toEqual(['down-1']);
    expect(bay('back-1').inPlace).toEqual(['leg-b1a', 'leg-b1b']);
    expect(bay('back-1').inWay).toEqual(['leg-d1a', 'leg-d1b']);
    expect(bay('down-1').blockedBy).toEqual([]);
    expect(bay('back-3').inWay).toEqual([]);
  });

  test('a pier for good before a cabinet shuts it in', () => {
    const job = straightCounter();
    const pier = {
      kind: 'pier' as const,
      id: 'pier',
      build: 'block' as const,
      footprint: {
        kind: 'rectangle' as const,
        centre: { xIn: 54, yIn: 0.5 },
        widthIn: 4,
        depthIn: 2,
        angleDeg: 0,
      },
    };
    const shut = {
      ...job,
      pieces: [{ ...job.pieces[0]!, supports: [...job.pieces[0]!.supports, { ...leftAlone(job), ...pier }] }],
    } as typeof job;
    const { bays } = swapPlan(shut, shut.pieces[0]!);
    expect(bays.map(({ shutIn }) => shutIn)).toEqual([[], ['pier'], [], []]);
  });

  test('sections go with the cabinet whose place they lie over', () => {
    const job = straightCounter(2, {
      falsework: {
        sections: [sectionUnder('deck-1', [0, 0, 36, 25.5]), sectionUnder('deck-2', [36, 0, 144, 25.5])],
      },
    });
    const { bays } = swapPlan(job, job.pieces[0]!);
    expect(bays.map(({ sections }) => sections)).toEqual([['deck-1'], ['deck-2'], ['deck-2'], ['deck-2']]);
  });
});

/** The fields that every support has. */
function leftAlone(job: ReturnType<typeof straightCounter>): object {
  const {
    firstDay: _f,
    lastDay: _l,
    id: _i,
    kind: _k,
    ...common
  } = job.pieces[0]!.supports.find(({ kind }) => kind === 'leg')! as unknown as Record<string, unknown>;
  return { ...common, firstDay: 0, lastDay: null };
}

describe('no proposal', () => {
  test('is made where no cabinet comes, and none for a piece that the job does not have', () => {
    const job = straightCounter();
    const stays = job.pieces[0]!.supports.filter(({ kind }) => kind !== 'cabinet');
    const bare = { ...job, pieces: [{ ...job.pieces[0]!, supports: stays }] };
    expect(proposeSwap(bare, 'counter')).toMatchObject({
      ok: false,
      sentence: expect.stringContaining('nothing to swap'),
    });
    expect(proposeSwap(job, 'other')).toMatchObject({
      ok: false,
      sentence: expect.stringContaining('no piece "other"'),
    });
  });

  test('is made where nothing holds the slab until the cabinets come', () => {
    const job = straightCounter();
    const late = job.pieces[0]!.supports.filter(({ kind }) => kind === 'cabinet');
    const hanging = { ...job, pieces: [{ ...job.pieces[0]!, supports: late }] };
    expect(proposeSwap(hanging, 'counter')).toMatchObject({
      ok: false,
      sentence: expect.stringContaining('Nothing holds'),
    });
  });
});

describe('the days of a proposal', () => {
  test('are those on which the job brings cabinets in, in their order, else the first day on which a swap may start', () => {
    const job = straightCounter();
    const supports = job.pieces[0]!.supports.map((support) =>
      support.id === 'cab-4' ? { ...support, firstDay: SWAP_DAY + 3 } : support,
    );
    const later = { ...job, pieces: [{ ...job.pieces[0]!, supports }] };
    expect(swapPlan(later, later.pieces[0]!).days).toEqual([SWAP_DAY, SWAP_DAY, SWAP_DAY, SWAP_DAY + 3]);
  });
});
