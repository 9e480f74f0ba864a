/**
 * Factors on the reference values of dimension lumber: one function a factor, each with its clause. Temperature, incising and
 * beam stability are 1 here: falsework is not hot, not incised, and `lateralSupport` says what it takes for CL = 1.
 */
import type { LumberSize, LumberUse } from './lumber';

const DAYS_OF_TWO_MONTHS = 60;
const DAYS_OF_TEN_YEARS = 3650;

/**
 * Load duration factor CD (a ratio) of a load that stands so many days: 1.25 to seven days, 1.15 to two months, 1.0 to ten
 * years, 0.9 beyond. Never on Fc-perp, E or Emin. NDS 2018 Table 2.3.2; a swap may come weeks after the pour, so falsework is
 * rarely a seven-day load.
 */
export function durationFactor(days: number): number {
  if (days <= 7) return 1.25;
  if (days <= DAYS_OF_TWO_MONTHS) return 1.15;
  return days <= DAYS_OF_TEN_YEARS ? 1 : 0.9;
}

/** Size factors CF by the wider side, for 2 and 3 in and for 4 in thick lumber, No. 2. NDS 2018 Supplement Table 4A, from memory. */
const SIZE: { readonly [K in LumberSize]: { readonly bending: number; readonly compression: number } } = {
  '2x4': { bending: 1.5, compression: 1.15 },
  '2x6': { bending: 1.3, compression: 1.1 },
  '2x8': { bending: 1.2, compression: 1.05 },
  '2x10': { bending: 1.1, compression: 1 },
  '4x4': { bending: 1.5, compression: 1.15 },
  '4x6': { bending: 1.3, compression: 1.1 },
};

/** Size factor CF on Fb (a ratio). NDS 2018 4.3.6, Supplement Table 4A, from memory. */
export function bendingSizeFactor(size: LumberSize): number {
  return SIZE[size].bending;
}

/** Size factor CF on Fc (a ratio). NDS 2018 4.3.6, Supplement Table 4A, from memory. */
export function compressionSizeFactor(size: LumberSize): number {
  return SIZE[size].compression;
}

/** Flat use factors Cfu. NDS 2018 Supplement Table 4A, from memory. */
const FLAT: { readonly [K in LumberSize]: number } = {
  '2x4': 1.1,
  '2x6': 1.15,
  '2x8': 1.15,
  '2x10': 1.2,
  '4x4': 1,
  '4x6': 1.05,
};

/** Flat use factor Cfu on Fb (a ratio), 1 on edge. NDS 2018 4.3.7, Supplement Table 4A, from memory. */
export function flatUseFactor(size: LumberSize, use: LumberUse): number {
  return use === 'flat' ? FLAT[size] : 1;
}

/** How many like members share a load, and how far apart they lie. */
export interface Repetition {
  readonly members: number;
  readonly spacingIn: number;
}

const LEAST_REPEATED = 3;
const WIDEST_REPEATED_IN = 24;

/**
 * Repetitive member factor Cr on Fb (a ratio): 1.15 for three or more members no more than 24 in apart, joined by a panel that
 * spreads the load; else 1. Null for a member by itself. NDS 2018 4.3.9.
 */
export function repetitiveFactor(repetition: Repetition | null): number {
  if (repetition === null) return 1;
  const isShared = repetition.members >= LEAST_REPEATED && repetition.spacingIn <= WIDEST_REPEATED_IN;
  return isShared ? 1.15 : 1;
}

/** Fb CF at or below which wet wood loses nothing in bending, psi. NDS 2018 Supplement Table 4A, from memory. */
const WET_BENDING_LIMIT_PSI = 1150;

/** The same for Fc CF in compression along the grain, psi. NDS 2018 Supplement Table 4A, from memory. */
const WET_COMPRESSION_LIMIT_PSI = 750;

/**
 * Wet service factor CM on Fb (a ratio), over 19 % moisture: 0.85, but 1.0 where Fb CF is at most 1150 psi.
 * `bendingPsi` is the reference Fb. NDS 2018 4.3.3, Supplement Table 4A, from memory.
 */
export function wetBendingFactor(isWet: boolean, bendingPsi: number, size: LumberSize): number {
  if (!isWet || bendingPsi * bendingSizeFactor(size) <= WET_BENDING_LIMIT_PSI) return 1;
  return 0.85;
}

/** Wet service factor CM on Fv (a ratio). NDS 2018 4.3.3, Supplement Table 4A, from memory. */
export function wetShearFactor(isWet: boolean): number {
  return isWet ? 0.97 : 1;
}

/** Wet service factor CM on Fc-perp (a ratio). NDS 2018 4.3.3, Supplement Table 4A, from memory. */
export function wetBearingFactor(isWet: boolean): number {
  return isWet ? 0.67 : 1;
}

/**
 * Wet service factor CM on Fc (a ratio): 0.8, but 1.0 where Fc CF is at most 750 psi. `compressionPsi` is the reference Fc.
 * NDS 2018 4.3.3, Supplement Table 4A, from memory.
 */
export function wetCompressionFactor(isWet: boolean, compressionPsi: number, size: LumberSize): number {
  if (!isWet || compressionPsi * compressionSizeFactor(size) <= WET_COMPRESSION_LIMIT_PSI) return 1;
  return 0.8;
}

/** Wet service factor CM on E and Emin (a ratio). NDS 2018 4.3.3, Supplement Table 4A, from memory. */
export function wetModulusFactor(isWet: boolean): number {
  return isWet ? 0.9 : 1;
}
