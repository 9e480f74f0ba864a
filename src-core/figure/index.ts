export type { Figure, Fill, Mark, PaperPoint, Pen } from './figure';
export type { Paper, PaperSize } from './paper';
export { PAPER_SIZES } from './paper';
