import type { Pour } from '../../src-core/pour';
import { Heading } from '../look/Heading';
import { Prose } from '../look/Prose';
import styles from './FinishList.module.css';
import { finishRows, finishSource } from './finish-rows';
import { PieceLink } from './PieceLink';
import { ProgressLine } from './ProgressLine';
import { TickBox } from './TickBox';

interface Props {
  readonly pour: Pour;
  readonly ticks: ReadonlySet<string>;
  readonly startMinutes: number;
}

/** From screed to trowel by the clock, each step to be ticked off. */
export function FinishList({ pour, ticks, startMinutes }: Props) {
  const rows = finishRows(pour, ticks, startMinutes);
  return (
    <section aria-labelledby="pour-finish-heading">
      <div className={styles.head}>
        <Heading id="pour-finish-heading">Screed to trowel</Heading>
        <ProgressLine done={rows.filter(({ isDone }) => isDone).length} all={rows.length} word="done" />
      </div>
      <ol className={styles.list}>
        {rows.map(({ id, tickId, isDone, time, minutes, title, pieceId, name, words }) => (
          <li key={id} className={styles.item}>
            <TickBox tickId={tickId} isDone={isDone} words={`${title.toLowerCase()} of ${name}`}>
              <span className={styles.time}>{time}</span>
              <span className={styles.title}>
                {title}
                <span className={styles.unseen}>, {name}</span>
              </span>
            </TickBox>
            <p className={styles.where}>
              <PieceLink pieceId={pieceId} name={name} />, {minutes}
            </p>
            {words !== '' && (
              <p className={styles.words}>
                <Prose text={words} />
              </p>
            )}
          </li>
        ))}
      </ol>
      <p className={styles.source}>{finishSource(pour)}.</p>
    </section>
  );
}
