import type { Point } from '../../src-core/outline';
import styles from './DrawnSides.module.css';
import type { Frame } from './frame';
import { planTransform } from './frame';
import { dotPath, linePath } from './paths';

interface Props {
  readonly frame: Frame;
  readonly corners: readonly Point[];
  /** Where the next corner would go; null for none. */
  readonly cursor: Point | null;
}

/** The sides drawn so far, the one being drawn, and the one that would close the piece. */
export function DrawnSides({ frame, corners, cursor }: Props) {
  const [first] = corners;
  const last = corners.at(-1);
  return (
    <svg className={styles.drawing} aria-hidden="true">
      <g transform={planTransform(frame)}>
        {corners.length > 1 && <path d={linePath(corners)} className={styles.side} />}
        {last !== undefined && cursor !== null && (
          <path d={linePath([last, cursor])} className={styles.next} />
        )}
        {first !== undefined && cursor !== null && corners.length > 1 && (
          <path d={linePath([cursor, first])} className={styles.closing} />
        )}
        {corners.map((corner) => (
          <path key={`${corner.xIn} ${corner.yIn}`} d={dotPath(corner)} className={styles.corner} />
        ))}
        {cursor !== null && <path d={dotPath(cursor)} className={styles.cursor} />}
      </g>
    </svg>
  );
}
