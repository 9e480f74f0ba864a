/** A profile with the size that it is made to, so that one left out and one written down are the same form. */
import type { EdgeProfile } from '../job';
import {
  CHAMFER_LEG_IN,
  COVE_RADIUS_IN,
  EASED_RADIUS_IN,
  HALF_BULLNOSE_MOST_IN,
  OGEE_SIZE_IN,
  ROUND_OVER_RADIUS_IN,
  STEP_SIZE_IN,
} from '../profile';

type SizedKind = Exclude<EdgeProfile['kind'], 'square' | 'own'>;

const OWN_SIZE_IN: { readonly [K in SizedKind]: number } = {
  eased: EASED_RADIUS_IN,
  chamfer: CHAMFER_LEG_IN,
  'round-over': ROUND_OVER_RADIUS_IN,
  bullnose: Number.POSITIVE_INFINITY,
  'half-bullnose': HALF_BULLNOSE_MOST_IN,
  cove: COVE_RADIUS_IN,
  ogee: OGEE_SIZE_IN,
  stepped: STEP_SIZE_IN,
};

/** The profile on a slab of a thickness, in: its own size where none is written, and none larger than the slab can hold. */
export function sizedProfile(profile: EdgeProfile, thicknessIn: number): EdgeProfile {
  const { kind } = profile;
  if (kind === 'square' || kind === 'own') return { ...profile, sizeIn: null };
  const mostIn = kind === 'bullnose' ? thicknessIn / 2 : thicknessIn;
  return { ...profile, sizeIn: Math.min(profile.sizeIn ?? OWN_SIZE_IN[kind], mostIn) };
}
