import { memo } from 'react';
import { Button } from 'react-aria-components';
import type { Dimension } from '../../src-core/drawing';
import styles from './DimensionText.module.css';

interface Props {
  readonly dimensionKey: string;
  readonly of: Dimension['of'];
  readonly words: string;
  readonly text: string;
  /** Middle of the figure. */
  readonly xPx: number;
  readonly yPx: number;
  readonly turnDeg: number;
  /** False where the length only informs. */
  readonly canEdit: boolean;
  /** True where its field has just been closed. */
  readonly takesFocus: boolean;
  readonly onEdit: (dimensionKey: string) => void;
}

/** The figure of a dimension; pressed, it becomes a field, where typing another length changes something. */
export const DimensionText = memo(function DimensionText({
  dimensionKey,
  of,
  words,
  text,
  xPx,
  yPx,
  turnDeg,
  canEdit,
  takesFocus,
  onEdit,
}: Props) {
  const style = { transform: `translate(${xPx}px, ${yPx}px) translate(-50%, -50%) rotate(${turnDeg}deg)` };
  const names = `${styles.figure} ${styles[of]}`;
  if (!canEdit) {
    return (
      <span className={names} style={style}>
        <span className={styles.unseen}>{words}: </span>
        {text}
      </span>
    );
  }
  return (
    <Button
      className={`${names} ${styles.pressable}`}
      style={style}
      aria-label={`${words}: ${text}`}
      autoFocus={takesFocus}
      onPress={() => onEdit(dimensionKey)}
    >
      {text}
    </Button>
  );
});
