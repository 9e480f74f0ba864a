/** What was looked at about an opening's form, with its numbers. */
import type { Trace } from '../trace';
import type { Line } from '../workings';

export type OpeningCheck =
  /** The rim is wide enough for bearing and clearance together. */
  | 'sink-bearing'
  /** A bowl of some size is left within the opening. */
  | 'bowl-size'
  | 'rim-to-edge'
  | 'rim-to-opening'
  /** The form stays down against its uplift. */
  | 'held-down';

export interface OpeningFinding {
  readonly id: string;
  readonly check: OpeningCheck;
  readonly trace: Trace;
  readonly level: 'ok' | 'attention';
  readonly words: string;
  /** What there is and the least that is wanted, or the pull and what takes it; unit of both. */
  readonly value: number;
  readonly limit: number;
  readonly unit: 'in' | 'lbf';
  readonly lines: readonly Line[];
  readonly source: string;
}

export const PRACTICE_SOURCE = 'common practice, no source';
