/** Lines for what is cut from sticks: one for each stock length. */
import type { UnitSystem } from '../units';
import type { UnitPrice } from './list-line';
import { CUT_BY_LIST, listLine } from './list-line';
import type { ListGroupId, ListLine, ListSource } from './types';
import { counted, stockWords } from './words';

/** A stick of a cut list, with the items that are cut from it, lengths in. */
export interface BoughtStick {
  readonly stockId: string | null;
  readonly stockLengthIn: number;
  readonly cuts: readonly ListSource[];
}

export interface StickGoods {
  readonly id: string;
  readonly group: ListGroupId;
  readonly name: string;
  /** What one stick is called: "stick", "bar". */
  readonly one: string;
  readonly priceOf: (stick: BoughtStick) => UnitPrice | null;
}

/** Sticks by the stock that they come from, the longest first. */
export function stickLines(
  goods: StickGoods,
  sticks: readonly BoughtStick[],
  system: UnitSystem,
): ListLine[] {
  const keyOf = ({ stockId, stockLengthIn }: BoughtStick) =>
    `${stockLengthIn}${stockId === null ? '' : `/${stockId}`}`;
  const keys = [...new Set(sticks.map(keyOf))];
  return keys
    .map((key) => sticks.filter((stick) => keyOf(stick) === key))
    .sort((a, b) => b[0]!.stockLengthIn - a[0]!.stockLengthIn)
    .flatMap((own) => {
      const first = own[0]!;
      const { id, group, name, one, priceOf } = goods;
      return listLine(
        {
          id: `${id}/${keyOf(first)}`,
          group,
          name,
          unit: 'in',
          sources: own.flatMap(({ cuts }) => cuts),
          waste: CUT_BY_LIST,
          buy: own.length,
          buyWords: `${counted(own.length, one, `${one}s`)} of ${stockWords(first.stockLengthIn, system)}`,
          price: priceOf(first),
        },
        system,
      );
    });
}
