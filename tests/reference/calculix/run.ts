import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** What a run of the program left: its printed results, its convergence table, and how long it took. */
export type CcxRun = { readonly dat: string; readonly convergence: string; readonly seconds: number };

/** The version the installed `ccx` prints of itself, or null where it is not installed. */
export function ccxVersion(): string | null {
  // It leaves with a failure code after printing its version, so only what it says counts.
  const { stdout } = spawnSync('ccx', ['-v'], { encoding: 'utf8' });
  return /Version\s+(\S+)/.exec(stdout ?? '')?.[1] ?? null;
}

/** Runs `ccx` on a deck in a directory of its own and gives what it printed; throws with its log if it failed. */
export function runCcx(deck: string): CcxRun {
  const directory = mkdtempSync(join(tmpdir(), 'ccx-'));
  try {
    writeFileSync(join(directory, 'slab.inp'), deck);
    const started = performance.now();
    const { stdout, status, error } = spawnSync('ccx', ['slab'], {
      cwd: directory,
      encoding: 'utf8',
      // One thread: the sums then fall in one order, and a run repeats to the last digit.
      env: { ...process.env, OMP_NUM_THREADS: '1' },
      maxBuffer: 1 << 28,
    });
    const seconds = (performance.now() - started) / 1000;
    if (error !== undefined) throw error;
    if (status !== 0 || /\*ERROR/.test(stdout) || !/Job finished/.test(stdout)) {
      throw new Error(`ccx did not finish (status ${status}):\n${stdout.slice(-2000)}`);
    }
    return {
      dat: readFileSync(join(directory, 'slab.dat'), 'utf8'),
      convergence: readFileSync(join(directory, 'slab.cvg'), 'utf8'),
      seconds,
    };
  } finally {
    rmSync(directory, { recursive: true, force: true });
  }
}
