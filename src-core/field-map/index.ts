export type { ContactArrow, DeflectedShape } from './deflected-shape';
export { deflectedShape } from './deflected-shape';
export type { PieceMap } from './piece-map';
export { pieceMap } from './piece-map';
