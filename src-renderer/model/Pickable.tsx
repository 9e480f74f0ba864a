import type { ThreeEvent } from '@react-three/fiber';
import type { ReactNode } from 'react';
import type { Selection } from '../state/selection';
import { isSameSelection } from '../state/selection';
import { useStore } from '../state/store-context';
import { useSceneLook } from './scene-look';

/** A press that moves farther than this turns the view, px. */
const STILL_PX = 4;

interface Props {
  readonly selection: Selection;
  /** Lift of what is inside, in. */
  readonly liftIn: number;
  readonly children: ReactNode;
}

/** Lets the pointer find and pick what is inside; what the cut took away is left alone. */
export function Pickable({ selection, liftIn, children }: Props) {
  const store = useStore();
  const { cutAtIn } = useSceneLook();
  const isCutAway = ({ point }: ThreeEvent<PointerEvent | MouseEvent>) =>
    cutAtIn !== null && point.x > cutAtIn;
  const leave = () => {
    if (isSameSelection(store.getState().hover, selection)) store.getState().setHover(null);
  };
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: a part of the drawing, not of the page; the piece list does the same by key
    <group
      position-z={liftIn}
      onPointerMove={(event) => {
        if (isCutAway(event)) return;
        event.stopPropagation();
        if (!isSameSelection(store.getState().hover, selection)) store.getState().setHover(selection);
      }}
      onPointerOut={leave}
      onClick={(event) => {
        if (isCutAway(event) || event.delta > STILL_PX) return;
        event.stopPropagation();
        store.getState().select(selection);
      }}
    >
      {children}
    </group>
  );
}
