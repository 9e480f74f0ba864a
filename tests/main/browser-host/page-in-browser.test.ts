import type { Browser, Page } from '@playwright/test';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { startLoopbackHost } from '../../../src-main/browser-host/loopback-host';
import { builtApp } from '../../support/built-app';
import { launchChromium } from '../../support/chromium';
import { soon } from '../../support/soon';
import { withHost } from '../host/place-here';

let browser: Browser;
beforeAll(async () => {
  builtApp();
  browser = await launchChromium();
}, 180_000);
afterAll(async () => {
  await browser.close();
});

/** Opens the built window by the address that a person is given. */
async function withWindow(use: (page: Page, address: string) => Promise<void>): Promise<void> {
  await withHost(async ({ host }) => {
    const loopback = await startLoopbackHost({
      host,
      pageFolder: `${builtApp()}/renderer`,
      port: 0,
      onFault: (error) => {
        throw error;
      },
    });
    const page = await browser.newPage();
    try {
      await use(page, loopback.address);
    } finally {
      await page.close();
      await loopback.stop();
    }
  });
}

describe('the built window in a browser', () => {
  test('shows itself without a complaint, isolated, and takes the token out of its address', async () => {
    await withWindow(async (page, address) => {
      const complaints: string[] = [];
      page.on('pageerror', (error) => complaints.push(error.message));
      page.on('console', (message) => {
        if (/content security policy|refused/i.test(message.text())) complaints.push(message.text());
      });
      await page.goto(address);
      await page.locator('#window > *').first().waitFor();
      expect(await page.evaluate(() => [window.isSecureContext, window.crossOriginIsolated])).toEqual([
        true,
        true,
      ]);
      expect(page.url()).toBe(address.replace(/#.*/, ''));
      expect(complaints).toEqual([]);
    });
  });

  test('cannot start without the token of the run, and says so', async () => {
    await withWindow(async (page, address) => {
      await page.goto(address.replace(/#.*/, ''));
      await soon(async () =>
        expect(await page.locator('[role=alert]').textContent()).toContain('cannot start'),
      );
    });
  });
});
