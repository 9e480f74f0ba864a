import { useMemo } from 'react';
import { earliestDays } from '../../src-core/sequence';
import { FalseworkView } from '../falsework/FalseworkView';
import { Heading } from '../look/Heading';
import { useDays } from '../state/day-store';
import { useJob, usePiece, useWindow } from '../state/store-context';
import { SWAP_CAUTIONS } from './cautions';
import { DayHead } from './DayHead';
import { EarliestDays } from './EarliestDays';
import styles from './HoldPanel.module.css';
import { Standing } from './Standing';
import { Swap } from './Swap';

/** The right panel for "Hold it up": the selected piece on the day that is shown, its earliest days, and its swap step by step. */
export function HoldPanel() {
  const job = useJob();
  const piece = usePiece();
  const day = useWindow((state) => state.day);
  const fault = useDays((state) => state.fault);
  const held = useDays((state) => state.held[piece.id]);
  const earliest = useMemo(() => earliestDays(job, piece), [job, piece]);
  return (
    <div className={styles.panel}>
      {fault !== null && (
        <p className={styles.fault} role="alert">
          The look at this day stopped on a fault of this tool. What stands below may be out of date, so do
          not build by it. What is known: {fault}
        </p>
      )}
      <DayHead job={job} piece={piece} day={day} />
      <Standing job={job} piece={piece} day={day} />
      <EarliestDays job={job} earliest={earliest} />
      {held !== undefined && <FalseworkView design={held.falsework} job={job} />}
      <Swap job={job} piece={piece} held={held} />
      <section aria-labelledby="hold-cautions-heading">
        <Heading id="hold-cautions-heading">Mind</Heading>
        <ul className={styles.cautions}>
          {SWAP_CAUTIONS.map((caution) => (
            <li key={caution}>{caution}</li>
          ))}
        </ul>
      </section>
    </div>
  );
}
