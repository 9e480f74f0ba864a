/** The build book before it has pages. */
import type { Block } from './block';

export interface Chapter {
  /** Kebab-case; no id, of whatever it is, comes twice in a book. */
  readonly id: string;
  readonly title: string;
  readonly blocks: readonly Block[];
  /** Begins a new page; else it follows on the page of the chapter before it. */
  readonly startsPage: boolean;
  /** Must fit on one page, set smaller if need be. */
  readonly onOnePage?: boolean;
}

export interface Book {
  /** Heading of the first page. */
  readonly title: string;
  readonly jobName: string;
  /** The notice in one line, at the foot of every page. */
  readonly notice: string;
  readonly chapters: readonly Chapter[];
}
