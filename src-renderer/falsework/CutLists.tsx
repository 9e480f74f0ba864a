import type { FalseworkDesign } from '../../src-core/falsework';
import { CUTTING_METHOD } from '../../src-core/falsework';
import type { UnitSystem } from '../../src-core/units';
import { Prose } from '../look/Prose';
import styles from './CutLists.module.css';
import { partRows, sheetRows, sheetWords, sizeRows } from './cut-rows';
import { FormTable } from './FormTable';
import { StickTable } from './StickTable';

interface Props {
  readonly design: FalseworkDesign;
  readonly system: UnitSystem;
}

/** The stock, cut stick by stick and sheet by sheet, and the parts that come of it. */
export function CutLists({ design, system }: Props) {
  const sheets = sheetRows(design, system);
  return (
    <div className={styles.lists}>
      {sizeRows(design, system).map((size) => (
        <StickTable key={size.size} size={size} />
      ))}
      {sheets.length > 0 && (
        <FormTable caption={sheetWords(design)}>
          <thead>
            <tr>
              <th scope="col">Sheets</th>
              <th scope="col" className={styles.words}>
                Cut to
              </th>
            </tr>
          </thead>
          <tbody>
            {sheets.map(({ key, count, stock, cuts }) => (
              <tr key={key}>
                <th scope="row">
                  {count} × <Prose text={stock} />
                </th>
                <td className={styles.words}>
                  <Prose text={cuts} />
                </td>
              </tr>
            ))}
          </tbody>
        </FormTable>
      )}
      <FormTable caption="Parts of all sections">
        <thead>
          <tr>
            <th scope="col">Part</th>
            <th scope="col">Lumber</th>
            <th scope="col">Length</th>
            <th scope="col">Count</th>
          </tr>
        </thead>
        <tbody>
          {partRows(design, system).map(({ key, what, size, length, count }) => (
            <tr key={key}>
              <th scope="row">{what}</th>
              <td>{size}</td>
              <td>{length}</td>
              <td>{count}</td>
            </tr>
          ))}
        </tbody>
      </FormTable>
      <p className={styles.note}>How it is cut: {CUTTING_METHOD}.</p>
    </div>
  );
}
