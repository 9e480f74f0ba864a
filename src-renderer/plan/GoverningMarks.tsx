import styles from './GoverningMarks.module.css';
import type { PlacedMark } from './plan-labels';

interface Props {
  readonly marks: readonly PlacedMark[];
}

/** Where the bending that governs is: tension at the top, and at the soffit. */
export function GoverningMarks({ marks }: Props) {
  return marks.map(({ words, title, at, wordAt }) => (
    <g key={words} transform={`translate(${at.xPx} ${at.yPx})`} className={styles.mark}>
      <title>{title}</title>
      <path d="M-6 0H6M0 -6V6" />
      {wordAt !== null && (
        <text x={wordAt.xPx} y={wordAt.yPx}>
          {words}
        </text>
      )}
    </g>
  ));
}
