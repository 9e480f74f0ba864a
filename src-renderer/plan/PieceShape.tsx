import { memo } from 'react';
import { insideCornerMarks } from '../../src-core/drawing';
import type { Piece } from '../../src-core/job';
import { cutoutInPlan, pieceOutline } from '../../src-core/job';
import { outlineEdges, patchOutline } from '../../src-core/outline';
import styles from './PieceShape.module.css';
import { dotPath, linePath, loopsPath } from './paths';
import { SupportShape } from './SupportShape';

interface Props {
  readonly piece: Piece;
  readonly isSelected: boolean;
}

/** One slab in inches, its corners rounded and its cutouts open, over what it stands on. */
export const PieceShape = memo(function PieceShape({ piece, isSelected }: Props) {
  const outline = pieceOutline(piece);
  const outer = outline.ok ? outline.outer : piece.corners;
  const holes = piece.cutouts.flatMap((_, index) => {
    const cutout = cutoutInPlan(piece, index);
    return cutout.ok ? [cutout.points] : [];
  });
  return (
    <g className={`${styles.piece} ${isSelected ? styles.selected : ''}`}>
      {piece.supports.map((support) => (
        <SupportShape key={support.id} support={support} outline={outer} />
      ))}
      <path d={loopsPath([outer, ...holes])} className={styles.slab} data-piece={piece.id} />
      {outlineEdges(piece.corners).map(({ edge, a, b }) =>
        piece.edges?.[edge]?.kind === 'wall' ? (
          <path key={edge} d={linePath([a, b])} className={styles.atWall} />
        ) : null,
      )}
      {piece.loads.fixed.map(({ id, centre, widthIn, depthIn, angleDeg }) => (
        <path
          key={id}
          d={loopsPath([patchOutline(centre, widthIn, depthIn, (angleDeg * Math.PI) / 180)])}
          className={styles.load}
        />
      ))}
      {insideCornerMarks(piece).map(({ corner, at }) => (
        <path key={corner} d={dotPath(at)} className={styles.insideCorner}>
          <title>Inside corner: a crack would begin here</title>
        </path>
      ))}
    </g>
  );
});
