export {
  F_PER_C,
  FREEZING_F,
  IN_PER_FT,
  IN_PER_YD,
  IN2_PER_FT2,
  IN3_PER_FT3,
  IN3_PER_GAL,
  IN3_PER_YD3,
  KG_PER_LB,
  KG_PER_M3_PER_PCF,
  KPA_PER_PSF,
  L_PER_IN3,
  M_PER_S_PER_MPH,
  MM_PER_IN,
  MPA_PER_PSI,
  N_M_PER_LBF_IN,
  N_PER_LBF,
  N_PER_MM_PER_LBF_PER_IN,
  N_PER_MM3_PER_LBF_PER_IN3,
} from './conversions';
export {
  parseBedStiffness,
  parseDensity,
  parseForce,
  parseLength,
  parseLineLoad,
  parseLineStiffness,
  parseMass,
  parsePointStiffness,
  parseSpreadLoad,
  parseStress,
  parseTemperature,
} from './parse';
export type { LengthPrint } from './print-length';
export { printExactLength, printLength } from './print-length';
export type { QuantityPrint } from './print-quantity';
export {
  printArea,
  printBedStiffness,
  printCouple,
  printDeflection,
  printDensity,
  printForce,
  printLineLoad,
  printLineStiffness,
  printMass,
  printMoment,
  printPointStiffness,
  printSpreadLoad,
  printStress,
  printTemperature,
  printVolume,
} from './print-quantity';
export type { ProblemCode, QuantityProblem, Refusal } from './problems';
export type { UnitSystem } from './quantity-specs';
export { sentenceCase } from './sentence-case';
export type { TextPiece } from './whole-figures';
export { wholeFigures } from './whole-figures';
