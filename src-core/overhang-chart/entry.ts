/** One entry of the chart: the longest overhang that holds for one thickness, steel and bracket spacing. */
import { bracketIsDecidable } from '../bracket';
import type { Check } from '../checks';
import { checkPiece, stands } from '../checks';
import type { Reinforcement } from '../job';
import type { ChartBasis } from './basis';
import { bracketRow, LEAST_BRACKETED_IN, ledgeJob } from './ledge';
import type { Found, Range, Trial } from './longest';
import { findLongest } from './longest';
import type { ChartCase, ChartEntry } from './row';
import { chartSteel } from './steel';

/** Overhangs are tried in eighths of an inch. */
const STEPS_PER_IN = 8;
/** Shortest overhang that is asked about, in. */
const LEAST_BARE_IN = 1;
/** From this thickness on, and with brackets this close, the search starts at its end. It costs or saves time, no more. */
const STOUT_IN = 2;
const CLOSE_SPACING_IN = 12;
/** A check that fails without a number, or by its level alone, counts as this far over (a ratio). */
const FAILS_RATIO = 1.5;
/** The limit of what is decided here is the end of the search, and so no check of it. */
const LIMIT_CHECK_ID = 'overhang';
const PLAIN_BENDING_ID = 'bending-plain';

interface LedgeTrial extends Trial {
  readonly governs: { readonly checkId: string; readonly title: string };
  /** Ratio of every check, the worst of each. */
  readonly ratios: ReadonlyMap<string, number>;
  readonly tieLbf: number;
  readonly words: string;
}

export interface EntryHooks {
  /** Called before every run of the engine, with the overhang that it tries. */
  readonly onRun?: (overhangIn: number) => void;
  readonly isCancelled?: () => boolean;
}

/**
 * Longest overhang (in) that passes every check of the load check, or why there is none. `plain` is the entry of the same case
 * without steel, where there is one: what holds without steel is tried with it too. null where cancelled.
 */
export function chartEntry(
  basis: ChartBasis,
  asked: ChartCase,
  plain: ChartEntry | null,
  hooks: EntryHooks,
): ChartEntry | null {
  const steel = asked.withSteel
    ? chartSteel(basis.steel, asked.thicknessIn, basis.limits.coverUnderTopIn)
    : null;
  if (steel?.ok === false) {
    if (steel.reason === 'unknown') throw new Error(steel.words);
    return noneOf(asked, 'no-room', null, steel.words);
  }
  const range = rangeOf(basis, asked);
  if (asked.spacingIn !== null) {
    const trouble = bracketIsDecidable(
      bracketRow(basis, range.least / STEPS_PER_IN, asked.spacingIn),
      basis.limits.bracketReachEngineerIn,
    );
    if (trouble !== null) return noneOf(asked, 'engineer', null, trouble);
  }
  const layers = steel?.layers ?? [];
  const tryOn = (step: number, mesh: 'coarse' | 'fine') => {
    if (hooks.isCancelled?.() === true) return null;
    hooks.onRun?.(step / STEPS_PER_IN);
    const meshSizeIn = mesh === 'coarse' ? basis.coarseMeshIn : basis.fineMeshIn;
    return tryLedge(basis, asked, layers, step / STEPS_PER_IN, meshSizeIn);
  };
  const found = findLongest(range, tryOn);
  if (found === null) return null;
  const plainStep = (plain?.overhangIn ?? 0) * STEPS_PER_IN;
  if (plainStep <= (found.holds?.step ?? 0)) return entryOf(asked, range.most, found);
  const trial = tryOn(plainStep, 'fine');
  if (trial === null) return null;
  return entryOf(asked, range.most, withTrial(found, plainStep, trial));
}

/** The search with one more trial, longer than any that holds. */
function withTrial(found: Found<LedgeTrial>, step: number, trial: LedgeTrial): Found<LedgeTrial> {
  const { holds, fails } = found;
  if (trial.ratio > 1) {
    return { holds, fails: fails !== null && fails.step < step ? fails : { step, trial } };
  }
  return { holds: { step, trial }, fails: fails !== null && fails.step > step ? fails : null };
}

function rangeOf({ limits }: ChartBasis, { thicknessIn, spacingIn }: ChartCase): Range {
  const leastIn = spacingIn === null ? LEAST_BARE_IN : LEAST_BRACKETED_IN;
  const mostIn = spacingIn === null ? limits.overhangUnbracketedEngineerIn : limits.overhangEngineerIn;
  const sparse = spacingIn === null ? 1 : Math.sqrt(Math.max(1, spacingIn / CLOSE_SPACING_IN));
  const firstIn = (mostIn * Math.min(1, thicknessIn / STOUT_IN)) / sparse;
  return {
    least: leastIn * STEPS_PER_IN,
    most: mostIn * STEPS_PER_IN,
    first: Math.max(leastIn, Math.round(firstIn)) * STEPS_PER_IN,
  };
}

function tryLedge(
  basis: ChartBasis,
  { thicknessIn, spacingIn }: ChartCase,
  steel: readonly Reinforcement[],
  overhangIn: number,
  meshSizeIn: number | null,
): LedgeTrial {
  const job = ledgeJob(basis, { thicknessIn, overhangIn, spacingIn, steel });
  const { checks } = checkPiece(job, job.pieces[0]!, { day: null, meshSizeIn }, basis.limits);
  const asked = checks.filter(({ id }) => id !== LIMIT_CHECK_ID);
  const failing = asked.filter(({ level }) => !stands(level));
  // a slab with steel may crack, so long as its steel takes over
  const counted = asked.filter(({ id }) => id !== PLAIN_BENDING_ID || steel.length === 0);
  const worst = highest(failing.length > 0 ? failing : counted);
  const ratios = new Map<string, number>();
  for (const { id, ratio } of checks) ratios.set(id, Math.max(ratio, ratios.get(id) ?? 0));
  return {
    ratio: failing.length === 0 ? Math.min(1, worst.ratio) : worst.ratio > 1 ? worst.ratio : FAILS_RATIO,
    governs: { checkId: worst.id, title: worst.title },
    ratios,
    tieLbf: Math.max(0, ...checks.flatMap(({ id, demand }) => (id === 'tie-force' ? [demand.value] : []))),
    words: worst.words,
  };
}

function highest(checks: readonly Check[]): Check {
  const [first] = checks;
  if (first === undefined) throw new Error('a ledge of the chart was not checked');
  return checks.reduce((most, check) => (check.ratio > most.ratio ? check : most), first);
}

function entryOf(asked: ChartCase, most: number, { holds, fails }: Found<LedgeTrial>): ChartEntry {
  if (holds === null) {
    if (fails === null) throw new Error('the search for an overhang ended with nothing');
    return noneOf(asked, 'none', fails.trial, fails.trial.words);
  }
  const { governs } = (fails ?? holds).trial;
  const isCapped = holds.step === most;
  return {
    ...asked,
    kind: isCapped ? 'capped' : 'longest',
    overhangIn: holds.step / STEPS_PER_IN,
    failsAtIn: fails === null ? null : fails.step / STEPS_PER_IN,
    governs: { ...governs, ratio: holds.trial.ratios.get(governs.checkId) ?? 0 },
    tieLbf: holds.trial.tieLbf,
    words: isCapped
      ? 'The longest overhang that is decided here holds; a longer one is for an engineer.'
      : (fails ?? holds).trial.words,
  };
}

function noneOf(
  asked: ChartCase,
  kind: 'none' | 'no-room' | 'engineer',
  trial: LedgeTrial | null,
  words: string,
): ChartEntry {
  const governs =
    trial === null ? null : { ...trial.governs, ratio: trial.ratios.get(trial.governs.checkId) ?? 0 };
  return { ...asked, kind, overhangIn: null, failsAtIn: null, governs, tieLbf: null, words };
}
