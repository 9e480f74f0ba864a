/** The only list of checks, in the order in which a reader meets them. */

import { bearingStress } from './bearing-stress';
import { bendingPlain } from './bending-plain';
import { bendingReinforced } from './bending-reinforced';
import { bracket } from './bracket';
import type { CheckRule } from './check';
import { crackWidth } from './crack-width';
import { cutoutStrip } from './cutout-strip';
import { deflection } from './deflection';
import { minimumSteelRule } from './minimum-steel';
import { oneWayShearRule } from './one-way-shear';
import { overhang } from './overhang';
import { punchingShear } from './punching-shear';
import { shrinkage } from './shrinkage';
import { span } from './span';
import { supportLoad } from './support-load';
import { tieForce } from './tie-force';
import { tipping } from './tipping';
import { weight } from './weight';

export const RULES: readonly CheckRule[] = [
  weight,
  supportLoad,
  overhang,
  span,
  bendingPlain,
  bendingReinforced,
  minimumSteelRule,
  cutoutStrip,
  oneWayShearRule,
  punchingShear,
  deflection,
  bracket,
  crackWidth,
  tipping,
  tieForce,
  bearingStress,
  shrinkage,
];
