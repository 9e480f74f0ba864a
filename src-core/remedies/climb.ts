/** Finds the smallest step of a ladder that passes, with few trials, and the nearest miss where none does. */
import type { Ladder, Run, Step } from './step';
import type { Trial } from './trial';
import { missRatio } from './trial';

export interface Tried {
  readonly step: Step;
  readonly trial: Trial;
}

export interface Climb {
  /** The smallest step found to pass, then the larger ones of its run, in case it fails on the finer mesh. */
  readonly passing: { readonly first: Tried; readonly larger: readonly Step[] } | null;
  /** Of the failing steps that were tried, the one that leaves least to mend, smallest first; null where none was tried. */
  readonly nearest: Tried | null;
}

/** null where the step makes no valid job, or the search was stopped. */
export type TryStep = (step: Step) => Trial | null;

/** Groups are alternatives, tried until one passes. */
export function climbLadder(ladder: Ladder, tryStep: TryStep): Climb {
  const memory = remembered(tryStep);
  for (const runs of ladder.groups) {
    const passing = climbGroup(runs, memory.tryStep);
    if (passing !== null) return { passing, nearest: nearestMiss(ladder, memory.tried) };
  }
  return { passing: null, nearest: nearestMiss(ladder, memory.tried) };
}

type Passing = NonNullable<Climb['passing']>;

/** The last run is the strongest: where it fails all do; else the first run that passes is taken. */
function climbGroup(runs: readonly Run[], tryStep: TryStep): Passing | null {
  const strongest = runs.at(-1);
  if (strongest === undefined) return null;
  const last = climbRun(strongest, tryStep, 'middle-may-pass');
  if (last === null) return null;
  // What is too weak in the strongest run is too weak in the others.
  const from = strongest.indexOf(last.first.step);
  for (const run of runs.slice(0, -1)) {
    const found = climbRun(run.slice(from), tryStep, 'largest-decides');
    if (found !== null) return found;
  }
  return last;
}

/** Largest step first, or the middle one where it fails and more may be too much; then bisection below what passes. */
function climbRun(run: Run, tryStep: TryStep, where: 'largest-decides' | 'middle-may-pass'): Passing | null {
  const top = run.length - 1;
  if (top < 0) return null;
  const passes = (index: number): Trial | null => {
    const trial = tryStep(run[index]!);
    return trial !== null && trial.failing.length === 0 ? trial : null;
  };
  let best = { index: top, trial: passes(top) };
  if (best.trial === null && top > 0 && where === 'middle-may-pass') {
    const middle = Math.floor(top / 2);
    best = { index: middle, trial: passes(middle) };
  }
  if (best.trial === null) return null;
  let failing = -1;
  while (best.index - failing > 1) {
    const index = Math.floor((best.index + failing) / 2);
    const trial = passes(index);
    if (trial === null) failing = index;
    else best = { index, trial };
  }
  return { first: { step: run[best.index]!, trial: best.trial! }, larger: run.slice(best.index + 1) };
}

/** Misses this near to each other count as one, and the smaller step is named. */
const SAME_MISS_RATIO = 1.05;

function remembered(tryStep: TryStep): { tryStep: TryStep; tried: ReadonlyMap<Step, Trial | null> } {
  const tried = new Map<Step, Trial | null>();
  return {
    tried,
    tryStep: (step) => {
      const known = tried.get(step);
      if (known !== undefined) return known;
      const trial = tryStep(step);
      tried.set(step, trial);
      return trial;
    },
  };
}

/** In the ladder's own order, so that of two equal misses the smaller step is kept. */
function nearestMiss(ladder: Ladder, tried: ReadonlyMap<Step, Trial | null>): Tried | null {
  const misses = ladder.groups.flat(2).flatMap((step): Tried[] => {
    const trial = tried.get(step) ?? null;
    return trial === null || trial.failing.length === 0 ? [] : [{ step, trial }];
  });
  const fewest = Math.min(...misses.map(({ trial }) => trial.failing.length));
  const few = misses.filter(({ trial }) => trial.failing.length === fewest);
  const leastMiss = Math.min(...few.map(({ trial }) => missRatio(trial)));
  return few.find(({ trial }) => missRatio(trial) <= leastMiss * SAME_MISS_RATIO) ?? null;
}
