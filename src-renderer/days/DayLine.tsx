import { ChevronDown, ChevronUp, Play, SkipForward, Square } from 'lucide-react';
import { useMemo, useState } from 'react';
import { Button } from '../look/Button';
import { Heading } from '../look/Heading';
import { useStore, useWindow } from '../state/store-context';
import { barRows } from './bar-rows';
import styles from './DayLine.module.css';
import { DayString } from './DayString';
import { ownDays } from './knots';
import type { LineOfJob } from './use-day-line';
import { useDayLine } from './use-day-line';
import { usePlay } from './use-play';

/** The job in time along the bottom of the window: events as knots, what stands as bars, and the day that is shown. */
export function DayLine() {
  const laidOut = useDayLine();
  return (
    <section className={styles.strip} aria-labelledby="day-line-heading" aria-busy={laidOut === null}>
      {laidOut === null ? <Heading id="day-line-heading">Day line</Heading> : <Line laidOut={laidOut} />}
    </section>
  );
}

interface Props {
  readonly laidOut: LineOfJob;
}

function Line({ laidOut: { job, line } }: Props) {
  const store = useStore();
  const selectedId = useWindow(({ selection }) => selection?.pieceId);
  // the line may be a moment behind the job
  const piece = job.pieces.find(({ id }) => id === selectedId) ?? job.pieces[0]!;
  const [isFolded, setIsFolded] = useState(false);
  const days = useMemo(() => ownDays(line, piece.id), [line, piece.id]);
  const rows = useMemo(() => barRows(job, piece, line), [job, piece, line]);
  const play = usePlay(days);
  return (
    <div className={isFolded ? styles.folded : styles.open}>
      <div className={styles.side}>
        <div className={styles.head}>
          <Heading id="day-line-heading">Day line</Heading>
          <Button
            isIcon
            weight="quiet"
            aria-label={isFolded ? 'Unfold the day line' : 'Fold the day line'}
            aria-expanded={!isFolded}
            onPress={() => setIsFolded(!isFolded)}
          >
            {isFolded ? <ChevronUp size={16} aria-hidden /> : <ChevronDown size={16} aria-hidden />}
          </Button>
        </div>
        <div className={styles.ways}>
          <Button onPress={play.press}>
            {play.isPlaying ? (
              <Square size={14} aria-hidden />
            ) : play.isByStep ? (
              <SkipForward size={14} aria-hidden />
            ) : (
              <Play size={14} aria-hidden />
            )}
            {play.isPlaying ? 'Stop' : play.isByStep ? 'Next' : 'Play'}
          </Button>
          <Button
            aria-label="Finished: show the job as it stays"
            onPress={() => store.getState().setDay(null)}
          >
            Finished
          </Button>
        </div>
        {!isFolded && (
          <ul className={styles.names} aria-label={`What stands for ${piece.name}`}>
            {rows.map(({ id, name, details }) => (
              <li key={id} title={details}>
                {name}
              </li>
            ))}
          </ul>
        )}
      </div>
      <DayString job={job} line={line} piece={piece} rows={rows} isFolded={isFolded} />
    </div>
  );
}
