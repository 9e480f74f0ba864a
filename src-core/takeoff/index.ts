export type { BoardsBought } from './board-lines';
export { stripName } from './form-lines';
export type { JobTakeoff, JobTakeoffOptions } from './job-takeoff';
export { jobTakeoff } from './job-takeoff';
export { listCsv } from './list-csv';
export type { PieceTakeoff } from './piece-takeoff';
export { pieceTakeoff } from './piece-takeoff';
export { COVER_SHEET, SAND_BAG_LB, SCREW_BOX, TAPE_ROLL_IN } from './practice';
export { linesOf } from './shopping-list';
export type { BarCuts, BarPiece, MeshCuts, MeshPiece } from './steel-cuts';
export type { Tool } from './tools';
export { DUST_CAUTION } from './tools';
export type {
  ListGroup,
  ListGroupId,
  ListLine,
  ListSource,
  ListTotal,
  ListUnit,
  ShoppingList,
} from './types';
export { amountWords, placeWords, stockWords } from './words';
