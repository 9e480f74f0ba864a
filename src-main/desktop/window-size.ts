/** Size and place of the window, remembered from one run to the next. */
import { mkdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { BrowserWindow, Rectangle } from 'electron';
import writeFileAtomic from 'write-file-atomic';
import { z } from 'zod';
import { readOwnJson } from '../host/own-json';

export const LEAST_WIDTH_PX = 960;
export const LEAST_HEIGHT_PX = 600;
const FIRST_WIDTH_PX = 1360;
const FIRST_HEIGHT_PX = 860;
/** Of a remembered window this much must lie on a screen, or it could not be taken hold of. */
const LEAST_VISIBLE_PX = 120;

const remembered = z.object({
  widthPx: z.number().int().min(LEAST_WIDTH_PX).max(20_000),
  heightPx: z.number().int().min(LEAST_HEIGHT_PX).max(20_000),
  xPx: z.number().int(),
  yPx: z.number().int(),
  isMaximized: z.boolean(),
});

export interface WindowSize {
  readonly bounds: {
    readonly width: number;
    readonly height: number;
    readonly x?: number;
    readonly y?: number;
  };
  readonly isMaximized: boolean;
}

/** The size of the last run, placed where it was if that is still on a screen; a first size where nothing is remembered. */
export async function recallSize(userFolder: string, screens: readonly Rectangle[]): Promise<WindowSize> {
  const last = await readOwnJson(fileIn(userFolder), remembered);
  if (last === null)
    return { bounds: { width: FIRST_WIDTH_PX, height: FIRST_HEIGHT_PX }, isMaximized: false };
  const { widthPx: width, heightPx: height, xPx: x, yPx: y, isMaximized } = last;
  const isVisible = screens.some(
    (screen) =>
      Math.min(x + width, screen.x + screen.width) - Math.max(x, screen.x) >= LEAST_VISIBLE_PX &&
      y >= screen.y &&
      y <= screen.y + screen.height - LEAST_VISIBLE_PX,
  );
  return { bounds: isVisible ? { width, height, x, y } : { width, height }, isMaximized };
}

/** Remembers the window's size. At once, for the app may end right after; a size that cannot be kept must not hold the window open. */
export function rememberSize(userFolder: string, window: BrowserWindow): void {
  const { width, height, x, y } = window.getNormalBounds();
  const size = { widthPx: width, heightPx: height, xPx: x, yPx: y, isMaximized: window.isMaximized() };
  const file = fileIn(userFolder);
  try {
    mkdirSync(dirname(file), { recursive: true, mode: 0o700 });
    writeFileAtomic.sync(file, JSON.stringify(size));
  } catch (error) {
    console.error(
      `the window's size is not remembered: ${error instanceof Error ? error.message : String(error)}`,
    );
  }
}

function fileIn(userFolder: string): string {
  return join(userFolder, 'window-size.json');
}
