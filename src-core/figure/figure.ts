/**
 * A drawing on paper as plain data: what the build book prints, what leaves as SVG or DXF. Paper inches from the top left of the
 * drawing, y down; what is drawn to a scale says so.
 */

export interface PaperPoint {
  readonly x: number;
  readonly y: number;
}

/**
 * Line kinds, told apart in black and white by weight and dashes (ISO 128-2, ASME Y14.2): what is cut or seen, what lies behind,
 * axes, dimensions, quiet grids.
 */
export type Pen = 'cut' | 'visible' | 'thin' | 'hidden' | 'centre' | 'dimension' | 'grid';

/** What a closed shape is filled with; hatches and tones stay apart in black and white. */
export type Fill =
  | 'none'
  | 'paper'
  | 'concrete'
  | 'timber'
  | 'masonry'
  | 'steel'
  | 'board'
  | 'light'
  | 'dark'
  | 'ink';

export type Mark =
  | { readonly kind: 'line'; readonly from: PaperPoint; readonly to: PaperPoint; readonly pen: Pen }
  /** An open or closed run of straight pieces. */
  | {
      readonly kind: 'run';
      readonly points: readonly PaperPoint[];
      readonly isClosed: boolean;
      readonly pen: Pen;
    }
  /** Loops filled by the even-odd rule; no pen draws the fill alone. */
  | {
      readonly kind: 'area';
      readonly loops: readonly (readonly PaperPoint[])[];
      readonly fill: Fill;
      readonly pen: Pen | null;
    }
  | {
      readonly kind: 'circle';
      readonly centre: PaperPoint;
      readonly radius: number;
      readonly fill: Fill;
      readonly pen: Pen | null;
    }
  | {
      readonly kind: 'text';
      readonly words: string;
      /** Anchor on the baseline. */
      readonly at: PaperPoint;
      readonly sizePt: number;
      readonly anchor: 'start' | 'middle' | 'end';
      /** Clockwise on the paper. */
      readonly turnDeg: number;
      readonly isBold: boolean;
      /** Clears the paper behind the words. */
      readonly hasGround: boolean;
    };

export interface Figure {
  /** Kebab-case, alike for the same drawing of the same job only. */
  readonly id: string;
  readonly title: string;
  /** "1 : 16" or "3/4 in = 1 ft"; null for what is drawn to no scale. */
  readonly scaleWords: string | null;
  readonly widthIn: number;
  readonly heightIn: number;
  readonly marks: readonly Mark[];
  /** What the drawing shows, for a reader who cannot see it. */
  readonly words: string;
}
