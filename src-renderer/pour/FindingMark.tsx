import type { PourLevel } from '../../src-core/pour';

interface Props {
  readonly level: PourLevel;
}

/** The shape of a finding's level: a ring, a triangle, an octagon. The word stands beside it. */
export function FindingMark({ level }: Props) {
  return (
    <svg width={14} height={14} viewBox="0 0 16 16" aria-hidden="true">
      {shape(level)}
    </svg>
  );
}

function shape(level: PourLevel) {
  switch (level) {
    case 'note':
      return <circle cx={8} cy={8} r={6} fill="none" stroke="var(--soft)" strokeWidth={2.5} />;
    case 'attention':
      return <path d="M8 1 15.5 15H0.5Z" fill="var(--change)" />;
    case 'refused':
      return <path d="M5 0.8h6L15.2 5v6L11 15.2H5L0.8 11V5Z" fill="var(--engineer)" />;
  }
}
