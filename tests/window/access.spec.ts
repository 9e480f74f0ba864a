import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { chooseCommand, expect, openExample, reachDrawing, test } from './window-test';

async function violations(page: Page): Promise<string[]> {
  const { violations: found } = await new AxeBuilder({ page })
    .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'])
    .analyze();
  return found.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 160)).join(' | ')}`);
}

for (const theme of ['light', 'dark'] as const) {
  test.describe(`in the ${theme} theme`, () => {
    test.use({ colorScheme: theme });

    test('the quick check has no fault that axe finds', async ({ window }) => {
      await expect(window.getByRole('region', { name: 'Verdict', exact: true })).toContainText(/Needs a/);
      expect(await violations(window)).toEqual([]);
    });

    test('the window has none, whichever question is asked and whichever view is shown', async ({
      window,
    }) => {
      const page = window;
      await reachDrawing(page);
      await openExample(page, /bar ledge/i);
      const panel = page.getByRole('region', { name: 'The verdict' });
      await expect(panel.getByRole('button', { name: /^Use it/ })).not.toHaveCount(0);
      await panel
        .getByRole('button', { name: /Tipping/ })
        .first()
        .click();
      expect(await violations(page)).toEqual([]);
      await page.getByRole('radio', { name: 'Draw it' }).click();
      await page.getByRole('radio', { name: 'Both' }).click();
      await expect(page.getByRole('region', { name: 'What is drawn, as numbers' })).toBeVisible();
      expect(await violations(page)).toEqual([]);
      await page.getByRole('radio', { name: 'Hold it up' }).click();
      const held = page.getByRole('region', { name: 'How it is held up and swapped' });
      await expect(held.getByRole('heading', { name: 'Falsework to build' })).toBeVisible();
      expect(await violations(page)).toEqual([]);
      await page.getByRole('radio', { name: 'Cut and buy' }).click();
      const buy = page.getByRole('region', { name: 'What is cut and bought' });
      await expect(buy.getByRole('heading', { name: 'Timber yard' })).toBeVisible();
      expect(await violations(page)).toEqual([]);
      await page.getByRole('radio', { name: 'Pour it' }).click();
      const pour = page.getByRole('region', { name: 'The day of the pour' });
      await expect(pour.getByRole('heading', { name: 'Batches' })).toBeVisible();
      expect(await violations(page)).toEqual([]);
      await page.getByRole('radio', { name: 'Which way?' }).click();
      await expect(page.getByRole('region', { name: 'Two versions side by side' })).toBeVisible();
      expect(await violations(page)).toEqual([]);
    });

    test('its sheets have none', async ({ window }) => {
      const page = window;
      await reachDrawing(page);
      for (const name of ['Add a piece', 'Open...', 'Open an example', 'Save as', 'Keys', 'About']) {
        await chooseCommand(page, name);
        await expect(page.getByRole('dialog')).toBeVisible();
        expect(await violations(page)).toEqual([]);
        await page.keyboard.press('Escape');
        await expect(page.getByRole('dialog')).toBeHidden();
      }
    });
  });
}
