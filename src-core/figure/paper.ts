/** Sheets that the build book and templates are printed on. */
import { MM_PER_IN } from '../units';

export type Paper = 'letter' | 'a4';

export interface PaperSize {
  readonly widthIn: number;
  readonly heightIn: number;
}

/** Upright sheets. Source: ANSI/ASME Y14.1 size A (8.5 x 11 in); ISO 216 A4 (210 x 297 mm). */
export const PAPER_SIZES: { readonly [K in Paper]: PaperSize } = {
  letter: { widthIn: 8.5, heightIn: 11 },
  a4: { widthIn: 210 / MM_PER_IN, heightIn: 297 / MM_PER_IN },
};
