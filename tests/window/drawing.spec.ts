import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { readJobText } from '../../src-core/job';
import { commit, expect, openExample, reachDrawing, test } from './window-test';

test('an L counter is drawn side by side with typed lengths, gets a sink and a cabinet, and is saved as drawn', async ({
  site,
  window,
}) => {
  const page = window;
  await reachDrawing(page);
  await openExample(page, /gate-pier cap/i);
  await page.getByRole('radio', { name: 'Plan' }).click();
  await page.getByRole('button', { name: 'Draw a piece' }).click();
  const sheet = page.getByRole('application', { name: 'Drawing a piece' });
  await expect(sheet).toBeFocused();
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('Space');
  const sides = [
    ['ArrowRight', '96'],
    ['ArrowUp', '5ft'],
    ['ArrowLeft', '25-1/2'],
    ['ArrowDown', '34 1/2'],
    ['ArrowLeft', '70.5'],
  ] as const;
  for (const [arrow, length] of sides) {
    await page.keyboard.press(arrow);
    await page.keyboard.type(length);
    await page.keyboard.press('Enter');
  }
  await page.keyboard.press('Enter');
  await expect(sheet).toBeHidden();

  const verdict = page.getByRole('region', { name: 'The verdict' });
  await expect(verdict.getByRole('heading', { level: 2 }).first()).toContainText('Needs support');

  await page.getByRole('radio', { name: 'Draw it' }).click();
  const panel = page.getByRole('region', { name: 'What is drawn, as numbers' });
  await panel.getByRole('button', { name: 'Add an opening' }).click();
  await page.getByRole('menuitem', { name: 'Sink, dropped in' }).click();
  await panel.getByRole('button', { name: /back to/i }).click();
  await panel.getByRole('button', { name: 'Add a support' }).click();
  await page.getByRole('menuitem', { name: 'Cabinet' }).click();
  await panel.getByRole('button', { name: /back to/i }).click();
  await commit(panel.getByLabel('Thickness').first(), '2');

  await page.keyboard.press('Control+s');
  const save = page.getByRole('dialog', { name: 'Save the job' });
  await commit(save.getByRole('textbox', { name: 'Folder' }), site.folder);
  await expect(save.getByRole('textbox', { name: 'Folder' })).toHaveValue(site.folder);
  await save.getByLabel('File name').fill('corner');
  await save.getByRole('button', { name: 'Save' }).click();
  await expect(save).toBeHidden();

  const reading = readJobText(readFileSync(join(site.folder, 'corner.json'), 'utf8'));
  const piece = reading.ok ? reading.job.pieces.at(-1) : undefined;
  const [first] = piece?.corners ?? [];
  const from = piece?.corners.map(({ xIn, yIn }) => [xIn - first!.xIn, yIn - first!.yIn]);
  expect(from).toEqual([
    [0, 0],
    [96, 0],
    [96, 60],
    [70.5, 60],
    [70.5, 25.5],
    [0, 25.5],
  ]);
  expect(piece?.cutouts[0]?.sink?.mounting).toBe('dropped-in');
  expect(piece?.supports[0]?.kind).toBe('cabinet');
  expect(piece?.thicknessIn).toBe(2);
});

test('the front of a straight counter is dragged out until it stands no more, and one undo brings it back', async ({
  window,
}) => {
  const page = window;
  await reachDrawing(page);
  await openExample(page, /straight counter/i);
  await page.getByRole('radio', { name: 'Plan' }).click();
  const words = page.getByRole('region', { name: 'The verdict' }).getByRole('heading', { level: 2 }).first();
  await expect(words).toHaveText(/^Holds/);
  await expect(page.getByText('Looking at the days before it.')).toBeHidden();

  const edge = page.getByRole('button', { name: /^Edge 1,/ });
  const box = (await edge.boundingBox())!;
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  for (let step = 1; step <= 12; step++) {
    await page.mouse.move(x, y + step * 9);
    await page.waitForTimeout(40);
  }
  await expect(words).not.toHaveText(/^Holds$/);
  await page.mouse.up();
  await expect(words).toHaveText(/^Needs/);
  await page.getByRole('button', { name: 'Undo: Move edge' }).click();
  await expect(words).toHaveText(/^Holds/);
  await expect(page.getByRole('button', { name: 'Nothing to undo' })).toBeVisible();
});

test('a size typed into a dimension moves the edge, and a wrong one says why and changes nothing', async ({
  window,
}) => {
  const page = window;
  await reachDrawing(page);
  await openExample(page, /straight counter/i);
  await page.getByRole('radio', { name: 'Plan' }).click();
  const plan = page.getByRole('region', { name: /^Plan/ });
  const depth = plan.getByRole('button', { name: /: 25-1\/2 in$/ }).first();
  await depth.click();
  const field = plan.getByRole('textbox');
  await commit(field, 'about two feet');
  await expect(plan.getByText(/about two feet/)).toBeVisible();
  await expect(field).toBeVisible();
  await commit(field, '2ft 2');
  await expect(plan.getByRole('button', { name: /: 26 in$/ }).first()).toBeVisible();
});
