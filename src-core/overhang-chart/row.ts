/** A row of the chart, as it is computed, streamed and kept. */
import { z } from 'zod';

/** One question: how far may a ledge of this thickness reach, with or without its steel and brackets? */
const chartCase = {
  thicknessIn: z.number().positive(),
  withSteel: z.boolean(),
  /** Bracket spacing; null without brackets. */
  spacingIn: z.number().positive().nullable(),
};

const governs = z.object({
  checkId: z.string(),
  /** The check's title. */
  title: z.string(),
  /** Its ratio at the overhang of the entry. */
  ratio: z.number().nonnegative(),
});

export const chartEntry = z.object({
  ...chartCase,
  /**
   * longest: found, and a longer one fails. capped: all that is decided here holds. none: even the shortest fails.
   * no-room: the steel does not fit the thickness. engineer: the brackets are not for this tool to judge.
   */
  kind: z.enum(['longest', 'capped', 'none', 'no-room', 'engineer']),
  /** Longest overhang that holds; null where there is none. */
  overhangIn: z.number().positive().nullable(),
  /** Shortest overhang that was seen to fail on the mesh of the answer; null where none was. */
  failsAtIn: z.number().positive().nullable(),
  /** The check that stops it; for a capped one the check that is nearest to its limit. */
  governs: governs.nullable(),
  /** Pull that each tie must be rated for at that overhang, lbf. */
  tieLbf: z.number().nonnegative().nullable(),
  /** A sentence for a reader. */
  words: z.string(),
});

export const chartRow = z.object({
  over: z.enum(['thickness', 'spacing']),
  thicknessIn: z.number().positive(),
  /** Bracket spacing of a row over spacing; null over thickness. */
  spacingIn: z.number().positive().nullable(),
  entries: z.array(chartEntry),
});

export type ChartEntry = z.infer<typeof chartEntry>;
export type ChartRow = z.infer<typeof chartRow>;
export type ChartCase = Pick<ChartEntry, 'thicknessIn' | 'withSteel' | 'spacingIn'>;
/** What a row is about, before it is computed. */
export type ChartRowRequest = Pick<ChartRow, 'over' | 'thicknessIn' | 'spacingIn'>;
