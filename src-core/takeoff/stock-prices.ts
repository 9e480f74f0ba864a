/** What the job's own stock asks for things. */
import type { Job, StockItem } from '../job';
import type { UnitPrice } from './list-line';

/** Price of an item of the stock; null where it has none, or there is no such item. */
export function priceOfItem(item: StockItem | undefined): UnitPrice | null {
  return item === undefined || item.price === null ? null : { each: item.price, from: item.priceFrom };
}

/** Price of the item of this id. */
export function priceOfStock({ stock }: Job, stockId: string | null): UnitPrice | null {
  return priceOfItem(stock.find(({ id }) => id === stockId));
}

/** Price of the first item of a kind that has one. */
export function priceOfKind({ stock }: Job, kind: StockItem['kind']): UnitPrice | null {
  return priceOfItem(stock.find((item) => item.kind === kind && item.price !== null));
}
