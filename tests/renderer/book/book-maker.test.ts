import { describe, expect, test } from 'vitest';
import { starterJob } from '../../../src-core/starters';
import type { BookProgress } from '../../../src-renderer/book/book-maker';
import { openBookMaker } from '../../../src-renderer/book/book-maker';
import type { BookPages, FromBookWorker, ToBookWorker } from '../../../src-renderer/worker/book-messages';

const job = starterJob('bar-ledge');
const pagesOn = (paper: BookPages['paper']): BookPages => ({
  paper,
  body: `<div class="book ${paper}"></div>`,
  count: 3,
  contents: [],
  problems: [],
});

/** A maker over a worker that answers when the test says so. */
function maker() {
  const asked: ToBookWorker[] = [];
  const told: BookProgress[] = [];
  let say: (said: FromBookWorker) => void = () => undefined;
  let isClosed = false;
  const made = openBookMaker(
    job,
    (progress) => told.push(progress),
    (listen) => {
      say = listen;
      return {
        send: (question) => asked.push(question),
        close: () => {
          isClosed = true;
        },
      };
    },
  );
  return { made, asked, told, say: (said: FromBookWorker) => say(said), isClosed: () => isClosed };
}

describe('the maker of the book', () => {
  test('gives each question its own answer, in whatever order they come', async () => {
    const { made, asked, say } = maker();
    const letter = made.pages('letter');
    const a4 = made.pages('a4');
    expect(asked).toMatchObject([
      { kind: 'pages', paper: 'letter', job: { id: job.id } },
      { kind: 'pages', paper: 'a4' },
    ]);
    say({ kind: 'pages', run: asked[1]!.run, pages: pagesOn('a4') });
    say({ kind: 'pages', run: asked[0]!.run, pages: pagesOn('letter') });
    expect((await letter).paper).toBe('letter');
    expect((await a4).paper).toBe('a4');
  });

  test('tells how far it has come', async () => {
    const { made, asked, told, say } = maker();
    const pages = made.pages('letter');
    say({ kind: 'progress', run: asked[0]!.run, done: 1, total: 8, words: 'Bar ledge' });
    say({ kind: 'pages', run: asked[0]!.run, pages: pagesOn('letter') });
    await pages;
    expect(told).toEqual([{ done: 1, total: 8, words: 'Bar ledge' }]);
  });

  test('rejects the question that a fault came up in, and answers the next', async () => {
    const { made, asked, say } = maker();
    const failing = made.pages('letter');
    say({ kind: 'fault', run: asked[0]!.run, sentence: 'a leg of -3 in' });
    await expect(failing).rejects.toThrow('a leg of -3 in');
    const html = made.document('Book', '');
    say({ kind: 'document', run: asked[1]!.run, html: '<p>' });
    expect(await html).toBe('<p>');
  });

  test('asks for the lists once, however often one is wanted', async () => {
    const { made, asked, say, isClosed } = maker();
    const both = Promise.all([made.lists(), made.lists()]);
    expect(asked).toHaveLength(1);
    say({ kind: 'lists', run: asked[0]!.run, files: [{ id: 'legs', csv: 'id\r\n' }] });
    expect(await both).toEqual([[{ id: 'legs', csv: 'id\r\n' }], [{ id: 'legs', csv: 'id\r\n' }]]);
    made.close();
    expect(isClosed()).toBe(true);
  });
});
