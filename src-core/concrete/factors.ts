/** Modulus of elasticity of nonprestressed bars and wires, psi. ACI 318-19 20.2.2.2. */
export const STEEL_MODULUS_PSI = 29_000_000;

/** Strength reduction for plain concrete in bending, shear and bearing (a ratio). ACI 318-19 Table 21.2.1. */
export const PHI_PLAIN_RATIO = 0.6;

/** Strength reduction for shear, one-way and two-way (a ratio). ACI 318-19 Table 21.2.1. */
export const PHI_SHEAR_RATIO = 0.75;

/** Strength reduction for bearing (a ratio). ACI 318-19 Table 21.2.1. */
export const PHI_BEARING_RATIO = 0.65;

/** Least specified strength for structural concrete, psi. ACI 318-19 Table 19.2.1.1. */
export const MINIMUM_STRENGTH_PSI = 2500;
