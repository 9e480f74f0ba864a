/** How good a list is known to be. */

/** What was made least: the number of sticks or sheets, their price, or their length together. */
export type CutAim = 'count' | 'price' | 'length';

export interface Proof {
  /** Whether no list can be better. */
  readonly isProved: boolean;
  /** What the list comes to, and the least that any list could: a count, a price, or a length, in. */
  readonly total: number;
  readonly leastTotal: number;
  /** "fewest sticks, proved" or "within 1 of the proven least, 11 sticks". */
  readonly words: string;
}

/** Decimals of a price, and of a length in percent. */
const PRICE_DECIMALS = 2;

/** A total beside the least that is proved, with its words; `one` and `many` name what is counted. */
export function proofOf(
  aim: CutAim,
  total: number,
  leastTotal: number,
  isProved: boolean,
  { one, many }: { readonly one: string; readonly many: string },
): Proof {
  return { isProved, total, leastTotal, words: isProved ? provedWords(aim, many) : gapWords() };

  function gapWords(): string {
    switch (aim) {
      case 'count':
        return `within ${total - leastTotal} of the proven least, ${leastTotal} ${leastTotal === 1 ? one : many}`;
      case 'price':
        return `within ${(total - leastTotal).toFixed(PRICE_DECIMALS)} of the proven least price, ${leastTotal.toFixed(PRICE_DECIMALS)}`;
      case 'length':
        return `within ${Math.max(1, Math.ceil((100 * (total - leastTotal)) / leastTotal))} % of the proven least length`;
    }
  }
}

function provedWords(aim: CutAim, many: string): string {
  return aim === 'count' ? `fewest ${many}, proved` : `least ${aim} of ${many}, proved`;
}
