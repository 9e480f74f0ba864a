/** The shopping list as comma-separated text. */
import { csvOf } from '../csv';
import { linesOf } from './shopping-list';
import type { ShoppingList } from './types';

const COLUMNS = [
  'id',
  'where',
  'what',
  'needed',
  'unit',
  'needed in words',
  'waste ratio',
  'waste',
  'buy',
  'buy in words',
  'price each',
  'price from',
  'cost',
  'made of',
] as const;

/** A row for each line, amounts in the unit of its column; what it is made of stands in the last cell. */
export function listCsv(list: ShoppingList): string {
  return csvOf({
    columns: COLUMNS,
    rows: linesOf(list).map((line) => [
      line.id,
      line.group,
      line.name,
      line.needed,
      line.unit,
      line.neededWords,
      line.wasteRatio,
      line.wasteWords,
      line.buy,
      line.buyWords,
      line.priceEach,
      line.priceFrom,
      line.cost,
      line.sources.map(({ words, amount }) => `${words}: ${Number(amount.toPrecision(6))}`).join('; '),
    ]),
  });
}
