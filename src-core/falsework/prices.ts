/** What a board foot and a sheet cost: the job's own stock where it has them, else shipped prices that are invented. */
import type { Job, StockItem } from '../job';
import type { LumberSize } from '../timber';
import { LUMBER, PANELS } from '../timber';

/** Where a price comes from; an invented one is only good for comparing. */
export type PriceSource = 'own' | 'invented';

export interface Price {
  readonly price: number;
  readonly from: PriceSource;
  /** Stock item that it was taken from; null for a shipped one. */
  readonly stockId: string | null;
}

export interface Prices {
  /** A board foot of each size. */
  readonly boardFoot: { readonly [S in LumberSize]: Price };
  /** A square foot of deck panel. */
  readonly panelFt2: Price;
  readonly areInvented: boolean;
}

/** Shipped prices, invented for the demo: they rank arrangements and say nothing of any shop. */
const SHIPPED_BOARD_FOOT: { readonly [S in LumberSize]: number } = {
  '2x4': 0.85,
  '2x6': 0.9,
  '2x8': 1,
  '2x10': 1.15,
  '4x4': 1.4,
  '4x6': 1.5,
};
const SHIPPED_PANEL_FT2 = 0.9;

const SAME_SIZE_IN = 0.01;

/** Board feet in a length of lumber: nominal inches of thickness and width, by twelfths. Trade measure. */
export function boardFeet(size: LumberSize, lengthIn: number): number {
  const [thickness, width] = size.split('x').map(Number) as [number, number];
  return (thickness * width * lengthIn) / 144;
}

/** The stock of a job that is lumber of a size, with a length. */
export function lumberStock(job: Job, size: LumberSize): StockItem[] {
  const { thicknessIn, widthIn } = LUMBER[size];
  return job.stock.filter(
    (item) =>
      item.kind === 'lumber' &&
      item.lengthIn !== null &&
      near(item.thicknessIn, thicknessIn) &&
      near(item.widthIn, widthIn),
  );
}

/** The sheets of a job's stock that are as thick as its falsework panel. */
export function panelStock(job: Job): StockItem[] {
  return job.stock.filter(
    ({ kind, lengthIn, widthIn, thicknessIn }) =>
      kind === 'sheet' &&
      lengthIn !== null &&
      widthIn !== null &&
      near(thicknessIn, PANELS[job.falsework.panel].thicknessIn),
  );
}

/** Prices of a job: for each size the cheapest stock by the board foot, else the shipped one. */
export function pricesOf(job: Job): Prices {
  const boardFoot = Object.fromEntries(
    (Object.keys(LUMBER) as LumberSize[]).map((size) => [
      size,
      cheapest(
        lumberStock(job, size).map((item) => ({ item, units: boardFeet(size, item.lengthIn!) })),
        SHIPPED_BOARD_FOOT[size],
      ),
    ]),
  ) as { [S in LumberSize]: Price };
  const panelFt2 = cheapest(
    panelStock(job).map((item) => ({ item, units: (item.lengthIn! * item.widthIn!) / 144 })),
    SHIPPED_PANEL_FT2,
  );
  return {
    boardFoot,
    panelFt2,
    areInvented: [...Object.values(boardFoot), panelFt2].some(({ from }) => from === 'invented'),
  };
}

function cheapest(
  offers: readonly { readonly item: StockItem; readonly units: number }[],
  shipped: number,
): Price {
  let best: Price | null = null;
  for (const { item, units } of offers) {
    if (item.price === null || !(units > 0)) continue;
    const price = item.price / units;
    if (best === null || price < best.price) best = { price, from: item.priceFrom, stockId: item.id };
  }
  return best ?? { price: shipped, from: 'invented', stockId: null };
}

function near(valueIn: number | null, wantedIn: number): boolean {
  return valueIn !== null && Math.abs(valueIn - wantedIn) < SAME_SIZE_IN;
}
