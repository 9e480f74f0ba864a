import styles from './Heights.module.css';
import type { HeightRow } from './height-words';

interface Props {
  readonly rows: readonly HeightRow[];
}

/** How far each foot or side may be wound beyond touching, and how far it may fall short, before the slab cracks. */
export function Heights({ rows }: Props) {
  return (
    <table className={styles.table}>
      <caption>Before the slab cracks, what comes in may be</caption>
      <thead>
        <tr>
          <th scope="col">
            <span className={styles.unseen}>Foot or side</span>
          </th>
          <th scope="col">over-raised</th>
          <th scope="col">left short</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ key, words, raise, gap }) => (
          <tr key={key}>
            <th scope="row">{words}</th>
            <td>{raise}</td>
            <td>{gap}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
