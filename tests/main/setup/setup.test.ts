import { mkdirSync, mkdtempSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import { describe, expect, test } from 'vitest';

interface Project {
  readonly nodeTrouble: (version: string) => string | null;
  readonly needsInstall: (root: string) => boolean;
  readonly npmCommand: (
    args: readonly string[],
    env: { readonly npm_execpath?: string },
    platform: string,
  ) => { readonly file: string; readonly args: readonly string[]; readonly shell: boolean };
}

interface Found {
  readonly isOk: boolean;
  readonly passed: number;
  readonly failed: number;
}

interface Steps {
  readonly summarise: (results: readonly (Found & { readonly name: string; readonly seconds: number })[]) => {
    readonly lines: readonly string[];
    readonly code: number;
  };
  readonly readVitestReport: (report: object, code: number) => Found;
}

/** The setup scripts are plain JavaScript, because they run before anything is installed. */
async function load<Module>(name: string): Promise<Module> {
  return (await import(new URL(`../../../src-main/setup/${name}`, import.meta.url).href)) as Module;
}

const { nodeTrouble, needsInstall, npmCommand } = await load<Project>('project.mjs');
const { summarise, readVitestReport } = await load<Steps>('test-steps.mjs');
const { isInstalled } = await load<{ readonly isInstalled: (program: string, path: string) => boolean }>(
  'reference-programs.mjs',
);

function withFolder(use: (folder: string) => void): void {
  const folder = mkdtempSync(join(tmpdir(), 'ledgewright-setup-'));
  try {
    use(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

describe('a fresh clone', () => {
  test('is told in a sentence where Node is older than 20.19', () => {
    expect(['20.19.0', '20.20.2', '22.0.0', '24.1.0'].map(nodeTrouble)).toEqual([null, null, null, null]);
    for (const version of ['18.20.4', '20.18.3', '9.0.0']) {
      expect(nodeTrouble(version)).toContain(`needs Node 20.19 or newer; this is ${version}.`);
    }
  });

  test('needs an install until the packages are there and as new as the lock file', () => {
    withFolder((root) => {
      writeFileSync(join(root, 'package-lock.json'), '{}');
      expect(needsInstall(root)).toBe(true);
      mkdirSync(join(root, 'node_modules'));
      expect(needsInstall(root)).toBe(true);
      const installed = join(root, 'node_modules', '.package-lock.json');
      writeFileSync(installed, '{}');
      utimesSync(join(root, 'package-lock.json'), 1000, 1000);
      expect(needsInstall(root)).toBe(false);
      utimesSync(installed, 900, 900);
      expect(needsInstall(root)).toBe(true);
    });
  });

  test('calls the npm that runs it through Node, and a bare npm through a shell on Windows alone', () => {
    const own = npmCommand(['ci'], { npm_execpath: 'C:\\node\\npm\\bin\\npm-cli.js' }, 'win32');
    expect(own).toEqual({
      file: process.execPath,
      args: ['C:\\node\\npm\\bin\\npm-cli.js', 'ci'],
      shell: false,
    });
    expect(npmCommand(['ci'], {}, 'win32')).toEqual({ file: 'npm', args: ['ci'], shell: true });
    expect(npmCommand(['ci'], { npm_execpath: '/usr/lib/yarn.js' }, 'linux')).toEqual({
      file: 'npm',
      args: ['ci'],
      shell: false,
    });
  });

  test('finds a program on the path only where it may be run', () => {
    withFolder((folder) => {
      writeFileSync(join(folder, 'may-run'), '', { mode: 0o755 });
      const path = [join(folder, 'none'), folder].join(delimiter);
      expect(isInstalled('may-run', path)).toBe(true);
      expect(isInstalled('not-there', path)).toBe(false);
    });
  });
});

describe('the end of a test run', () => {
  const ok = { isOk: true, passed: 0, failed: 0, seconds: 2 };

  test('sums the tests that passed', () => {
    expect(
      summarise([
        { ...ok, name: 'lint' },
        { ...ok, name: 'unit', passed: 400 },
        { ...ok, name: 'reference', passed: 12 },
      ]),
    ).toEqual({
      lines: [
        'lint ok (2 s)',
        'unit ok (400 passed, 2 s)',
        'reference ok (12 passed, 2 s)',
        '412 passed, 0 failed',
      ],
      code: 0,
    });
  });

  test('counts a step that broke without a failed test as a failure', () => {
    const { lines, code } = summarise([
      { ...ok, name: 'types', isOk: false },
      { ...ok, name: 'unit', isOk: false, passed: 3, failed: 2 },
    ]);
    expect({ last: lines.at(-1), code }).toEqual({ last: '3 passed, 3 failed', code: 1 });
    expect(lines[0]).toBe('types FAILED (2 s)');
  });

  test('takes no run for well that skipped a test, ran none, or ended with a code', () => {
    const report = { numPassedTests: 3, numFailedTests: 0, numPendingTests: 0, numTodoTests: 0 };
    expect(readVitestReport(report, 0)).toEqual({ isOk: true, passed: 3, failed: 0 });
    expect(readVitestReport({ ...report, numPendingTests: 1 }, 0)).toEqual({
      isOk: false,
      passed: 3,
      failed: 1,
    });
    expect(readVitestReport({ ...report, numPassedTests: 0 }, 0).isOk).toBe(false);
    expect(readVitestReport(report, 1).isOk).toBe(false);
  });
});
