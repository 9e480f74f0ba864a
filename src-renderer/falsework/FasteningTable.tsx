import styles from './FasteningTable.module.css';
import { FormTable } from './FormTable';
import type { FasteningGroup } from './fastening-rows';

interface Props {
  readonly groups: readonly FasteningGroup[];
}

/** What joins what, with how many screws, and from where each is reached; those that must come out first. */
export function FasteningTable({ groups }: Props) {
  return (
    <FormTable caption="Of all sections together. Nothing that must come out may be reached from above, under the concrete.">
      <thead>
        <tr>
          <th scope="col">Joins</th>
          <th scope="col">Screws</th>
          <th scope="col">Reached from</th>
        </tr>
      </thead>
      {groups.map(({ title, rows }) => (
        <tbody key={title}>
          <tr>
            <th scope="rowgroup" colSpan={3}>
              {title}
            </th>
          </tr>
          {rows.map(({ key, joins, screw, total, where, reached }) => (
            <tr key={key}>
              <th scope="row">
                <span className={styles.joins}>{joins}</span>
                <span className={styles.screw}>{screw}</span>
                <span className={styles.screw}>{where}</span>
              </th>
              <td>{total}</td>
              <td>{reached}</td>
            </tr>
          ))}
        </tbody>
      ))}
    </FormTable>
  );
}
