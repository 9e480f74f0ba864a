/** What the window and the worker that makes the book say to each other. One worker is for one job as it stood when it was asked. */

import type { Paper } from '../../src-core/figure';
import type { Job } from '../../src-core/job';
import type { ContentsEntry } from '../../src-core/sheet';
import type { ListFile } from '../book/list-files';

export type ToBookWorker =
  /** The pages on a paper. What the book tells is worked out once, at the first asking. */
  | { readonly kind: 'pages'; readonly run: number; readonly job: Job; readonly paper: Paper }
  /** The pages that were made last, as one document with this title and these font faces. */
  | {
      readonly kind: 'document';
      readonly run: number;
      readonly title: string;
      readonly fontCss: string;
    }
  /** Every list of the job as comma-separated text. */
  | { readonly kind: 'lists'; readonly run: number; readonly job: Job };

export interface BookPages {
  readonly paper: Paper;
  /** Markup of all pages, for the style sheet of the book. */
  readonly body: string;
  readonly count: number;
  readonly contents: readonly ContentsEntry[];
  /** What keeps the book from being right, a sentence each. */
  readonly problems: readonly string[];
}

export type BookAnswer =
  | { readonly kind: 'pages'; readonly run: number; readonly pages: BookPages }
  | { readonly kind: 'document'; readonly run: number; readonly html: string }
  | { readonly kind: 'lists'; readonly run: number; readonly files: readonly ListFile[] };

export type FromBookWorker =
  | BookAnswer
  | {
      readonly kind: 'progress';
      readonly run: number;
      readonly done: number;
      readonly total: number;
      readonly words: string;
    }
  /** A bug, with what is known of it. */
  | { readonly kind: 'fault'; readonly run: number; readonly sentence: string };
