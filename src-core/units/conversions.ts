/**
 * Conversion factors between the builder's units and the SI. The five definitions are exact; the rest is
 * their arithmetic, so no factor carries rounding of its own.
 * Source: NIST SP 811 (2008), Appendix B; international yard and pound, 1959.
 */

/** Millimetres in an inch. Exact. Source: NIST SP 811 B.8, inch. */
export const MM_PER_IN = 25.4;
/** Kilograms in a pound (avoirdupois). Exact. Source: NIST SP 811 B.8, pound. */
export const KG_PER_LB = 0.45359237;
/** Standard fall of free bodies, m/s2. Exact. Source: NIST SP 811 B.8, acceleration of free fall, standard. */
export const STANDARD_GRAVITY_M_PER_S2 = 9.80665;
/** Degrees Fahrenheit at the freezing point, 0 degrees Celsius. Exact. Source: NIST SP 811 B.8, degree Fahrenheit. */
export const FREEZING_F = 32;
/** Degrees Fahrenheit in one degree Celsius of difference. Exact. Source: NIST SP 811 B.8, degree Fahrenheit. */
export const F_PER_C = 1.8;

export const IN_PER_FT = 12;
export const IN_PER_YD = 36;
export const IN2_PER_FT2 = IN_PER_FT ** 2;
export const IN3_PER_FT3 = IN_PER_FT ** 3;
export const IN3_PER_YD3 = IN_PER_YD ** 3;
/** Cubic inches in a US liquid gallon. Exact. Source: NIST SP 811 B.8, gallon (US). */
export const IN3_PER_GAL = 231;
export const OZ_PER_LB = 16;
export const LBF_PER_KIP = 1000;

/** Newtons in a pound-force: 4.448 221 615 260 5. */
export const N_PER_LBF = KG_PER_LB * STANDARD_GRAVITY_M_PER_S2;
/** Megapascals (N/mm2) in a psi: 0.006 894 757. */
export const MPA_PER_PSI = N_PER_LBF / MM_PER_IN ** 2;
/** Kilopascals in a psf: 0.047 880 26. */
export const KPA_PER_PSF = (MPA_PER_PSI * 1000) / IN2_PER_FT2;
/** Kilograms a cubic metre in a pound a cubic foot: 16.018 46. */
export const KG_PER_M3_PER_PCF = KG_PER_LB / ((MM_PER_IN / 1000) ** 3 * IN3_PER_FT3);
/** Newtons a millimetre in a pound-force an inch: 0.175 126 8. */
export const N_PER_MM_PER_LBF_PER_IN = N_PER_LBF / MM_PER_IN;
/** Newtons a cubic millimetre in a pound-force a cubic inch (bed stiffness). */
export const N_PER_MM3_PER_LBF_PER_IN3 = N_PER_LBF / MM_PER_IN ** 3;
/** Newton-metres in a pound-force inch: 0.112 984 8. */
export const N_M_PER_LBF_IN = (N_PER_LBF * MM_PER_IN) / 1000;
/** Litres in a cubic inch: 0.016 387 064. */
export const L_PER_IN3 = MM_PER_IN ** 3 / 1_000_000;
/** Metres a second in a mile an hour: 0.447 04. Exact. Source: NIST SP 811 B.8, mile per hour. */
export const M_PER_S_PER_MPH = (5280 * IN_PER_FT * MM_PER_IN) / 1000 / 3600;
