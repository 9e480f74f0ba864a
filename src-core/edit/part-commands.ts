/** Any part of a piece taken out or doubled. */
import type { Job } from '../job';
import { newId } from '../starters';
import type { PartList } from './added-part';
import { listOf, withList } from './added-part';
import type { PieceAt } from './at-piece';
import { atPiece, refuseAt, settlePiece, withPiece } from './at-piece';
import type { Command, Edited } from './command';
import { numberedName } from './numbered-name';
import type { PiecePart } from './part-copies';
import { copyPlaces, shiftedPart } from './part-copies';
import type { PartKind, PartRef } from './part-ref';
import { settle } from './settle';
import { withoutIds } from './without';

interface PartArgs {
  readonly pieceId: string;
  readonly part: PartRef;
}

const LISTS: { readonly [K in PartKind]: PartList } = {
  cutout: 'cutouts',
  support: 'supports',
  load: 'fixed',
  steel: 'reinforcement',
  joint: 'joints',
};

/** Takes a part out; a support leaves the swap as well. */
export const removePart: Command<PartArgs> = {
  id: 'remove-part',
  perform: (job, { pieceId, part }) =>
    atPart(job, pieceId, part, (at) => {
      const list = LISTS[part.kind];
      const left = listOf(at.piece, list).filter(({ id }) => id !== part.id);
      const piece = withList(at.piece, list, left);
      const title = `Remove ${part.kind}`;
      if (part.kind !== 'support') return settlePiece(at, piece, title);
      return settle(job, { ...(withPiece(at, piece) as Job), swap: withoutIds(job.swap, [part.id]) }, title);
    }),
};

/** Puts a copy of a part in the first place beside it that has room for it; steel is doubled where it lies. */
export const duplicatePart: Command<PartArgs> = {
  id: 'duplicate-part',
  perform: (job, { pieceId, part }) =>
    atPart(job, pieceId, part, (at, index) => {
      const list = LISTS[part.kind];
      const parts = listOf(at.piece, list);
      const id = newId(job, part.id);
      let refused: Edited | null = null;
      for (const place of copyPlaces(at.piece, part)) {
        const copy = named({ ...shiftedPart(at.piece, part, place), id }, parts);
        const piece = withList(at.piece, list, parts.toSpliced(index + 1, 0, copy));
        const edited = settlePiece(at, piece, `Duplicate ${part.kind}`, null, id);
        if (edited.ok) return edited;
        refused ??= edited;
      }
      return (
        refused ?? refuseAt(at, 'reference-unknown', list, `There is no room for a copy of "${part.id}".`)
      );
    }),
};

function atPart(
  job: Job,
  pieceId: string,
  part: PartRef,
  change: (at: PieceAt, index: number) => Edited,
): Edited {
  return atPiece(job, pieceId, (at) => {
    const index = listOf(at.piece, LISTS[part.kind]).findIndex(({ id }) => id === part.id);
    if (index >= 0) return change(at, index);
    const sentence = `"${at.piece.name}" has no ${part.kind} "${part.id}".`;
    return refuseAt(at, 'reference-unknown', LISTS[part.kind], sentence);
  });
}

/** A copy that has a name gets one with a number. */
function named(copy: PiecePart, beside: readonly object[]): PiecePart {
  const name = nameOf(copy);
  return name === null
    ? copy
    : {
        ...copy,
        name: numberedName(
          name,
          beside.flatMap((one) => nameOf(one) ?? []),
        ),
      };
}

function nameOf(part: object): string | null {
  return 'name' in part && typeof part.name === 'string' ? part.name : null;
}
