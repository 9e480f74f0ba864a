import type { Page } from '@playwright/test';
import { ASK_CHANNEL } from '../../../src-main/desktop/channels';
import { INVOKE } from '../../support/electron-double/preload-shim';

interface Door {
  readonly ledgewright: {
    readonly ask: (name: string, request: unknown) => Promise<unknown>;
    readonly listen: (onEvent: (event: unknown) => void) => () => void;
  };
}

/** Asks from the page through the built preload. */
export function askFrom(page: Pick<Page, 'evaluate'>, name: string, request: unknown = {}): Promise<unknown> {
  return page.evaluate(([asked, given]) => (window as unknown as Door).ledgewright.ask(asked, given), [
    name,
    request,
  ] as const);
}

/** Sends on the shell's channel from any frame, as a page that got hold of the way would. */
export function sendFrom(frame: Pick<Page, 'evaluate'>, name: string): Promise<unknown> {
  return frame.evaluate(
    ([invoke, channel, asked]) =>
      (window as unknown as Record<string, (channel: string, args: unknown[]) => Promise<unknown>>)[invoke]!(
        channel,
        [asked, {}],
      ),
    [INVOKE, ASK_CHANNEL, name] as const,
  );
}

/** Begins to note in the page what the shell tells it. */
export async function noteEvents(page: Page): Promise<() => Promise<unknown[]>> {
  await page.evaluate(() => {
    const noted: unknown[] = [];
    Object.assign(window, { noted });
    (window as unknown as Door).ledgewright.listen((event) => noted.push(event));
  });
  return () => page.evaluate(() => (window as unknown as { noted: unknown[] }).noted);
}
