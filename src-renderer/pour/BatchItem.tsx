import { Prose } from '../look/Prose';
import styles from './BatchItem.module.css';
import type { BatchRow } from './batch-rows';
import { PieceLink } from './PieceLink';
import { TickBox } from './TickBox';

interface Props {
  readonly row: BatchRow;
  readonly day: number;
}

/** One batch: its tick, what goes in, its times, and which forms it fills. */
export function BatchItem({
  row: { tickId, number, isDone, bags, amounts, times, places, kept },
  day,
}: Props) {
  return (
    <li className={styles.item}>
      <TickBox tickId={tickId} isDone={isDone} words={`batch ${number} of day ${day}`}>
        <span className={styles.title}>
          Batch {number}
          <span className={styles.bags}>, {bags}</span>
        </span>
      </TickBox>
      <div className={styles.body}>
        <p>
          <Prose text={amounts} />
        </p>
        <dl className={styles.times}>
          {times.map(({ label, time, minutes }) => (
            <div key={label}>
              <dt>{label}</dt>
              <dd>
                <span className={styles.time}>{time}</span> <span className={styles.minutes}>{minutes}</span>
              </dd>
            </div>
          ))}
        </dl>
        <p>
          {places.map(({ key, buckets, pieceId, name }, k) => (
            <span key={key}>
              {k > 0 && ', then '}
              {buckets} to <PieceLink pieceId={pieceId} name={name} />
            </span>
          ))}
          {places.length > 0 && '. '}
          <Prose text={kept} />
        </p>
      </div>
    </li>
  );
}
