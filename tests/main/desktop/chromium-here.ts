import type { Browser } from '@playwright/test';
import { afterAll, beforeAll } from 'vitest';
import { launchChromium } from '../../support/chromium';
import type { Desktop, OpenDesktop } from '../../support/electron-double/run-desktop';
import { openDesktop } from '../../support/electron-double/run-desktop';

/** Longest that Chromium may take to start on a busy machine. */
const START_MS = 60_000;
/** And with it the build, where it is older than the sources. */
const BUILD_MS = 180_000;

/** One Chromium for the tests of a file. */
export function chromiumHere(): () => Browser {
  let browser: Browser | null = null;
  beforeAll(async () => {
    browser = await launchChromium();
  }, START_MS);
  afterAll(async () => {
    await browser?.close();
  });
  return () => {
    if (browser === null) throw new Error('Chromium is not started yet');
    return browser;
  };
}

/** One running shell for the tests of a file, where none of them ends it or leaves its page. */
export function desktopHere(): () => Desktop {
  const browser = chromiumHere();
  let desktop: OpenDesktop | null = null;
  beforeAll(async () => {
    desktop = await openDesktop(browser());
  }, BUILD_MS);
  afterAll(async () => {
    await desktop?.end();
  });
  return () => {
    if (desktop === null) throw new Error('the shell is not started yet');
    return desktop;
  };
}
