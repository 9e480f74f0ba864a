/** Tests of what one family of systems has alone. */
import { test } from 'vitest';

/** For what Windows does not have. A test that is left out there is no test that was skipped. */
export function onPosix(title: string, run: () => Promise<void>): void {
  if (process.platform !== 'win32') test(title, run);
}
