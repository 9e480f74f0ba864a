import { spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { readJobText } from '../../../src-core/job';
import { longText } from './long-job';
import { exampleText, PROJECT } from './place-here';

const KILLS = 16;
const LONGEST_WAIT_MS = 400;
const LOOP = fileURLToPath(new URL('save-in-a-loop.ts', import.meta.url));

/** Starts a program that saves without end, and kills it outright `waitMs` after its first save. */
async function saveAndKill(path: string, userFolder: string, waitMs: number): Promise<void> {
  const child = spawn(process.execPath, ['--import', 'tsx', LOOP, path, userFolder], {
    cwd: PROJECT,
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const ended = new Promise<NodeJS.Signals | null>((resolve) => {
    child.once('exit', (_code, signal) => resolve(signal));
  });
  await new Promise<void>((resolve, reject) => {
    child.stdout.once('data', () => resolve());
    child.once('exit', () => reject(new Error('the saving program ended by itself')));
  });
  await wait(waitMs);
  child.kill('SIGKILL');
  expect(await ended).toBe('SIGKILL');
}

test(`a job whose saving is killed ${KILLS} times at any moment is a whole job each time, and so is its last good copy`, {
  timeout: 180_000,
}, async () => {
  const folder = mkdtempSync(join(tmpdir(), 'ledgewright-kill-'));
  const path = join(folder, 'galley.json');
  const whole = [exampleText('hearth'), longText()];
  expect(whole.every((text) => readJobText(text).ok)).toBe(true);
  try {
    for (let kill = 0; kill < KILLS; kill++) {
      await saveAndKill(path, join(folder, 'user'), Math.random() * LONGEST_WAIT_MS);
      expect(whole).toContain(readFileSync(path, 'utf8'));
      const lastGood = readIfThere(`${path}.last-good`);
      if (lastGood !== null) expect(whole).toContain(lastGood);
    }
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});

/** The last good copy is missing until there was something to keep. */
function readIfThere(path: string): string | null {
  try {
    return readFileSync(path, 'utf8');
  } catch {
    return null;
  }
}
