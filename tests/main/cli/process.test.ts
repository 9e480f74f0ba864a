import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { PROJECT } from './run-here';

interface Ended {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** Runs the command line as a person's shell does; `leaveEarly` closes its stdout at once, as `head` may. */
function runProcess(
  argv: readonly string[],
  { leaveEarly = false, env = {} }: { readonly leaveEarly?: boolean; readonly env?: NodeJS.ProcessEnv } = {},
): Promise<Ended> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, ['--import', 'tsx', 'src-main/cli/main.ts', ...argv], {
      cwd: PROJECT,
      env: { ...process.env, NO_COLOR: '1', ...env },
    });
    let out = '';
    let err = '';
    child.stdout.setEncoding('utf8').on('data', (text: string) => {
      out += text;
    });
    child.stderr.setEncoding('utf8').on('data', (text: string) => {
      err += text;
    });
    if (leaveEarly) child.stdout.destroy();
    child.on('error', reject);
    child.on('close', (code) => resolve({ code, out, err }));
  });
}

const CAP = 'assets/jobs/gate-pier-cap.json';

describe('the command line as a process', () => {
  test('checks a job and ends with code 0', async () => {
    const { code, out } = await runProcess(['check', CAP]);
    expect(code).toBe(0);
    expect(out).toMatch(/^Gate-pier cap .*● Holds/m);
    expect(out).not.toContain('\u001b');
  });

  test('ends with code 2 and writes nothing to stdout for a file that is missing', async () => {
    expect(await runProcess(['check', 'none.json'])).toEqual({
      code: 2,
      out: '',
      err: 'none.json: There is no such file.\n',
    });
  });

  test('takes no harm from a reader that leaves early', async () => {
    const { code, err } = await runProcess(['check', CAP, '--json'], { leaveEarly: true });
    expect(code).toBe(0);
    expect(err).not.toMatch(/EPIPE|fault/);
  });

  test('reads paths from where the person stood when npm changed folder', async () => {
    const env = { npm_lifecycle_event: 'cli', INIT_CWD: join(PROJECT, 'assets', 'jobs') };
    const { code, err } = await runProcess(['check', 'gate-pier-cap.json', '--piece', 'nope'], { env });
    expect(code).toBe(2);
    expect(err).toContain('There is no piece "nope". Its pieces: gate-cap');
  });

  test('prints the version of package.json', async () => {
    const { code, out } = await runProcess(['--version']);
    expect(code).toBe(0);
    expect(out).toMatch(/^ledgewright \d+\.\d+\.\d+\n$/);
  });
});
