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
  return (
    <Toolbar aria-label="Plan" className={styles.toolbar ?? ''} data-own="">
      <Button weight={isDrawing ? 'main' : 'plain'} onPress={() => onDraw(!isDrawing)}>
        <PenLine size={16} aria-hidden="true" />
        {isDrawing ? 'Stop drawing' : 'Draw a piece'}
      </Button>
      <Button isIcon aria-label="Larger" onPress={() => onZoom(ZOOM_STEP)}>
        <Plus size={16} aria-hidden="true" />
      </Button>
      <Button isIcon aria-label="Smaller" onPress={() => onZoom(1 / ZOOM_STEP)}>
        <Minus size={16} aria-hidden="true" />
      </Button>
      <Button isIcon aria-label="Show the whole job" onPress={onFit}>
        <Maximize size={16} aria-hidden="true" />
      </Button>
    </Toolbar>
  );
});
