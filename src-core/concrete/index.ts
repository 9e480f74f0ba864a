export type { LayerState, SectionAnalysis, SectionInput, SteelLayer } from './analyse-section';
export { analyseSection } from './analyse-section';
export {
  faceStrainRatio,
  froschCrackWidth,
  gergelyLutzCrackWidth,
  serviceSteelStress,
} from './crack-width';
export {
  crackedDepth,
  crackedInertia,
  effectiveInertia,
  longTermFactor,
  modularRatio,
  timeFactorRatio,
} from './cracked-stiffness';
export type { CriticalPerimeter, PunchingPatch } from './critical-perimeter';
export { cornerPerimeter, criticalPerimeter, edgePerimeter, interiorPerimeter } from './critical-perimeter';
export {
  barDevelopment,
  barLap,
  clearBarLength,
  gradeFactorRatio,
  hookDevelopment,
  hookLength,
  hookStrengthFactor,
  tightBarLength,
} from './development';
export {
  MINIMUM_STRENGTH_PSI,
  PHI_BEARING_RATIO,
  PHI_PLAIN_RATIO,
  PHI_SHEAR_RATIO,
  STEEL_MODULUS_PSI,
} from './factors';
export {
  beta1,
  blockAboveAxis,
  cautiousMoment,
  designMoment,
  neutralAxis,
  neutralAxisUnyielded,
  nominalMoment,
  phiFlexure,
  steelPerWidth,
  steelStrain,
  steelStress,
  stressBlockDepth,
  yieldStrain,
} from './flexure';
export { elasticModulus, elasticModulusByDensity, grossInertia, modulusOfRupture } from './material';
export type { CuringSpell } from './maturity';
export {
  ACTIVATION_KELVIN,
  COLD_CURING_TEMPERATURE_C,
  DATUM_TEMPERATURE_C,
  equivalentAgeOf,
  maturityOf,
  REFERENCE_TEMPERATURE_C,
  spellEquivalentAge,
  spellMaturity,
} from './maturity';
export {
  deformedMeshDevelopment,
  deformedMeshFactor,
  plainMeshDevelopment,
  plainMeshLap,
  plainMeshLength,
} from './mesh-development';
export {
  closeJointSpacing,
  restrainedStress,
  STANDARD_FINAL_SHRINKAGE_RATIO,
  shrinkageMovement,
  shrinkageStrain,
  THERMAL_EXPANSION_PER_DEG_C,
  THIN_TOP_SHRINKAGE_RATIO,
  thermalMovement,
  wideJointSpacing,
} from './movement';
export {
  crackingMoment,
  plainCrackingLimit,
  plainOneWayShear,
  plainPunching,
  plainStrength,
} from './plain-section';
export {
  concreteBearing,
  designOneWayShear,
  oneWayShear,
  punchingStrength,
  punchingStress,
  sizeEffect,
  steelRatio,
} from './shear';
export {
  crackSpacingLimit,
  maximumMainSpacing,
  maximumShrinkageSpacing,
  minimumSteel,
} from './steel-limits';
export type { Bar, Mesh, Wire } from './steel-tables';
export { BARS, LIGHT_MESH_YIELD_PSI, MESHES, WIRES } from './steel-tables';
export type { Cement, CylinderResult, StrengthAtAge, StrengthAtAgeInput } from './strength-gain';
export {
  ageOfRatio,
  elasticModulusAtAge,
  GAIN_CONSTANTS,
  gainedStrength,
  gainRatio,
  strengthAfterTest,
  strengthAtAge,
  strengthBetweenTests,
  strengthScaledToTest,
} from './strength-gain';
