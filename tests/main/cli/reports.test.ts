import { describe, expect, test } from 'vitest';
import { printQuantity, printRatio } from '../../../src-core/report';
import { jobReport } from '../../../src-main/cli/report/job-report';
import { jsonReport } from '../../../src-main/cli/report/json-report';
import { pieceReport } from '../../../src-main/cli/report/piece-report';
import { wrap } from '../../../src-main/cli/report/wrap';
import { sampleCheck, samplePiece, sampleResult } from './sample-result';

const PLAIN = { system: 'imperial', colour: false, seconds: 1.25 } as const;
const NOTICE_START = 'Planning arithmetic for one builder, not engineered drawings.';

/** Runs of blanks as one, so that a wrapped sentence is found again. */
function flat(text: string): string {
  return text.replace(/\s+/g, ' ');
}

describe('the report of a job', () => {
  test('has a row a piece: thickness, weight, worst check with its ratio, verdict, what to do', () => {
    const report = jobReport(sampleResult(), PLAIN);
    const rows = report.split(/^─+$/m).map(flat);
    expect(rows[0]).toContain('Piece Thick Weight Worst check Verdict What to do');
    expect(rows[1]).toContain('Straight 1-1/2 in 308 lb Bending, on ● Holds Build as drawn.');
    expect(rows[1]).toContain('0.80');
    expect(rows[2]).toMatch(/ x 2 /);
    expect(rows[2]).toContain('◆ Holds');
    expect(rows[2]).toContain('Within 3 % of a limit.');
    expect(rows[3]).toContain('Bar ledge 1-1/2 in 308 lb Tipping 4.20 ▲ Needs a Tie it: 4 ties at 24 in');
    expect(rows[4]).toContain('⬣ Needs');
    expect(rows[4]).toContain('Ask an engineer.');
  });

  test('gives the job in one line, the site, the worst moment on the way, cautions and the notice', () => {
    const report = jobReport(sampleResult(), PLAIN);
    expect(report).toMatch(/^⬣ 2 of 4 pieces hold; Hearth needs an engineer\.$/m);
    const text = flat(report);
    expect(text).toContain(
      '▲ Deck load: The deck carries more than it may. 61 psf against 50 psf. (local code)',
    );
    expect(text).toContain('▲ Day 21, Fish bench, 1.31 of the limit: It cracks on its props.');
    expect(text).not.toContain('Day 9,');
    expect(text).toContain('- Straight counter, Fish bench, Bar ledge: Put steel in all the same.');
    expect(text).toContain('- Hearth: It is heavy: three people.');
    expect(text).toContain('- Deck load: Ask for the drawings.');
    expect(text).toContain(NOTICE_START);
    expect(text).toContain('--piece ID');
    expect(text).toContain('--json');
  });

  test('names the worst moment on the way where every one holds', () => {
    expect(jobReport(sampleResult({ pieces: [samplePiece()] }), PLAIN)).toContain(
      '● Day 9, Straight counter, 0.50 of the limit: It bends most underneath.',
    );
  });

  test('lists every change that was found to pass, with its weight', () => {
    expect(jobReport(sampleResult(), PLAIN)).toContain(
      '  - ledge-corbel: Add 3 brackets (then 0.71 of the limit; 6 lb heavier)',
    );
  });

  test('stays within 100 columns, whatever the words', () => {
    const long = 'word '.repeat(60);
    const result = sampleResult({
      verdict: { level: 'change', words: long },
      pieces: [
        samplePiece({
          name: `${'Serving counter on the landing '.repeat(3)}${'x'.repeat(40)}`,
          verdict: {
            level: 'engineer',
            words: 'Needs a tie, corbel, support and steel',
            why: long,
            flags: [],
          },
          checks: [sampleCheck({ title: long, words: long, cautions: [long] })],
          weightLb: 123_456,
          thicknessIn: 1.9375,
        }),
      ],
    });
    for (const report of [jobReport(result, PLAIN), pieceReport(result, PLAIN)]) {
      for (const line of report.split('\n')) expect([...line].length).toBeLessThanOrEqual(100);
    }
  });

  test('is in millimetres and kilograms where the job is', () => {
    const report = flat(jobReport(sampleResult(), { ...PLAIN, system: 'metric' }));
    expect(report).toContain('38 mm 140 kg');
    expect(report).toContain('2.921 kPa against 2.394 kPa');
  });

  test('is coloured only on request, and then never by colour alone', () => {
    const plain = jobReport(sampleResult(), PLAIN);
    const coloured = jobReport(sampleResult(), { ...PLAIN, colour: true });
    expect(plain).not.toContain('\u001b');
    expect(coloured).toContain('\u001b[32m● Holds');
    // biome-ignore lint/suspicious/noControlCharactersInRegex: it is the colours that are taken out
    expect(coloured.replace(/\u001b\[\d+m/g, '')).toBe(plain);
  });

  test('shows a name that holds a terminal command as text', () => {
    const report = jobReport(sampleResult({ name: 'Bar\u001b[2J\u009b1m\nledge' }), PLAIN);
    expect(report.split('\n')[0]).toBe('Bar [2J 1m ledge, finished');
  });
});

describe('the report of a piece', () => {
  const piece = samplePiece({
    checks: [
      sampleCheck(),
      sampleCheck({ id: 'weight', title: 'Weight', ratio: 0, where: { kind: 'piece' } }),
    ],
    triedInVain: ['Thickness alone: 3 in still turns over.'],
    remarks: ['The patch was shrunk to fit.'],
  });
  const report = pieceReport(sampleResult({ pieces: [piece] }), PLAIN);

  test('shows every check with its numbers and place', () => {
    expect(flat(report)).toContain(
      '● Bending, on concrete alone, 0.80 (106.1 lbf-in/in against 132.6 lbf-in/in), at x 12-1/2 in, y 4 in',
    );
    expect(report).toMatch(/^● Weight$/m);
  });

  test('shows each formula, the numbers in it, its result and its source', () => {
    expect(report).toContain(
      [
        '    A: area of the top',
        '      = b * d',
        '      = 96 * 25.5',
        '      = 2448 in2',
        '        [plane geometry; from memory, verify]',
      ].join('\n'),
    );
  });

  test('shows what each support carries, what was tried, the remarks and the mesh', () => {
    expect(flat(report)).toContain('left side (b1) low 77 lbf 204 lbf 60 lbf 0 lbf');
    expect(report).toContain('- Thickness alone: 3 in still turns over.');
    expect(report).toContain('- The patch was shrunk to fit.');
    expect(flat(report)).toContain(
      '2900 nodes, 5600 triangles, 96 contact points, 100 load cases, factored once.',
    );
    expect(report).toContain(NOTICE_START);
  });
});

describe('the JSON report', () => {
  const context = {
    version: '1.2.3',
    job: { shownIn: 'imperial' },
    seconds: 1.23456,
    progress: { secondsOf: (index: number) => (index === 0 ? 0.5 : null) },
  } as const;

  test('adds tool, version and seconds to everything that was found', () => {
    const result = sampleResult();
    const report = JSON.parse(jsonReport(result, context));
    expect(report).toMatchObject({ tool: 'ledgewright', version: '1.2.3', seconds: 1.235 });
    expect(report.pieces.map((piece: { seconds: number | null }) => piece.seconds)).toEqual([
      0.5,
      null,
      null,
      null,
    ]);
    for (const key of Object.keys(result)) expect(report).toHaveProperty(key);
    expect(report.pieces[1]).toMatchObject(JSON.parse(JSON.stringify(result.pieces[1])));
  });

  test('refuses a number that is none, rather than writing null for it', () => {
    const broken = sampleResult({ pieces: [samplePiece({ weightLb: Number.NaN })] });
    expect(() => jsonReport(broken, context)).toThrow('weightLb is NaN');
  });

  test('writes typed arrays as plain ones', () => {
    const piece = { ...samplePiece(), envelope: Float64Array.of(1, 2.5) };
    const report = JSON.parse(jsonReport(sampleResult({ pieces: [piece] }), context));
    expect(report.pieces[0].envelope).toEqual([1, 2.5]);
  });
});

describe('numbers of a report', () => {
  test.each([
    [25.5, 'in', 'imperial', '25-1/2 in'],
    [0.0552, 'in', 'imperial', '0.0552 in'],
    [0.0625, 'in', 'metric', '1.587 mm'],
    [72, 'in2', 'imperial', '72 sq in'],
    [2, 'ft2', 'imperial', '2 sq ft'],
    [0.0523, 'in2/ft', 'imperial', '0.0523 in2/ft'],
    [3, '', 'imperial', '3'],
    [250, 'lbf', 'metric', '1112 N'],
    [100, 'lb', 'metric', '45.36 kg'],
    [2000, 'lbf-in', 'metric', '226 N-m'],
    [132.6, 'lbf-in/in', 'imperial', '132.6 lbf-in/in'],
    [56.25, 'lbf/in', 'imperial', '56.25 lbf/in'],
    [335.4, 'psi', 'imperial', '335.4 psi'],
    [50, 'psf', 'imperial', '50 psf'],
  ] as const)('%d %s reads, %s, %s', (value, unit, system, printed) => {
    expect(printQuantity({ value, unit }, system)).toBe(printed);
  });

  test('a ratio that fails never reads 1.00, and one that holds never more', () => {
    expect([0.7684, 0.9999, 1, 1.0001, 1.304, 5000].map(printRatio)).toEqual([
      '0.77',
      '1.00',
      '1.00',
      '1.01',
      '1.30',
      'over 999',
    ]);
  });
});

test('a text is wrapped at blanks, and a word longer than a line stands alone', () => {
  const long = 'x'.repeat(120);
  expect(wrap(`${'abcd '.repeat(25)}${long} end`, '- ')).toEqual([
    `- ${'abcd '.repeat(19)}abcd`.slice(0, 96),
    '  abcd abcd abcd abcd abcd abcd',
    `  ${long}`,
    '  end',
  ]);
});
