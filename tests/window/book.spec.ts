import { readFileSync } from 'node:fs';
import AxeBuilder from '@axe-core/playwright';
import type { Download, Locator, Page } from '@playwright/test';
import DxfParser from 'dxf-parser';
import { readJobText } from '../../src-core/job';
import { readPdf } from '../support/read-pdf';
import { chooseCommand, expect, openExample, reachDrawing, test } from './window-test';

/** Gathering a book takes a while on a busy machine, ms. */
const BOOK_MS = 90_000;

/** Opens a sheet over an example, or over the job that the window begins with, beside its plan, which draws itself once. */
async function openSheet(
  page: Page,
  example: RegExp | null,
  command: string,
  title: string,
): Promise<Locator> {
  await reachDrawing(page);
  await page.getByRole('radio', { name: 'Plan' }).click();
  if (example !== null) await openExample(page, example);
  await chooseCommand(page, command);
  const sheet = page.getByRole('dialog', { name: title });
  await expect(sheet).toBeVisible();
  return sheet;
}

/** The file that a press of a button downloads. */
async function downloaded(page: Page, button: Locator): Promise<{ name: string; bytes: Buffer }> {
  const coming = page.waitForEvent('download', { timeout: BOOK_MS });
  await button.click();
  const download: Download = await coming;
  return { name: download.suggestedFilename(), bytes: readFileSync(await download.path()) };
}

async function faults(page: Page): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page })
    .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'])
    // it looks for the targets of links outside the tree that the pages of the book stand in
    .disableRules(['skip-link'])
    .analyze();
  return violations.map(
    ({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 160)).join(' | ')}`,
  );
}

test('the build book of a bar ledge is made, looked through, put on other paper, and saved as HTML and PDF', async ({
  window,
}) => {
  const page = window;
  const sheet = await openSheet(page, /bar ledge/i, 'Build book', 'Build book');
  const pages = sheet.locator('section.page');
  await expect(pages.first()).toBeVisible({ timeout: BOOK_MS });
  const count = await pages.count();
  expect(count).toBeGreaterThan(10);
  await expect(sheet.getByText(`${count} pages`)).toBeVisible();
  await expect(sheet.getByRole('alert')).toHaveCount(0);

  // every page is as large as its paper, and set in the bundled fonts
  const sizes = await pages.evaluateAll((all) =>
    all.map((one) => `${(one as HTMLElement).offsetWidth},${(one as HTMLElement).offsetHeight}`),
  );
  expect(new Set(sizes)).toEqual(new Set(['816,1056']));
  expect(
    await pages.first().evaluate((one) => getComputedStyle(one.querySelector('.chapter')!).fontFamily),
  ).toContain('Barlow Condensed');

  // the contents lead to their pages
  const contents = sheet.getByRole('navigation', { name: 'Contents of the book' });
  const entry = contents.getByRole('button').last();
  const [, folio] = /page (\d+)$/.exec((await entry.textContent()) ?? '') ?? [];
  await entry.click();
  await expect(sheet.getByRole('region', { name: `Page ${folio} of ${count}` })).toBeInViewport();
  await expect(pages.first()).not.toBeInViewport();
  // so do references within the pages, without leaving the window
  const link = sheet.locator('section.page nav.contents a').first();
  const target = (await link.getAttribute('href'))!;
  await link.click();
  await expect(sheet.locator(`[id="${target.slice(1)}"]`)).toBeInViewport();
  expect(page.url()).not.toContain('#');
  expect(await faults(page)).toEqual([]);

  const saved = await downloaded(page, sheet.getByRole('button', { name: 'Save as HTML' }));
  expect(saved.name).toMatch(/-build-book\.html$/);
  const html = saved.bytes.toString('utf8');
  expect(html.match(/<section class="page"/g)).toHaveLength(count);
  expect(html.match(/url\(data:font\/woff2;base64,/g)).toHaveLength(9);
  expect(html.replaceAll('http://www.w3.org/2000/svg', '')).not.toMatch(/<script|https?:|url\((?!data:|#)/);
  await expect(sheet.getByRole('status')).toContainText('downloads');

  await sheet.getByRole('radio', { name: 'A4' }).click();
  await expect(sheet.locator('.book')).toHaveClass(/a4/, { timeout: BOOK_MS });
  const a4Count = await pages.count();
  const printed = await downloaded(page, sheet.getByRole('button', { name: 'Save as PDF' }));
  const { sizesPt, outline } = await readPdf(printed.bytes);
  expect(sizesPt).toHaveLength(a4Count);
  expect(Math.abs(sizesPt[0]![0]! - (210 / 25.4) * 72)).toBeLessThan(0.75);
  expect(outline.length).toBeGreaterThan(0);

  await page.keyboard.press('Escape');
  await expect(sheet).toBeHidden();
});

test('where nothing else prints, the window prints the book from a frame of its own, in the bundled fonts', async ({
  site,
  page,
}) => {
  process.env.LEDGEWRIGHT_BROWSER = '/nowhere/browser';
  let address: string;
  try {
    ({ address } = await site.startHost());
  } finally {
    delete process.env.LEDGEWRIGHT_BROWSER;
  }
  await page.goto(address);
  const sheet = await openSheet(page, /gate-pier cap/i, 'Build book', 'Build book');
  await expect(sheet.locator('section.page').first()).toBeVisible({ timeout: BOOK_MS });
  const count = await sheet.locator('section.page').count();
  await sheet.getByRole('button', { name: 'Save as PDF' }).click();
  await expect(sheet.getByRole('status')).toContainText('save as PDF in the print dialog', {
    timeout: BOOK_MS,
  });
  const frame = page.locator('#printed-document');
  await expect
    .poll(() =>
      frame.evaluate((element) => {
        const inside = (element as HTMLIFrameElement).contentDocument!;
        const loaded = [...inside.fonts].filter(({ status }) => status === 'loaded');
        return {
          pages: inside.querySelectorAll('.page').length,
          faces: new Set(loaded.map(({ family, weight }) => `${family.replaceAll(/["']/g, '')} ${weight}`))
            .size,
        };
      }),
    )
    .toEqual({ pages: count, faces: 3 });
});

test('a bar ledge leaves as a drawing that another program reads, as lists, pictures and a copy of the job', async ({
  window,
}) => {
  const page = window;
  const sheet = await openSheet(page, /bar ledge/i, 'Export', 'Export');
  const save = (name: string) =>
    downloaded(page, sheet.getByRole('button', { name: `Save: ${name}`, exact: true }));
  expect(await faults(page)).toEqual([]);

  const dxf = await save('Plan, DXF');
  expect(dxf.name).toMatch(/-plan\.dxf$/);
  const drawing = new DxfParser().parseSync(dxf.bytes.toString('utf8'));
  // Source: DXF Reference, $INSUNITS: 1 is inches.
  expect(drawing?.header.$INSUNITS).toBe(1);
  expect(drawing?.entities.filter(({ type }) => type === 'LWPOLYLINE').length).toBeGreaterThan(0);

  const glb = await save('Model, GLB');
  // Source: Khronos glTF 2.0, 4.4.2.
  expect(glb.bytes.subarray(0, 4).toString('latin1')).toBe('glTF');
  expect(glb.bytes.readUInt32LE(8)).toBe(glb.bytes.length);

  const list = await save('Shopping list');
  expect(list.bytes.toString('utf8')).toMatch(/^id,where,what,needed,/);
  const legs = (await save('Legs')).bytes.toString('utf8').split('\r\n');
  expect(legs.slice(1, -1).length).toBeGreaterThan(3);

  const copy = readJobText((await save('Job file')).bytes.toString('utf8'));
  expect(copy.ok && copy.job.id).toContain('bar-ledge');

  // a picture that shows something: a blank one has one colour
  expect(await coloursOf(page, (await save('Plan')).bytes)).toBeGreaterThan(8);
  // the model is not in view, so there is no picture of it to take
  await expect(sheet.getByRole('button', { name: 'Save: Model', exact: true })).toHaveCount(0);
  // there is no opening in a ledge to make a template of
  await expect(sheet.getByRole('heading', { name: /template/ })).toHaveCount(0);
});

test('the model leaves as a picture of what is seen', async ({ window }) => {
  const page = window;
  await reachDrawing(page);
  await openExample(page, /gate-pier cap/i);
  await expect(page.locator('[role="application"] canvas')).toBeVisible();
  await chooseCommand(page, 'Export');
  const sheet = page.getByRole('dialog', { name: 'Export' });
  const picture = await downloaded(page, sheet.getByRole('button', { name: 'Save: Model', exact: true }));
  expect(picture.name).toMatch(/-model-picture\.png$/);
  expect(await coloursOf(page, picture.bytes)).toBeGreaterThan(50);
});

test('the sink of a counter leaves as a full-size template, from below and on A4 where that is asked for', async ({
  window,
}) => {
  const page = window;
  const sheet = await openSheet(page, null, 'Export', 'Export');
  await sheet.getByRole('radio', { name: 'A4' }).click();
  await sheet.getByRole('radio', { name: 'From below' }).click();
  const row = sheet.getByRole('region', { name: /template/ }).getByRole('button', { name: /^Save: / });
  const { name, bytes } = await downloaded(page, row.first());
  expect(name).toMatch(/-template-from-below\.pdf$/);
  const { sizesPt, text } = await readPdf(bytes);
  expect(sizesPt.length).toBeGreaterThan(1);
  expect(Math.abs(sizesPt[0]![1]! - (297 / 25.4) * 72)).toBeLessThan(0.75);
  expect(text).toContain('Mirrored: this face down');
});

test('the keys of the menu open the book and the export', async ({ window }) => {
  const page = window;
  await reachDrawing(page);
  await page.keyboard.press('Control+Shift+E');
  await expect(page.getByRole('dialog', { name: 'Export' })).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(page.getByRole('dialog')).toBeHidden();
  await page.keyboard.press('Alt+b');
  await expect(page.getByRole('dialog', { name: 'Build book' })).toBeVisible();
  // left while it is being made, it is given up
  await page.keyboard.press('Escape');
  await expect(page.getByRole('dialog')).toBeHidden();
});

/** How many colours a picture has, every eighth pixel looked at. */
async function coloursOf(page: Page, png: Buffer): Promise<number> {
  return page.evaluate(async (base64) => {
    const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
    const image = await createImageBitmap(new Blob([bytes], { type: 'image/png' }));
    const canvas = new OffscreenCanvas(image.width, image.height);
    const context = canvas.getContext('2d')!;
    context.drawImage(image, 0, 0);
    const { data } = context.getImageData(0, 0, image.width, image.height);
    const colours = new Set<number>();
    for (let at = 0; at < data.length; at += 32) {
      colours.add((data[at]! << 16) | (data[at + 1]! << 8) | data[at + 2]!);
    }
    return colours.size;
  }, png.toString('base64'));
}
