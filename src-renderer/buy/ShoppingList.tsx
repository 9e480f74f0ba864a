import { memo } from 'react';
import { ShoppingLine } from './ShoppingLine';
import styles from './ShoppingList.module.css';
import type { BuyGroup } from './shopping-rows';

interface Props {
  readonly groups: readonly BuyGroup[];
}

/** The shopping list by where one buys. */
export const ShoppingList = memo(function ShoppingList({ groups }: Props) {
  return (
    <div className={styles.list}>
      {groups.map(({ id, title, rows }) => (
        <section key={id} aria-labelledby={`buy-${id}`}>
          <h3 className={styles.title} id={`buy-${id}`}>
            {title}
          </h3>
          <ul className={styles.lines}>
            {rows.map((row) => (
              <ShoppingLine key={row.id} row={row} />
            ))}
          </ul>
        </section>
      ))}
    </div>
  );
});
