/** The built window for tests that run it. */
import { mkdirSync, rmdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

interface Build {
  readonly needsBuild: (root: string) => boolean;
  readonly build: () => boolean;
}

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const { needsBuild, build } = (await import(
  new URL('../../src-main/setup/build.mjs', import.meta.url).href
)) as Build;

/** Held by the one test process that builds; a lock as old as this was left by one that was killed. */
const LOCK = join(ROOT, 'node_modules', '.cache-ledgewright-build');
const STALE_MS = 120_000;
const PAUSE_MS = 100;

let isLookedAt = false;

/** Folder of the build, made anew first where it is older than the sources: once a test process, and of several processes one builds. */
export function builtApp(): string {
  while (!isLookedAt && needsBuild(ROOT)) {
    if (takeLock()) {
      try {
        if (needsBuild(ROOT) && !build()) throw new Error('the window could not be built');
      } finally {
        rmdirSync(LOCK);
      }
    } else {
      Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, PAUSE_MS);
    }
  }
  isLookedAt = true;
  return join(ROOT, 'dist');
}

function takeLock(): boolean {
  const held = statSync(LOCK, { throwIfNoEntry: false });
  if (held !== undefined && Date.now() - held.mtimeMs > STALE_MS) rmdirSync(LOCK);
  try {
    mkdirSync(LOCK);
    return true;
  } catch {
    return false;
  }
}
