import { commit, expect, test } from './window-test';

test('a first start asks eight things of a bar ledge and says that it needs a tie', async ({ window }) => {
  const page = window;
  await expect(page.getByRole('heading', { name: 'Will it stand?' })).toBeVisible();
  const fields = page.getByRole('region', { name: 'The piece' });
  await expect(fields.getByRole('textbox')).toHaveCount(4);
  const verdict = page.getByRole('region', { name: 'Verdict', exact: true });
  await expect(verdict).toContainText(/Needs a (tie|corbel)/);
  await expect(verdict).toContainText('What to change:');

  // another thickness is another question, and an answer that cannot be keeps the old one
  await commit(fields.getByLabel('Thickness'), '2 1/2');
  await expect(fields.getByLabel('Thickness')).toHaveValue('2-1/2 in');
  await commit(fields.getByLabel('Thickness'), 'two');
  await expect(fields.getByText(/two/)).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(fields.getByLabel('Thickness')).toHaveValue('2-1/2 in');
});

test('the quick check opens in the drawing with the verdict it gave', async ({ window }) => {
  const page = window;
  const verdict = page.getByRole('region', { name: 'Verdict', exact: true });
  await expect(verdict).toContainText(/Needs a/);
  const said =
    (await verdict
      .getByText(/^Needs a/)
      .first()
      .textContent()) ?? '';
  await page.getByRole('button', { name: 'Open this in the drawing' }).click();
  await expect(page.getByRole('dialog')).toBeHidden();
  const panel = page.getByRole('region', { name: 'The verdict' });
  await expect(panel.getByRole('heading', { name: said, level: 2 })).toBeVisible();
  await expect(panel.getByRole('button', { name: /Tipping|turn/i }).first()).toBeVisible();
});
