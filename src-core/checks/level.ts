/** The order of the four rungs. */
import type { Check, Level } from './check';

const RANK: { readonly [L in Level]: number } = { holds: 0, steel: 1, change: 2, engineer: 3 };

/** Order of rungs, best first: 0 to 3. */
export function rank(level: Level): number {
  return RANK[level];
}

/** The worse of two rungs. */
export function worse(a: Level, b: Level): Level {
  return RANK[a] >= RANK[b] ? a : b;
}

/** The worst rung of several checks; holds where there are none. */
export function worstLevel(checks: readonly Pick<Check, 'level'>[]): Level {
  return checks.reduce<Level>((level, check) => worse(level, check.level), 'holds');
}

/** Whether a rung is one that stands: it holds, on concrete alone or with steel. */
export function stands(level: Level): boolean {
  return RANK[level] <= RANK.steel;
}

/**
 * The check that a piece's margin is read from: the worst that fails; where none fails, the one nearest its limit, leaving out one
 * beyond 1 that still stands (a slab that cracks and is carried by its steel), which other checks answer. null where nothing was checked.
 */
export function governingCheck(checks: readonly Check[]): Check | null {
  const [worst] = sortChecks(checks);
  if (worst === undefined) return null;
  if (!stands(worst.level)) return worst;
  const answered = checks.filter(({ ratio }) => ratio <= 1);
  return answered.reduce((most, check) => (check.ratio > most.ratio ? check : most), answered[0] ?? worst);
}

/** Checks in the order a reader wants them: worst rung first, then the highest ratio. */
export function sortChecks(checks: readonly Check[]): Check[] {
  return [...checks].sort(
    (a, b) => RANK[b.level] - RANK[a.level] || b.ratio - a.ratio || a.id.localeCompare(b.id),
  );
}
