/** Rungs and flags of a verdict in words, so that colour never stands alone. */
import type { Level } from '../../src-core/checks';
import { DEFAULT_LIMITS } from '../../src-core/checks';
import type { Flag } from '../../src-core/verdict';

const LEVEL_WORDS: { readonly [L in Level]: string } = {
  holds: 'holds',
  steel: 'holds with steel',
  change: 'needs a change',
  engineer: 'needs an engineer',
};

/** A rung in words, as they follow a number: "1.72, needs a change". */
export function levelWords(level: Level): string {
  return LEVEL_WORDS[level];
}

const FLAG_WORDS: { readonly [F in Flag]: string } = {
  tips: 'It can turn over as drawn.',
  cracks: 'Concrete alone would crack.',
  corbel: 'A corbel is among the changes that pass.',
  'near-limit': `Within ${Math.round(DEFAULT_LIMITS.nearLimit * 100)} % of a limit.`,
  amber: 'Close to a limit.',
  'on-the-way': 'A moment on the way is worse than the finished state.',
};

/** What is worth knowing beside a verdict, gravest first. "Close to a limit" is left out where the nearer word stands. */
export function flagWords(flags: readonly Flag[]): string[] {
  const order = Object.keys(FLAG_WORDS) as Flag[];
  return order
    .filter((flag) => flags.includes(flag) && !(flag === 'amber' && flags.includes('near-limit')))
    .map((flag) => FLAG_WORDS[flag]);
}
