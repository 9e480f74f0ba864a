import { useMemo } from 'react';
import { ListBoxItem } from 'react-aria-components';
import type { Piece } from '../../src-core/job';
import type { UnitSystem } from '../../src-core/units';
import { VerdictMark } from '../look/VerdictMark';
import { useStore, useWindow } from '../state/store-context';
import { useVerdict } from '../state/verdict-store';
import styles from './PieceItem.module.css';
import { PieceOutline } from './PieceOutline';
import { factsWords, pieceFacts } from './piece-facts';

interface Props {
  readonly piece: Piece;
  readonly densityPcf: number;
  readonly system: UnitSystem;
}

/** One piece in the list: its outline, its name, its measures and its verdict. */
export function PieceItem({ piece, densityPcf, system }: Props) {
  const store = useStore();
  const verdict = useVerdict(piece.id);
  const isHovered = useWindow(({ hover }) => hover?.pieceId === piece.id);
  const facts = useMemo(() => pieceFacts(piece, densityPcf), [piece, densityPcf]);
  const name = piece.copies > 1 ? `${piece.name} x ${piece.copies}` : piece.name;
  const { slab, overhang } = factsWords(facts, piece.copies, system);
  return (
    <ListBoxItem
      id={piece.id}
      textValue={name}
      className={`${styles.item} ${isHovered ? styles.pointed : ''}`}
      onHoverStart={() => store.getState().setHover({ pieceId: piece.id, part: { kind: 'piece' } })}
      onHoverEnd={() => store.getState().setHover(null)}
    >
      <PieceOutline piece={piece} />
      <span className={styles.words}>
        <span className={styles.name}>{name}</span>
        <span className={styles.facts}>{slab}</span>
        {overhang !== '' && <span className={styles.facts}>{overhang}</span>}
      </span>
      {verdict === undefined ? (
        <svg width={16} height={16} role="img" aria-label="not checked yet">
          <circle className={styles.unknown} cx={8} cy={8} r={6.5} />
        </svg>
      ) : (
        <span className={verdict.isStale ? styles.stale : styles.mark}>
          <VerdictMark level={verdict.result.verdict.level} />
        </span>
      )}
    </ListBoxItem>
  );
}
