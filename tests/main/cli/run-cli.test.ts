import { mkdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { smallJob, withValue } from '../../support/small-job';
import { checkContent, runHere, withFolder } from './run-here';

const CAP = 'assets/jobs/gate-pier-cap.json';
const COMMANDS = 'check, apply, overhang, falsework, swap, list, pour, export, book';

describe('what can be asked without a job', () => {
  test.each([['--version'], ['-v']])('%s prints the version', async (option) => {
    expect(await runHere([option])).toEqual({ code: 0, out: 'ledgewright 1.2.3\n', err: '' });
  });

  test.each([['--help'], ['-h'], ['help']])('%s lists the commands and the exit codes', async (option) => {
    const { code, out, err } = await runHere([option]);
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(out).toMatch(/^ {2}check {2,}check whether/m);
    expect(out).toMatch(/^ {2}2 {2}the input cannot be used/m);
  });

  test('check --help names every option of check', async () => {
    const { code, out, err } = await runHere(['check', '--help']);
    expect({ code, err }).toEqual({ code: 0, err: '' });
    for (const option of ['--json', '--day N', '--piece ID', '--remedies']) expect(out).toContain(option);
  });
});

describe('words that cannot be used end with code 2, a line each and nothing on stdout', () => {
  test.each<[string, readonly string[], readonly string[]]>([
    ['no command', [], [`Say what to do. Commands: ${COMMANDS}. For help: --help`]],
    ['an unknown command', ['chek'], [`There is no command chek. Commands: ${COMMANDS}. For help: --help`]],
    [
      'an unknown option first',
      ['--jsn'],
      [`There is no option --jsn. Commands: ${COMMANDS}. For help: --help`],
    ],
    ['no job', ['check'], ['Say which job file to check.']],
    ['an empty path', ['check', ''], ['Say which job file to check.']],
    ['two jobs', ['check', CAP, 'b.json'], ['One job file at a time; these are too many: b.json']],
    ['an unknown option', ['check', CAP, '--jsn'], ['There is no option --jsn.']],
    ['a name every object has', ['check', CAP, '--constructor'], ['There is no option --constructor.']],
    ['an unknown letter', ['check', CAP, '-x'], ['There is no option -x.']],
    ['two faults', ['check', CAP, '-x', '--json=3'], ['There is no option -x.', '--json takes no value.']],
    ['an option twice', ['check', CAP, '--day', '3', '--day', '4'], ['--day is given twice.']],
    ['no piece', ['check', CAP, '--piece'], ['--piece needs a value: the id of a piece in the job.']],
    [
      'an unknown piece',
      ['check', CAP, '--piece', 'nope'],
      [`${CAP}: There is no piece "nope". Its pieces: gate-cap`],
    ],
    ['a missing file', ['check', 'none.json'], ['none.json: There is no such file.']],
    ['a file below a file', ['check', `${CAP}/x`], [`${CAP}/x: There is no such file.`]],
  ])('%s', async (_, argv, lines) => {
    expect(await runHere(argv)).toEqual({ code: 2, out: '', err: lines.map((line) => `${line}\n`).join('') });
  });

  test.each([['x'], ['1.5'], ['-3'], ['1e2'], ['3651'], [' 4']])(
    'a day must be whole, from 0 to 3650: %s is not',
    async (day) => {
      const { code, out, err } = await runHere(['check', CAP, '--day', day]);
      expect({ code, out }).toEqual({ code: 2, out: '' });
      expect(err).toBe(
        `--day ${day}: the day is a whole number of days from the start of the job, 0 to 3650.\n`,
      );
    },
  );

  test('a day must be given', async () => {
    for (const argv of [['--day'], ['--day='], ['--day', '--json']]) {
      const { code, out, err } = await runHere(['check', CAP, ...argv]);
      expect({ code, out }).toEqual({ code: 2, out: '' });
      expect(err).toMatch(/^--day needs a value: a whole number of days .*\.\n$/);
    }
  });
});

describe('files that cannot be used end with code 2, their path and nothing on stdout', () => {
  test('a folder', async () => {
    await withFolder(async (folder) => {
      mkdirSync(join(folder, 'job.json'));
      const outcome = await runHere(['check', 'job.json'], { folder });
      expect(outcome).toEqual({ code: 2, out: '', err: 'job.json: This is a folder, not a job file.\n' });
    });
  });

  test.each<[string, string | Uint8Array, RegExp]>([
    ['an empty file', '', /^job\.json: The file is empty\.\n$/],
    ['a file of blanks', ' \n\t\r\n', /^job\.json: The file is empty\.\n$/],
    ['a file cut short', '{"format": "ledgewright-job",', /^job\.json: .* line 1, column \d+, [^\n]*\n$/],
    ['a list', '[]', /^job\.json: This is no job file: [^\n]*\n$/],
    ['another format', '{"format": "x"}', /^job\.json: format: This is no job file: [^\n]*\n$/],
    ['text in UTF-16', Uint8Array.of(0xff, 0xfe, 0x7b, 0), /^job\.json: This is not UTF-8 text\. [^\n]*\n$/],
  ])('%s', async (_, content, line) => {
    const { code, out, err } = await checkContent(content);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toMatch(line);
  });

  test('a job of a newer version', async () => {
    const { code, out, err } = await checkContent(JSON.stringify(withValue(smallJob(), 'version', 99)));
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toMatch(/^job\.json: version: This job was made by a newer Ledgewright [^\n]*\n$/);
  });

  test('a job without pieces', async () => {
    const { code, out, err } = await checkContent(JSON.stringify(withValue(smallJob(), 'pieces', [])));
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toMatch(/^job\.json: pieces: [^\n]*\n$/);
  });

  test('a slab of negative thickness and a field that is not known: a line each, with its place', async () => {
    const thin = withValue(smallJob(), 'pieces[1].thicknessIn', -1);
    const { code, out, err } = await checkContent(JSON.stringify(withValue(thin, 'pieces[0].shine', 'high')));
    expect({ code, out }).toEqual({ code: 2, out: '' });
    const lines = err.trimEnd().split('\n').sort();
    expect(lines).toHaveLength(2);
    expect(lines[0]).toMatch(/^job\.json: pieces\[0\]\.shine: /);
    expect(lines[1]).toMatch(/^job\.json: pieces\[1\]\.thicknessIn: /);
  });

  test('what a terminal would obey is not passed on to it', async () => {
    const { code, err } = await checkContent(
      JSON.stringify(withValue(smallJob(), 'pieces[0].mixId', '\u001b[2Jgone\u009b')),
    );
    expect(code).toBe(2);
    expect(err.replaceAll('\n', '')).not.toMatch(/\p{Cc}/u);
  });
});

test('a job file may begin with a byte order mark', async () => {
  const text = readFileSync(new URL(`../../../${CAP}`, import.meta.url), 'utf8');
  expect((await checkContent(`\uFEFF${text}`, '--piece', 'nope')).err).toMatch(/There is no piece "nope"/);
});
