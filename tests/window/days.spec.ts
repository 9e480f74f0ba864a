import { readFileSync } from 'node:fs';
import type { Job } from '../../src-core/job';
import { readJobText } from '../../src-core/job';
import { standingOn, swapSteps } from '../../src-core/sequence';
import { checkOnePiece } from '../../src-core/verdict';
import { expect, openExample, reachDrawing, test } from './window-test';

const PIECE = 'serving-counter';

function galley(): Job {
  const reading = readJobText(readFileSync('assets/jobs/boathouse-galley.json', 'utf8'));
  if (!reading.ok) throw new Error('the example cannot be read');
  return reading.job;
}

test('the day line is moved through the swap: what stands and the verdict are those of the load check of that day', async ({
  window,
}) => {
  const page = window;
  const job = galley();
  const piece = job.pieces.find(({ id }) => id === PIECE)!;
  const days = [...new Set(swapSteps(job, piece).map(({ day }) => day))];
  expect(days.length).toBeGreaterThan(1);

  await reachDrawing(page);
  await openExample(page, /galley/i);
  await page.getByRole('radio', { name: 'Hold it up' }).click();
  const panel = page.getByRole('region', { name: 'How it is held up and swapped' });
  const slider = page.getByRole('slider');
  await slider.focus();
  await page.keyboard.press('Home');
  await expect(panel.getByRole('heading', { name: /^On day 0/ })).toBeVisible();
  let at = 0;
  for (const day of days) {
    for (; at < day; at++) await page.keyboard.press('ArrowRight');
    await expect(panel.getByRole('heading', { name: new RegExp(`^On day ${day}\\b`) })).toBeVisible();
    const { verdict } = checkOnePiece(job, piece, { day }).result;
    await expect(panel.getByText(verdict.words, { exact: true }).first()).toBeVisible();
    const standing = panel.getByRole('region', { name: 'What stands under it' });
    const { supports } = standingOn(job, day).find(({ pieceId }) => pieceId === PIECE)!;
    for (const id of supports) {
      const support = piece.supports.find((one) => one.id === id)!;
      await expect(standing).toContainText(support.name ?? id);
    }
    const gone = piece.supports.filter(({ id }) => !supports.includes(id));
    const cabinetsToCome = gone.filter(({ kind }) => kind === 'cabinet').length;
    const inPlace = supports.filter((id) => piece.supports.find((one) => one.id === id)?.kind === 'cabinet');
    const words = inPlace.length === 1 ? '1 cabinet' : `${inPlace.length} cabinets`;
    if (inPlace.length > 0) await expect(standing).toContainText(words);
    expect(cabinetsToCome + inPlace.length).toBe(
      piece.supports.filter(({ kind }) => kind === 'cabinet').length,
    );
  }
  await page.keyboard.press('End');
  await expect(panel.getByRole('heading', { name: 'Finished' })).toBeVisible();
});
