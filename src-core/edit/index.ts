export { newId } from '../starters';
export type { Command, Edited } from './command';
export { addCutout, moveCutout, resizeCutout } from './cutout-commands';
export { cutoutCentre, cutoutSize } from './cutout-shapes';
export type { JobPath } from './field-commands';
export { addItem, removeItem, setField } from './field-commands';
export type { History, HistoryStep } from './history';
export { beginHistory, recordStep, redoStep, sealStep, undoStep } from './history';
export { setUnits, useChange } from './job-commands';
export { addJoint, addLoad, addSteel, moveLoad } from './layer-commands';
export {
  moveCorner,
  moveEdge,
  removeCorner,
  setCornerRadius,
  setEdge,
  setEdgeLength,
  splitEdge,
} from './outline-commands';
export { duplicatePart, removePart } from './part-commands';
export type { PartKind, PartRef } from './part-ref';
export {
  addPiece,
  addStarter,
  drawPiece,
  duplicatePiece,
  movePiece,
  removePiece,
  turnPiece,
} from './piece-commands';
export { addSupport, moveSupport, moveSupportEnd, resizeSupport } from './support-commands';
export { setTick } from './tick-commands';
