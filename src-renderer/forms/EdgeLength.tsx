import { setEdgeLength } from '../../src-core/edit';
import type { Piece } from '../../src-core/job';
import { useJob, useStore } from '../state/store-context';
import { LengthField } from './fields/LengthField';
import { edgeLengthIn } from './summaries';
import { firstSentence } from './target';

interface Props {
  readonly piece: Piece;
  readonly index: number;
}

/** Length of an edge; the far end moves. */
export function EdgeLength({ piece, index }: Props) {
  const { run } = useStore().getState();
  const system = useJob().shownIn;
  return (
    <LengthField
      key={system}
      label="Length"
      help="Between its corners; the far end moves."
      system={system}
      valueIn={edgeLengthIn(piece, index)}
      onCommit={(lengthIn) => firstSentence(run(setEdgeLength, { pieceId: piece.id, index, lengthIn }))}
    />
  );
}
