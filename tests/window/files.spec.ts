import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { readJobText } from '../../src-core/job';
import { chooseCommand, commit, expect, openExample, reachDrawing, test } from './window-test';

test('a saved job is a whole file, and unsaved work outlives a host that is killed', async ({
  site,
  page,
}) => {
  const jobs = join(site.folder, 'jobs');
  mkdirSync(jobs);
  const file = join(jobs, 'porch-ledge.json');
  const first = await site.startHost();
  await page.goto(first.address);
  await reachDrawing(page);
  await openExample(page, /bar ledge/i);
  await page.getByRole('radio', { name: 'Draw it' }).click();
  const panel = page.getByRole('region', { name: 'What is drawn, as numbers' });
  await commit(panel.getByLabel('Thickness').first(), '2');

  await page.keyboard.press('Control+s');
  const save = page.getByRole('dialog', { name: 'Save the job' });
  await commit(save.getByRole('textbox', { name: 'Folder' }), jobs);
  await expect(save.getByRole('textbox', { name: 'Folder' })).toHaveValue(jobs);
  await save.getByLabel('File name').fill('porch-ledge');
  await save.getByRole('button', { name: 'Save' }).click();
  await expect(save).toBeHidden();
  await expect(page.getByText('saved', { exact: true })).toBeVisible();
  const saved = readJobText(readFileSync(file, 'utf8'));
  expect(saved.ok && saved.job.pieces[0]?.thicknessIn).toBe(2);

  // more work, not saved; then the host is gone as in a power cut
  await commit(panel.getByLabel('Thickness').first(), '2-1/4');
  await expect(page.getByText('not saved')).toBeVisible();
  await expect
    .poll(() => readdirText(site.folder).includes('2.25'), { message: 'the draft is kept' })
    .toBe(true);
  await first.kill();

  const second = await site.startHost();
  await page.goto('about:blank');
  await page.goto(second.address);
  const found = page.getByRole('alertdialog', { name: /Unsaved work found/ });
  await found.getByRole('button', { name: 'Recover it' }).click();
  await expect(found).toBeHidden();
  await page.getByRole('radio', { name: 'Draw it' }).click();
  await expect(panel.getByLabel('Thickness').first()).toHaveValue('2-1/4 in');
  await page.keyboard.press('Control+s');
  await expect(page.getByText('saved', { exact: true })).toBeVisible();
  const again = readJobText(readFileSync(file, 'utf8'));
  expect(again.ok && again.job.pieces[0]?.thicknessIn).toBe(2.25);

  // a third start offers nothing: what was saved is no lost work
  await second.kill();
  const third = await site.startHost();
  await page.goto('about:blank');
  await page.goto(third.address);
  await expect(page.getByRole('heading', { name: 'Ledgewright' })).toBeVisible();
  await expect(page.getByRole('alertdialog')).toBeHidden();
});

test('a broken file says what is wrong and leaves the job that is open', async ({ site, window }) => {
  const page = window;
  await reachDrawing(page);
  await openExample(page, /straight counter/i);
  await expect(page.getByRole('banner').first()).toContainText(/straight counter/i);
  const broken = join(site.folder, 'broken.json');
  writeFileSync(broken, '{"format":"ledgewright-job","version":1,"pieces":[{"thicknessIn":"thick"}]}');
  await chooseCommand(page, 'Open...');
  const open = page.getByRole('dialog', { name: 'Open a job' });
  await commit(open.getByRole('textbox', { name: 'Folder or job file' }), broken);
  await expect(page.getByRole('status').filter({ hasText: 'was not opened' })).toBeVisible();
  await expect(page.getByText(/thicknessIn/).first()).toBeVisible();
  await expect(page.getByRole('banner').first()).toContainText(/straight counter/i);
  expect(existsSync(broken)).toBe(true);
});

test('a job file that is dropped on the window opens, after asking about unsaved changes', async ({
  window,
}) => {
  const page = window;
  await reachDrawing(page);
  await openExample(page, /bar ledge/i);
  await page.getByRole('radio', { name: 'Draw it' }).click();
  const panel = page.getByRole('region', { name: 'What is drawn, as numbers' });
  await commit(panel.getByLabel('Thickness').first(), '2');
  await dropFile(page, 'counter.json', readFileSync('assets/jobs/straight-counter.json', 'utf8'));
  const asked = page.getByRole('alertdialog', { name: /Keep the changes/ });
  await asked.getByRole('button', { name: 'Cancel' }).click();
  await expect(asked).toBeHidden();
  await expect(page.getByRole('banner').first()).toContainText(/bar ledge/i);

  await dropFile(page, 'counter.json', readFileSync('assets/jobs/straight-counter.json', 'utf8'));
  await asked.getByRole('button', { name: "Don't keep" }).click();
  await expect(page.getByRole('banner').first()).toContainText(/straight counter/i);
  await expect(page.getByRole('navigation').getByText('Counter', { exact: true })).toBeVisible();
});

test('a dropped file that is no job leaves the job that is open, and is said to be none', async ({
  window,
}) => {
  const page = window;
  await reachDrawing(page);
  await openExample(page, /straight counter/i);
  for (const [name, text] of [
    ['notes.txt', 'two bags short, ask for more'],
    ['list.json', '{"format":"another","rows":[]}'],
  ] as const) {
    await dropFile(page, name, text);
    await expect(page.getByRole('status').filter({ hasText: name })).toContainText('was not opened');
    await expect(page.getByRole('banner').first()).toContainText(/straight counter/i);
    await expect(page.getByRole('navigation').getByText('Counter', { exact: true })).toBeVisible();
  }
});

/** Drops a file over the drawing, as a hand does that drags it from a folder. */
async function dropFile(page: Page, name: string, text: string): Promise<void> {
  const data = await page.evaluateHandle(
    ([fileName, content]) => {
      const transfer = new DataTransfer();
      transfer.items.add(new File([content], fileName));
      return transfer;
    },
    [name, text] as const,
  );
  const drawing = page.getByRole('main');
  await drawing.dispatchEvent('dragover', { dataTransfer: data });
  await drawing.dispatchEvent('drop', { dataTransfer: data });
}

/** All text that the host keeps for its user. */
function readdirText(folder: string): string {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith('.json') && !entry.parentPath.endsWith('jobs'))
    .map((entry) => readFileSync(join(entry.parentPath, entry.name), 'utf8'))
    .join('\n');
}
