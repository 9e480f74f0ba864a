export type { LapLine, LapPlace, LapPlaces, Peak } from './lap-places';
export { lapPlaces } from './lap-places';
export { standoffsUnder } from './place-standoffs';
export type { PlaceSteelOptions, SteelPlacing, SteelPlacingResult } from './place-steel';
export { placeSteel, STEEL_CAUTION } from './place-steel';
export type {
  DrawnBar,
  DrawnJoint,
  DrawnLine,
  DrawnShape,
  DrawnStandoff,
  PlacementDrawing,
} from './placement-drawing';
export { COVER_NOTE, SHIPPED_BAR_IN, STEEL_LB_PER_IN3 } from './practice';
export type { BarLength } from './stock';
export { barLengths } from './stock';
export type {
  BarMark,
  BarPlacing,
  BarShape,
  CoverFace,
  CoverLeft,
  MeshPlacing,
  MeshSag,
  MeshStrip,
  OtherSteel,
  PlacedBar,
  PlacedItem,
  PlacedJoint,
  PlacedStandoff,
  StandoffSet,
  SteelLap,
  SteelTotal,
  StockUsed,
  Trimmer,
} from './types';
