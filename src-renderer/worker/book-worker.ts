/** The worker that makes the book and the lists: the same functions that the command line calls, off the main thread. */
import type { BookFacts } from '../../src-core/book';
import { gatherBook, jobBook } from '../../src-core/book';
import type { LaidOutBook } from '../../src-core/sheet';
import { layOutBook } from '../../src-core/sheet';
import { bookBody, bookHtml } from '../../src-core/sheet-html';
import { listFiles } from '../book/list-files';
import type { FromBookWorker, ToBookWorker } from './book-messages';

let facts: BookFacts | null = null;
let made: LaidOutBook | null = null;

self.onmessage = ({ data }: MessageEvent<ToBookWorker>) => {
  try {
    answer(data);
  } catch (fault) {
    const sentence = fault instanceof Error ? fault.message : String(fault);
    tell({ kind: 'fault', run: data.run, sentence });
  }
};

function tell(message: FromBookWorker): void {
  self.postMessage(message);
}

function answer(asked: ToBookWorker): void {
  const { kind, run } = asked;
  switch (kind) {
    case 'pages': {
      const { job, paper } = asked;
      facts ??= gatherBook(job, { onProgress: (progress) => tell({ kind: 'progress', run, ...progress }) });
      made = layOutBook(jobBook(job, facts, paper), paper);
      const { pages, contents, problems } = made;
      tell({
        kind: 'pages',
        run,
        pages: {
          paper,
          body: bookBody(made),
          count: pages.length,
          contents,
          problems: problems.map(({ sentence }) => sentence),
        },
      });
      return;
    }
    case 'document': {
      if (made === null) throw new Error('a document was asked for before its pages');
      const { title, fontCss } = asked;
      tell({ kind: 'document', run, html: bookHtml(made, { title, language: 'en', fontCss }) });
      return;
    }
    case 'lists':
      tell({ kind: 'lists', run, files: listFiles(asked.job) });
  }
}
