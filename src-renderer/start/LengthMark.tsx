import styles from './LengthMark.module.css';
import { lengthMark } from './length-mark';
import type { DrawnLength } from './quick-drawing';

interface Props {
  readonly length: DrawnLength;
  readonly words: string;
}

/** A line with a tick at each end and its length beside it. */
export function LengthMark({ length, words }: Props) {
  const { ticks, at, anchor } = lengthMark(length);
  const { from, to, of } = length;
  return (
    <g className={styles.mark} data-of={of}>
      <line x1={from.x} y1={from.y} x2={to.x} y2={to.y} />
      {ticks.map(([a, b]) => (
        <line key={`${a.x} ${a.y}`} x1={a.x} y1={a.y} x2={b.x} y2={b.y} />
      ))}
      <text x={at.x} y={at.y} textAnchor={anchor}>
        {words}
      </text>
    </g>
  );
}
