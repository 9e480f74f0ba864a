/** Starts the built shell over the double, in folders of its own. */
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, Page } from '@playwright/test';
import { vi } from 'vitest';
import { builtApp } from '../built-app';
import { soon } from '../soon';
import type { BrowserWindowDouble } from './browser-window';
import type { ElectronDouble } from './electron-module';
import { electronDouble } from './electron-module';

export interface DesktopOptions {
  /** Folder of the user's data; a new one where it is left out. */
  readonly userFolder?: string;
  /** Words after the program's name. */
  readonly words?: readonly string[];
  readonly isFirst?: boolean;
}

export interface Desktop extends ElectronDouble {
  readonly userFolder: string;
  readonly documents: string;
  /** The window and its loaded page; waits for both. */
  readonly shown: () => Promise<{ readonly window: BrowserWindowDouble; readonly page: Page }>;
}

export interface OpenDesktop extends Desktop {
  /** Ends it and takes its folders away. */
  readonly end: () => Promise<void>;
}

/** Starts the shell. */
export async function openDesktop(
  browser: Browser,
  { userFolder, words = [], isFirst = true }: DesktopOptions = {},
): Promise<OpenDesktop> {
  const folder = mkdtempSync(join(tmpdir(), 'ledgewright-desktop-'));
  const documents = join(folder, 'documents');
  mkdirSync(documents);
  const ownFolder = userFolder ?? join(folder, 'user');
  const double = await electronDouble({ browser, documents, isFirst });
  const end = async () => {
    await double.stop();
    rmSync(folder, { recursive: true, force: true });
  };
  const { argv } = process;
  vi.resetModules();
  vi.doMock('electron', () => double.module);
  vi.stubEnv('LEDGEWRIGHT_USER_FOLDER', ownFolder);
  try {
    process.argv = ['electron', ...words];
    await import(pathToFileURL(join(builtApp(), 'main', 'main.js')).href);
    return { ...double, userFolder: ownFolder, documents, shown: () => shown(double), end };
  } catch (error) {
    await end();
    throw error;
  } finally {
    process.argv = argv;
    vi.unstubAllEnvs();
    vi.doUnmock('electron');
  }
}

/** Runs the shell until `use` is done. */
export async function withDesktop(
  browser: Browser,
  use: (desktop: Desktop) => Promise<void>,
  options: DesktopOptions = {},
): Promise<void> {
  const desktop = await openDesktop(browser, options);
  try {
    await use(desktop);
  } finally {
    await desktop.end();
  }
}

async function shown(double: ElectronDouble): Promise<{ window: BrowserWindowDouble; page: Page }> {
  const window = await soon(() => {
    const [first] = double.windows;
    if (first === undefined) throw new Error('the shell has opened no window');
    if (!first.done.includes('show')) throw new Error('the window is not shown yet');
    return first;
  });
  const page = await window.webContents.page;
  return { window, page };
}
