/** One check, one shape. Data only: the runner, the views and the build book read it. */
import type { PieceAnalysis } from '../analysis';
import type { Job } from '../job';
import type { Point } from '../outline';
import type { Line } from '../workings';
import type { Limits } from './limits';

/** The four rungs, best first. */
export type Level = 'holds' | 'steel' | 'change' | 'engineer';

/** A number that leaves for display. Units: lbf, lb, in, in2, ft2, psi, psf, lbf-in, lbf-in/in, lbf/in, in2/ft, ''. */
export interface Quantity {
  readonly value: number;
  readonly unit: string;
}

export type Location =
  | { readonly kind: 'piece' }
  | { readonly kind: 'point'; readonly at: Point }
  | { readonly kind: 'support'; readonly supportId: string; readonly at: Point };

/** What kind of change would mend a failed check; the verdict's words and the remedies start from it. */
export type Need = 'tie' | 'corbel' | 'support' | 'steel' | 'thickness';

export interface Check {
  /** Stable, kebab-case, also the name of the file and of the manual page. */
  readonly id: string;
  /** A builder's words. */
  readonly title: string;
  readonly pieceId: string;
  readonly where: Location;
  readonly demand: Quantity;
  readonly capacity: Quantity;
  /** Demand over capacity; finite. 0 where the check only informs. */
  readonly ratio: number;
  readonly level: Level;
  /** One sentence in a builder's words: what governs, where, how much. */
  readonly words: string;
  /** Kinds of change that could mend it, likeliest first; empty where the check holds. */
  readonly needs: readonly Need[];
  readonly workings: readonly Line[];
  readonly cautions: readonly string[];
}

export interface CheckContext {
  readonly job: Job;
  readonly analysis: PieceAnalysis;
  readonly limits: Limits;
}

/** A rule gives one check or several (one a support, say), or none where it does not apply. */
export interface CheckRule {
  readonly id: string;
  readonly title: string;
  readonly run: (context: CheckContext) => readonly Check[];
}
