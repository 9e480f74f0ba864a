/** A finding about the site stands beside the pieces and changes none of their verdicts. */
import type { Level, Quantity } from '../checks';
import type { Line } from '../workings';

export interface SiteFinding {
  /** Stable, kebab-case. */
  readonly id: string;
  readonly title: string;
  readonly level: Level;
  /** One sentence in a builder's words. */
  readonly words: string;
  readonly demand: Quantity | null;
  readonly capacity: Quantity | null;
  readonly workings: readonly Line[];
  /** Standard and clause, or "common practice, no source", or "local code". */
  readonly source: string;
  readonly cautions: readonly string[];
}
