import { cssOfShare } from './colour-of-share';
import type { LegendTick } from './legend-ticks';
import styles from './ScaleBar.module.css';

interface Props {
  readonly ticks: readonly LegendTick[];
  /** Words of the hatched end, where the scale can be passed; null where it cannot. */
  readonly overWords: string | null;
}

/** Enough stops that the page's own mixing between them does not leave the scale. */
const STOPS = 64;
const GRADIENT = `linear-gradient(to right, ${Array.from({ length: STOPS + 1 }, (_, i) => cssOfShare(i / STOPS)).join(', ')})`;

/** The colour scale with its numbers. */
export function ScaleBar({ ticks, overWords }: Props) {
  return (
    <div className={styles.bar}>
      <div className={styles.scale}>
        <div className={styles.gradient} data-scale="" style={{ backgroundImage: GRADIENT }} />
        <ol className={styles.ticks}>
          {ticks.map(({ share, words }) => (
            <li
              key={share}
              className={styles.tick}
              style={{ left: `${share * 100}%` }}
              data-end={endOf(share)}
            >
              {words}
            </li>
          ))}
        </ol>
      </div>
      {overWords !== null && (
        <div className={styles.over}>
          <div className={styles.hatch} style={{ backgroundColor: cssOfShare(1) }} />
          <span>{overWords}</span>
        </div>
      )}
    </div>
  );
}

/** The outermost numbers stand within the scale, so that they do not reach past it. */
function endOf(share: number): 'first' | 'last' | undefined {
  if (share === 0) return 'first';
  return share === 1 ? 'last' : undefined;
}
