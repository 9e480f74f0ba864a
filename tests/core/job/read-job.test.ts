import { describe, expect, test } from 'vitest';
import type { ProblemCode } from '../../../src-core/job';
import { MOST_PROBLEMS, readJob, readJobText } from '../../../src-core/job';
import { smallJob, withValue } from '../../support/small-job';

function problemsOf(value: unknown) {
  const reading = readJob(value);
  return reading.ok ? [] : reading.problems;
}

describe('a sound job', () => {
  test('is read with its defaults filled in', () => {
    const reading = readJob(smallJob());
    if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
    expect(reading.migratedFrom).toBeNull();
    expect(reading.job.pieces[0]!.topElevationIn).toBe(36);
    expect(reading.job.crew.bucketGal).toBe(5);
    expect(reading.job.pieces[1]!.supports[0]!.hold).toEqual({ kind: 'resting' });
  });

  test('reads the same again from its own output', () => {
    const first = readJob(smallJob());
    if (!first.ok) throw new Error('the small job is sound');
    const second = readJobText(JSON.stringify(first.job));
    expect(second).toEqual(first);
  });
});

describe('a file that is no job', () => {
  const cases: [string, unknown, ProblemCode, string][] = [
    ['a number', 7, 'not-an-object', ''],
    ['nothing', undefined, 'not-an-object', ''],
    ['a list', [smallJob()], 'not-an-object', ''],
    ['another format', { format: 'drawing', version: 1 }, 'wrong-format', 'format'],
    ['no format', { version: 1 }, 'wrong-format', 'format'],
    ['no version', withValue(smallJob(), 'version', undefined), 'unknown-version', 'version'],
    ['a version that is a text', withValue(smallJob(), 'version', '1'), 'unknown-version', 'version'],
    ['a version of one half', withValue(smallJob(), 'version', 0.5), 'unknown-version', 'version'],
    ['version 3', withValue(smallJob(), 'version', 3), 'newer-version', 'version'],
  ];
  test.each(cases)('%s is refused', (_, value, code, path) => {
    expect(problemsOf(value)).toEqual([expect.objectContaining({ code, path })]);
  });

  test('a job of version 3 names both versions', () => {
    expect(problemsOf(withValue(smallJob(), 'version', 3))[0]!.sentence).toBe(
      'This job was made by a newer Ledgewright (version 3; this one reads up to 1).',
    );
  });
});

describe('a wrong field is named by its path, with a sentence', () => {
  const cases: [string, unknown, ProblemCode, string, string][] = [
    ['name', undefined, 'missing-field', 'name', 'Name is missing.'],
    ['pieces', 'many', 'wrong-type', 'pieces', 'Pieces must be a list in brackets; it is "many".'],
    ['pieces', [], 'wrong-length', 'pieces', 'Pieces must have at least 1 entry; it has 0.'],
    [
      'pieces[1].use',
      'shelf',
      'unknown-choice',
      'pieces[1].use',
      'Use of piece "Ledge" must be one of "counter", ',
    ],
    [
      'pieces[0].thicknessIn',
      30,
      'out-of-range',
      'pieces[0].thicknessIn',
      'Thickness of piece "Counter" must be at most 24 in; it is 30 in.',
    ],
    [
      'pieces[0].thicknessIn',
      '2',
      'wrong-type',
      'pieces[0].thicknessIn',
      'Thickness of piece "Counter" must be a number; it is "2".',
    ],
    [
      'pieces[0].corners[2].xIn',
      Number.NaN,
      'wrong-type',
      'pieces[0].corners[2].xIn',
      'X of corner 3 of piece "Counter" must be a number; it is NaN.',
    ],
    [
      'pieces[0].thicknes',
      2,
      'unknown-field',
      'pieces[0].thicknes',
      'Piece "Counter" has no field "thicknes". Was "thicknessIn" meant?',
    ],
    [
      'pieces[0].cutouts[0].shape.radius',
      2,
      'unknown-field',
      'pieces[0].cutouts[0].shape.radius',
      'Shape of cutout "sink" of piece "Counter" has no field "radius". Was "radiusIn" meant?',
    ],
    [
      'pieces[0].cutouts[0].shape.kind',
      'oval',
      'unknown-choice',
      'pieces[0].cutouts[0].shape.kind',
      'Kind of shape of cutout "sink" of piece "Counter" must be one of "rectangle", "circle", "polygon"; it is "oval".',
    ],
    [
      'pieces[0].supports[1].footprint.kind',
      undefined,
      'missing-field',
      'pieces[0].supports[1].footprint.kind',
      'Kind of footprint of support "pier-right" of piece "Counter" is missing; it must be one of "rectangle", "circle".',
    ],
    [
      'pieces[1].supports[1].arm.wallIn',
      undefined,
      'missing-field',
      'pieces[1].supports[1].arm.wallIn',
      'Wall of arm of support "arms" of piece "Ledge" is missing.',
    ],
    [
      'pieces[0].supports[0].firstDay',
      1.5,
      'wrong-type',
      'pieces[0].supports[0].firstDay',
      'First day of support "pier-left" of piece "Counter" must be a whole number; it is 1.5.',
    ],
    [
      'pieces[0].id',
      'the counter',
      'wrong-text',
      'pieces[0].id',
      'Id of piece "Counter" cannot be "the counter": use letters, digits and hyphens.',
    ],
    ['name', '', 'wrong-length', 'name', 'Name must not be empty.'],
    [
      'site.calendar.startsOn',
      'May 1',
      'wrong-text',
      'site.calendar.startsOn',
      'Starts on of calendar of site cannot be "May 1": write the date as 2027-04-30.',
    ],
    [
      'pieces[0].odd name',
      1,
      'unknown-field',
      'pieces[0]["odd name"]',
      'Piece "Counter" has no field "odd name".',
    ],
    [
      'site.weather',
      { humidity: 2 },
      'out-of-range',
      'site.weather.humidity',
      'Humidity of weather of site must be at most 100 %; it is 200 %.',
    ],
  ];
  test.each(cases)('%s = %j gives %s', (at, value, code, path, sentence) => {
    const problems = problemsOf(withValue(smallJob(), at, value));
    expect(problems.map((problem) => [problem.code, problem.path])).toEqual([[code, path]]);
    expect(problems[0]!.sentence).toContain(sentence);
  });

  test('a problem inside a piece names the piece', () => {
    expect(problemsOf(withValue(smallJob(), 'pieces[1].use', 'shelf'))[0]!.pieceId).toBe('ledge');
    expect(problemsOf(withValue(smallJob(), 'name', ''))[0]).not.toHaveProperty('pieceId');
  });

  test('two wrong fields give two problems', () => {
    const broken = withValue(withValue(smallJob(), 'pieces[0].thicknessIn', 30), 'pieces[1].copies', 0);
    expect(problemsOf(broken).map(({ path }) => path)).toEqual(['pieces[0].thicknessIn', 'pieces[1].copies']);
  });
});

describe('a figure beyond its limits is worded in the units in which the job is shown', () => {
  const cases: [string, unknown, string, string][] = [
    ['pieces[0].thicknessIn', 40, 'at most 24 in; it is 40 in', 'at most 609.6 mm; it is 1016 mm'],
    ['pieces[0].thicknessIn', 24.01, 'at most 24 in; it is 24.01 in', 'at most 609.6 mm; it is 609.85 mm'],
    ['pieces[0].thicknessIn', 3 / 16, 'at least 1/4 in; it is 3/16 in', 'at least 6.35 mm; it is 4.76 mm'],
    ['pieces[0].cutouts[0].shape.radiusIn', -5, 'at least 0 in; it is -5 in', 'at least 0 mm; it is -127 mm'],
    ['mixes[0].strengthPsi', 450, 'at least 500 psi; it is 450 psi', 'at least 3.4474 MPa; it is 3.1026 MPa'],
    [
      'mixes[0].densityPcf',
      40,
      'at least 50 pcf; it is 40 pcf',
      'at least 800.923 kg/m3; it is 640.739 kg/m3',
    ],
    ['mixes[0].bag.weightLb', -1, 'at least 0 lb; it is -1 lb', 'at least 0 kg; it is -0.4536 kg'],
    ['site.weather', { airC: 70 }, 'at most 140 °F; it is 158 °F', 'at most 60 °C; it is 70 °C'],
    ['crew', { bucketFill: 0.05 }, 'at least 10 %; it is 5 %', 'at least 10 %; it is 5 %'],
    ['crew', { bucketGal: 0 }, 'it is 0 gal', 'it is 0 L'],
    ['pieces[0].supports[0].firstDay', -1, 'at least 0; it is -1', 'at least 0; it is -1'],
  ];
  test.each(cases)('%s = %j', (at, value, imperial, metric) => {
    const sentence = (shownIn: string) =>
      problemsOf(withValue(withValue(smallJob(), at, value), 'shownIn', shownIn))[0]!.sentence;
    expect(sentence('imperial')).toContain(imperial);
    expect(sentence('metric')).toContain(metric);
  });

  test('inches serve where the units of the job are themselves wrong', () => {
    const job = withValue(withValue(smallJob(), 'pieces[0].thicknessIn', 40), 'shownIn', 'cubits');
    const sentences = problemsOf(job).map(({ sentence }) => sentence);
    expect(sentences).toContain('Thickness of piece "Counter" must be at most 24 in; it is 40 in.');
  });
});

describe('text that is not JSON is placed by line and column', () => {
  const cases: [string, string, string][] = [
    ['', 'line 1, column 1', 'the file is empty'],
    ['{\n  "name": "x",\n}', 'line 3, column 1', 'a comma too many before a closing brace'],
    ['{\n  "a": 1\n  "b": 2\n}', 'line 3, column 3', 'a comma or a closing brace is missing'],
    ['{ "a": [1, 2', 'line 1, column 13', 'the file ends too early; 2 brackets or braces are still open'],
    ['{ "a" 1 }', 'line 1, column 7', 'a colon is missing'],
    ['{ "a": .5 }', 'line 1, column 8', 'a value is missing'],
    ['{ "a": [1,] }', 'line 1, column 11', 'a comma too many before a closing bracket'],
    ['{ a: 1 }', 'line 1, column 3', 'a field name in double quotes is missing'],
    ['{ "a": "b\n" }', 'line 1, column 8', 'a text has no closing quote'],
    ["{ 'a': 1 }", 'line 1, column 3', 'a field name in double quotes is missing'],
    ['{ "a": \'b\' }', 'line 1, column 8', 'texts need double quotes'],
    ['{} {}', 'line 1, column 4', 'more text after the end of the job'],
    ['{ "a": 01 }', 'line 1, column 9', 'a comma or a closing brace is missing'],
    ['{ "a": "\\q" }', 'line 1, column 8', 'a character that must be escaped'],
  ];
  test.each(cases)('%j', (text, place, what) => {
    const reading = readJobText(text);
    if (reading.ok) throw new Error('read as a job');
    expect(reading.problems.map(({ code }) => code)).toEqual(['not-json']);
    expect(reading.problems[0]!.sentence).toContain(place);
    expect(reading.problems[0]!.sentence).toContain(what);
  });

  test('a byte order mark before the first brace does no harm', () => {
    expect(readJobText(`\uFEFF${JSON.stringify(smallJob())}`).ok).toBe(true);
  });
});

describe('ruined files', () => {
  test('a file with 20 000 wrong corners shows 50 problems, the last of which counts the rest', () => {
    const problems = problemsOf(withValue(smallJob(), 'ticks', Array(20_000).fill('x')));
    expect(problems).toHaveLength(MOST_PROBLEMS);
    expect(problems[MOST_PROBLEMS - 1]).toMatchObject({ code: 'more-problems' });
    expect(problems[MOST_PROBLEMS - 1]!.sentence).toContain('19951 more problems');
  });

  test('20 000 unknown fields show 50 problems', () => {
    const fields = Object.fromEntries(Array.from({ length: 20_000 }, (_, i) => [`field${i}`, i]));
    expect(problemsOf({ ...smallJob(), ...fields })).toHaveLength(MOST_PROBLEMS);
  });

  test('a million values are too many', () => {
    const problems = problemsOf(withValue(smallJob(), 'ticks', Array(1_000_000).fill(0)));
    expect(problems.map(({ code }) => code)).toEqual(['too-large']);
  });

  test('lists 100 000 deep are too deep, as text and as value', () => {
    const deep = `${'['.repeat(100_000)}${']'.repeat(100_000)}`;
    const reading = readJobText(`{ "format": "ledgewright-job", "version": 1, "note": ${deep} }`);
    expect(reading).toMatchObject({ ok: false, problems: [{ code: 'too-large' }] });
    expect(readJobText('['.repeat(100_000))).toMatchObject({ ok: false, problems: [{ code: 'not-json' }] });
  });

  test('a value that holds itself is too deep', () => {
    const loop: Record<string, unknown> = { ...smallJob() };
    loop.self = loop;
    expect(readJob(loop)).toMatchObject({ ok: false, problems: [{ code: 'too-large' }] });
  });

  test('a text of 9 million characters is too large', () => {
    expect(readJobText(' '.repeat(9_000_000))).toMatchObject({
      ok: false,
      problems: [{ code: 'too-large' }],
    });
  });

  test('fields named like built-in ones are fields that nobody knows', () => {
    const text = JSON.stringify(smallJob()).replace('{', '{"__proto__":{"name":"y"},"constructor":1,');
    const reading = readJobText(text);
    if (reading.ok) throw new Error('read as a job');
    expect(reading.problems.map(({ code, path }) => [code, path])).toEqual([
      ['unknown-field', '__proto__'],
      ['unknown-field', 'constructor'],
    ]);
  });
});
