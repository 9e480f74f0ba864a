import { useMemo } from 'react';
import type { Piece } from '../../src-core/job';
import { outlineDrawing } from './outline-drawing';
import styles from './PieceOutline.module.css';

const WIDTH_PX = 40;
const HEIGHT_PX = 36;
const MARGIN_PX = 2;

interface Props {
  readonly piece: Piece;
}

/** The piece as a small drawing of its outline and openings; its name stands beside it. */
export function PieceOutline({ piece }: Props) {
  const { path } = useMemo(
    () => outlineDrawing(piece, WIDTH_PX - 2 * MARGIN_PX, HEIGHT_PX - 2 * MARGIN_PX),
    [piece],
  );
  return (
    <svg width={WIDTH_PX} height={HEIGHT_PX} aria-hidden="true">
      <path className={styles.outline} transform={`translate(${MARGIN_PX} ${MARGIN_PX})`} d={path} />
    </svg>
  );
}
