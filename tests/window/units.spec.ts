import { expect, openExample, reachDrawing, test } from './window-test';

test('millimetres are a way of showing: numbers change their words, the job keeps its sizes', async ({
  window,
}) => {
  const page = window;
  await reachDrawing(page);
  await openExample(page, /bar ledge/i);
  await page.getByRole('radio', { name: 'Draw it' }).click();
  const thickness = page
    .getByRole('region', { name: 'What is drawn, as numbers' })
    .getByLabel('Thickness')
    .first();
  await expect(thickness).toHaveValue('1-1/2 in');
  await page.getByRole('button', { name: /Shown in inches/ }).click();
  await expect(thickness).toHaveValue('38.1 mm');
  await expect(page.getByRole('navigation', { name: 'Pieces of the job' })).toContainText('kg');
  await thickness.fill('4 cm');
  await thickness.press('Enter');
  await expect(thickness).toHaveValue('40 mm');
  await page.getByRole('button', { name: /^Undo: / }).click();
  await expect(thickness).toHaveValue('38.1 mm');
  await page.getByRole('button', { name: /Shown in millimetres/ }).click();
  await expect(thickness).toHaveValue('1-1/2 in');
});
