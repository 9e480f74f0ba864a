import { duplicatePart, removeCorner, removePart } from '../../src-core/edit';
import type { Piece } from '../../src-core/job';
import type { Part } from '../state/selection';
import { useStore } from '../state/store-context';
import { ActionRow } from './ActionRow';

interface Props {
  readonly piece: Piece;
  readonly part: Exclude<Part, { kind: 'piece' }>;
}

/** A part doubled or taken out. An edge goes with its corner and has neither. */
export function PartActions({ piece, part }: Props) {
  const { run, select } = useStore().getState();
  const pieceId = piece.id;
  if (part.kind === 'edge') return null;
  if (part.kind === 'corner') {
    const remove = () => {
      const problems = run(removeCorner, { pieceId, index: part.index });
      // the number now belongs to the next corner, which nobody picked
      if (problems.length === 0) select({ pieceId, part: { kind: 'piece' } });
      return problems;
    };
    return <ActionRow actions={[{ words: 'Remove this corner', act: remove }]} />;
  }
  return (
    <ActionRow
      actions={[
        { words: 'Duplicate', act: () => run(duplicatePart, { pieceId, part }) },
        { words: 'Remove', act: () => run(removePart, { pieceId, part }) },
      ]}
    />
  );
}
