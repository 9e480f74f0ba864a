/** A window for each test: the built app, served by the real loopback host with a folder of its own. */
import type { ChildProcess } from 'node:child_process';
import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Locator, Page } from '@playwright/test';
import { test as base, expect } from '@playwright/test';

/** How long the host may take to come up, ms. */
const HOST_PATIENCE_MS = 30_000;

export interface Host {
  /** With the token of the run. */
  readonly address: string;
  /** Ends the process at once, as a crash does. */
  readonly kill: () => Promise<void>;
}

export interface Site {
  /** Folder of the user, with the jobs, drafts and recent list below it. */
  readonly folder: string;
  readonly startHost: () => Promise<Host>;
}

export const test = base.extend<{ site: Site; window: Page }>({
  // biome-ignore lint/correctness/noEmptyPattern: the runner reads which fixtures are wanted from this pattern
  site: async ({}, use) => {
    const folder = mkdtempSync(join(tmpdir(), 'ledgewright-window-'));
    const running: Host[] = [];
    await use({
      folder,
      startHost: async () => {
        const host = await startHost(folder);
        running.push(host);
        return host;
      },
    });
    for (const host of running) await host.kill();
    rmSync(folder, { recursive: true, force: true });
  },
  /** The first start: the quick check is open. A fault on the page fails the test. */
  window: async ({ site, page }, use) => {
    const faults: string[] = [];
    page.on('pageerror', (fault) => faults.push(fault.message));
    page.on('console', (said) => {
      if (said.type() === 'error') faults.push(said.text());
    });
    await page.goto((await site.startHost()).address);
    await use(page);
    expect(faults).toEqual([]);
  },
});

export { expect };

async function startHost(folder: string): Promise<Host> {
  const child = spawn(
    process.execPath,
    [
      ...['--import', 'tsx', 'src-main/browser-host/main.ts', '--no-browser'],
      ...['--user-folder', folder, '--job-folder', folder],
    ],
    { stdio: ['ignore', 'pipe', 'inherit'] },
  );
  const address = await addressOf(child);
  const ended = new Promise<void>((resolve) => child.once('exit', () => resolve()));
  return {
    address,
    kill: async () => {
      child.kill('SIGKILL');
      await ended;
    },
  };
}

function addressOf(child: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    let said = '';
    const timer = setTimeout(() => reject(new Error(`the host gave no address: ${said}`)), HOST_PATIENCE_MS);
    child.stdout?.on('data', (part: Buffer) => {
      said += part.toString();
      const [address] = /http:\/\/127\.0\.0\.1:\d+\/#token=\S+/.exec(said) ?? [];
      if (address === undefined) return;
      clearTimeout(timer);
      resolve(address);
    });
    child.once('exit', (code) => reject(new Error(`the host ended with ${code}: ${said}`)));
  });
}

/** Leaves the first sheet, where one is open, and waits for the whole verdict of the selected piece. */
export async function reachDrawing(page: Page): Promise<void> {
  const dialog = page.getByRole('dialog');
  await expect(dialog).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(dialog).toBeHidden();
}

/** Chooses a command of the menu. */
export async function chooseCommand(page: Page, name: string): Promise<void> {
  await page.getByRole('button', { name: 'Menu' }).click();
  await page.getByRole('menuitem', { name }).click();
}

/** Opens an example by its name, and waits until it has taken the place of the job before it. */
export async function openExample(page: Page, name: string | RegExp): Promise<void> {
  await chooseCommand(page, 'Open an example');
  const sheet = page.getByRole('dialog');
  await sheet.getByRole('button', { name }).click();
  await expect(sheet).toBeHidden();
}

/** Types into a field and commits it. */
export async function commit(field: Locator, text: string): Promise<void> {
  await field.fill(text);
  await field.press('Enter');
}
