import { describe, expect, test } from 'vitest';
import { bookJson, jobBook } from '../../../src-core/book';
import { NOTICE } from '../../../src-core/report';
import { layOutBook } from '../../../src-core/sheet';
import { exampleFacts, exampleJob, rowsOf, SMALL_JOBS, wordsOf } from './books';

const GATHER_MS = 300_000;
const JOBS = ['boathouse-galley', ...SMALL_JOBS] as const;

describe.each(JOBS)('the book of %s', (name) => {
  describe.each(['imperial', 'metric'] as const)('in %s units', (system) => {
    test('comes without a problem on letter and on A4', { timeout: GATHER_MS }, () => {
      const job = exampleJob(name, system);
      const facts = exampleFacts(name, system);
      for (const paper of ['letter', 'a4'] as const) {
        expect(layOutBook(jobBook(job, facts, paper), paper).problems).toEqual([]);
      }
    });

    test('says every verdict, change, leg, batch time, first day and source', { timeout: GATHER_MS }, () => {
      const job = exampleJob(name, system);
      const facts = exampleFacts(name, system);
      const words = wordsOf(jobBook(job, facts, 'letter'));
      const must = bookJson(job, facts);
      const texts = [
        must.job.words,
        ...must.verdicts.flatMap(({ piece, words: verdict, why }) => [piece, verdict, why]),
        ...must.changes.map(({ title }) => title),
        ...must.legs.flatMap(({ section, number, length, shim }) => [section, number, length, shim]),
        ...must.batches.flatMap(({ day, water, waterIn, ready, placed }) => [
          day,
          water,
          waterIn,
          ready,
          placed,
        ]),
        ...must.earliest.flatMap(({ day }) => day ?? []),
        ...must.sources,
      ].filter((text) => text !== null);
      expect(texts.filter((text) => !words.includes(text))).toEqual([]);
      expect(must.verdicts).toHaveLength(job.pieces.length);
      expect(words).toContain(NOTICE);
    });
  });
});

describe('the book of the galley', () => {
  const job = exampleJob('boathouse-galley');
  const facts = () => exampleFacts('boathouse-galley');

  test('lists every leg beside its own length, shim and section', { timeout: GATHER_MS }, () => {
    const { legs } = bookJson(job, facts());
    const own = legs.filter(({ piece }) => piece === 'Serving counter');
    const rows = rowsOf(jobBook(job, facts(), 'letter'), 'hold-1-legs');
    expect(own.length).toBeGreaterThan(4);
    expect(rows.map(([number, length, shim, , , , section]) => ({ number, length, shim, section }))).toEqual(
      own.map(({ number, length, shim, section }) => ({ number, length, shim, section })),
    );
  });

  test('has a chapter for each of its seven drawings, the caps in one', { timeout: GATHER_MS }, () => {
    const { chapters } = jobBook(job, facts(), 'letter');
    const titles = chapters.filter(({ id }) => id.startsWith('piece-')).map(({ title }) => title);
    expect(titles).toEqual([
      'Piece 1: Serving counter',
      'Piece 2: Bar ledge',
      'Piece 3: Foot ledge',
      'Piece 4: Fish-cleaning bench',
      'Piece 5: Bench seat',
      'Piece 6: Stove hearth',
      'Piece 7: Gate-pier cap',
    ]);
  });

  test('has each pour on one sheet of paper', { timeout: GATHER_MS }, () => {
    const { chapters } = jobBook(job, facts(), 'a4');
    const sheets = chapters.filter(({ id }) => /^pour-\d+$/.test(id));
    // Pours on days 0 to 3, one mix, one of them coloured.
    expect(sheets).toHaveLength(4);
    expect(sheets.every(({ onOnePage }) => onOnePage)).toBe(true);
  });

  test('shares the bags of a pour out to its batches, two to a mixer', { timeout: GATHER_MS }, () => {
    const rows = rowsOf(jobBook(job, facts(), 'letter'), 'pour-1-batches');
    // By hand: 121-1/2 by 25-1/2 in and 60 by 25-1/2 in less the sink of 26 by 14 in leave 4264 in2, at 2 in thick 4.94 ft3. With 2 %
    // overfill, 10 % waste and a tenth of a full batch of 1.2 ft3 kept back: 4.94 * 1.02 * 1.1 + 0.12 = 5.66 ft3, or 9.4 bags of
    // 0.6 ft3: 10 bags, five batches of two.
    expect(rows.map(([number, bags]) => [number, bags])).toEqual([
      ['1', '2'],
      ['2', '2'],
      ['3', '2'],
      ['4', '2'],
      ['5', '2'],
    ]);
    // Midway between 6 and 7.5 lb is 6.75 lb a bag; two bags, 13.5 lb at 8.345 lb/gal (NIST SP 811) are 1.62 gal.
    expect(rows.every(([, , water]) => water === '1.62 gal')).toBe(true);
  });

  test('tells each step of the swap with its day and its limits in 64ths', { timeout: GATHER_MS }, () => {
    const book = jobBook(job, facts(), 'letter');
    const [first] = rowsOf(book, 'strip-swap-1-steps');
    expect(first?.slice(0, 4)).toEqual([
      '1',
      'day 40, Sat 2027-06-05',
      'section Sink, front leg 2, front leg 3',
      'C2, sink',
    ]);
    const heights = rowsOf(book, 'strip-swap-1-heights');
    expect(heights.length).toBeGreaterThan(6);
    for (const [, , raised] of heights)
      expect(raised).toMatch(/^(\d+\/\d+ in|less than 1\/64 in|as far as it winds.*)$/);
  });

  test('has drawings of the plan, the edges, the overhang, the steel, the falsework and the cuts', {
    timeout: GATHER_MS,
  }, () => {
    const ids = jobBook(job, facts(), 'letter').chapters.flatMap(({ blocks }) =>
      blocks.flatMap((block) => (block.kind === 'figure' ? [block.id] : [])),
    );
    expect(ids).toEqual(
      expect.arrayContaining([
        'cover-view',
        'piece-1-plan-figure',
        'piece-1-edges-figure',
        'piece-1-overhang-figure',
        'piece-1-steel-plan',
        'hold-1-plan',
        'hold-up-lumber-2x4-1',
        'form-it-1-boards-1',
        'form-it-strips-1-1',
        'mesh-cuts-1-1',
        'bar-cuts-1-1',
        'pour-1-clock',
      ]),
    );
  });
});
