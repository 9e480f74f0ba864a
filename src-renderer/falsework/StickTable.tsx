import { Prose } from '../look/Prose';
import type { SizeRows } from './cut-rows';
import { FormTable } from './FormTable';
import styles from './StickTable.module.css';

interface Props {
  readonly size: SizeRows;
}

/** Stock of one size, stick by stick. */
export function StickTable({ size: { size, words, rows, tooLong } }: Props) {
  return (
    <div>
      <FormTable caption={`${size}: ${words}`}>
        <thead>
          <tr>
            <th scope="col">Sticks</th>
            <th scope="col" className={styles.words}>
              Cut to
            </th>
            <th scope="col">Left</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ key, count, stock, cuts, left }) => (
            <tr key={key}>
              <th scope="row" className={styles.stock}>
                {count} × {stock}
              </th>
              <td className={styles.words}>
                <Prose text={cuts} />
              </td>
              <td className={styles.stock}>{left}</td>
            </tr>
          ))}
        </tbody>
      </FormTable>
      {tooLong.map((sentence) => (
        <p key={sentence}>
          <Prose text={sentence} />
        </p>
      ))}
    </div>
  );
}
