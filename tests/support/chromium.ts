/** The Chromium that tests drive. */
import { existsSync } from 'node:fs';
import type { Browser } from '@playwright/test';
import { chromium } from '@playwright/test';

/** Where Debian puts it; elsewhere the one that playwright installs. */
const DEBIAN = '/usr/bin/chromium';

/** Starts it with drawing in software, and without what it does in the background. */
export function launchChromium(): Promise<Browser> {
  return chromium.launch({
    ...(existsSync(DEBIAN) ? { executablePath: DEBIAN } : {}),
    args: [
      '--no-sandbox',
      '--use-gl=angle',
      '--use-angle=swiftshader',
      '--enable-unsafe-swiftshader',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
      '--no-first-run',
    ],
  });
}
