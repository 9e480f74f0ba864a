/** Waits for what comes about by itself. */
import { vi } from 'vitest';

/** Long enough for a page that draws in software on a busy machine. */
const PATIENCE_MS = 30_000;

/** What `look` gives once it does not throw any more. */
export function soon<Seen>(look: () => Seen | Promise<Seen>): Promise<Seen> {
  return vi.waitFor(look, { timeout: PATIENCE_MS, interval: 50 });
}
