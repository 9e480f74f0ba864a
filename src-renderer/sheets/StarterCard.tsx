import { useMemo } from 'react';
import { Button } from 'react-aria-components';
import type { Starter } from '../../src-core/starters';
import { starterJob } from '../../src-core/starters';
import { outlineDrawing } from '../pieces/outline-drawing';
import styles from './StarterCard.module.css';

interface Props {
  readonly starter: Starter;
  readonly onChoose: () => void;
}

const WIDTH_PX = 208;
const HEIGHT_PX = 72;
const STROKE_PX = 2;

/** A starter: its outline, its name, and what it sits on. */
export function StarterCard({ starter, onChoose }: Props) {
  const { path } = useMemo(() => {
    const piece = starterJob(starter.id).pieces[0]!;
    return outlineDrawing(piece, WIDTH_PX - 2 * STROKE_PX, HEIGHT_PX - 2 * STROKE_PX);
  }, [starter.id]);
  return (
    <Button className={styles.card!} onPress={onChoose}>
      <svg viewBox={`0 0 ${WIDTH_PX} ${HEIGHT_PX}`} aria-hidden="true" className={styles.drawing}>
        <path d={path} transform={`translate(${STROKE_PX} ${STROKE_PX})`} />
      </svg>
      <span className={styles.name}>{starter.name}</span>
      <span className={styles.words}>{starter.words}</span>
    </Button>
  );
}
