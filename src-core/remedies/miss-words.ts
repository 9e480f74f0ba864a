/** How the search words what it tried in vain. */
import type { ChangeKind, ChangeSearch } from './change';
import type { Tried } from './climb';
import { KIND_WORDS } from './kinds';
import type { Step } from './step';

type Failed = ChangeSearch['failed'][number];

/** A kind of which nothing could be tried. */
export function nothingOfKind(kind: ChangeKind, excuse: string): Failed {
  return { kinds: [kind], words: `${KIND_WORDS[kind]}: not tried. ${excuse}` };
}

/** A kind or a bundle of which nothing passes, with its nearest miss. `before`: what the bundle holds besides. */
export function nothingPasses(before: readonly Step[], kind: ChangeKind, nearest: Tried | null): Failed {
  const kinds = [...before.map((step) => step.kind), kind];
  const called = calledBy(kinds);
  if (nearest === null) return { kinds, words: `${called}: nothing that fits the job could be tried.` };
  const worst = nearest.trial.failing[0];
  if (worst === undefined) throw new Error('the nearest miss fails no check');
  const more = nearest.trial.failing.length - 1;
  const others = more === 0 ? '' : ` And ${more} other check${more === 1 ? '' : 's'} would fail.`;
  const miss = worst.ratio > 1 ? ` (${Math.round(worst.ratio * 100) / 100} of what it may be)` : '';
  const made = [...before, nearest.step].map(({ shortTitle }) => shortTitle).join('; ');
  return {
    kinds,
    words: `${called}: not enough. Nearest: ${made}. ${worst.title}${miss}: ${worst.words}${others}`,
  };
}

/** What passes in the trials but not on the mesh of the verdict. */
export function noConfirmation(kinds: readonly ChangeKind[]): Failed {
  return { kinds, words: `${calledBy(kinds)}: so near the limit that the finer mesh does not confirm it.` };
}

/** "Ties", "Ties with steel", "Ties with a thicker slab and steel". */
function calledBy(kinds: readonly ChangeKind[]): string {
  const [first, ...rest] = kinds.map((kind) => KIND_WORDS[kind]);
  const others = rest.map((name) => `${name.charAt(0).toLowerCase()}${name.slice(1)}`);
  return others.length === 0 ? `${first}` : `${first} with ${others.join(' and ')}`;
}
