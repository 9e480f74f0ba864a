import { memo } from 'react';
import type { Piece } from '../../src-core/job';
import type { UnitSystem } from '../../src-core/units';
import { isSameSelection } from '../state/selection';
import { useStore, useWindow } from '../state/store-context';
import type { Frame } from './frame';
import { toPixel } from './frame';
import styles from './Handles.module.css';
import { handleLabel } from './handle-words';
import type { Handle } from './handles';
import { handlesOf } from './handles';
import type { HandleSize } from './thin-handles';

interface Props {
  /** The selected piece. */
  readonly piece: Piece;
  readonly frame: Frame;
  readonly sizes: ReadonlyMap<string, HandleSize>;
  readonly system: UnitSystem;
}

/** Handles of the selected piece over the drawing, in the order in which Tab reaches them; the plan moves them by pointer and key. */
export function Handles({ piece, frame, sizes, system }: Props) {
  const selection = useWindow((state) => state.selection);
  const isPicked = ({ part }: Handle) =>
    part.kind !== 'piece' && isSameSelection(selection, { pieceId: piece.id, part });
  return (
    <fieldset className={styles.handles}>
      <legend className={styles.unseen}>Handles of {piece.name}</legend>
      {handlesOf(piece).map((handle) => {
        const { xPx, yPx } = toPixel(frame, handle.at);
        return (
          <HandleButton
            key={handle.key}
            handle={handle}
            pieceId={piece.id}
            xPx={xPx}
            yPx={yPx}
            size={sizes.get(handle.key) ?? 'full'}
            isPicked={isPicked(handle)}
            label={handleLabel(piece, handle, system)}
          />
        );
      })}
    </fieldset>
  );
}

interface ButtonProps {
  readonly handle: Handle;
  readonly pieceId: string;
  readonly xPx: number;
  readonly yPx: number;
  readonly size: HandleSize;
  readonly isPicked: boolean;
  readonly label: string;
}

/** One handle. The plan itself listens for pointer and keys, so that a drag does not end with the button. */
const HandleButton = memo(function HandleButton({
  handle,
  pieceId,
  xPx,
  yPx,
  size,
  isPicked,
  label,
}: ButtonProps) {
  const store = useStore();
  const turnDeg =
    handle.role === 'edge' ? (Math.atan2(-handle.outward.y, handle.outward.x) * 180) / Math.PI : 0;
  return (
    <button
      type="button"
      className={`${styles.handle} ${styles[handle.role]} ${styles[size] ?? ''} ${isPicked ? styles.picked : ''}`}
      style={{ transform: `translate(${xPx}px, ${yPx}px) translate(-50%, -50%) rotate(${turnDeg}deg)` }}
      data-handle={handle.key}
      aria-label={label}
      aria-roledescription="handle"
      onFocus={() => store.getState().setHover({ pieceId, part: handle.part })}
      onBlur={() => store.getState().setHover(null)}
    />
  );
});
