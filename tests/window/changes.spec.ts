import { expect, openExample, reachDrawing, test } from './window-test';

test('a change that was tried makes the bar ledge stand, and undo takes it back', async ({ window }) => {
  const page = window;
  await reachDrawing(page);
  await openExample(page, /bar ledge/i);
  const panel = page.getByRole('region', { name: 'The verdict' });
  await expect(panel.getByRole('heading', { level: 2 }).first()).toContainText('Needs');
  const offers = panel.getByRole('button', { name: /^Use it/ });
  await expect(offers).not.toHaveCount(0);
  await offers.first().click();
  await expect(page.getByRole('status').filter({ hasText: 'Undo brings it back' })).toBeVisible();
  await expect(panel.getByRole('heading', { name: /^Holds/, level: 2 })).toBeVisible();
  await page.getByRole('button', { name: /^Undo: Use/ }).click();
  await expect(panel.getByRole('heading', { name: /^Needs/, level: 2 })).toBeVisible();
  await page.getByRole('button', { name: /^Redo: Use/ }).click();
  await expect(panel.getByRole('heading', { name: /^Holds/, level: 2 })).toBeVisible();
});

test('a check opens its workings with formula, numbers and source', async ({ window }) => {
  const page = window;
  await reachDrawing(page);
  await openExample(page, /bar ledge/i);
  const panel = page.getByRole('region', { name: 'The verdict' });
  const check = panel.getByRole('button', { name: /Bending, on concrete alone/ });
  await check.click();
  await expect(check).toHaveAttribute('aria-expanded', 'true');
  await expect(panel.getByText(/ACI 318-19/).first()).toBeVisible();
  await panel.getByRole('button', { name: 'What this check means' }).click();
  const manual = page.getByRole('dialog');
  await expect(manual.getByRole('heading', { name: 'What it asks' })).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(manual).toBeHidden();
});
