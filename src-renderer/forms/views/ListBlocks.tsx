import { Button } from '../../look/Button';
import { Fold } from '../../look/Fold';
import type { ListField, Thing } from '../specs/field';
import type { Target } from '../target';
import { below } from '../target';
import { FieldList } from './FieldList';
import { Flush } from './Flush';

interface Props {
  readonly field: ListField;
  /** The list itself. */
  readonly list: Target;
  readonly items: readonly unknown[];
  readonly onRemove: (index: number) => void;
}

/** A list with a block an entry, each folded under a line that sums it up. */
export function ListBlocks({ field, list, items, onRemove }: Props) {
  const { one, least, summary } = field;
  return items.map((item, index) => {
    const thing = item as Thing;
    const words = summary?.(thing, list.around) ?? `${one} ${index + 1}`;
    return (
      <Fold key={String(thing.id)} title={words} level={4}>
        <FieldList fields={field.item} target={below(list, [index])} />
        <Flush>
          <Button weight="quiet" isDisabled={items.length <= least} onPress={() => onRemove(index)}>
            Remove this {one}
          </Button>
        </Flush>
      </Fold>
    );
  });
}
