import type { Level } from '../../src-core/checks';
import styles from './Tape.module.css';
import { tapeOf } from './tape';

interface Props {
  readonly ratio: number;
  readonly level: Level;
  /** Ratio at the end of the tape, the same for every tape of a piece. */
  readonly endRatio: number;
}

const percent = (share: number) => `${share * 100}%`;

/** A ratio as a small measuring tape. The number and the rung stand beside it in words, so it is hidden from a screen reader. */
export function Tape({ ratio, level, endRatio }: Props) {
  const { ticks, limitShare, fillShare, isCut } = tapeOf(ratio, endRatio);
  return (
    <svg className={styles.tape} aria-hidden="true">
      <rect
        className={styles.fill}
        style={{ width: isCut ? 'calc(100% - 9px)' : percent(fillShare) }}
        fill={`var(--${level})`}
      />
      {isCut && (
        <svg x="100%" overflow="visible" aria-hidden="true">
          <path d="M-10 0 0 5-10 10Z" fill={`var(--${level})`} />
        </svg>
      )}
      {ticks.map(({ share, isLong }) => (
        <line
          key={share}
          className={styles.tick}
          x1={percent(share)}
          x2={percent(share)}
          y1={10}
          y2={isLong ? 16 : 13}
        />
      ))}
      <line className={styles.limit} x1={percent(limitShare)} x2={percent(limitShare)} y1={0} y2={16} />
    </svg>
  );
}
