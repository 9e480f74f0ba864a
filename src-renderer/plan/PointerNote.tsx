import type { Pixel } from './frame';
import styles from './PointerNote.module.css';

export interface Note {
  readonly tone: 'plain' | 'trouble';
  readonly sentence: string;
  readonly at: Pixel;
}

interface Props {
  /** null says nothing. */
  readonly note: Note | null;
  /** Width of the plan, so that the words stay in it. */
  readonly widthPx: number;
}

/** A sentence beside the pointer: what a point was drawn to, or why a move is refused. */
export function PointerNote({ note, widthPx }: Props) {
  const isRight = note !== null && note.at.xPx > widthPx / 2;
  const place =
    note === null
      ? {}
      : {
          top: note.at.yPx + 20,
          ...(isRight ? { right: widthPx - note.at.xPx + 12 } : { left: note.at.xPx + 16 }),
        };
  return (
    <div role="status" className={styles.live}>
      {note !== null && (
        <p className={`${styles.note} ${note.tone === 'trouble' ? styles.trouble : ''}`} style={place}>
          {note.sentence}
        </p>
      )}
    </div>
  );
}
