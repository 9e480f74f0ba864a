import { Button } from 'react-aria-components';
import { useStore, useWindow } from '../state/store-context';
import styles from './PieceLink.module.css';

interface Props {
  readonly pieceId: string;
  readonly name: string;
}

/** A piece by its name; a click selects it in the drawing, and pointing at it lights it up there. */
export function PieceLink({ pieceId, name }: Props) {
  const store = useStore();
  const isSelected = useWindow(({ selection }) => selection?.pieceId === pieceId);
  const whole = { pieceId, part: { kind: 'piece' } } as const;
  return (
    <Button
      className={`${styles.link} ${isSelected ? styles.selected : ''}`}
      aria-label={`${name}, ${isSelected ? 'selected' : 'select'} in the drawing`}
      onPress={() => store.getState().select(whole)}
      onHoverStart={() => store.getState().setHover(whole)}
      onHoverEnd={() => store.getState().setHover(null)}
    >
      {name}
    </Button>
  );
}
