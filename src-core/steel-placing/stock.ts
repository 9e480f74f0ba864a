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

/** A length in which a bar is sold. */
export interface BarLength {
  readonly id: string;
  readonly lengthIn: number;
  readonly price: number | null;
}

/** Lengths of the stock in this diameter, else those that state none; empty where there are neither. */
export function barLengths({ stock }: Job, barIn: number): BarLength[] {
  const bars = stock.flatMap(({ id, kind, lengthIn, thicknessIn, price }) =>
    kind === 'bar' && lengthIn !== null ? [{ id, lengthIn, thicknessIn, price }] : [],
  );
  const same = bars.filter(({ thicknessIn }) => Math.abs((thicknessIn ?? 0) - barIn) <= SAME_BAR_IN);
  return same.length > 0 ? same : bars.filter(({ thicknessIn }) => thicknessIn === null);
}

/** The longest of them, else the shipped length. */
export function barStock(job: Job, barIn: number): StockUsed {
  const [longest] = barLengths(job, barIn).sort((a, b) => b.lengthIn - a.lengthIn);
  if (longest === undefined) return { stockId: null, lengthIn: SHIPPED_BAR_IN, widthIn: 0 };
  return { stockId: longest.id, lengthIn: longest.lengthIn, widthIn: 0 };
}
