import { use } from 'react';
import { removeCorner } from '../../../src-core/edit';
import type { Piece } from '../../../src-core/job';
import { useStore } from '../../state/store-context';
import { useTaken } from '../fields/useTaken';
import type { ListField, PartsField } from '../specs/field';
import type { Target } from '../target';
import { below, firstSentence } from '../target';
import { WalkContext } from '../walk';
import { ListTable } from './ListTable';
import { Refusal } from './Refusal';

interface Props {
  readonly piece: Piece;
  readonly field: PartsField;
  /** The piece. */
  readonly target: Target;
}

/** The corners of the outline, edited in place; an edge goes with its corner. */
export function CornerTable({ piece, field, target }: Props) {
  const { run } = useStore().getState();
  const { cameFrom, open } = use(WalkContext);
  const removed = useTaken<number>(piece, (index) =>
    firstSentence(run(removeCorner, { pieceId: piece.id, index })),
  );
  const list: ListField = {
    kind: 'list',
    at: field.at,
    label: field.label,
    one: 'corner',
    look: 'table',
    least: 3,
    item: field.fields,
    next: null,
  };
  return (
    <>
      <ListTable
        field={list}
        list={below(target, [field.at])}
        count={piece.corners.length}
        onRemove={removed.take}
        onOpen={(index) => open({ pieceId: piece.id, part: { kind: 'corner', index } })}
        focusOn={cameFrom?.part.kind === 'corner' ? cameFrom.part.index : null}
      />
      <Refusal sentence={removed.sentence} />
    </>
  );
}
