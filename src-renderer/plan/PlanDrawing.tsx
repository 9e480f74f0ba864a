import type { Job } from '../../src-core/job';
import { useWindow } from '../state/store-context';
import { FlyRing } from './FlyRing';
import type { Frame } from './frame';
import { planTransform } from './frame';
import { GoverningMarks } from './GoverningMarks';
import { Grid } from './Grid';
import { Hatch } from './Hatch';
import { HitAreas } from './HitAreas';
import { Names } from './Names';
import { PartMarks } from './PartMarks';
import { PieceShape } from './PieceShape';
import styles from './PlanDrawing.module.css';
import type { PlanLabels } from './plan-labels';
import { Seams } from './Seams';
import type { PlanFrame } from './use-frame';

interface Props {
  readonly job: Job;
  readonly frame: Frame;
  readonly labels: PlanLabels;
  readonly ring: PlanFrame['ring'];
}

/** The job from above on its grid: low pieces first, the selected one on top. */
export function PlanDrawing({ job, frame, labels, ring }: Props) {
  const selectedId = useWindow(({ selection }) => selection?.pieceId ?? null);
  const selected = job.pieces.find(({ id }) => id === selectedId);
  const fromBelow = job.pieces
    .filter((piece) => piece !== selected)
    .sort((one, other) => one.topElevationIn - other.topElevationIn);
  const inOrder = selected === undefined ? fromBelow : [...fromBelow, selected];
  return (
    <>
      <Grid frame={frame} system={job.shownIn} />
      <svg className={styles.drawing} aria-hidden="true">
        <Hatch pxPerIn={frame.pxPerIn} />
        <g transform={planTransform(frame)}>
          {inOrder.map((piece) => (
            <g key={piece.id}>
              <PieceShape piece={piece} isSelected={piece === selected} />
              <Seams job={job} piece={piece} />
            </g>
          ))}
          <PartMarks />
          {selected !== undefined && <HitAreas piece={selected} />}
        </g>
        <Names names={labels.names} />
        <GoverningMarks marks={labels.marks} />
        <FlyRing ring={ring} frame={frame} />
      </svg>
    </>
  );
}
