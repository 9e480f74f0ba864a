/** Says on stderr how far a check has come, and keeps the time of each piece. */
import type { CheckProgress } from '../../src-core/verdict';
import type { CliIo } from './io';
import { withoutControls } from './io';

export interface Progress {
  readonly take: (progress: CheckProgress) => void;
  /** Clears the line on a terminal. */
  readonly end: () => void;
  readonly seconds: () => number;
  /** Time of the piece at `index`, or null where it was not seen to end. */
  readonly secondsOf: (index: number) => number | null;
}

const QUIET_MS = 1000;
/** A log gets a line now and then. */
const LOG_EVERY_MS = 5000;
const CLEAR_LINE = '\r\u001b[K';

/**
 * Starts the clock. A terminal shows each step at once, on one line that is cleared at the end; a log stays empty in
 * the first second. Nothing is written to `out`.
 */
export function startProgress(io: CliIo): Progress {
  const startedMs = io.nowMs();
  const reachedMs = new Map<number, number>();
  let lastMs = Number.NEGATIVE_INFINITY;
  let isShown = false;

  return {
    take: ({ done, total, words }) => {
      const nowMs = io.nowMs();
      if (!reachedMs.has(done)) reachedMs.set(done, nowMs);
      const line = `Checked ${done} of ${total}; now ${withoutControls(words)}`;
      if (io.err.isTerminal) {
        io.err.write(`${CLEAR_LINE}${line.slice(0, 79)}`);
        isShown = true;
      } else if (nowMs - startedMs >= QUIET_MS && nowMs - lastMs >= LOG_EVERY_MS) {
        io.err.write(`${line}\n`);
        lastMs = nowMs;
      }
    },
    end: () => {
      if (isShown) io.err.write(CLEAR_LINE);
      isShown = false;
    },
    seconds: () => (io.nowMs() - startedMs) / 1000,
    secondsOf: (index) => {
      const from = reachedMs.get(index);
      const to = reachedMs.get(index + 1);
      return from === undefined || to === undefined ? null : (to - from) / 1000;
    },
  };
}
