import { duplicatePiece, removePiece, turnPiece } from '../../src-core/edit';
import type { Job, Piece } from '../../src-core/job';
import { useStore } from '../state/store-context';
import { ActionRow } from './ActionRow';
import styles from './DrawPanel.module.css';
import { PIECE_FIELDS } from './specs/piece-fields';
import { pieceTarget } from './target';
import { FieldList } from './views/FieldList';

interface Props {
  readonly job: Job;
  readonly piece: Piece;
}

/** The form of a whole piece. */
export function PieceForm({ job, piece }: Props) {
  const { run } = useStore().getState();
  const pieceId = piece.id;
  return (
    <div className={styles.form}>
      <h2 className={styles.title}>{piece.name}</h2>
      <FieldList fields={PIECE_FIELDS} target={pieceTarget(job, piece, run)} />
      <ActionRow
        actions={[
          { words: 'Turn a quarter', act: () => run(turnPiece, { pieceId }) },
          { words: 'Duplicate', act: () => run(duplicatePiece, { pieceId }) },
          { words: 'Remove', act: () => run(removePiece, { pieceId }) },
        ]}
      />
    </div>
  );
}
