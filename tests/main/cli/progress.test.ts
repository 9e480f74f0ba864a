import { describe, expect, test } from 'vitest';
import type { CliIo } from '../../../src-main/cli/io';
import { startProgress } from '../../../src-main/cli/progress';

/** Progress told at the given times; every text that went to stderr, and the progress itself. */
function tell(timesMs: readonly number[], isTerminal: boolean) {
  const written: string[] = [];
  let nowMs = 0;
  const io: CliIo = {
    version: '1.2.3',
    currentFolder: '.',
    out: {
      write: () => {
        throw new Error('progress does not go to stdout');
      },
      isTerminal,
    },
    err: { write: (text) => written.push(text), isTerminal },
    colour: false,
    nowMs: () => nowMs,
  };
  const progress = startProgress(io);
  timesMs.forEach((timeMs, done) => {
    nowMs = timeMs;
    progress.take({ done, total: timesMs.length - 1, words: `piece ${done}` });
  });
  progress.end();
  return { written, progress };
}

describe('progress', () => {
  test('leaves a log empty in the first second', () => {
    expect(tell([0, 300, 999], false).written).toEqual([]);
  });

  test('rewrites one line on a terminal and clears it at the end', () => {
    expect(tell([0, 1500, 1600], true).written).toEqual([
      '\r\u001b[KChecked 0 of 2; now piece 0',
      '\r\u001b[KChecked 1 of 2; now piece 1',
      '\r\u001b[KChecked 2 of 2; now piece 2',
      '\r\u001b[K',
    ]);
  });

  test('gives a log a line every five seconds at the most', () => {
    const { written } = tell([0, 1500, 2500, 6400, 6500, 9000, 20_000], false);
    expect(written).toEqual([
      'Checked 1 of 6; now piece 1\n',
      'Checked 4 of 6; now piece 4\n',
      'Checked 6 of 6; now piece 6\n',
    ]);
  });

  test('keeps the seconds of each piece and of the whole', () => {
    const { progress } = tell([0, 1500, 4000], false);
    expect([0, 1, 2].map(progress.secondsOf)).toEqual([1.5, 2.5, null]);
    expect(progress.seconds()).toBe(4);
  });
});
