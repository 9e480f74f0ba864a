export { arcLength, madeFor } from './curved-form';
export type { CutEdgeForms, FormCut, FormStick, StripCutList } from './cut-edge-forms';
export { cutEdgeForms } from './cut-edge-forms';
export type { EdgeFormsOptions } from './edge-forms';
export { edgeForms } from './edge-forms';
export { longLength, outerReach, slabFaceReach } from './form-ends';
export { screwPlacesIn, screwsBetween } from './form-parts';
export { placeOn } from './loop-forms';
export type { OpeningStand, ShapeSize } from './opening-stand';
export { isCastIn, leastScrews, openingStand, shapeSize, takesPlug } from './opening-stand';
export {
  BEAD_RADIUS_IN,
  BRACE_SPACING_IN,
  JOINT_TO_CORNER_IN,
  JOINT_TO_LINE_IN,
  PLUG_UP_TO_IN,
  SCREW_SPACING_IN,
  SHIPPED_STRIP_IN,
} from './practice';
export { bracePush, formPressure, formResultant, pressureOf } from './pressure';
export type { Reuse } from './reuse';
export { reusable } from './reuse';
export { rimDrop } from './rim-heights';
export type { Sealant } from './sealing';
export { beadVolume, sealantFor, TUBE_IN3, tubeCount } from './sealing';
export type { Run, SplitRun } from './split-run';
export { splitRun } from './split-run';
export type { Strip, StripKind } from './strips';
export { stripsOf } from './strips';
export type {
  CurvedForm,
  EdgeForm,
  EdgeForms,
  EdgeFormsResult,
  EndKind,
  FormEnd,
  FormJunction,
  FormKind,
  FormMaterial,
  FormPart,
  FormPressure,
  GrooveStrip,
  IsolationStrip,
  Plug,
  RimHeight,
  RimHeights,
  ScrewGroup,
  Sealing,
  StraightForm,
} from './types';
