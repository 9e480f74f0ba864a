import { TriangleAlert } from 'lucide-react';
import { Fragment } from 'react';
import type { FalseworkDesign } from '../../src-core/falsework';
import { printLength, type UnitSystem } from '../../src-core/units';
import { Prose } from '../look/Prose';
import { FormTable } from './FormTable';
import { floorWords } from './head-words';
import styles from './LegTable.module.css';
import { legGroups } from './leg-rows';

interface Props {
  readonly design: FalseworkDesign;
  readonly system: UnitSystem;
}

/** Every leg with its length as it is cut, and what is amiss with it below. */
export function LegTable({ design, system }: Props) {
  return (
    <div>
      <h3 className={styles.title}>Legs, cut to the floor</h3>
      <FormTable
        caption={
          <Prose
            text={`${floorWords(design, (valueIn) => printLength(valueIn, { system }))} Floor: its height under the leg against the highest reading.`}
          />
        }
      >
        <thead>
          <tr>
            <th scope="col">Leg</th>
            <th scope="col">Cut to</th>
            <th scope="col">Shim</th>
            <th scope="col">Floor</th>
            <th scope="col">Load</th>
          </tr>
        </thead>
        {legGroups(design, system).map(({ letter, name, size, rows }) => (
          <tbody key={letter}>
            <tr>
              <th scope="rowgroup" colSpan={5}>
                {letter} {name}, {size}
              </th>
            </tr>
            {rows.map(({ id, number, cut, shim, floor, load, warnings }) => (
              <Fragment key={id}>
                <tr>
                  <th scope="row">{number}</th>
                  <td className={styles.cut}>{cut}</td>
                  <td className={styles.figure}>{shim}</td>
                  <td className={styles.figure}>{floor}</td>
                  <td className={styles.figure}>{load}</td>
                </tr>
                {warnings.map((words) => (
                  <tr key={words}>
                    <td colSpan={5} className={styles.warning}>
                      <TriangleAlert size={14} aria-hidden="true" /> {number}: <Prose text={words} />
                    </td>
                  </tr>
                ))}
              </Fragment>
            ))}
          </tbody>
        ))}
      </FormTable>
    </div>
  );
}
