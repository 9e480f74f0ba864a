import { keyRows, type PlanStick } from './form-plan';
import styles from './PlanKey.module.css';

interface Props {
  readonly kinds: readonly PlanStick['kind'][];
}

/** What the lines of the plan stand for. */
export function PlanKey({ kinds }: Props) {
  return (
    <ul className={styles.key}>
      {keyRows(kinds).map(({ line, words }) => (
        <li key={line} className={styles.entry}>
          <svg width={20} height={12} aria-hidden="true">
            {line === 'leg' ? (
              <circle className={styles.leg} cx={10} cy={6} r={3.5} />
            ) : (
              <line className={styles[line]} x1={0} x2={20} y1={6} y2={6} />
            )}
          </svg>
          {words}
        </li>
      ))}
    </ul>
  );
}
