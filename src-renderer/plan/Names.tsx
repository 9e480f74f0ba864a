import type { Piece } from '../../src-core/job';
import type { Frame } from './frame';
import styles from './Names.module.css';
import { placeNames } from './place-names';

interface Props {
  readonly pieces: readonly Piece[];
  readonly selectedId: string | null;
  readonly frame: Frame;
}

/** Names of the pieces, and of the cabinets under the selected one, where there is room for them. */
export function Names({ pieces, selectedId, frame }: Props) {
  return placeNames(frame, pieces, selectedId).map(({ key, words, at, isQuiet }) => (
    <text key={key} x={at.xPx} y={at.yPx} className={`${styles.name} ${isQuiet ? styles.quiet : ''}`}>
      {words}
    </text>
  ));
}
