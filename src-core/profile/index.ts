export type { ProfilePoint } from './edge-profile';
export { edgeProfile, PROFILE_CHORD_IN, profileAreaLostIn2 } from './edge-profile';
export type { EdgeSection, GrooveSection } from './edge-section';
export { deepestInsetIn, edgeSection } from './edge-section';
export {
  CHAMFER_LEG_IN,
  COVE_RADIUS_IN,
  EASED_RADIUS_IN,
  HALF_BULLNOSE_MOST_IN,
  OGEE_SIZE_IN,
  ROUND_OVER_RADIUS_IN,
  STEP_SIZE_IN,
} from './sizes';
