import { existsSync } from 'node:fs';
import { join } from 'node:path';
import type { Locator, Page } from '@playwright/test';
import { expect, reachDrawing, test } from './window-test';

/** Tab stops that a window of one small piece may have. */
const MOST_TABS = 140;

/** Presses Tab until the focus is on it; fails where it is never reached. */
async function tabTo(page: Page, wanted: Locator): Promise<void> {
  for (let tab = 0; tab < MOST_TABS; tab++) {
    if (await wanted.evaluate((element) => element === document.activeElement)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`Tab never reached ${wanted}`);
}

test('from the first start to a saved job that stands, without a mouse', async ({ site, window }) => {
  const page = window;
  const quick = page.getByRole('dialog');
  await expect(quick.getByRole('region', { name: 'Verdict', exact: true })).toContainText('Needs');
  await tabTo(page, quick.getByRole('textbox', { name: 'Thickness' }));
  await page.keyboard.press('Control+a');
  await page.keyboard.type('2');
  await page.keyboard.press('Enter');
  await tabTo(page, quick.getByRole('button', { name: 'Open this in the drawing' }));
  await page.keyboard.press('Enter');
  await expect(quick).toBeHidden();

  await page.keyboard.press('Alt+2');
  const verdict = page.getByRole('region', { name: 'The verdict' });
  const words = verdict.getByRole('heading', { level: 2 }).first();
  await expect(words).toHaveText(/^Needs/);
  const front = page.getByRole('button', { name: /^Edge 1, 96 in long/ });
  await tabTo(page, front);
  await page.keyboard.press('Shift+ArrowUp');
  await expect(page.getByRole('button', { name: 'Undo: Move edge' })).toBeVisible();
  await page.keyboard.press('Control+z');

  const use = verdict.getByRole('button', { name: /^Use it/ }).first();
  await expect(use).toBeEnabled();
  await tabTo(page, use);
  await page.keyboard.press('Enter');
  await expect(words).toHaveText(/^Holds/);

  await page.keyboard.press('Control+s');
  const save = page.getByRole('dialog', { name: 'Save the job' });
  const folder = save.getByRole('textbox', { name: 'Folder' });
  await tabTo(page, folder);
  await page.keyboard.press('Control+a');
  await page.keyboard.type(site.folder);
  await page.keyboard.press('Enter');
  await expect(folder).toHaveValue(site.folder);
  await tabTo(page, save.getByLabel('File name'));
  await page.keyboard.press('Control+a');
  await page.keyboard.type('porch');
  await page.keyboard.press('Enter');
  await expect(save).toBeHidden();
  await expect.poll(() => existsSync(join(site.folder, 'porch.json'))).toBe(true);
});

test('a sheet keeps the focus, Escape closes it, and the focus goes back to where it was', async ({
  window,
}) => {
  const page = window;
  await reachDrawing(page);
  const menu = page.getByRole('button', { name: 'Menu' });
  await tabTo(page, menu);
  await page.keyboard.press('F1');
  const keys = page.getByRole('dialog');
  await expect(keys).toBeVisible();
  for (let tab = 0; tab < 6; tab++) {
    await page.keyboard.press('Tab');
    expect(await keys.evaluate((element) => element.contains(document.activeElement))).toBe(true);
  }
  await page.keyboard.press('Escape');
  await expect(keys).toBeHidden();
  await expect(menu).toBeFocused();
});
