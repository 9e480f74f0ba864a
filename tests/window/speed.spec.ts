import { expect, openExample, reachDrawing, test } from './window-test';

interface Timing {
  readonly name: string;
  readonly ms: number;
}

test('a drag on the straight counter: how soon the coarse and the fine verdict come, printed', async ({
  window,
}) => {
  const page = window;
  await reachDrawing(page);
  await openExample(page, /straight counter/i);
  await page.getByRole('radio', { name: 'Plan' }).click();
  const words = page.getByRole('region', { name: 'The verdict' }).getByRole('heading', { level: 2 }).first();
  await expect(words).toHaveText(/^Holds/);
  await expect(page.getByText('Looking at the days before it.')).toBeHidden();
  await page.evaluate(() => {
    performance.clearMeasures();
    const kept: number[] = [];
    const drawn: Timing[] = [];
    Object.assign(globalThis, { longTasksMs: kept, drawn });
    new PerformanceObserver((list) => {
      for (const { duration } of list.getEntries()) kept.push(duration);
    }).observe({ type: 'longtask' });
    new PerformanceObserver((list) => {
      for (const { name, startTime } of list.getEntries()) {
        // a task after the next frame runs when that frame has been drawn
        requestAnimationFrame(() =>
          setTimeout(() => drawn.push({ name: `${name} on the screen`, ms: performance.now() - startTime })),
        );
      }
    }).observe({ type: 'measure' });
  });

  const edge = page.getByRole('button', { name: /^Edge 1,/ });
  // each ends where none ended before, so that no answer is one that was kept
  for (const [drag, endPx] of [10, -7, 12, -9, 6, -14].entries()) {
    const box = (await edge.boundingBox())!;
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    await page.mouse.move(x, y);
    await page.mouse.down();
    for (const share of [0.3, 0.8, 1.3, 1.8, 1.5, 1.2, 1]) {
      await page.mouse.move(x, y + share * endPx);
      await page.waitForTimeout(150);
    }
    // every other drag rests where it is, and the whole check comes all the same
    const rests = drag % 2 === 1;
    if (!rests) await page.mouse.up();
    await expect(page.getByText(/Changed since|A quick look/)).toBeHidden();
    if (rests) await page.mouse.up();
    await page.waitForTimeout(800);
  }
  const { timings, longTasksMs } = await page.evaluate(() => {
    const { longTasksMs, drawn } = globalThis as unknown as { longTasksMs: number[]; drawn: Timing[] };
    const known = performance
      .getEntriesByType('measure')
      .map(({ name, duration }) => ({ name, ms: duration }));
    return { timings: [...known, ...drawn], longTasksMs };
  });
  for (const name of [
    'coarse verdict',
    'coarse verdict on the screen',
    'fine verdict',
    'fine verdict on the screen',
    'fine verdict with the way there',
  ]) {
    const ms = timings.filter((timing) => timing.name === name).map((timing) => timing.ms);
    ms.sort((a, b) => a - b);
    expect(ms.length).toBeGreaterThan(0);
    console.log(
      `${name}: median ${ms[ms.length >> 1]!.toFixed(0)} ms, least ${ms[0]!.toFixed(0)} ms, most ${ms.at(-1)!.toFixed(0)} ms of ${ms.length}`,
    );
  }
  console.log(
    longTasksMs.length === 0
      ? 'the main thread was never blocked for 50 ms'
      : `the main thread was blocked ${longTasksMs.length} times, ${Math.max(...longTasksMs).toFixed(0)} ms at the most`,
  );
});
