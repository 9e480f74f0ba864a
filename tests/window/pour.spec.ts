import { mkdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import AxeBuilder from '@axe-core/playwright';
import type { Job } from '../../src-core/job';
import { readJobText } from '../../src-core/job';
import { pourPlan, tickIdOf } from '../../src-core/pour';
import { chooseCommand, commit, expect, openExample, reachDrawing, test } from './window-test';

const PANEL = { name: 'The day of the pour' };

function galley(): Job {
  const reading = readJobText(readFileSync('assets/jobs/boathouse-galley.json', 'utf8'));
  if (!reading.ok) throw new Error('the example cannot be read');
  return reading.job;
}

test('the batches of the galley add up to its bags, and a tick is undone, saved and found again', async ({
  site,
  window,
}) => {
  const page = window;
  const jobs = join(site.folder, 'jobs');
  mkdirSync(jobs);
  const [pour] = pourPlan(galley()).pours;
  const count = pour!.batches.length;
  await reachDrawing(page);
  await openExample(page, /galley/i);
  await page.getByRole('radio', { name: 'Pour it' }).click();
  const panel = page.getByRole('region', PANEL);
  const batches = panel.getByRole('checkbox', { name: /^Batch \d+, \d+ bags?$/ });
  await expect(batches).toHaveCount(count);
  const names = await panel.getByText(/^Batch \d+, \d+ bags?$/).allTextContents();
  const bags = names.map((name) => Number(/(\d+) bags?$/.exec(name)![1]));
  expect(bags.reduce((sum, each) => sum + each, 0)).toBe(pour!.bags!.bags);
  await expect(panel.getByText(`${pour!.bags!.bags} bags`, { exact: true })).toBeVisible();

  const second = panel.getByRole('checkbox', { name: /^Batch 2,/ });
  await second.focus();
  await page.keyboard.press('Space');
  await expect(second).toBeChecked();
  await expect(panel.getByText(`1 of ${count} mixed`)).toBeVisible();
  await page.getByRole('button', { name: 'Undo: Tick batch 2 of day 0' }).click();
  await expect(second).not.toBeChecked();
  await expect(panel.getByText(`0 of ${count} mixed`)).toBeVisible();
  await page.getByRole('button', { name: 'Redo: Tick batch 2 of day 0' }).click();
  await expect(second).toBeChecked();

  await page.keyboard.press('Control+s');
  const save = page.getByRole('dialog', { name: 'Save the job' });
  const folder = save.getByRole('textbox', { name: 'Folder' });
  await expect(folder).toHaveValue(site.folder);
  await commit(folder, jobs);
  await expect(folder).toHaveValue(jobs);
  await save.getByLabel('File name').fill('poured');
  await save.getByRole('button', { name: 'Save' }).click();
  await expect(save).toBeHidden();
  const saved = readJobText(readFileSync(join(jobs, 'poured.json'), 'utf8'));
  expect(saved.ok && saved.job.ticks).toContainEqual({
    id: tickIdOf(pour!.batches[1]!),
    done: true,
  });

  await openExample(page, /bar ledge/i);
  await expect(panel.getByText(/^0 of \d+ mixed$/)).toBeVisible();
  await chooseCommand(page, 'Open...');
  const open = page.getByRole('dialog', { name: 'Open a job' });
  const place = open.getByRole('textbox', { name: 'Folder or job file' });
  await expect(place).not.toHaveValue('');
  await commit(place, join(jobs, 'poured.json'));
  await expect(open).toBeHidden();
  await expect(panel.getByText(`1 of ${count} mixed`)).toBeVisible();
  await expect(second).toBeChecked();
});

test('another pour is chosen, its pieces are selected by name, and its times follow the first water', async ({
  window,
}) => {
  const page = window;
  await reachDrawing(page);
  await openExample(page, /galley/i);
  await page.getByRole('radio', { name: 'Pour it' }).click();
  const panel = page.getByRole('region', PANEL);
  await expect(panel.getByRole('heading', { name: /^Day 0/ })).toBeVisible();
  await panel.getByRole('button', { name: /Which of 4 pours/ }).click();
  await page.getByRole('option', { name: /^Day 2: Fish-cleaning bench/ }).click();
  await expect(panel.getByRole('heading', { name: /^Day 2/ })).toBeVisible();
  const pieces = page.getByRole('navigation', { name: 'Pieces of the job' });
  await expect(pieces.getByRole('option', { name: /Fish-cleaning bench/ })).toHaveAttribute(
    'aria-selected',
    'true',
  );
  await panel
    .getByRole('button', { name: /^Stove hearth, select in the drawing/ })
    .first()
    .click();
  await expect(pieces.getByRole('option', { name: /Stove hearth/ })).toHaveAttribute('aria-selected', 'true');
  await expect(panel.getByRole('heading', { name: /^Day 2/ })).toBeVisible();

  const first = panel
    .getByRole('listitem')
    .filter({ has: page.getByRole('checkbox', { name: /^Batch 1,/ }) });
  await expect(first).toContainText('08:00');
  const start = panel.getByRole('textbox', { name: 'First water at' });
  await commit(start, 'noon');
  await expect(panel.getByText(/Write a time of day/)).toBeVisible();
  await commit(start, '6:30');
  await expect(first).toContainText('06:30');
  await expect(first).not.toContainText('08:00');
});

test.describe('in a dark window 640 px wide', () => {
  test.use({ colorScheme: 'dark', viewport: { width: 640, height: 720 } });

  test('the panel fits, and axe finds no fault in it', async ({ window }) => {
    const page = window;
    await reachDrawing(page);
    await openExample(page, /galley/i);
    await page.getByRole('radio', { name: 'Pour it' }).click();
    const panel = page.getByRole('region', PANEL);
    await panel.getByRole('checkbox', { name: /^Batch 1,/ }).focus();
    await page.keyboard.press('Space');
    await panel.getByRole('button', { name: 'Bucket by bucket' }).click();
    await expect(panel.getByRole('table')).toBeVisible();
    const wide = await panel.evaluate(({ scrollWidth, clientWidth }) => scrollWidth - clientWidth);
    expect(wide).toBe(0);
    const { violations } = await new AxeBuilder({ page })
      .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'])
      .analyze();
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' | ')}`)).toEqual(
      [],
    );
  });
});
