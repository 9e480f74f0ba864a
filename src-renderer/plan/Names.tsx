import styles from './Names.module.css';
import type { PlacedName } from './place-names';

interface Props {
  readonly names: readonly PlacedName[];
}

/** Names of the pieces, and of the cabinets under the selected one, where there is room for them. */
export function Names({ names }: Props) {
  return names.map(({ key, words, at, isQuiet }) => (
    <text key={key} x={at.xPx} y={at.yPx} className={`${styles.name} ${isQuiet ? styles.quiet : ''}`}>
      {words}
    </text>
  ));
}
