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
    Object.assign(globalThis, { longTasksMs: kept });
    new PerformanceObserver((list) => {
      for (const { duration } of list.getEntries()) kept.push(duration);
    }).observe({ type: 'longtask' });
  });

  const edge = page.getByRole('button', { name: /^Edge 1,/ });
  const box = (await edge.boundingBox())!;
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  for (let drag = 0; drag < 4; drag++) {
    await page.mouse.move(x, y + drag);
    await page.mouse.down();
    for (const outPx of [10, 13, 16, 19, 16, 13, 10]) {
      await page.mouse.move(x, y + drag + outPx);
      await page.waitForTimeout(150);
    }
    await page.mouse.up();
    await expect(page.getByText(/Changed since|A quick look/)).toBeHidden();
    await page.waitForTimeout(800);
  }
  const timings: Timing[] = await page.evaluate(() =>
    performance.getEntriesByType('measure').map(({ name, duration }) => ({ name, ms: duration })),
  );
  const longTasksMs: number[] = await page.evaluate(
    () => (globalThis as unknown as { longTasksMs: number[] }).longTasksMs,
  );
  for (const name of ['coarse verdict', 'fine verdict']) {
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
