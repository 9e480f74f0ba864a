/** What every chapter is written from. */

import type { Paper } from '../figure';
import type { Job } from '../job';
import type { BookFacts } from './facts';
import type { Print } from './print';

export interface BookContext {
  readonly job: Job;
  readonly facts: BookFacts;
  readonly paper: Paper;
  readonly print: Print;
}
