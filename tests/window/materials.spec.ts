import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { expect, openExample, reachDrawing, test } from './window-test';

/** The straight counter, 144 x 25-1/2 in, with "Cut and buy" asked and the plan shown. */
async function reachList(page: Page) {
  await reachDrawing(page);
  await openExample(page, /straight counter/i);
  await page.getByRole('radio', { name: 'Plan' }).click();
  await page.getByRole('radio', { name: 'Cut and buy' }).click();
  const panel = page.getByRole('region', { name: 'What is cut and bought' });
  await expect(panel.getByRole('heading', { level: 2 }).first()).toHaveText(/^\d+ things to buy/);
  return panel;
}

/** Class of a handle in the plan whose part is selected. */
const PICKED = /picked/;

/** Line of the profiled edge forms: the front and both ends, long point to long point. */
const FORM = /^Edge form, eased/;

test('the list says what to buy by where one buys it, and each line leads to its places in the drawing', async ({
  window,
}) => {
  const page = window;
  const panel = await reachList(page);
  for (const name of ['Timber yard', "Builders' merchant", 'Hardware', 'Protection']) {
    await expect(panel.getByRole('heading', { name, exact: true })).toBeVisible();
  }
  const form = panel.getByRole('button', { name: FORM });
  // 144 in and 1-1/2 in at either mitre; 25-1/2 in to the wall past a gap of 1/8 in, and a mitre, twice: 147 + 2 x 27-1/8 in
  await expect(form).toContainText('sticks of 8 ft');
  await expect(form).toContainText(`takes 16' 9-1/4"`);
  await expect(panel.getByRole('button', { name: /^Bagged countertop mix/ })).toContainText('bags of 80 lb');
  // the example has no stock of its own
  await expect(panel.getByText(/^No line has a price\./)).toBeVisible();

  await form.click();
  const places = panel.getByRole('list', { name: 'Where it is for' });
  const source = places.getByRole('button', { name: 'Counter, edge 4' });
  const handle = page.getByRole('button', { name: /^Edge 4,/ });
  await expect(handle).not.toHaveClass(PICKED);
  await source.click();
  await expect(source).toHaveAttribute('aria-pressed', 'true');
  await expect(handle).toHaveClass(PICKED);

  // the keyboard reaches the next source, which is marked while it has the focus and picked out by Enter
  const other = places.getByRole('button', { name: 'Counter, edge 2' });
  await other.focus();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('button', { name: /^Edge 2,/ })).toHaveClass(PICKED);
  await expect(handle).not.toHaveClass(PICKED);
});

test('numbers follow the front while it is dragged, and stand as they were after one undo', async ({
  window,
}) => {
  const page = window;
  const panel = await reachList(page);
  const form = panel.getByRole('button', { name: FORM });
  const mix = panel.getByRole('button', { name: /^Bagged countertop mix/ });
  const before = { form: await form.textContent(), mix: await mix.textContent() };

  const box = (await page.getByRole('button', { name: /^Edge 1,/ }).boundingBox())!;
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  for (let step = 1; step <= 10; step++) {
    await page.mouse.move(x, y + step * 5);
    await page.waitForTimeout(40);
  }
  await expect(form).not.toHaveText(before.form ?? '');
  await expect(mix).not.toHaveText(before.mix ?? '');
  await expect(panel.getByRole('status')).not.toHaveText(/Changed since/);
  const during = await form.textContent();
  await page.mouse.up();
  await expect(panel.getByRole('status')).toHaveText('');
  expect(await form.textContent()).toBe(during);

  await page.getByRole('button', { name: 'Undo: Move edge' }).click();
  await expect.poll(() => form.textContent()).toBe(before.form);
  await expect.poll(() => mix.textContent()).toBe(before.mix);
});

test('a line is ticked as bought, the count says so, and undo takes the tick back', async ({ window }) => {
  const page = window;
  const panel = await reachList(page);
  const title = panel.getByRole('heading', { level: 2 }).first();
  const tick = panel.getByRole('checkbox', { name: /^Bought: Edge form, eased/ });
  await tick.focus();
  await page.keyboard.press('Space');
  await expect(tick).toBeChecked();
  await expect(title).toHaveText(/, 1 ticked$/);
  await page.getByRole('button', { name: /^Undo: Tick Edge form/ }).click();
  await expect(tick).not.toBeChecked();
  await expect(title).not.toHaveText(/ticked/);
});

test.describe('in the dark theme, at 640 px wide', () => {
  test.use({ colorScheme: 'dark', viewport: { width: 640, height: 720 } });

  test('cuts, boards, openings and steel unfold without a fault that axe finds, and none is wider than the window', async ({
    window,
  }) => {
    const page = window;
    const panel = await reachList(page);
    for (const name of [/^Edge forms:/, /^Tools and protection/, /^Backing boards:/, /^Steel:/]) {
      await panel.getByRole('button', { name }).click();
    }
    await expect(panel.getByText('Stick 1, 96 in').first()).toBeVisible();
    await expect(panel.getByRole('img', { name: /^Plan of the boards under the slab/ })).toBeVisible();
    await expect(panel.getByRole('img', { name: /^Plan of the steel/ })).toBeVisible();
    const { violations } = await new AxeBuilder({ page })
      .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'])
      .analyze();
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' | ')}`)).toEqual(
      [],
    );
    expect(await panel.evaluate(({ scrollWidth, clientWidth }) => scrollWidth - clientWidth)).toBe(0);
  });
});
