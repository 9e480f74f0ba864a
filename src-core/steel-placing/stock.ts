/** Sheets and bars that the job's stock has, else the common sizes. */
import type { Job } from '../job';
import { SAME_BAR_IN, SHIPPED_BAR_IN, SHIPPED_MESH_SHEET } from './practice';
import type { StockUsed } from './types';

/** The first mesh of the stock that states both sizes; a roll is a long sheet. */
export function meshStock(job: Job): StockUsed {
  for (const { id, kind, lengthIn, widthIn } of job.stock) {
    if (kind === 'mesh-sheet' && lengthIn !== null && widthIn !== null)
      return { stockId: id, lengthIn, widthIn };
  }
  return { stockId: null, ...SHIPPED_MESH_SHEET };
}

/** The longest bar of the stock of this diameter, else the longest that states none. */
export function barStock(job: Job, barIn: number): StockUsed {
  const bars = job.stock.flatMap(({ id, kind, lengthIn, thicknessIn }) =>
    kind === 'bar' && lengthIn !== null ? [{ stockId: id, lengthIn, widthIn: 0, thicknessIn }] : [],
  );
  const same = bars.filter(({ thicknessIn }) => Math.abs((thicknessIn ?? 0) - barIn) <= SAME_BAR_IN);
  const fitting = same.length > 0 ? same : bars.filter(({ thicknessIn }) => thicknessIn === null);
  const [longest] = fitting.sort((a, b) => b.lengthIn - a.lengthIn);
  if (longest === undefined) return { stockId: null, lengthIn: SHIPPED_BAR_IN, widthIn: 0 };
  return { stockId: longest.stockId, lengthIn: longest.lengthIn, widthIn: 0 };
}
