import { X } from 'lucide-react';
import { sentenceCase } from '../../../src-core/units';
import { Button } from '../../look/Button';
import type { ListField } from '../specs/field';
import type { Target } from '../target';
import { below } from '../target';
import styles from './ListView.module.css';
import { ValueView } from './ValueView';

interface Props {
  readonly field: ListField;
  /** The list itself. */
  readonly list: Target;
  readonly count: number;
  readonly onRemove: (index: number) => void;
  /** Opens an entry's own form, where it has one. */
  readonly onOpen?: (index: number) => void;
  /** Entry whose opener takes the focus; none where left out. */
  readonly focusOn?: number | null;
}

/** A list with one line an entry. */
export function ListTable({ field, list, count, onRemove, onOpen, focusOn = null }: Props) {
  const { one, least, numbered = { by: 'No.', from: 1 } } = field;
  const columns = field.item.filter((column) => column.kind === 'quantity');
  const called = sentenceCase(one);
  if (count === 0) return null;
  return (
    <table className={styles.table}>
      <thead>
        <tr>
          <th scope="col" className={styles.number}>
            {numbered.by}
          </th>
          {columns.map(({ at, label }) => (
            <th scope="col" key={at}>
              {label}
            </th>
          ))}
          <td className={styles.end} />
        </tr>
      </thead>
      <tbody>
        {Array.from({ length: count }, (_, index) => {
          const item = below(list, [index]);
          const number = numbered.from + index;
          return (
            // biome-ignore lint/suspicious/noArrayIndexKey: entries of a list have no other name than their place
            <tr key={index}>
              <th scope="row">
                {onOpen === undefined ? (
                  number
                ) : (
                  <Button
                    weight="quiet"
                    isIcon
                    aria-label={`Open ${one} ${number}`}
                    autoFocus={focusOn === index}
                    onPress={() => onOpen(index)}
                  >
                    {number}
                  </Button>
                )}
              </th>
              {columns.map((column) => (
                <td key={column.at}>
                  <ValueView
                    field={column}
                    target={item}
                    layout="cell"
                    label={`${called} ${number}, ${column.label}`}
                  />
                </td>
              ))}
              <td className={styles.end}>
                <Button
                  weight="quiet"
                  isIcon
                  aria-label={`Remove ${one} ${number}`}
                  isDisabled={count <= least}
                  onPress={() => onRemove(index)}
                >
                  <X size={14} aria-hidden="true" />
                </Button>
              </td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
