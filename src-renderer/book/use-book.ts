/** The pages of the open job's book, made beside the window. */
import { useEffect, useState } from 'react';
import type { Paper } from '../../src-core/figure';
import type { Job } from '../../src-core/job';
import type { BookPages } from '../worker/book-messages';
import type { BookMaker, BookProgress } from './book-maker';
import { openBookMaker } from './book-maker';

export interface MakingBook {
  /** null until the first pages are there; those of another paper stay until the new ones are. */
  readonly pages: BookPages | null;
  readonly progress: BookProgress | null;
  readonly fault: string | null;
  /** The pages as a document of their own. */
  readonly document: (title: string, fontCss: string) => Promise<string>;
}

/** Makes the book of a job on a paper; leaving ends the worker, however far it has come. */
export function useBook(job: Job, paper: Paper): MakingBook {
  const [maker, setMaker] = useState<BookMaker | null>(null);
  const [pages, setPages] = useState<BookPages | null>(null);
  const [progress, setProgress] = useState<BookProgress | null>(null);
  const [fault, setFault] = useState<string | null>(null);

  useEffect(() => {
    const opened = openBookMaker(job, setProgress);
    setMaker(opened);
    return () => {
      opened.close();
      setMaker(null);
      setPages(null);
      setProgress(null);
      setFault(null);
    };
  }, [job]);

  useEffect(() => {
    let isWanted = true;
    maker?.pages(paper).then(
      (made) => isWanted && setPages(made),
      (error: unknown) => isWanted && setFault(error instanceof Error ? error.message : String(error)),
    );
    return () => {
      isWanted = false;
    };
  }, [maker, paper]);

  return {
    pages,
    progress,
    fault,
    document: (title, fontCss) =>
      maker?.document(title, fontCss) ?? Promise.reject(new Error('the book was closed')),
  };
}
