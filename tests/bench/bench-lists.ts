/** Times of the lists and of the build book, printed. */
import { gatherBook, jobBook } from '../../src-core/book';
import { cutSticks } from '../../src-core/cutting';
import type { Job } from '../../src-core/job';
import { layOutBook } from '../../src-core/sheet';
import { bookHtml } from '../../src-core/sheet-html';
import { jobTakeoff } from '../../src-core/takeoff';
import { exampleJob, repeated, SMALL_JOBS } from '../core/book/books';
import { seededRandom } from '../support/seeded-random';

const STICK_LISTS = 6;
const PIECES_A_LIST = 200;
const PIECES_OF_A_LARGE_JOB = 30;
const SPREAD_STEP_PSF = 0.25;

/** 200 pieces cut from 8 ft sticks, the take-off of the galley, and books of 30 pieces out of small jobs. */
export function benchLists(galley: Job): void {
  for (let seed = 1; seed <= STICK_LISTS; seed++) {
    const random = seededRandom(seed);
    const pieces = Array.from({ length: PIECES_A_LIST }, (_, i) => ({
      id: `${i}`,
      lengthIn: Math.round((6 + 60 * random()) * 16) / 16,
    }));
    const stocks = [{ id: 'stick', lengthIn: 96, price: null }];
    const { ms, made } = timed(() => cutSticks({ pieces, stocks, kerfIn: 0.125 }));
    say(`${PIECES_A_LIST} pieces from sticks`, ms, `${made.sticks.length} sticks: ${made.proof.words}`);
  }
  say('take-off of the galley', timed(() => jobTakeoff(galley, null)).ms, 'without falsework');

  for (const [large, words] of [
    [largeJob(0), 'of four drawings'],
    [largeJob(SPREAD_STEP_PSF), 'each loaded differently'],
  ] as const) {
    const facts = timed(() => gatherBook(large));
    const laidOut = timed(() => layOutBook(jobBook(large, facts.made, 'letter'), 'letter'));
    const html = timed(() => bookHtml(laidOut.made, { title: large.name, language: 'en' }));
    say(
      `book of ${PIECES_OF_A_LARGE_JOB} pieces`,
      facts.ms + laidOut.ms + html.ms,
      `${words}, ${laidOut.made.pages.length} pages; checked ${facts.ms.toFixed(0)}, laid out ${laidOut.ms.toFixed(0)}, written ${html.ms.toFixed(0)} ms`,
    );
  }
}

/** The pieces of the small jobs over and over, each loaded by `stepPsf` more than the one before. */
function largeJob(stepPsf: number): Job {
  const drawn = SMALL_JOBS.flatMap((name) => exampleJob(name).pieces);
  const pieces = repeated(drawn, PIECES_OF_A_LARGE_JOB).map((piece, k) => ({
    ...piece,
    loads: { ...piece.loads, spreadPsf: piece.loads.spreadPsf + k * stepPsf },
  }));
  return { ...exampleJob('bar-ledge'), pieces };
}

function timed<T>(make: () => T): { readonly ms: number; readonly made: T } {
  const started = performance.now();
  const made = make();
  return { ms: performance.now() - started, made };
}

function say(title: string, ms: number, words: string): void {
  console.log(`  ${title.padEnd(34)} ${ms.toFixed(0)} ms, ${words}`);
}
