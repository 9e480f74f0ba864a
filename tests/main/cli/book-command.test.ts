import { readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { z } from 'zod';
import { browserPrinter } from '../../../src-main/print/print-with-browser';
import { readPdf } from '../../support/read-pdf';
import { withValue } from '../../support/small-job';
import type { CliOutcome } from './run-here';
import { PROJECT, runHere, withFolder } from './run-here';

const CAP = join(PROJECT, 'assets', 'jobs', 'gate-pier-cap.json');
const CAP_JOB: unknown = JSON.parse(readFileSync(CAP, 'utf8'));
/** Gathering a book takes seconds on a busy machine. */
const BOOK_MS = 120_000;

const words = z.string().min(1);
const report = z.object({
  tool: z.literal('ledgewright'),
  version: z.literal('1.2.3'),
  job: z.object({ name: words, level: z.literal('holds'), words }),
  verdicts: z.array(z.object({ piece: words, words, why: words })).min(1),
  batches: z.array(z.object({ waterIn: words, placed: words })).min(1),
  sources: z.array(words).min(5),
  notice: words,
});

/** What a reader of the page sees: words without tags, blanks and line ends as one blank. */
function wordsOf(html: string): string {
  const entities: Record<string, string> = { amp: '&', lt: '<', gt: '>', quot: '"', '#39': "'" };
  return html
    .replace(/<style>.*?<\/style>/s, ' ')
    .replace(/<\/?(span|strong|a)\b[^>]*>/g, '')
    .replace(/<[^>]*>/g, ' ')
    .replace(/&(#?\w+);/g, (whole, name: string) => entities[name] ?? whole)
    .replace(/\s+/g, ' ');
}

const pagesOf = (html: string) => html.match(/<section class="page"/g)?.length ?? 0;

describe('the book of a gate-pier cap', () => {
  let made: CliOutcome = { code: -1, out: '', err: '' };
  let html = '';
  beforeAll(async () => {
    await withFolder(async (folder) => {
      made = await runHere(['book', CAP, '--out', 'cap.html', '--json'], { folder });
      html = readFileSync(join(folder, 'cap.html'), 'utf8');
    });
  }, BOOK_MS);

  test('is written as HTML, and ends with code 0 because everything in it holds', () => {
    expect({ code: made.code, err: made.err }).toEqual({ code: 0, err: '' });
    expect(pagesOf(html)).toBeGreaterThan(5);
    expect(html).toContain('size: 8.5in 11in');
  });

  test('needs nothing besides itself: nine font files within, no script and no address', () => {
    expect(html.match(/url\(data:font\/woff2;base64,/g)).toHaveLength(9);
    expect(html).not.toMatch(/<(script|link|img|iframe)\b/);
    expect(html.replaceAll('http://www.w3.org/2000/svg', '')).not.toMatch(/https?:|url\((?!data:|#)/);
  });

  test('says every verdict, batch time and source that its JSON names', () => {
    const found = report.parse(JSON.parse(made.out));
    const said = wordsOf(html);
    for (const { piece, words: verdict, why } of found.verdicts) {
      for (const text of [piece, verdict, why]) expect(said).toContain(text);
    }
    for (const { waterIn, placed } of found.batches) {
      expect(said).toContain(waterIn);
      expect(said).toContain(placed);
    }
    for (const source of found.sources) expect(said).toContain(source);
    expect(said).toContain(found.job.name);
  });
});

describe('the command', () => {
  test(
    'prints as PDF on A4 where the job is in millimetres, page for page, and says how many',
    async () => {
      await withFolder(async (folder) => {
        writeFileSync(join(folder, 'job.json'), JSON.stringify(withValue(CAP_JOB, 'shownIn', 'metric')));
        const made = await runHere(['book', 'job.json', '--out', 'b.pdf'], {
          folder,
          printer: browserPrinter(),
        });
        expect({ code: made.code, err: made.err }).toEqual({ code: 0, err: '' });
        const { sizesPt, outline } = await readPdf(readFileSync(join(folder, 'b.pdf')));
        expect(made.out).toContain(`b.pdf: ${sizesPt.length} pages`);
        // ISO 216 A4 is 210 by 297 mm; browsers set the sheet in whole pixels, 0.75 pt.
        for (const [width, height] of sizesPt) {
          expect(Math.abs(width! - (210 / 25.4) * 72)).toBeLessThan(0.75);
          expect(Math.abs(height! - (297 / 25.4) * 72)).toBeLessThan(0.75);
        }
        expect(outline.length).toBeGreaterThan(0);
        expect(readdirSync(folder).sort()).toEqual(['b.pdf', 'job.json']);
      });
    },
    BOOK_MS,
  );

  test(
    'ends with code 1 where something in the book needs attention: nothing is drawn under the cap',
    async () => {
      await withFolder(async (folder) => {
        const floating = withValue(CAP_JOB, 'pieces[0].supports', []);
        writeFileSync(join(folder, 'job.json'), JSON.stringify(floating));
        const made = await runHere(['book', 'job.json', '--out', 'b.html', '--paper', 'a4'], { folder });
        expect(made.code).toBe(1);
        expect(readFileSync(join(folder, 'b.html'), 'utf8')).toContain('class="book a4"');
      });
    },
    BOOK_MS,
  );

  test.each([
    [[], /--out is missing/],
    [['--out', 'book.docx'], /must end in \.pdf or \.html/],
    [['--out', 'b.html', '--paper', 'a3'], /--paper a3: say letter or a4/],
    [
      ['--out', 'b.pdf'],
      /Nothing here can print\. A PDF cannot be made without; give --out a name that ends in \.html/,
    ],
  ])('refuses %j before it begins, and writes nothing', async (options, sentence) => {
    await withFolder(async (folder) => {
      const { code, out, err } = await runHere(['book', CAP, ...options], { folder });
      expect({ code, out }).toEqual({ code: 2, out: '' });
      expect(err).toMatch(sentence);
      expect(readdirSync(folder)).toEqual([]);
    });
  });

  test('never writes over the job itself', async () => {
    await withFolder(async (folder) => {
      const job = join(folder, 'job.html');
      writeFileSync(job, JSON.stringify(CAP_JOB));
      const before = statSync(job).size;
      const { code, err } = await runHere(['book', 'job.html', '--out', job], { folder });
      expect(code).toBe(2);
      expect(err).toMatch(/that is the job itself/);
      expect(statSync(job).size).toBe(before);
    });
  });

  test(
    'says so where the file cannot be written, or the print fails',
    async () => {
      await withFolder(async (folder) => {
        const failing = {
          trouble: async () => null,
          print: async () => ({ ok: false, why: 'failed', sentence: 'It ended with code 3.' }) as const,
        };
        const printed = await runHere(['book', CAP, '--out', 'b.pdf'], { folder, printer: failing });
        expect(printed).toMatchObject({ code: 2, out: '', err: 'b.pdf: It ended with code 3.\n' });
        const lost = await runHere(['book', CAP, '--out', 'none/b.html'], { folder });
        expect(lost).toMatchObject({ code: 2, out: '' });
        expect(lost.err).toMatch(/^none\/b\.html: The file cannot be written/);
        expect(readdirSync(folder)).toEqual([]);
      });
    },
    BOOK_MS,
  );
});

describe('a job of another version', () => {
  test.each(['check', 'book', 'export', 'falsework', 'swap'])(
    'that is newer is refused by %s with both versions, and the file is left as it was',
    async (command) => {
      await withFolder(async (folder) => {
        const newer = JSON.stringify(withValue(CAP_JOB, 'version', 2));
        writeFileSync(join(folder, 'job.json'), newer);
        const { code, out, err } = await runHere([command, 'job.json'], { folder });
        expect({ code, out }).toEqual({ code: 2, out: '' });
        expect(err).toBe(
          'job.json: version: This job was made by a newer Ledgewright (version 2; this one reads up to 1).\n',
        );
        expect(readFileSync(join(folder, 'job.json'), 'utf8')).toBe(newer);
        expect(readdirSync(folder)).toEqual(['job.json']);
      });
    },
  );

  test('that is older is read, said to be, and left as it was', async () => {
    const [piece] = (CAP_JOB as { pieces: { thicknessIn: number }[] }).pieces;
    const { thicknessIn, ...rest } = piece!;
    const older = JSON.stringify({
      ...(CAP_JOB as object),
      version: 0,
      pieces: [{ ...rest, thickness: thicknessIn }],
    });
    await withFolder(async (folder) => {
      writeFileSync(join(folder, 'job.json'), older);
      for (const command of ['falsework', 'swap', 'export']) {
        const { err } = await runHere([command, 'job.json'], { folder });
        expect(err, command).toContain('This job was written in version 0 and is read as version 1.');
      }
      expect(readFileSync(join(folder, 'job.json'), 'utf8')).toBe(older);
    });
  });
});
