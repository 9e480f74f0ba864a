import { memo } from 'react';
import { seamMarks } from '../../src-core/drawing';
import type { Job, Piece } from '../../src-core/job';
import { linePath } from './paths';
import styles from './Seams.module.css';

interface Props {
  readonly job: Job;
  readonly piece: Piece;
}

/** Seams of a piece, in inches: joints, and edges butted against another piece. */
export const Seams = memo(function Seams({ job, piece }: Props) {
  return seamMarks(job, piece).map(({ key, kind, from, to, words }) => (
    <path key={key} d={linePath([from, to])} className={`${styles.seam} ${styles[kind]}`}>
      <title>{words}</title>
    </path>
  ));
});
