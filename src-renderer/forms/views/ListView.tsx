import { useId } from 'react';
import { Button } from '../../look/Button';
import row from '../fields/FieldRow.module.css';
import { useTaken } from '../fields/useTaken';
import { YesNoField } from '../fields/YesNoField';
import type { ListField, Thing } from '../specs/field';
import type { Target } from '../target';
import { below, changeTitle, stepsOf } from '../target';
import { Flush } from './Flush';
import { ListBlocks } from './ListBlocks';
import { ListTable } from './ListTable';
import styles from './ListView.module.css';
import { Refusal } from './Refusal';

interface Props {
  readonly field: ListField;
  readonly target: Target;
}

/** A list edited in place, as a table or as blocks, with a button for the next entry. */
export function ListView({ field, target }: Props) {
  const heading = useId();
  const steps = stepsOf(field.at);
  const list = below(target, steps);
  const items = list.value as readonly unknown[] | null;
  const { one, next, none, label } = field;
  const added = useTaken<readonly unknown[]>(items, (now) =>
    next === null ? null : target.add(steps, next(now, target.around), `Add ${one}`),
  );
  const removed = useTaken<number>(items, (index) => target.remove(steps, index, `Remove ${one}`));
  const setNone = (isOwn: boolean) =>
    target.set(steps, isOwn ? none!.start(target.value as Thing, target.around) : null, changeTitle(label));

  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset cannot be laid out as a row of the form
    <div role="group" aria-labelledby={heading} className={styles.list}>
      {field.look === 'blocks' ? (
        <h3 id={heading} className={row.label}>
          {label}
        </h3>
      ) : (
        <p id={heading} className={row.label}>
          {label}
        </p>
      )}
      {field.help !== undefined && <p className={row.help}>{field.help}</p>}
      {none !== undefined && field.when === undefined && (
        <YesNoField
          label="In a place of their own"
          help={items === null ? none.words : undefined}
          value={items !== null}
          onCommit={setNone}
        />
      )}
      {items !== null && (
        <>
          {field.look === 'table' ? (
            <ListTable field={field} list={list} count={items.length} onRemove={removed.take} />
          ) : (
            <ListBlocks field={field} list={list} items={items} onRemove={removed.take} />
          )}
          {next !== null && (
            <Flush>
              <Button weight="quiet" onPress={() => added.take(items)}>
                Add {one === 'arm' || one === 'item' ? 'an' : 'a'} {one}
              </Button>
            </Flush>
          )}
        </>
      )}
      <Refusal sentence={added.sentence ?? removed.sentence} />
    </div>
  );
}
