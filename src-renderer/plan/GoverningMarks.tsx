import { useVerdict } from '../state/verdict-store';
import type { Frame } from './frame';
import { toPixel } from './frame';
import styles from './GoverningMarks.module.css';

interface Props {
  readonly pieceId: string;
  readonly frame: Frame;
}

/** Where the bending that governs is: tension at the top, and at the soffit. */
export function GoverningMarks({ pieceId, frame }: Props) {
  const governing = useVerdict(pieceId)?.result.governing ?? null;
  if (governing === null) return null;
  const marks = [
    { words: 'top', title: 'Most tension at the top', at: toPixel(frame, governing.hogging) },
    { words: 'soffit', title: 'Most tension at the soffit', at: toPixel(frame, governing.sagging) },
  ];
  return marks.map(({ words, title, at }) => (
    <g key={words} transform={`translate(${at.xPx} ${at.yPx})`} className={styles.mark}>
      <title>{title}</title>
      <path d="M-6 0H6M0 -6V6" />
      <text x={8} y={-5}>
        {words}
      </text>
    </g>
  ));
}
