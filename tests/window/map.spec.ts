import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import type { PieceMap } from '../../src-core/field-map';
import { pieceMap } from '../../src-core/field-map';
import { readJobText } from '../../src-core/job';
import { lookAtPiece } from '../../src-core/verdict';
import { bendingAt } from '../../src-renderer/model/bending-at';
import { MAP_LIFT_IN } from '../../src-renderer/model/map-geometry';
import { projectToScreen } from '../../src-renderer/model/project-to-screen';
import { expect, openExample, reachDrawing, test } from './window-test';

/** Levels of 255 by which two pixels of one colour may differ by rounding. */
const SAME_COLOUR = 4;
/** Places over the slab where the map is read, as shares of its length and depth. */
const SHARES = [0.08, 0.22, 0.36, 0.5, 0.64, 0.78, 0.92].flatMap((u) =>
  [0.2, 0.5, 0.8].map((v) => ({ u, v })),
);

interface Pixels {
  readonly width: number;
  readonly height: number;
  readonly data: readonly number[];
}

test('a pixel of the slab has the colour that the legend gives for the bending that the core works out there', async ({
  window,
}) => {
  const page = window;
  await reachDrawing(page);
  await openExample(page, /straight counter/i);
  const verdict = page.getByRole('region', { name: 'The verdict' });
  await expect(verdict.getByRole('heading', { level: 2 }).first()).toHaveText(/^Holds/);
  await expect(verdict.getByText(/follows|Looking|checking again/)).toBeHidden();
  const stage = page.getByRole('application', { name: 'The job in three dimensions' });
  await stage.focus();
  await page.keyboard.press('5');
  await expect.poll(() => framesAreStill(page)).toBe(true);

  const map = coreMap();
  const matrix = (await stage.getAttribute('data-view-matrix'))!.split(' ').map(Number);
  const box = (await stage.boundingBox())!;
  const slab = await pixelsOf(page, box);
  const scale = page.getByRole('figure', { name: /bending/i }).locator('[data-scale]');
  const bar = await pixelsOf(page, (await scale.boundingBox())!);

  let compared = 0;
  const { xIn, yIn } = extent(map);
  for (const { u, v } of SHARES) {
    const [x, y] = [xIn[0] + u * (xIn[1] - xIn[0]), yIn[0] + v * (yIn[1] - yIn[0])];
    const share = bendingAt(map, x, y);
    if (share === null || share > 0.98) continue;
    const onScreen = (px: number, py: number) =>
      projectToScreen(matrix, [px, py, map.topIn + MAP_LIFT_IN], box.width, box.height);
    const at = onScreen(x, y);
    const seen = pixelAt(slab, at.xPx, at.yPx);
    if (isCovered(seen)) continue;
    // a pixel covers a little of the slab, over which the bending changes: one of its shares must have this colour
    const pixelIn = 1 / Math.abs(onScreen(x + 1, y).xPx - at.xPx);
    const within = [-1, 0, 1].flatMap((dx) =>
      [-1, 0, 1].map((dy) => bendingAt(map, x + dx * pixelIn, y + dy * pixelIn) ?? share),
    );
    const least = Math.floor(Math.min(...within) * (bar.width - 1));
    const most = Math.ceil(Math.max(...within) * (bar.width - 1));
    const off = Array.from({ length: most - least + 1 }, (_, i) => {
      const told = pixelAt(bar, Math.min(bar.width - 1, least + i), bar.height / 2);
      return Math.max(...seen.map((level, k) => Math.abs(level - told[k]!)));
    });
    expect(Math.min(...off), `at ${x}, ${y}, share ${share}`).toBeLessThanOrEqual(SAME_COLOUR);
    compared++;
  }
  console.log(`${compared} points of the slab compared with the legend`);
  expect(compared).toBeGreaterThan(10);
});

function coreMap(): PieceMap & { readonly topIn: number } {
  const reading = readJobText(readFileSync('assets/jobs/straight-counter.json', 'utf8'));
  if (!reading.ok) throw new Error('the example cannot be read');
  const piece = reading.job.pieces[0]!;
  const { analysis } = lookAtPiece(reading.job, piece);
  return { ...pieceMap(analysis!), topIn: piece.topElevationIn };
}

function extent({ xIn, yIn }: PieceMap): { xIn: [number, number]; yIn: [number, number] } {
  const range = (values: Float32Array): [number, number] => [Math.min(...values), Math.max(...values)];
  return { xIn: range(xIn), yIn: range(yIn) };
}

/** The load and its arrow are chalk blue, brighter than any blue of the scale. */
function isCovered([red, , blue]: readonly number[]): boolean {
  return blue! > 140 && red! < 140;
}

async function framesAreStill(page: Page): Promise<boolean> {
  const frames = () => page.locator('[data-drawn-frames]').getAttribute('data-drawn-frames');
  const before = await frames();
  await page.waitForTimeout(600);
  return before !== null && before === (await frames());
}

async function pixelsOf(
  page: Page,
  clip: { x: number; y: number; width: number; height: number },
): Promise<Pixels> {
  const picture = await page.screenshot({ clip });
  return page.evaluate(
    async (bytes) => {
      const bitmap = await createImageBitmap(new Blob([new Uint8Array(bytes)], { type: 'image/png' }));
      const canvas = new OffscreenCanvas(bitmap.width, bitmap.height);
      const context = canvas.getContext('2d')!;
      context.drawImage(bitmap, 0, 0);
      const { width, height, data } = context.getImageData(0, 0, bitmap.width, bitmap.height);
      return { width, height, data: [...data] };
    },
    [...picture],
  );
}

function pixelAt({ width, data }: Pixels, x: number, y: number): number[] {
  const at = 4 * (Math.round(y) * width + Math.round(x));
  return data.slice(at, at + 3);
}
