/** Other things of the job that a field may name, each in words. */
import type { Choice, ReferenceTo, Surroundings } from './field';
import { SUPPORT_WORDS } from './support-fields';

/** What may be named. */
export function referenceChoices(to: ReferenceTo, { job, piece }: Surroundings): readonly Choice[] {
  switch (to) {
    case 'mix':
      return job.mixes.map(({ id, name }) => ({ value: id, words: name }));
    case 'piece':
      return job.pieces.map(({ id, name }) => ({ value: id, words: name }));
    case 'other-piece':
      return job.pieces
        .filter(({ id }) => id !== piece?.id)
        .map(({ id, name }) => ({ value: id, words: name }));
    case 'support':
      return job.pieces.flatMap(({ name: pieceName, supports }) =>
        supports.map(({ id, kind, name }) => ({
          value: id,
          words: `${name ?? id}, ${SUPPORT_WORDS[kind].toLowerCase()} of ${pieceName}`,
        })),
      );
    case 'section':
      return job.falsework.sections.map(({ id, name }) => ({ value: id, words: name ?? id }));
  }
}
