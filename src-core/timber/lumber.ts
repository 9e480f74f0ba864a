/** Sawn lumber as it is sold: name, true sizes, and the section it offers on edge or laid flat. */
import { formula, type Line } from '../workings';
import type { Symbols } from './symbols';

export interface LumberStock {
  /** True thickness, the smaller side. */
  readonly thicknessIn: number;
  /** True width, the larger side. */
  readonly widthIn: number;
  /** Nominal width over nominal thickness, a ratio: what the rules on lateral support go by. */
  readonly nominalRatio: number;
}

/** Dry dressed sizes of dimension lumber. NDS 2018 Supplement Table 1A (American Softwood Lumber Standard PS 20). */
export const LUMBER = {
  '2x4': { thicknessIn: 1.5, widthIn: 3.5, nominalRatio: 2 },
  '2x6': { thicknessIn: 1.5, widthIn: 5.5, nominalRatio: 3 },
  '2x8': { thicknessIn: 1.5, widthIn: 7.25, nominalRatio: 4 },
  '2x10': { thicknessIn: 1.5, widthIn: 9.25, nominalRatio: 5 },
  '4x4': { thicknessIn: 3.5, widthIn: 3.5, nominalRatio: 1 },
  '4x6': { thicknessIn: 3.5, widthIn: 5.5, nominalRatio: 1.5 },
} as const satisfies Readonly<Record<string, LumberStock>>;

/** A size that carries load: No. 2 values exist for it. */
export type LumberSize = keyof typeof LUMBER;

/**
 * Boards for braces and edges, with their true sizes. They have no bending or compression values in the tables of dimension
 * lumber, so none of the strengths of this room may be asked of them. NDS 2018 Supplement Table 1A.
 */
export const BOARDS = {
  '1x3': { thicknessIn: 0.75, widthIn: 2.5 },
  '1x4': { thicknessIn: 0.75, widthIn: 3.5 },
  '1x6': { thicknessIn: 0.75, widthIn: 5.5 },
} as const;

/** On edge: the wide side stands upright. Flat: the load lies on the wide side. */
export type LumberUse = 'edge' | 'flat';

export interface TimberSection {
  readonly size: LumberSize;
  readonly use: LumberUse;
  /** "2x4 on edge". */
  readonly words: string;
  /** Across the load. */
  readonly breadthIn: number;
  /** Along the load. */
  readonly depthIn: number;
  readonly areaIn2: number;
  readonly modulusIn3: number;
  readonly inertiaIn4: number;
  /** Area, section modulus, second moment of area. */
  readonly lines: readonly [Line, Line, Line];
}

const RECTANGLE = 'rectangle, any mechanics text';

/** Area of a rectangular section, in2. b: breadth, d: depth, in. Geometry. */
export const sectionArea = formula<Symbols<'b' | 'd'>>({
  symbol: 'A',
  label: 'area of the section',
  formula: 'b * d',
  units: { b: 'in', d: 'in' },
  unit: 'in2',
  source: RECTANGLE,
  compute: ({ b, d }) => b * d,
});

/** Section modulus of a rectangular section, in3. b: breadth, d: depth, in. Geometry. */
export const sectionModulus = formula<Symbols<'b' | 'd'>>({
  symbol: 'S',
  label: 'section modulus',
  formula: 'b * d^2 / 6',
  units: { b: 'in', d: 'in' },
  unit: 'in3',
  source: RECTANGLE,
  compute: ({ b, d }) => (b * d ** 2) / 6,
});

/** Second moment of area of a rectangular section, in4. b: breadth, d: depth, in. Geometry. */
export const sectionInertia = formula<Symbols<'b' | 'd'>>({
  symbol: 'I',
  label: 'second moment of area',
  formula: 'b * d^3 / 12',
  units: { b: 'in', d: 'in' },
  unit: 'in4',
  source: RECTANGLE,
  compute: ({ b, d }) => (b * d ** 3) / 12,
});

/** Section of one stick of lumber by its name and how it lies: breadth and depth in, area in2, modulus in3, inertia in4. */
export function lumberSection(size: LumberSize, use: LumberUse): TimberSection {
  const { thicknessIn, widthIn } = LUMBER[size];
  const [b, d] = use === 'edge' ? [thicknessIn, widthIn] : [widthIn, thicknessIn];
  const area = sectionArea({ b, d });
  const modulus = sectionModulus({ b, d });
  const inertia = sectionInertia({ b, d });
  return {
    size,
    use,
    words: thicknessIn === widthIn ? size : `${size} ${use === 'edge' ? 'on edge' : 'laid flat'}`,
    breadthIn: b,
    depthIn: d,
    areaIn2: area.value,
    modulusIn3: modulus.value,
    inertiaIn4: inertia.value,
    lines: [area.line, modulus.line, inertia.line],
  };
}

/** What keeps a joist from rolling over before it bends: nothing, its ends, or its ends and its top edge. */
export type LateralSupport = 'none' | 'ends' | 'ends-and-top-edge';

/**
 * Lateral support that a sawn member in bending needs before its full bending value may be used (CL = 1). By nominal depth
 * over breadth: to 2 none; to 4 the ends held in place (blocking, or the ledger); to 5 the top edge held in line too (the
 * panel screwed down). A flat or square member needs none. NDS 2018 4.4.1.2, from memory.
 */
export function lateralSupport(section: TimberSection): LateralSupport {
  const ratio = section.use === 'edge' ? LUMBER[section.size].nominalRatio : 1;
  if (ratio <= 2) return 'none';
  return ratio <= 4 ? 'ends' : 'ends-and-top-edge';
}
