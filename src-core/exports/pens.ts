/** Pens of every drawing that leaves the tool: widths and dashes in millimetres on paper, black alone. */
import type { Pen } from '../figure';
import { xmlNumber } from './xml-text';

export interface PenLook {
  readonly widthMm: number;
  /** Dash, gap, dash, gap ... in mm; null for a full line. */
  readonly dashesMm: readonly number[] | null;
}

/**
 * Line group 0.35: narrow 0.18, wide 0.35 and extra-wide 0.7 mm; the grid takes the thinnest width of the series, 0.13 mm.
 * Source: ISO 128-20 (widths in steps of the square root of two) and ISO 128-23 (three widths for building drawings), from memory.
 */
const NARROW_MM = 0.18;
const WIDE_MM = 0.35;
const EXTRA_WIDE_MM = 0.7;
const FINEST_MM = 0.13;

/** Lengths in line widths: dash, long dash, gap, dot. Source: ISO 128-20, table of line elements, from memory. */
const DASH = 12;
const LONG_DASH = 24;
const GAP = 3;
const DOT = 0.5;

const of = (widthMm: number, ...parts: readonly number[]): PenLook => ({
  widthMm,
  dashesMm: parts.length === 0 ? null : parts.map((part) => part * widthMm),
});

/** Full lines for what is cut, seen or measured; dashes behind; long dashes and dots for axes; dots for grids. */
export const PENS: { readonly [K in Pen]: PenLook } = {
  cut: of(EXTRA_WIDE_MM),
  visible: of(WIDE_MM),
  thin: of(NARROW_MM),
  hidden: of(NARROW_MM, DASH, GAP),
  centre: of(NARROW_MM, LONG_DASH, GAP, DOT, GAP),
  dimension: of(NARROW_MM),
  grid: of(FINEST_MM, DOT, GAP),
};

/** A pen as presentation attributes of SVG, in a drawing whose unit is `mmPerUnit` millimetres of paper. */
export function strokeAttributes(pen: Pen, mmPerUnit: number): string {
  const { widthMm, dashesMm } = PENS[pen];
  const length = (mm: number) => xmlNumber(mm / mmPerUnit);
  const dashes = dashesMm === null ? '' : ` stroke-dasharray="${dashesMm.map(length).join(' ')}"`;
  return `stroke="#000" stroke-width="${length(widthMm)}"${dashes}`;
}
