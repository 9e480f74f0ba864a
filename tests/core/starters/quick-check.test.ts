import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readJob } from '../../../src-core/job';
import type { QuickFields } from '../../../src-core/starters';
import {
  DEFAULT_QUICK_FIELDS,
  QUICK_BEARINGS,
  QUICK_DEFAULTS,
  QUICK_HELD,
  quickCheckJob,
} from '../../../src-core/starters';
import { checkJob } from '../../../src-core/verdict';

const COARSE = { meshSizeIn: 3, changes: 'none', looksOnTheWay: false } as const;
const KINDS = Object.keys(QUICK_DEFAULTS) as QuickFields['kind'][];

function jobFrom(fields: QuickFields) {
  const quick = quickCheckJob(fields);
  if (!quick.ok) throw new Error(quick.problems[0]?.sentence);
  return quick.job;
}

/** Problems of the usual piece of a kind with some answers changed, as field and sentence. */
function problemsOf(kind: QuickFields['kind'], changed: Partial<QuickFields>): [string, string][] {
  const quick = quickCheckJob({ ...QUICK_DEFAULTS[kind], ...changed });
  return quick.ok ? [] : quick.problems.map(({ field, sentence }) => [field, sentence]);
}

function words(changed: Partial<QuickFields>, kind: QuickFields['kind'] = 'bar-ledge'): string {
  return checkJob(jobFrom({ ...QUICK_DEFAULTS[kind], ...changed }), COARSE).pieces[0]!.verdict.words;
}

describe('the quick check', () => {
  test('asks eight questions, and begins with a ledge 11 in out past a 5-1/2 in wall, 1-1/2 in thick', () => {
    expect(Object.keys(DEFAULT_QUICK_FIELDS).length).toBe(8);
    const [piece] = jobFrom(DEFAULT_QUICK_FIELDS).pieces;
    expect(piece).toMatchObject({ use: 'bar-ledge', thicknessIn: 1.5, reinforcement: [{ kind: 'mesh' }] });
    // Front face of the wall at 11 in, its back at 16.5, and 1 in of slab behind it.
    expect(piece!.supports[0]).toMatchObject({
      kind: 'wall',
      widthIn: 5.5,
      from: { yIn: 13.75 },
      hold: { kind: 'resting' },
    });
  });

  test('its first answer is that the loose ledge needs a tie, a corbel or a wider bearing', () => {
    const result = checkJob(jobFrom(DEFAULT_QUICK_FIELDS), { ...COARSE, changes: 'first' });
    const { verdict } = result.pieces[0]!;
    expect(verdict.level).toBe('change');
    expect(verdict.words).toMatch(/^Needs (a tie|a corbel|support)/);
    expect(verdict.flags).toContain('tips');
  }, 60_000);

  test('the same ledge tied down holds, and loose with 2 in out it holds too', () => {
    expect(words({ held: 'tied' })).toBe('Holds');
    expect(words({ overhangIn: 2, depthIn: 8.5 })).toBe('Holds');
  });

  test('the usual counter, hearth, bench and cap hold', () => {
    expect(KINDS.slice(1).map((kind) => words({}, kind))).toEqual(['Holds', 'Holds', 'Holds', 'Holds']);
  });

  test('a counter 3/4 in thick on piers 48 in apart does not', () => {
    expect(words({ thicknessIn: 0.75, steel: 'none', bearing: 'piers' }, 'counter')).not.toMatch(/^Holds/);
  });

  test('a job asked in millimetres is shown in them', () => {
    const quick = quickCheckJob(DEFAULT_QUICK_FIELDS, 'metric');
    expect(quick.ok && quick.job.shownIn).toBe('metric');
    const tied = quickCheckJob({ ...DEFAULT_QUICK_FIELDS, held: 'tied' }, 'metric');
    expect(tied.ok && tied.job.pieces[0]!.note).toContain('406 mm');
  });

  test('piers stand at the overhang from either end, with more between them once a clear span passes 48 in', () => {
    const piersOf = (lengthIn: number) =>
      jobFrom({ ...QUICK_DEFAULTS.bench, lengthIn }).pieces[0]!.supports.map((support) =>
        support.kind === 'pier' ? support.footprint.centre.xIn : null,
      );
    expect(piersOf(54)).toEqual([9, 45]);
    expect(piersOf(74)).toEqual([9, 65]);
    expect(piersOf(75)).toEqual([9, 37.5, 66]);
  });

  test('a cap has one pier, smaller by the overhang all round', () => {
    const { supports } = jobFrom(QUICK_DEFAULTS.cap).pieces[0]!;
    expect(supports).toMatchObject([
      { footprint: { widthIn: 16, depthIn: 16, centre: { xIn: 10, yIn: 10 } } },
    ]);
  });
});

describe('answers that cannot be built', () => {
  test.each([
    [
      'bar-ledge',
      { overhangIn: 17 },
      'overhangIn',
      'This overhang leaves only 1/2 in of the depth on a stud wall; leave at least 1-1/2 in.',
    ],
    [
      'bar-ledge',
      { overhangIn: 20 },
      'overhangIn',
      'This overhang leaves nothing on a stud wall; leave at least 1-1/2 in.',
    ],
    [
      'counter',
      { overhangIn: 14 },
      'overhangIn',
      'This overhang leaves only 11-1/2 in of the depth on base cabinets; leave at least 12 in.',
    ],
    [
      'hearth',
      { overhangIn: 16 },
      'overhangIn',
      'This overhang leaves no room for two piers, which need 16 in.',
    ],
    ['cap', { overhangIn: 9 }, 'overhangIn', 'This overhang leaves no room for a pier, which needs 4 in.'],
    [
      'bar-ledge',
      { bearing: 'cabinets' },
      'bearing',
      'A bar ledge is not asked about on base cabinets here; draw it instead.',
    ],
    [
      'counter',
      { held: 'tied' },
      'held',
      'Base cabinets are too light to tie a slab down to; let it lie loose.',
    ],
    ['counter', { thicknessIn: 0.5 }, 'thicknessIn', 'The thickness must be between 3/4 in and 6 in.'],
    ['counter', { lengthIn: Number.NaN }, 'lengthIn', 'The length must be between 6 in and 240 in.'],
    ['counter', { depthIn: -3 }, 'depthIn', 'The depth must be between 4 in and 60 in.'],
  ] as const)('%s with %o says so beside its field', (kind, changed, field, sentence) => {
    expect(problemsOf(kind, changed)).toEqual([[field, sentence]]);
  });

  test('two wrong sizes are named together, each beside its own field', () => {
    expect(problemsOf('bench', { lengthIn: 0, thicknessIn: 9 }).map(([field]) => field)).toEqual([
      'lengthIn',
      'thicknessIn',
    ]);
  });
});

const USUAL = KINDS.flatMap((kind) =>
  QUICK_BEARINGS[kind].flatMap((bearing) =>
    QUICK_HELD[bearing].flatMap((held) =>
      (['none', 'light-mesh', 'bars'] as const).map((steel) => ({
        ...QUICK_DEFAULTS[kind],
        bearing,
        held,
        steel,
      })),
    ),
  ),
);

/** Lengths on the eighth of an inch, spread evenly. */
function eighths(leastIn: number, mostIn: number): fc.Arbitrary<number> {
  return fc.integer({ min: 8 * leastIn, max: 8 * mostIn }).map((count) => count / 8);
}

describe('a sweep of answers', () => {
  test('every choice of bearing, steel and hold for the usual sizes gets a verdict', () => {
    const verdicts = USUAL.map((fields) => checkJob(jobFrom(fields), COARSE).pieces[0]!);
    expect(verdicts.every(({ mesh }) => mesh !== null)).toBe(true);
    expect(new Set(verdicts.map(({ verdict }) => verdict.level))).toEqual(
      new Set(['holds', 'change', 'engineer']),
    );
  }, 120_000);

  const fields = fc.record({
    kind: fc.constantFrom(...KINDS),
    lengthIn: eighths(-1, 250),
    depthIn: eighths(3, 62),
    thicknessIn: eighths(0.5, 7),
    overhangIn: eighths(-1, 37),
    bearing: fc.constantFrom('stud-wall', 'block-wall', 'cabinets', 'piers'),
    steel: fc.constantFrom('none', 'light-mesh', 'bars'),
    held: fc.constantFrom('loose', 'tied'),
  }) as fc.Arbitrary<QuickFields>;

  test('whatever the eight answers, they make a job that reads as a file does, or a sentence beside a field', () => {
    let built = 0;
    fc.assert(
      fc.property(fields, (answers) => {
        const quick = quickCheckJob(answers);
        if (quick.ok) {
          built++;
          expect(readJob(JSON.parse(JSON.stringify(quick.job)))).toMatchObject({ ok: true });
        } else {
          expect(quick.problems.length).toBeGreaterThan(0);
          for (const { field } of quick.problems) expect(answers).toHaveProperty(field);
        }
      }),
      { seed: 20270426, numRuns: 1500 },
    );
    expect(built).toBeGreaterThan(100);
  }, 120_000);

  test('twelve of them that can be built get a verdict, and none an exception', () => {
    const sample = fc
      .sample(fields, { seed: 4, numRuns: 400 })
      .map((answers) => quickCheckJob(answers))
      .flatMap((quick) => (quick.ok ? [quick.job] : []))
      .slice(0, 12);
    expect(sample.length).toBe(12);
    for (const job of sample) {
      const { verdict } = checkJob(job, COARSE).pieces[0]!;
      expect(['holds', 'steel', 'change', 'engineer']).toContain(verdict.level);
    }
  }, 240_000);
});
