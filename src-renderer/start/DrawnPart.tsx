import styles from './DrawnPart.module.css';
import { LengthMark } from './LengthMark';
import type { DrawnView } from './quick-drawing';
import { DRAWN_WIDTH_PX, svgPoints } from './quick-drawing';

interface Props {
  readonly name: string;
  readonly view: DrawnView;
  readonly print: (valueIn: number) => string;
}

/** One view of the piece with its lengths; read out as its name and what is written on it. */
export function DrawnPart({ name, view, print }: Props) {
  const words = view.lengths.map(({ of, lengthIn }) => `${of} ${print(lengthIn)}`).join(', ');
  return (
    <figure className={styles.part}>
      <svg viewBox={`0 0 ${DRAWN_WIDTH_PX} ${view.heightPx}`} role="img" aria-label={`${name}: ${words}`}>
        {view.supports.map(({ key, corners }) => (
          <polygon key={key} className={styles.support} points={svgPoints(corners)} />
        ))}
        <polygon className={styles.slab} points={svgPoints(view.slab)} />
        {view.lengths.map((length) => (
          <LengthMark key={length.key} length={length} words={print(length.lengthIn)} />
        ))}
      </svg>
      <figcaption className={styles.name}>{name}</figcaption>
    </figure>
  );
}
