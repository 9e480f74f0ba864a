/** The ladder that turns a piece's checks into one verdict. */
import type { Check, Level, Limits, Need } from '../checks';
import { sortChecks, stands } from '../checks';

export type Flag = 'corbel' | 'amber' | 'near-limit' | 'tips' | 'cracks' | 'on-the-way';

export interface Verdict {
  readonly level: Level;
  /** The rung in the product's own words: "Holds", "Needs a tie". */
  readonly words: string;
  /** One sentence of why. */
  readonly why: string;
  readonly flags: readonly Flag[];
}

const NEED_WORDS: { readonly [N in Need]: string } = {
  tie: 'a tie',
  corbel: 'a corbel',
  support: 'support',
  steel: 'steel',
  thickness: 'thickness',
};

/** Words of a change that passes: "Needs a tie", "Needs a tie and steel". */
export function needWords(needs: readonly Need[]): string {
  const parts = needs.map((need) => NEED_WORDS[need]);
  if (parts.length <= 1) return `Needs ${parts[0] ?? 'a change'}`;
  return `Needs ${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`;
}

/**
 * One verdict from the checks. `passing` names the kinds of change that the tool tried and that make the whole piece pass,
 * smallest first; null where nothing that was tried passes; undefined where nothing was tried (a quick check, a day on the way),
 * so that a failing piece is only said to need a change.
 */
export function judge(
  checks: readonly Check[],
  limits: Limits,
  passing: readonly Need[] | null | undefined,
): Verdict {
  const sorted = sortChecks(checks);
  const worst = sorted[0];
  if (worst === undefined) {
    return { level: 'engineer', words: 'Needs an engineer', why: 'Nothing could be checked.', flags: [] };
  }
  const level = worst.level === 'change' && passing === null ? 'engineer' : worst.level;
  const counted = checks.filter(({ ratio, level: own }) => ratio > 0 && !(stands(own) && ratio > 1));
  const highest = counted.reduce((most, check) => Math.max(most, check.ratio), 0);
  const flags: Flag[] = [];
  if (passing?.includes('corbel') === true) flags.push('corbel');
  if (checks.some(({ id, level: own }) => id === 'tipping' && own !== 'holds')) flags.push('tips');
  if (checks.some(({ id, ratio }) => id === 'bending-plain' && ratio > 1)) flags.push('cracks');
  if (counted.some(({ ratio }) => Math.abs(ratio - 1) <= limits.nearLimit)) flags.push('near-limit');
  if (highest >= limits.amberFrom && (level === 'holds' || level === 'steel')) flags.push('amber');
  return { level, words: levelWords(level, passing), why: whyOf(level, worst, passing), flags };
}

function levelWords(level: Level, passing: readonly Need[] | null | undefined): string {
  switch (level) {
    case 'holds':
      return 'Holds';
    case 'steel':
      return 'Holds with steel';
    case 'change':
      return needWords(passing ?? []);
    case 'engineer':
      return 'Needs an engineer';
  }
}

function whyOf(level: Level, worst: Check, passing: readonly Need[] | null | undefined): string {
  if (level === 'engineer' && worst.level === 'change' && passing === null) {
    return `${worst.words} Nothing that was tried makes the whole piece pass.`;
  }
  return worst.words;
}
