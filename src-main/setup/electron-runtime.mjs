/** Finds the runtime of the desktop window, or fetches it once. It comes from outside the package registry, so it may not be had. */
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/** Where the runtime's package downloads from, unless the person's settings name a mirror. */
const SOURCE = 'https://github.com/electron/electron/releases/';
const PROBE_MS = 5_000;
/** The runtime is about 120 MB. */
const DOWNLOAD_MS = 240_000;

/** The runtime's program, or null where it is not installed. `packageFolder` is node_modules/electron. */
export function installedRuntime(packageFolder) {
  const named = join(packageFolder, 'path.txt');
  if (!existsSync(named)) return null;
  const program = join(packageFolder, 'dist', readFileSync(named, 'utf8').trim());
  return existsSync(program) ? program : null;
}

/** Why a desktop window cannot be shown on this machine whatever is installed, or null. */
export function displayTrouble(env, platform) {
  if (platform !== 'linux') return null;
  return env.DISPLAY || env.WAYLAND_DISPLAY ? null : 'this machine has no display';
}

/**
 * The runtime's program, downloaded where that is needed and can be done, or why it cannot be had. `say` is told of a download;
 * `probe` tells whether an address can be reached.
 */
export async function findRuntime(packageFolder, env, say, probe = isReachable) {
  const there = installedRuntime(packageFolder);
  if (there !== null) return { ok: true, program: there };
  const source = env.ELECTRON_MIRROR || env.npm_config_electron_mirror || SOURCE;
  if (!(await probe(source)))
    return { ok: false, why: 'it is not installed and cannot be downloaded from here' };
  say('Downloading the runtime of the desktop window (about 120 MB, once)');
  const { status, error } = spawnSync(process.execPath, [join(packageFolder, 'install.js')], {
    stdio: ['ignore', 'ignore', 'ignore'],
    timeout: DOWNLOAD_MS,
    killSignal: 'SIGKILL',
    env,
  });
  const program = status === 0 ? installedRuntime(packageFolder) : null;
  if (program !== null) return { ok: true, program };
  const tookTooLong = error !== undefined && error.code === 'ETIMEDOUT';
  return { ok: false, why: tookTooLong ? 'its download took too long' : 'its download failed' };
}

/** Whether anything answers there at all; what it answers is the download's to judge. */
async function isReachable(address) {
  try {
    await fetch(address, { method: 'HEAD', signal: AbortSignal.timeout(PROBE_MS) });
    return true;
  } catch {
    return false;
  }
}
