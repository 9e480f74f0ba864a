import { Maximize, Minus, PenLine, Plus } from 'lucide-react';
import { memo } from 'react';
import { Toolbar } from 'react-aria-components';
import { Button } from '../look/Button';
import styles from './PlanToolbar.module.css';

interface Props {
  readonly isDrawing: boolean;
  readonly onDraw: (isDrawing: boolean) => void;
  readonly onZoom: (factor: number) => void;
  readonly onFit: () => void;
}

const ZOOM_STEP = 1.4;

/** What can be done to the plan as a whole. */
export const PlanToolbar = memo(function PlanToolbar({ isDrawing, onDraw, onZoom, onFit }: Props) {
  const words = isDrawing ? 'Stop drawing' : 'Draw a piece';
  return (
    <Toolbar aria-label="Plan" className={styles.toolbar ?? ''} data-own="">
      <Button weight={isDrawing ? 'main' : 'plain'} aria-label={words} onPress={() => onDraw(!isDrawing)}>
        <PenLine size={16} aria-hidden="true">
          <title>{words}</title>
        </PenLine>
        <span className={styles.word}>{words}</span>
      </Button>
      <Button isIcon aria-label="Larger" onPress={() => onZoom(ZOOM_STEP)}>
        <Plus size={16} aria-hidden="true">
          <title>Larger</title>
        </Plus>
      </Button>
      <Button isIcon aria-label="Smaller" onPress={() => onZoom(1 / ZOOM_STEP)}>
        <Minus size={16} aria-hidden="true">
          <title>Smaller</title>
        </Minus>
      </Button>
      <Button isIcon aria-label="Show the whole job" onPress={onFit}>
        <Maximize size={16} aria-hidden="true">
          <title>Show the whole job</title>
        </Maximize>
      </Button>
    </Toolbar>
  );
});
