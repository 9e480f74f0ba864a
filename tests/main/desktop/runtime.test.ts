import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { _electron } from '@playwright/test';
import { expect, test } from 'vitest';
import { builtApp } from '../../support/built-app';
import { PROJECT } from '../host/place-here';

interface Runtime {
  readonly installedRuntime: (packageFolder: string) => string | null;
  readonly findRuntime: (
    packageFolder: string,
    env: NodeJS.ProcessEnv,
    say: (line: string) => void,
    probe: (address: string) => Promise<boolean>,
  ) => Promise<{ readonly ok: boolean; readonly program?: string; readonly why?: string }>;
  readonly displayTrouble: (env: NodeJS.ProcessEnv, platform: string) => string | null;
}

const { installedRuntime, findRuntime, displayTrouble } = (await import(
  new URL('../../../src-main/setup/electron-runtime.mjs', import.meta.url).href
)) as Runtime;

const noWord = () => undefined;
const program = installedRuntime(join(PROJECT, 'node_modules', 'electron'));
const trouble = program === null ? 'it is not installed' : displayTrouble(process.env, process.platform);

if (program === null || trouble !== null) {
  process.stdout.write(
    `The desktop window was not tried in the Electron runtime itself: ${trouble}. It was tried over the double alone.\n`,
  );
} else {
  test('the built app starts in the Electron runtime, shows its page and answers it', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'ledgewright-runtime-'));
    const app = await _electron.launch({
      executablePath: program,
      args: [...(process.getuid?.() === 0 ? ['--no-sandbox'] : []), join(builtApp(), 'main', 'main.js')],
      env: { ...(process.env as Record<string, string>), LEDGEWRIGHT_USER_FOLDER: folder },
    });
    try {
      const page = await app.firstWindow();
      expect(page.url()).toBe('app://ledgewright/');
      await page.locator('#window > *').first().waitFor();
      expect(await page.evaluate(() => window.crossOriginIsolated)).toBe(true);
      expect(await page.evaluate(() => 'require' in window || 'process' in window)).toBe(false);
    } finally {
      await app.close();
      rmSync(folder, { recursive: true, force: true });
    }
  });
}

test('the runtime counts as there only where its program is; where its source cannot be reached nothing is tried', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'ledgewright-runtime-'));
  const asked: string[] = [];
  const offline = async (address: string) => {
    asked.push(address);
    return false;
  };
  try {
    expect(
      await findRuntime(folder, { ELECTRON_MIRROR: 'https://mirror.example/' }, noWord, offline),
    ).toEqual({
      ok: false,
      why: 'it is not installed and cannot be downloaded from here',
    });
    expect(asked).toEqual(['https://mirror.example/']);
    writeFileSync(join(folder, 'path.txt'), 'electron');
    expect(installedRuntime(folder)).toBeNull();
    mkdirSync(join(folder, 'dist'));
    writeFileSync(join(folder, 'dist', 'electron'), '');
    expect(installedRuntime(folder)).toBe(join(folder, 'dist', 'electron'));
    expect(await findRuntime(folder, {}, noWord, offline)).toEqual({
      ok: true,
      program: join(folder, 'dist', 'electron'),
    });
    expect(asked).toHaveLength(1);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});

test('a download that fails is said to have failed', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'ledgewright-runtime-'));
  writeFileSync(join(folder, 'install.js'), 'process.exit(1);');
  try {
    const said: string[] = [];
    const found = await findRuntime(
      folder,
      {},
      (line) => said.push(line),
      async () => true,
    );
    expect(found).toEqual({ ok: false, why: 'its download failed' });
    expect(said).toEqual([expect.stringContaining('Downloading the runtime')]);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});

test('Linux without a display has no desktop window; a Mac and Windows always have one', () => {
  expect(displayTrouble({}, 'linux')).toBe('this machine has no display');
  expect(displayTrouble({ DISPLAY: ':0' }, 'linux')).toBeNull();
  expect(displayTrouble({ WAYLAND_DISPLAY: 'wayland-0' }, 'linux')).toBeNull();
  expect([displayTrouble({}, 'darwin'), displayTrouble({}, 'win32')]).toEqual([null, null]);
});
