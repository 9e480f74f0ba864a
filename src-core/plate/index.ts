export type { FactorResult, PlateFactor } from './band-factor';
export { factorPlate } from './band-factor';
export {
  bankIndex,
  bankOf,
  LANES_PER_BANK,
  LANES_PER_STRIPE,
  solveMany,
} from './band-solve';
export { bendingMatrix, crackedBendingMatrix, plateRigidity } from './bending-matrix';
export type { ContactSolution } from './contact';
export { solveContact } from './contact';
export type { ContactLinks, ContactSystem } from './contact-system';
export { prepareContact, resultantOf } from './contact-system';
export type { AveragingWeights, MomentTensor } from './design-moments';
export {
  applyAveragingWeights,
  averageMomentAcross,
  averagingWeights,
  principalMoments,
  turnMoments,
  woodArmer,
} from './design-moments';
export type { SweepRoom } from './kernel';
export { createSweepRoom } from './kernel';
export type { MeshInput, MeshResult, PlateMesh } from './mesh';
export { meshRegion } from './mesh';
export { buildLocator } from './mesh-locate';
export { meshQuality } from './mesh-quality';
export type { MomentField, MomentOperator } from './moments';
export {
  bankedOperator,
  momentOperator,
  nodalMoments,
} from './moments';
export type { Locate } from './plate-loads';
export { addPatchLoad, addPointLoad, addPressure } from './plate-loads';
export type { PlateSolution } from './plate-solve';
export { solvePlate } from './plate-solve';
export type { PlateLayout, PlateMatrix } from './plate-stiffness';
export { assemblePlate, layOutPlate } from './plate-stiffness';
