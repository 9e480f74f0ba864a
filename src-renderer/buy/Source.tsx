import { Crosshair } from 'lucide-react';
import { type ReactNode, useEffect, useRef } from 'react';
import { Button } from 'react-aria-components';
import type { Trace } from '../../src-core/trace';
import { isSameSelection } from '../state/selection';
import { useStore, useWindow } from '../state/store-context';
import { hoverSource, lookAtSource } from './look-at-source';
import styles from './Source.module.css';
import { selectionOf } from './sources';

interface Props {
  /** The part of the drawing that it comes from. */
  readonly trace: Trace;
  readonly children: ReactNode;
}

/** A number's place in the drawing: the part is marked while this is pointed at or focused, and picked out when it is pressed. */
export function Source({ trace, children }: Props) {
  const store = useStore();
  const isSelected = useWindow(({ history, selection }) => {
    const own = selectionOf(history.job, trace);
    return own !== null && isSameSelection(own, selection);
  });
  const hover = useHover(trace);
  return (
    <Button
      className={styles.source!}
      aria-pressed={isSelected}
      onPress={() => lookAtSource(store, trace)}
      onHoverChange={hover}
      onFocusChange={hover}
    >
      <Crosshair size={13} className={styles.mark} aria-hidden="true" />
      <span>{children}</span>
    </Button>
  );
}

/** Marks the part while it is asked to, and no longer than the button is there. */
function useHover(trace: Trace): (isOn: boolean) => void {
  const store = useStore();
  const isOn = useRef(false);
  useEffect(
    () => () => {
      if (isOn.current) hoverSource(store, null);
    },
    [store],
  );
  return (turnsOn) => {
    isOn.current = turnsOn;
    hoverSource(store, turnsOn ? trace : null);
  };
}
