import { memo } from 'react';
import type { Piece } from '../../src-core/job';
import { outlineEdges } from '../../src-core/outline';
import styles from './HitAreas.module.css';
import { partPath } from './part-path';

interface Props {
  /** The selected piece. */
  readonly piece: Piece;
}

/** What the pointer may take hold of on the selected piece besides its handles, in inches: nothing of it is seen. */
export const HitAreas = memo(function HitAreas({ piece }: Props) {
  return (
    <g className={styles.areas}>
      {piece.supports.map(({ id, kind }) => (
        <path
          key={id}
          d={partPath(piece, { kind: 'support', id })}
          className={kind === 'cabinet' || kind === 'full-bed' ? styles.rim : styles.area}
          data-handle={`support-${id}`}
        />
      ))}
      {piece.loads.fixed.map(({ id }) => (
        <path
          key={id}
          d={partPath(piece, { kind: 'load', id })}
          className={styles.area}
          data-handle={`load-${id}`}
        />
      ))}
      {piece.cutouts.map(({ id }) => (
        <path
          key={id}
          d={partPath(piece, { kind: 'cutout', id })}
          className={styles.area}
          data-handle={`cutout-${id}`}
        />
      ))}
      {outlineEdges(piece.corners).map(({ edge }) => (
        <path
          key={edge}
          d={partPath(piece, { kind: 'edge', index: edge })}
          className={styles.edge}
          data-handle={`edge-${edge}`}
        />
      ))}
    </g>
  );
});
