export { coveredRegions, withinField } from './covered';
export { slabSolid } from './slab-solid';
export { standoffPlaces } from './standoffs';
export type { RowCount, SteelRow, SteelRows } from './steel-rows';
export { barsOver, SHORTEST_BAR_IN, steelRows, wiresOver } from './steel-rows';
export { MOST_RUNS_ONE_WAY, steelRuns } from './steel-runs';
export { supportSolids } from './support-solids';
export type { Solid, SolidMaterial, SteelRun, SupportSolid } from './types';
export { slabVolumeIn3 } from './volume';
