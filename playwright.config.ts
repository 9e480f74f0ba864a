import { defineConfig } from '@playwright/test';

/** Debian's Chromium with software WebGL; nothing is fetched from a network. */
export default defineConfig({
  testDir: 'tests/window',
  testMatch: '**/*.spec.ts',
  outputDir: 'dist/window-tests',
  timeout: 120_000,
  expect: { timeout: 20_000 },
  workers: 1,
  reporter: [['list'], ['json', { outputFile: 'dist/window-tests.json' }]],
  globalSetup: './tests/support/build-app.ts',
  use: {
    viewport: { width: 1280, height: 720 },
    locale: 'en-US',
    // a colour half way through a change is no colour to judge
    contextOptions: { reducedMotion: 'reduce' },
    actionTimeout: 20_000,
    launchOptions: {
      executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
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
    },
  },
});
