import type { Piece } from '../../src-core/job';
import { useJob, useWindow } from '../state/store-context';
import styles from './PartMarks.module.css';
import { partPath } from './part-path';

/** Outlines, in inches, of the part that is selected and of the one under the pointer in either view. */
export function PartMarks() {
  const { pieces } = useJob();
  const selection = useWindow((state) => state.selection);
  const hover = useWindow((state) => state.hover);
  const pieceOf = (id: string | undefined): Piece | undefined => pieces.find((piece) => piece.id === id);
  const selected = pieceOf(selection?.pieceId);
  const hovered = pieceOf(hover?.pieceId);
  return (
    <g className={styles.marks}>
      {hover !== null && hovered !== undefined && (
        <path d={partPath(hovered, hover.part)} className={styles.hover} />
      )}
      {selection !== null && selected !== undefined && selection.part.kind !== 'piece' && (
        <path d={partPath(selected, selection.part)} className={styles.selected} />
      )}
    </g>
  );
}
