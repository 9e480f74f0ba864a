import { describe, expect, test } from 'vitest';
import { gatherBook, jobBook } from '../../../src-core/book';
import type { Job } from '../../../src-core/job';
import { crossCheck, jobSchema } from '../../../src-core/job';
import { layOutBook } from '../../../src-core/sheet';
import { bookHtml } from '../../../src-core/sheet-html';
import { checkJob } from '../../../src-core/verdict';
import { jobOf, rectangle } from '../../support/pieces';
import { exampleFacts, exampleJob, repeated, rowsOf, SMALL_JOBS, wordsOf } from './books';

const GATHER_MS = 300_000;

/** Thirty pieces of four drawings: a failing ledge, a cap, a hearth, a counter. */
function thirtyPieces(): Job {
  const pieces = SMALL_JOBS.flatMap((name) => exampleJob(name).pieces);
  const job = { ...exampleJob('bar-ledge'), pieces: repeated(pieces, 30) };
  expect(crossCheck(job)).toEqual([]);
  return job;
}

describe('a job of thirty pieces', () => {
  test('has a book of four chapters of pieces, without a problem on either paper', {
    timeout: GATHER_MS,
  }, () => {
    const job = thirtyPieces();
    const facts = gatherBook(job);
    for (const paper of ['letter', 'a4'] as const) {
      const book = jobBook(job, facts, paper);
      const laidOut = layOutBook(book, paper);
      expect(laidOut.problems).toEqual([]);
      expect(bookHtml(laidOut, { title: job.name, language: 'en' })).toContain('Bar ledge 8');
      expect(book.chapters.filter(({ id }) => /^piece-\d+$/.test(id))).toHaveLength(4);
    }
    // 30 pieces of 4 drawings: 8 + 8 + 7 + 7.
    expect(facts.pieces.map(({ alike }) => alike.length)).toEqual([8, 8, 7, 7]);
    const words = wordsOf(jobBook(job, facts, 'letter'));
    for (const { name } of job.pieces) expect(words).toContain(name);
  });

  test('tells how far its gathering is, from none to all', { timeout: GATHER_MS }, () => {
    const seen: [number, number][] = [];
    gatherBook(exampleJob('gate-pier-cap'), { onProgress: ({ done, total }) => seen.push([done, total]) });
    const total = seen[0]![1];
    expect(seen.map(([done]) => done)).toEqual(Array.from({ length: total + 1 }, (_, k) => k));
    expect(seen.every(([, all]) => all === total)).toBe(true);
  });
});

describe('pieces of one drawing', () => {
  const cap = exampleJob('gate-pier-cap').pieces[0]!;
  const jobWith = (more: Partial<typeof cap>): Job => {
    const [one, other] = repeated([cap], 2) as [typeof cap, typeof cap];
    return { ...exampleJob('gate-pier-cap'), pieces: [one, { ...other, ...more }] };
  };
  const moved = <Point extends { readonly xIn: number; readonly yIn: number }>(point: Point) => ({
    ...point,
    xIn: point.xIn + 100.3,
    yIn: point.yIn - 40.7,
  });

  test('share a chapter where one is drawn elsewhere in the plan', { timeout: GATHER_MS }, () => {
    const supports = repeated([cap], 2)[1]!.supports.map((support) =>
      support.kind === 'pier'
        ? { ...support, footprint: { ...support.footprint, centre: moved(support.footprint.centre) } }
        : support,
    );
    const job = jobWith({ corners: cap.corners.map(moved), supports });
    expect(gatherBook(job).pieces.map(({ alike }) => alike.length)).toEqual([2]);
  });

  test('do not where a thickness, a pour day or a colour differs', { timeout: GATHER_MS }, () => {
    const colour = { pigment: 'Oxide red', pigmentRatio: 0.03 };
    for (const more of [{ thicknessIn: 2 }, { pourDay: 3 }, { colour }]) {
      expect(gatherBook(jobWith(more)).pieces.map(({ alike }) => alike.length)).toEqual([1, 1]);
    }
  });

  test('have the verdicts that the load check gives each of them', { timeout: GATHER_MS }, () => {
    const [ledge] = exampleJob('bar-ledge').pieces;
    const job = { ...exampleJob('bar-ledge'), pieces: repeated([ledge!, cap], 4) };
    const facts = gatherBook(job);
    const checked = checkJob(job, { changes: 'first' });
    expect(facts.verdict).toEqual(checked.verdict);
    expect(facts.site).toEqual(checked.site);
    const verdicts = facts.pieces.flatMap(({ alike, result }) => alike.map(({ id }) => [id, result.verdict]));
    expect(Object.fromEntries(verdicts)).toEqual(
      Object.fromEntries(checked.pieces.map(({ id, verdict }) => [id, verdict])),
    );
  });
});

describe('a piece that fails', () => {
  test('is told what makes it pass, and that nothing of it is drawn yet', { timeout: GATHER_MS }, () => {
    const facts = exampleFacts('bar-ledge');
    const [change] = facts.pieces[0]!.result.changes;
    const words = wordsOf(jobBook(exampleJob('bar-ledge'), facts, 'letter'));
    expect(facts.verdict.level).toBe('change');
    expect(words).toContain('Needs a corbel');
    expect(words).toContain(change!.title);
    expect(words).toContain('Apply the change to the job, check it again and print a new book');
  });

  test('says so where nothing that was tried helps', { timeout: GATHER_MS }, () => {
    // Arms that reach 20 in into hollow block: both are for an engineer (Decision 9 of the basis).
    const galley = exampleJob('boathouse-galley');
    const job = {
      ...galley,
      pieces: galley.pieces.filter(({ id }) => id === 'stove-hearth'),
      falsework: { ...galley.falsework, sections: [] },
      swap: { ...galley.swap, steps: [] },
    };
    const facts = gatherBook(job);
    const words = wordsOf(jobBook(job, facts, 'letter'));
    expect(facts.pieces[0]!.result.changes).toEqual([]);
    expect(words).toContain('Nothing that was tried makes the whole piece pass. Ask an engineer');
  });
});

describe('a job without something', () => {
  test('makes a book of volumes where the bag is not known', { timeout: GATHER_MS }, () => {
    const hearth = exampleJob('hearth');
    const job = { ...hearth, mixes: hearth.mixes.map((mix) => ({ ...mix, bag: null })) };
    const facts = gatherBook(job);
    const book = jobBook(job, facts, 'letter');
    expect(layOutBook(book, 'letter').problems).toEqual([]);
    expect(wordsOf(book)).toContain(
      'Not known: what the bag says is not in the job, so there are no batches. Order by the volume.',
    );
    expect(rowsOf(book, 'pour-1-batches')).toEqual([]);
  });

  test('makes a book of a slab that bears on nothing', { timeout: GATHER_MS }, () => {
    const job = jobOf({ corners: rectangle(40, 20), thicknessIn: 2 });
    const book = jobBook(job, gatherBook(job), 'a4');
    expect(layOutBook(book, 'a4').problems).toEqual([]);
    expect(wordsOf(book)).toContain('Nothing is drawn under it.');
  });

  test('makes a book of a slab whose outline crosses itself, and says what is wrong', {
    timeout: GATHER_MS,
  }, () => {
    const corners = [
      { xIn: 0, yIn: 0 },
      { xIn: 40, yIn: 20 },
      { xIn: 40, yIn: 0 },
      { xIn: 0, yIn: 20 },
    ];
    const job = jobOf({ corners, thicknessIn: 2 });
    const book = jobBook(job, gatherBook(job), 'letter');
    expect(layOutBook(book, 'letter').problems).toEqual([]);
    expect(wordsOf(book)).toContain('Its outline cannot be built as drawn');
  });

  test('says that a strength is assumed where none is stated', { timeout: GATHER_MS }, () => {
    const hearth = exampleJob('hearth');
    const job = jobSchema.parse({
      ...hearth,
      mixes: hearth.mixes.map((mix) => ({ ...mix, strengthPsi: null, strengthFrom: 'assumed' })),
    });
    // Decision 7 of the basis: 3000 psi unless a tested or bag value is given.
    expect(wordsOf(jobBook(job, gatherBook(job), 'letter'))).toContain('so 3000 psi is assumed');
  });
});

describe('a pour of many batches', () => {
  test('goes on over more than one sheet rather than leave a batch out', { timeout: GATHER_MS }, () => {
    const hearth = exampleJob('hearth');
    const mixes = hearth.mixes.map((mix) => ({ ...mix, bag: { ...mix.bag!, yieldFt3: 0.02 } }));
    const job = { ...hearth, mixes, crew: { ...hearth.crew, mixerBags: 1 } };
    const facts = gatherBook(job);
    const book = jobBook(job, facts, 'letter');
    const sheet = book.chapters.find(({ id }) => id === 'pour-1')!;
    expect(sheet.onOnePage).toBe(false);
    expect(rowsOf(book, 'pour-1-batches')).toHaveLength(facts.pours.pours[0]!.batches.length);
    expect(facts.pours.pours[0]!.batches.length).toBeGreaterThan(40);
    expect(layOutBook(book, 'letter').problems).toEqual([]);
  });
});
