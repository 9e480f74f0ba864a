import { spawn } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { expect, test } from 'vitest';
import { builtApp } from '../../support/built-app';
import { PROJECT } from '../host/place-here';

const { needsBuild } = (await import(new URL('../../../src-main/setup/build.mjs', import.meta.url).href)) as {
  readonly needsBuild: (root: string) => boolean;
};

/** Runs `npm start` with these words until its address is printed, then stops it; gives what it said and its exit code. */
function start(
  words: readonly string[],
  env: NodeJS.ProcessEnv,
): Promise<{ said: string; code: number | null }> {
  builtApp();
  const child = spawn(process.execPath, ['src-main/setup/start.mjs', ...words], {
    cwd: PROJECT,
    env: { ...process.env, ...env },
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  return new Promise((resolve) => {
    let said = '';
    let isStopping = false;
    child.stdout.setEncoding('utf8').on('data', (text: string) => {
      said += text;
      if (isStopping || !said.includes('Ctrl+C')) return;
      isStopping = true;
      child.kill('SIGTERM');
    });
    child.on('close', (code) => resolve({ said, code }));
  });
}

test('npm start prints the address of the window in a browser and ends with code 0 when it is stopped', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'ledgewright-start-'));
  const env = { LEDGEWRIGHT_USER_FOLDER: folder };
  try {
    const asked = await start(['--no-browser'], env);
    expect(asked.said).toMatch(/^Ledgewright is at http:\/\/127\.0\.0\.1:\d+\/#token=\S+$/m);
    expect(asked.said).not.toContain('No desktop window here');
    expect(asked.code).toBe(0);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});

// Only Linux may be without a display.
const onLinux = (title: string, run: () => Promise<void>) => process.platform === 'linux' && test(title, run);

onLinux(
  'npm start says in one line why there is no desktop window, and opens the window in a browser',
  async () => {
    const folder = mkdtempSync(join(tmpdir(), 'ledgewright-start-'));
    try {
      const { said, code } = await start([], {
        LEDGEWRIGHT_USER_FOLDER: folder,
        DISPLAY: '',
        WAYLAND_DISPLAY: '',
        // No opener of addresses is found there, so that no browser comes up during a test.
        PATH: folder,
      });
      expect(said.split('\n').filter((line) => /desktop/.test(line))).toEqual([
        'No desktop window here: this machine has no display. The same window opens in a browser.',
      ]);
      expect(said).toMatch(/^Ledgewright is at http/m);
      expect(code).toBe(0);
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  },
);

test('the window is built where a part is missing or a source is newer, and not again', () => {
  const root = mkdtempSync(join(tmpdir(), 'ledgewright-built-'));
  const touch = (file: string, second: number) => {
    mkdirSync(dirname(join(root, file)), { recursive: true });
    writeFileSync(join(root, file), '');
    utimesSync(join(root, file), second, second);
  };
  try {
    touch('src-core/units/index.ts', 100);
    touch('dist/main/main.js', 300);
    touch('dist/preload/preload.cjs', 200);
    expect(needsBuild(root)).toBe(true);
    touch('dist/renderer/index.html', 300);
    expect(needsBuild(root)).toBe(false);
    touch('src-renderer/look/tokens.css', 250);
    expect(needsBuild(root)).toBe(true);
    touch('dist/preload/preload.cjs', 260);
    expect(needsBuild(root)).toBe(false);
    touch('src-main/cli/main.ts', 900);
    expect(needsBuild(root)).toBe(false);
  } finally {
    rmSync(root, { recursive: true, force: true });
  }
});
