import type { Locator, Page } from '@playwright/test';
import { expect, openExample, reachDrawing, test } from './window-test';

const QUESTIONS = ['Draw it', 'Does it stand?', 'Hold it up', 'Cut and buy', 'Pour it', 'Which way?'];

/** The page itself must have nothing to scroll: panels scroll for themselves. */
async function expectStillPage(page: Page): Promise<void> {
  const beyondPx = await page.evaluate(() => {
    const { scrollHeight, clientHeight, scrollWidth, clientWidth } = document.documentElement;
    return { down: scrollHeight - clientHeight, across: scrollWidth - clientWidth };
  });
  expect(beyondPx).toEqual({ down: 0, across: 0 });
}

async function scrollToFoot(panel: Locator): Promise<void> {
  await panel.evaluate((element) => element.scrollTo(0, element.scrollHeight));
  expect(await panel.evaluate((element) => element.scrollTop)).toBeGreaterThan(100);
}

async function isAtTop(panel: Locator): Promise<void> {
  await expect.poll(() => panel.evaluate((element) => element.scrollTop)).toBe(0);
}

test('the window never scrolls as a page, whichever question is asked', async ({ window }) => {
  const page = window;
  await reachDrawing(page);
  await openExample(page, /galley/i);
  const verdict = page.getByRole('region', { name: 'The verdict' });
  await expect(verdict.getByRole('button', { name: /^Bending, on concrete alone/ })).toBeVisible();
  await expectStillPage(page);
  for (const name of QUESTIONS) {
    await page.getByRole('radio', { name }).click();
    await expect(page.locator('main ~ section').getByRole('heading').first()).toBeVisible();
    await expectStillPage(page);
  }
});

test('another question, and another piece, are answered from the top of the panel', async ({ window }) => {
  const page = window;
  await reachDrawing(page);
  await openExample(page, /galley/i);
  await page.getByRole('radio', { name: 'Draw it' }).click();
  await scrollToFoot(page.getByRole('region', { name: 'What is drawn, as numbers' }));
  await page.getByRole('radio', { name: 'Does it stand?' }).click();
  const verdict = page.getByRole('region', { name: 'The verdict' });
  await isAtTop(verdict);
  await expect(verdict.getByRole('button', { name: /^Bending, on concrete alone/ })).toBeVisible();
  await scrollToFoot(verdict);
  await page.getByRole('navigation').getByText('Bar ledge').click();
  await isAtTop(verdict);
  // a list of the whole job stays where it is read, though its lines point at one piece after another
  await page.getByRole('radio', { name: 'Cut and buy' }).click();
  const buy = page.getByRole('region', { name: 'What is cut and bought' });
  await expect(buy.getByRole('heading', { name: 'Timber yard' })).toBeVisible();
  await scrollToFoot(buy);
  await page.getByRole('navigation').getByText('Foot ledge').click();
  expect(await buy.evaluate((element) => element.scrollTop)).toBeGreaterThan(100);
});

for (const [width, height] of [
  [1280, 720],
  [900, 600],
] as const) {
  test(`at ${width} by ${height} whether the job is saved can be read beside a long name`, async ({
    window,
  }) => {
    const page = window;
    await page.setViewportSize({ width, height });
    await reachDrawing(page);
    await openExample(page, /straight counter/i);
    const top = page.getByRole('banner').first();
    const state = top.getByText('not in a file yet');
    await expect(state).toBeVisible();
    expect(await state.evaluate((element) => element.scrollWidth - element.clientWidth)).toBe(0);
    const menu = (await top.getByRole('button', { name: 'Menu' }).boundingBox())!;
    const words = (await state.boundingBox())!;
    const first = (await top.getByRole('radio', { name: 'Draw it' }).boundingBox())!;
    expect(menu.x + menu.width).toBeLessThanOrEqual(words.x);
    expect(words.x + words.width).toBeLessThanOrEqual(first.x);
  });
}
