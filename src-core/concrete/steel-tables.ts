export interface Bar {
  readonly id: string;
  readonly diameterIn: number;
  readonly areaIn2: number;
  readonly weightLbPerFt: number;
  readonly yieldPsi: number;
}

/**
 * Deformed bars. Inch sizes: nominal values of ASTM A615 Table 1, grade 60. Millimetre sizes: area and weight from
 * the nominal diameter at 7850 kg/m3, yield 500 MPa of BS 4449 / EN 10080, from memory.
 */
export const BARS: readonly Bar[] = [
  { id: '#3', diameterIn: 0.375, areaIn2: 0.11, weightLbPerFt: 0.376, yieldPsi: 60_000 },
  { id: '#4', diameterIn: 0.5, areaIn2: 0.2, weightLbPerFt: 0.668, yieldPsi: 60_000 },
  { id: '#5', diameterIn: 0.625, areaIn2: 0.31, weightLbPerFt: 1.043, yieldPsi: 60_000 },
  { id: '#6', diameterIn: 0.75, areaIn2: 0.44, weightLbPerFt: 1.502, yieldPsi: 60_000 },
  { id: '6 mm', diameterIn: 0.2362, areaIn2: 0.04383, weightLbPerFt: 0.1491, yieldPsi: 72_500 },
  { id: '8 mm', diameterIn: 0.315, areaIn2: 0.07791, weightLbPerFt: 0.2651, yieldPsi: 72_500 },
  { id: '10 mm', diameterIn: 0.3937, areaIn2: 0.12174, weightLbPerFt: 0.4143, yieldPsi: 72_500 },
  { id: '12 mm', diameterIn: 0.4724, areaIn2: 0.1753, weightLbPerFt: 0.5966, yieldPsi: 72_500 },
];

export interface Wire {
  readonly id: string;
  readonly diameterIn: number;
  readonly areaIn2: number;
  readonly yieldPsi: number;
  readonly isDeformed: boolean;
}

/**
 * Wires: W plain, D deformed, the number is the area in hundredths of a square inch (ASTM A1064). Yield 65 ksi for
 * plain and 70 ksi for deformed welded wire, ASTM A1064, from memory.
 */
export const WIRES: readonly Wire[] = [
  { id: 'W1.4', diameterIn: 0.1335, areaIn2: 0.014, yieldPsi: 65_000, isDeformed: false },
  { id: 'W2.0', diameterIn: 0.1596, areaIn2: 0.02, yieldPsi: 65_000, isDeformed: false },
  { id: 'W2.1', diameterIn: 0.1635, areaIn2: 0.021, yieldPsi: 65_000, isDeformed: false },
  { id: 'W2.9', diameterIn: 0.1922, areaIn2: 0.029, yieldPsi: 65_000, isDeformed: false },
  { id: 'W4', diameterIn: 0.2257, areaIn2: 0.04, yieldPsi: 65_000, isDeformed: false },
  { id: 'D4', diameterIn: 0.2257, areaIn2: 0.04, yieldPsi: 70_000, isDeformed: true },
];

export interface Mesh {
  readonly id: string;
  /** Spacing of the wires, the same both ways. */
  readonly spacingIn: number;
  readonly wireDiameterIn: number;
  /** Steel in each direction. */
  readonly areaIn2PerFt: number;
  readonly yieldPsi: number;
  readonly isDeformed: boolean;
  /** False for wire finer than W1.2, which the code does not know as reinforcement: crack control only. */
  readonly isCodeReinforcement: boolean;
}

/**
 * Yield taken for light mesh without a mill certificate, psi. Common practice, no source: soft drawn wire may have
 * little more, and the standard for structural welded wire does not cover it.
 */
export const LIGHT_MESH_YIELD_PSI = 40_000;

/**
 * Square welded meshes. Inch styles: areas by ASTM A1064 wire sizes. A98, A142, A193: 5, 6 and 7 mm at 200 mm,
 * BS 4483, yield 500 MPa, from memory. Light mesh: steel wire gauge 16 (.0625 in) and 14 (.080 in), area derived.
 */
export const MESHES: readonly Mesh[] = [
  welded('6x6-W1.4', 6, 0.1335, 0.028),
  welded('6x6-W2.1', 6, 0.1635, 0.042),
  welded('6x6-W2.9', 6, 0.1922, 0.058),
  welded('4x4-W1.4', 4, 0.1335, 0.042),
  welded('4x4-W2.1', 4, 0.1635, 0.063),
  welded('4x4-W2.9', 4, 0.1922, 0.087),
  { ...welded('4x4-D4', 4, 0.2257, 0.12), yieldPsi: 70_000, isDeformed: true },
  { ...welded('A98', 7.874, 0.1969, 0.04638), yieldPsi: 72_500, isDeformed: true },
  { ...welded('A142', 7.874, 0.2362, 0.06679), yieldPsi: 72_500, isDeformed: true },
  { ...welded('A193', 7.874, 0.2756, 0.09091), yieldPsi: 72_500, isDeformed: true },
  light('2x2-16ga', 2, 0.0625, 0.01841),
  light('2x2-14ga', 2, 0.08, 0.03016),
];

function welded(id: string, spacingIn: number, wireDiameterIn: number, areaIn2PerFt: number): Mesh {
  const grade = { yieldPsi: 65_000, isDeformed: false, isCodeReinforcement: true };
  return { id, spacingIn, wireDiameterIn, areaIn2PerFt, ...grade };
}

function light(id: string, spacingIn: number, wireDiameterIn: number, areaIn2PerFt: number): Mesh {
  const grade = { yieldPsi: LIGHT_MESH_YIELD_PSI, isDeformed: false, isCodeReinforcement: false };
  return { id, spacingIn, wireDiameterIn, areaIn2PerFt, ...grade };
}
