import type { Level } from '../../src-core/checks';

interface Props {
  readonly level: Level;
  /** Width and height in px. */
  readonly size?: number;
}

const WORDS: { readonly [L in Level]: string } = {
  holds: 'Holds',
  steel: 'Holds with steel',
  change: 'Needs a change',
  engineer: 'Needs an engineer',
};

/** The verdict's own shape in its own colour: circle, diamond, triangle, octagon. */
export function VerdictMark({ level, size = 16 }: Props) {
  return (
    <svg width={size} height={size} viewBox="0 0 16 16" role="img" aria-label={WORDS[level]}>
      <g fill={`var(--${level})`}>{shape(level)}</g>
    </svg>
  );
}

function shape(level: Level) {
  switch (level) {
    case 'holds':
      return <circle cx={8} cy={8} r={7} />;
    case 'steel':
      return <path d="M8 0.5 15.5 8 8 15.5 0.5 8Z" />;
    case 'change':
      return <path d="M8 1 15.5 15H0.5Z" />;
    case 'engineer':
      return <path d="M5 0.8h6L15.2 5v6L11 15.2H5L0.8 11V5Z" />;
  }
}
