import { useMemo } from 'react';
import { Button } from 'react-aria-components';
import type { Starter } from '../../src-core/starters';
import { starterJob } from '../../src-core/starters';
import type { UnitSystem } from '../../src-core/units';
import { Prose } from '../look/Prose';
import { outlineDrawing } from '../pieces/outline-drawing';
import styles from './StarterCard.module.css';
import { starterSize } from './starter-size';

interface Props {
  readonly starter: Starter;
  readonly system: UnitSystem;
  readonly onChoose: () => void;
}

const WIDTH_PX = 208;
const HEIGHT_PX = 72;
const STROKE_PX = 2;

/** A starter: its outline, its name, what it sits on, and how large it is. */
export function StarterCard({ starter, system, onChoose }: Props) {
  const piece = useMemo(() => starterJob(starter.id).pieces[0]!, [starter.id]);
  const { path } = useMemo(
    () => outlineDrawing(piece, WIDTH_PX - 2 * STROKE_PX, HEIGHT_PX - 2 * STROKE_PX),
    [piece],
  );
  return (
    <Button className={styles.card!} onPress={onChoose}>
      <svg viewBox={`0 0 ${WIDTH_PX} ${HEIGHT_PX}`} aria-hidden="true" className={styles.drawing}>
        <path d={path} transform={`translate(${STROKE_PX} ${STROKE_PX})`} />
      </svg>
      <span className={styles.name}>{starter.name}</span>
      <span className={styles.words}>{starter.words}</span>
      <span className={styles.words}>
        <Prose text={starterSize(piece, system)} />
      </span>
    </Button>
  );
}
