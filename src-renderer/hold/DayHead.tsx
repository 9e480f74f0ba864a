import { useMemo } from 'react';
import type { Job, Piece } from '../../src-core/job';
import { dayName } from '../days/day-words';
import { PanelHead } from '../look/PanelHead';
import { Prose } from '../look/Prose';
import { VerdictMark } from '../look/VerdictMark';
import { useDays } from '../state/day-store';
import { useVerdict } from '../state/verdict-store';
import { levelWords } from '../verdict/level-words';
import { Tape } from '../verdict/Tape';
import { tapeEndRatio } from '../verdict/tape';
import styles from './DayHead.module.css';
import { dayAnswer } from './day-answer';
import { slabOnDay } from './slab-words';

interface Props {
  readonly job: Job;
  readonly piece: Piece;
  readonly day: number | null;
}

/** Which day is shown, what the slab is on it, and whether it stands. */
export function DayHead({ job, piece, day }: Props) {
  const days = useDays();
  const finished = useVerdict(piece.id);
  const slab = useMemo(() => slabOnDay(job, piece, day), [job, piece, day]);
  const answer = dayAnswer(day, piece.id, slab, days, finished);
  return (
    <PanelHead
      about={piece.name}
      state={days.isWorking && day !== null ? 'Checking.' : ''}
      title={day === null ? 'Finished' : `On ${dayName(job.site.calendar, day)}`}
    >
      <p>
        <strong className={styles.slab}>{slab.title}.</strong> <Prose text={slab.words} />
      </p>
      {slab.caution !== '' && <p className={styles.caution}>{slab.caution}</p>}
      {answer.kind === 'none' ? (
        <p className={styles.soft}>{answer.words}</p>
      ) : (
        <div className={styles.verdict}>
          <p className={styles.words} style={{ color: `var(--${answer.result.verdict.level})` }}>
            <span className={styles.mark} aria-hidden="true">
              <VerdictMark level={answer.result.verdict.level} size={20} />
            </span>
            {answer.result.verdict.words}
          </p>
          <p>
            <Prose text={answer.result.verdict.why} />
          </p>
          {answer.worst !== null && answer.ratio !== '' && (
            <div>
              <p className={styles.check}>
                <span>{answer.worst.title}</span>
                <span style={{ color: `var(--${answer.worst.level})` }}>
                  {answer.ratio}
                  <span className={styles.unseen}>, {levelWords(answer.worst.level)}</span>
                </span>
              </p>
              <Tape
                ratio={answer.worst.ratio}
                level={answer.worst.level}
                endRatio={tapeEndRatio([answer.worst.ratio])}
              />
            </div>
          )}
        </div>
      )}
    </PanelHead>
  );
}
