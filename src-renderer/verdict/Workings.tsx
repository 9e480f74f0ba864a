import type { Line } from '../../src-core/workings';
import styles from './Workings.module.css';
import { workingsRows } from './workings-rows';

interface Props {
  readonly lines: readonly Line[];
}

/** Lines of workings, each with its formula, the numbers put in, the result and the source. */
export function Workings({ lines }: Props) {
  return (
    <dl className={styles.workings}>
      {workingsRows(lines).map(({ key, symbol, label, steps, result, source }) => (
        <div key={key} className={styles.line}>
          <dt>
            <var className={styles.symbol}>{symbol}</var> {label}
          </dt>
          {steps.map((step) => (
            <dd key={step} className={styles.step}>
              = {step}
            </dd>
          ))}
          <dd className={styles.result}>= {result}</dd>
          <dd className={styles.source}>{source}</dd>
        </div>
      ))}
    </dl>
  );
}
