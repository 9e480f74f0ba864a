/** The build book of a job from what was gathered. */

import type { Paper } from '../figure';
import type { Job } from '../job';
import type { Book } from '../sheet';
import { assumedChapter } from './assumed';
import type { BookContext } from './context';
import { coverChapter } from './cover';
import { dayChapter } from './day-chapter';
import type { BookFacts } from './facts';
import { formItChapter } from './form-it';
import { holdUpChapter } from './hold-up';
import { pieceChapter } from './piece-chapter';
import { pourChapters } from './pour-day';
import { printOf } from './print';
import { shoppingChapter } from './shopping';
import { stripSwapChapter } from './strip-swap';
import { workingsChapter } from './workings-chapter';

/** The notice as one line, for the foot of every page; the whole of it stands on the first pages. */
const FOOT_NOTICE =
  'Planning arithmetic, not engineered drawings. Local code rules. If in doubt leave the props in.';

/** Chapters in the order in which the job is done. Pure: the same job and facts give the same book. */
export function jobBook(job: Job, facts: BookFacts, paper: Paper): Book {
  const context: BookContext = { job, facts, paper, print: printOf(job) };
  return {
    title: `Build book: ${job.name}`,
    jobName: job.name,
    notice: FOOT_NOTICE,
    chapters: [
      coverChapter(context),
      dayChapter(context),
      ...facts.pieces.map((found, k) => pieceChapter(context, found, k)),
      holdUpChapter(context),
      formItChapter(context),
      shoppingChapter(context),
      ...pourChapters(context),
      stripSwapChapter(context),
      workingsChapter(context),
      assumedChapter(context),
    ],
  };
}
