export type { Figure, Fill, Mark, PaperPoint, Pen } from './figure';
