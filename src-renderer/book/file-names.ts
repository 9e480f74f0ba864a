/** What files that leave the window are called. */
import type { Job } from '../../src-core/job';
import { fileNameFor } from '../state/file-actions';

/** "boathouse-galley-build-book.pdf": the job's own name first, then what it is. */
export function leavingName(job: Job, what: string, ending: string): string {
  return `${fileNameFor(job).replace(/\.json$/, '')}-${what}.${ending}`;
}

/** Title of the book as a document. */
export function bookTitle({ name }: Pick<Job, 'name'>): string {
  return `${name}: build book`;
}
