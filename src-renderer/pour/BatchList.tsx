import type { Pour } from '../../src-core/pour';
import type { UnitSystem } from '../../src-core/units';
import { Heading } from '../look/Heading';
import { BatchItem } from './BatchItem';
import styles from './BatchList.module.css';
import { batchRows } from './batch-rows';
import { ProgressLine } from './ProgressLine';

interface Props {
  readonly pour: Pour;
  readonly ticks: ReadonlySet<string>;
  readonly startMinutes: number;
  readonly system: UnitSystem;
}

/** The batches as a list to tick off, and how far it has come. */
export function BatchList({ pour, ticks, startMinutes, system }: Props) {
  const rows = batchRows(pour, ticks, startMinutes, system);
  return (
    <section aria-labelledby="pour-batches-heading">
      <div className={styles.head}>
        <Heading id="pour-batches-heading">Batches</Heading>
        <ProgressLine done={rows.filter(({ isDone }) => isDone).length} all={rows.length} word="mixed" />
      </div>
      <ol className={styles.list}>
        {rows.map((row) => (
          <BatchItem key={row.id} row={row} day={pour.day} />
        ))}
      </ol>
    </section>
  );
}
