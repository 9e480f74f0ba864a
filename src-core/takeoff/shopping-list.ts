/** The lines of the list by where one buys, and what they cost together. */

import type { ListGroup, ListGroupId, ListLine, ListTotal, ShoppingList } from './types';
import { counted } from './words';

const GROUPS: readonly { readonly id: ListGroupId; readonly title: string }[] = [
  { id: 'timber-yard', title: 'Timber yard' },
  { id: 'builders-merchant', title: "Builders' merchant" },
  { id: 'hardware', title: 'Hardware' },
  { id: 'protection', title: 'Protection' },
];

/** The list of these lines. */
export function shoppingList(
  lines: readonly ListLine[],
  gaps: readonly string[],
  remarks: readonly string[],
): ShoppingList {
  return {
    groups: GROUPS.map(
      ({ id, title }): ListGroup => ({ id, title, lines: lines.filter(({ group }) => group === id) }),
    ).filter(({ lines: own }) => own.length > 0),
    total: totalOf(lines),
    gaps,
    remarks,
  };
}

function totalOf(lines: readonly ListLine[]): ListTotal {
  const priced = lines.flatMap(({ cost, priceFrom }) => (cost === null ? [] : [{ cost, priceFrom }]));
  const cost = priced.reduce((sum, line) => sum + line.cost, 0);
  const unpriced = lines.length - priced.length;
  const hasInvented = priced.some(({ priceFrom }) => priceFrom === 'invented');
  const invented = hasInvented ? ', at prices of which some are invented' : '';
  const without =
    unpriced === 0 ? '' : `, without ${counted(unpriced, 'line that has', 'lines that have')} no price`;
  const words =
    priced.length === 0 ? 'No line has a price' : `${cost.toFixed(2)} in all${invented}${without}`;
  return { cost, unpriced, hasInvented, words };
}

/** Every line of a list, group by group. */
export function linesOf({ groups }: ShoppingList): ListLine[] {
  return groups.flatMap(({ lines }) => lines);
}
