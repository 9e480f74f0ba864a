/** What a chart is drawn for: the wall, the concrete, the load, the steel and the bracket. */
import type { Limits } from '../checks';
import { DEFAULT_LIMITS } from '../checks';
import type { RovingLoad, StiffnessBounds } from '../job';

/** The wall that carries the ledge along its back, with ties along its centre line. */
export interface ChartRoot {
  readonly build: 'stud' | 'block';
  readonly widthIn: number;
  readonly tieSpacingIn: number;
  /** Stiffness of the wall, lbf/in per inch of line; null takes the default of its build. */
  readonly stiffness: StiffnessBounds | null;
  /** Stiffness of one tie, lbf/in; null takes the default of a tie. */
  readonly tieStiffness: StiffnessBounds | null;
}

/** Steel both ways, close under the top, by the name under which it is sold. */
export type ChartSteel =
  | { readonly kind: 'mesh'; readonly id: string }
  /** Hooked at both ends. */
  | { readonly kind: 'bars'; readonly id: string; readonly spacingIn: number };

export interface ChartBracket {
  /** Id of a stock arm. */
  readonly armId: string;
  /** Load that its maker rates it for at the tip of the arm, lbf; null judges it by its own section and lags. */
  readonly ratedAtTipLbf: number | null;
}

/** Two charts of the same basis are the same, number for number. */
export interface ChartBasis {
  readonly root: ChartRoot;
  readonly lengthIn: number;
  /** Strength at 28 days; null takes the figure for untested concrete. */
  readonly strengthPsi: number | null;
  readonly densityPcf: number;
  readonly roving: RovingLoad;
  readonly spreadPsf: number;
  readonly steel: ChartSteel;
  readonly bracket: ChartBracket;
  readonly limits: Limits;
  /** Mesh of the search, and of the answer; a null answer mesh is the one that the load check takes. */
  readonly coarseMeshIn: number;
  readonly fineMeshIn: number | null;
}

/** An 8 ft ledge tied to a stud wall, someone sitting on it. Lengths and ties: common practice, no source. */
export const DEFAULT_CHART_BASIS: ChartBasis = {
  root: { build: 'stud', widthIn: 5.5, tieSpacingIn: 16, stiffness: null, tieStiffness: null },
  lengthIn: 96,
  strengthPsi: null,
  densityPcf: 145,
  roving: { setting: 'sitting' },
  spreadPsf: 50,
  steel: { kind: 'mesh', id: '4x4-W2.9' },
  bracket: { armId: 'tube-2x2x0.12', ratedAtTipLbf: null },
  limits: DEFAULT_LIMITS,
  coarseMeshIn: 3,
  fineMeshIn: null,
};

/** Thicknesses of the rows, in. */
export const CHART_THICKNESSES_IN: readonly number[] = [1, 1.5, 2, 2.5, 3, 4];

/** Spacings of the bracket columns over thickness, in. */
export const CHART_SPACINGS_IN: readonly number[] = [12, 16, 24, 32];

/** Spacings of the rows over bracket spacing, in. */
export const CHART_SPACING_ROWS_IN: readonly number[] = [12, 16, 24, 32, 48];
